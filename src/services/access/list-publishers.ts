import type { Result } from "../../domain/problem.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import type { Deps, Page, Publisher } from "../deps.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";

/** A page of the publishers that have a plan in force, by slug. */
export async function listPublishers(deps: Deps, page: WantedPage): Promise<Result<Page<Publisher>>> {
  const request = readPageRequest(page);
  if (!request.ok) return request;
  return refuseBadCursor(request.value, () => deps.data.publishers.page(request.value));
}
