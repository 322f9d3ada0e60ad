import type { PlanBundle } from "../../domain/model/plan.js";
import type { Deps } from "../deps.js";
import { withShownImages } from "../images/shown-images.js";

/** Frozen documents by revision id, in the order asked for; null where there is none. */
export async function loadDocuments(deps: Deps, ids: readonly string[]): Promise<readonly (PlanBundle | null)[]> {
  const found = await deps.data.revisions.bundles(ids);
  return Promise.all(found.map((bundle) => bundle && withShownImages(deps, bundle)));
}
