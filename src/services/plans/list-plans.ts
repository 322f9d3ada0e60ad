import { failed, type Result } from "../../domain/problem.js";
import type { Deps, Page, PlanFilter, RevisionSummary } from "../deps.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import { readSearch } from "../foods/search-text.js";

/** A page of plans, newest first, each in its newest revision in force. Fails on a bad size, cursor or search text. */
export async function listPlans(
  deps: Deps,
  input: { readonly filter: PlanFilter; readonly page: WantedPage },
): Promise<Result<Page<RevisionSummary>>> {
  const problems = readSearch({ ...input.filter });
  if (problems.length > 0) return failed(problems);
  const request = readPageRequest(input.page);
  if (!request.ok) return request;
  return refuseBadCursor(request.value, () => deps.data.revisions.page(input.filter, request.value));
}
