import type { Result } from "../../domain/problem.js";
import { mayUse, requireScope, type Actor } from "../access/actor.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { Deps, Feed, ImportRun, Page, QuarantinedRow } from "../deps.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";

/** An import with the feed it is of. */
export interface FoundImport {
  readonly run: ImportRun;
  readonly feed: Feed;
}

/** null: there is none, or it is somebody else's, which nobody can tell apart. @throws NotAllowed where the actor may import nothing */
export async function findImport({ data }: Deps, actor: Actor, id: string): Promise<FoundImport | null> {
  requireScope(actor, "IMPORT", actor.kind === "TOKEN" ? actor.publisher : null);
  const run = await data.importRuns.byId(id);
  const feed = run === null ? null : await data.feeds.byId(run.feed);
  return run === null || feed === null || !mayUse(actor, "IMPORT", feed.publisher) ? null : { run, feed };
}

/** A page of a feed's imports, newest first. The feed was found for its actor before. */
export async function listImports({ data }: Deps, feed: Feed, wanted: WantedPage): Promise<Result<Page<ImportRun>>> {
  const request = readPageRequest(wanted);
  if (!request.ok) return request;
  return refuseBadCursor(request.value, () => data.importRuns.page(feed.id, request.value));
}

/** A page of what an import put aside, in the order of the file. The import was found for its actor before. */
export async function listQuarantined(
  { data }: Deps,
  run: ImportRun,
  wanted: WantedPage,
): Promise<Result<Page<QuarantinedRow>>> {
  const request = readPageRequest(wanted);
  if (!request.ok) return request;
  return refuseBadCursor(request.value, () => data.importRuns.quarantined(run.id, request.value));
}

/** null: nothing of that line was put aside. The import was found for its actor before. */
export const findQuarantined = (
  { data }: Deps,
  run: string,
  line: number,
  part: number,
): Promise<QuarantinedRow | null> => data.importRuns.quarantinedRow(run, line, part);
