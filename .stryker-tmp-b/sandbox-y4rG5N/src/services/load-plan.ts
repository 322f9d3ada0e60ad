// @ts-nocheck
import type { Deps, PublishedRevision, RevisionRef } from "./deps.js";
import { findPlans } from "./find-plans.js";

/** A published revision with its frozen document, or null if there is none of that name or number. */
export async function loadPlan(deps: Deps, ref: RevisionRef): Promise<PublishedRevision | null> {
  const [summary] = await findPlans(deps, [ref]);
  if (!summary) return null;
  const [bundle] = await deps.data.revisions.bundles([summary.id]);
  return bundle ? { ...summary, bundle } : null;
}
