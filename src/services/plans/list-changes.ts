import { failed, type Result } from "../../domain/problem.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { Change, Deps, Page } from "../deps.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";

export interface WantedChanges {
  /** Slug; null: of all publishers. */
  readonly publisher: string | null;
  readonly page: WantedPage;
}

/**
 * A page of what was published, corrected and withdrawn, the oldest first. Whoever asks again with the last cursor sees every
 * change once, in the order of commits, however many write at the same time; cursors never grow old.
 */
export async function listChanges(deps: Deps, { publisher, page }: WantedChanges): Promise<Result<Page<Change>>> {
  const request = readPageRequest(page);
  if (!request.ok) return failed(request.problems);
  return refuseBadCursor(request.value, () => deps.data.changes.page(publisher, request.value));
}
