import type { PlanBundle } from "../../domain/model/plan.js";
import type { Deps } from "../deps.js";

/** Frozen documents by revision id, in the order asked for; null where there is none. */
export function loadDocuments(deps: Deps, ids: readonly string[]): Promise<readonly (PlanBundle | null)[]> {
  return deps.data.revisions.bundles(ids);
}
