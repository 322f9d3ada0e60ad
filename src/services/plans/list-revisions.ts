import type { Result } from "../../domain/problem.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { Deps, OwnedSlug, Page, RevisionSummary } from "../deps.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";

/** A page of the revisions of one plan, withdrawn ones too, the newest number first. */
export async function listRevisions(
  deps: Deps,
  { plan, page }: { readonly plan: OwnedSlug; readonly page: WantedPage },
): Promise<Result<Page<RevisionSummary>>> {
  const request = readPageRequest(page);
  if (!request.ok) return request;
  return refuseBadCursor(request.value, () => deps.data.revisions.ofPlan(plan, request.value));
}
