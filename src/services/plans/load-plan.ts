import type { Deps, PublishedRevision, RevisionRef } from "../deps.js";
import { withShownImages } from "../images/shown-images.js";
import { findPlans } from "./find-plans.js";
import { inStage } from "../answer-stage.js";

/** A published revision with its frozen document, or null if there is none of that name or number. */
export const loadPlan = (deps: Deps, ref: RevisionRef): Promise<PublishedRevision | null> =>
  inStage(deps, "gather", () => load(deps, ref));

/** The same as it was frozen, with pictures that were removed since. */
export async function loadFrozenPlan(deps: Deps, ref: RevisionRef): Promise<PublishedRevision | null> {
  const [summary] = await findPlans(deps, [ref]);
  if (!summary) return null;
  const [bundle] = await deps.data.revisions.bundles([summary.id]);
  return bundle ? { ...summary, bundle } : null;
}

async function load(deps: Deps, ref: RevisionRef): Promise<PublishedRevision | null> {
  const frozen = await loadFrozenPlan(deps, ref);
  return frozen && { ...frozen, bundle: await withShownImages(deps, frozen.bundle) };
}
