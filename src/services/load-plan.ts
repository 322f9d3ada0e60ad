import type { Deps, PublishedRevision, RevisionRef } from "./deps.js";

/** A published revision with its frozen document, or null if there is none of that name or number. */
export async function loadPlan(deps: Deps, ref: RevisionRef): Promise<PublishedRevision | null> {
  const [summary] = await deps.data.revisions.summaries([ref]);
  if (!summary) return null;
  const [bundle] = await deps.data.revisions.bundles([summary.id]);
  return bundle ? { ...summary, bundle } : null;
}
