import { ok, type Result } from "../../domain/problem.js";
import type { Change, Deps, Page, RevisionSummary } from "../deps.js";
import { findPlansById } from "./find-plans.js";
import { listChanges, type WantedChanges } from "./list-changes.js";

export type ChangeWithPlan = Change & { readonly plan: RevisionSummary };

/** A page of changes, each with the revision it is about. Problems: those of `listChanges`. */
export async function listChangesWithPlans(deps: Deps, wanted: WantedChanges): Promise<Result<Page<ChangeWithPlan>>> {
  const listed = await listChanges(deps, wanted);
  if (!listed.ok) return listed;
  const plans = await findPlansById(
    deps,
    listed.value.items.map(({ item }) => item.revisionId),
  );
  const items = listed.value.items.map(({ cursor, item }, at) => {
    const plan = plans[at];
    if (!plan) throw new Error(`the change ${item.id} is about no revision`);
    return { cursor, item: { ...item, plan } };
  });
  return ok({ ...listed.value, items });
}
