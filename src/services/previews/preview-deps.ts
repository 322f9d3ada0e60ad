import type { Data, Deps, PublishedRevision, RevisionRef } from "../deps.js";

/**
 * `Deps` by which a draft is found as if it were published, so that whatever readers are shown is made by the very same code. Everything
 * else is as it is. Nothing of it is cached, and nothing is read from a replica.
 */
export function previewDeps(deps: Deps, preview: PublishedRevision): Deps {
  const { cache: _cache, publicData: _public, ownData, ...rest } = deps;
  return { ...rest, data: previewData(ownData ?? deps.data, preview) };
}

function previewData(data: Data, preview: PublishedRevision): Data {
  const { bundle, ...summary } = preview;
  const { revisions } = data;
  const isIt = (ref: Pick<RevisionRef, "publisher" | "slug">): boolean =>
    ref.publisher === preview.publisher && ref.slug === preview.slug;
  return {
    ...data,
    revisions: {
      ...revisions,
      summaries: instead(revisions.summaries, isIt, summary),
      withdrawn: instead(revisions.withdrawn, isIt, null),
      summariesByIds: instead(revisions.summariesByIds, (id) => id === preview.id, summary),
      bundles: instead(revisions.bundles, (id) => id === preview.id, bundle),
    },
  };
}

/** A batched read that answers one key itself. */
function instead<Key, Value>(
  read: (keys: readonly Key[]) => Promise<readonly (Value | null)[]>,
  isIt: (key: Key) => boolean,
  value: Value | null,
): (keys: readonly Key[]) => Promise<readonly (Value | null)[]> {
  return async (keys) => {
    const others = keys.filter((key) => !isIt(key));
    const found = others.length === 0 ? [] : await read(others);
    let next = 0;
    return keys.map((key) => (isIt(key) ? value : (found[next++] ?? null)));
  };
}
