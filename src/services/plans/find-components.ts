import type { Deps, OwnedSlug, RevisionSummary } from "../deps.js";
import { readStorable } from "../storable-text.js";

/** For each component the newest revision in force that holds it, in the order asked for; null where there is none. */
export function findComponents(deps: Deps, names: readonly OwnedSlug[]): Promise<readonly (RevisionSummary | null)[]> {
  return readStorable(names, ({ publisher, slug }) => [publisher, slug], deps.data.revisions.holdingComponents);
}
