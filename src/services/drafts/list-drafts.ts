import type { Result } from "../../domain/problem.js";
import { requireScope, type Actor } from "../access/actor.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { Deps, DraftFilter, DraftSummary, Page } from "../deps.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";

/** A page of one publisher's drafts: components, then plans, each by slug. @throws NotAllowed */
export async function listDrafts(
  deps: Deps,
  actor: Actor,
  { filter, page }: { readonly filter: DraftFilter; readonly page: WantedPage },
): Promise<Result<Page<DraftSummary>>> {
  requireScope(actor, "READ_DRAFTS", filter.publisher);
  const request = readPageRequest(page);
  if (!request.ok) return request;
  return refuseBadCursor(request.value, () => deps.data.drafts.page(filter, request.value));
}
