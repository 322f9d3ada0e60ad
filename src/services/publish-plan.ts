import type { PlanBundle } from "../domain/model/plan.js";
import { checkBundle } from "../domain/plan/check-bundle.js";
import { failed, ok, type Result } from "../domain/problem.js";
import type { Deps, RevisionSummary } from "./deps.js";

export interface Published {
  readonly summary: RevisionSummary;
  /** false: the newest revision already said exactly this. */
  readonly created: boolean;
}

/** Checks a plan with all it refers to and freezes it as the next revision. Nothing is stored if a check fails. */
export async function publishPlan(deps: Deps, bundle: PlanBundle): Promise<Result<Published>> {
  const problems = checkBundle(bundle);
  if (problems.length > 0) return failed(problems);
  return ok(await deps.data.revisions.publish(bundle, deps.clock()));
}
