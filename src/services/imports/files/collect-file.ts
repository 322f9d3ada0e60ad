import { failed, ok, type Problem, type Result } from "../../../domain/problem.js";
import type { Deps, Feed, ImportFile, ImportRun } from "../../deps.js";
import type { FeedSettings } from "../feeds/feed-settings.js";
import { FileTooLarge, upTo } from "../../byte-stream.js";
import { largestUpload } from "./receive-file.js";
import { retryAfterOf } from "../../access/retry-after.js";
import { RunLost } from "../running-import.js";

/** Why it may go better another time; `retryAfter`: when, in the place's own words (RFC 9110, 10.2.3). */
export interface Passing {
  readonly retryAfter: string | null;
}

/** A file cannot be had now. The message says why, in words for whoever keeps the feed. */
export class FileNotHad extends Error {
  override readonly name = "FileNotHad";

  /** `passing` null: trying again would be no use. `cause` is for the log alone. */
  constructor(
    message: string,
    readonly passing: Passing | null = null,
    cause?: unknown,
  ) {
    super(message, cause === undefined ? {} : { cause });
  }
}

/** Minutes to wait after the first, second … try that failed for a passing reason. */
export const fetchWaits = [1, 5, 15, 60] as const;

/** The most that a place may put a try off, in milliseconds: the next night's file is not to be missed. */
const longestWait = 6 * 60 * 60 * 1000;

/** Whoever set the feed's place answers for what is there, also where somebody handed in the same. */
const ofPlace = { by: "place", countsMore: true } as const;

/** LATER: it could not be had for a passing reason, and the run waits to be taken up again. */
type Collected = Result<ImportFile> | "LATER";

/** The file of a run that has none yet: from the feed's place, stored and noted with the run. */
export async function collectFile(
  deps: Deps,
  run: ImportRun,
  feed: Feed,
  { place }: FeedSettings,
  worker: string,
): Promise<Collected> {
  const { data, clock, sources } = deps;
  const notHad = (why: string): Result<never> => failed([notHadProblem(run, why)]);
  if (place.kind === "UPLOAD") return notHad("this feed only takes files that are handed in, and there is none");
  if (sources === undefined) return notHad("this process reads no folders and addresses");
  try {
    const known = await data.importFiles.newest(feed.id);
    const found =
      place.kind === "FOLDER"
        ? await sources.fromFolder(feed.publisher, place.path)
        : await sources.fromAddress(place.url, place.hosts, known);
    // The same again is imported again: the rules and the foods may have changed since.
    const file =
      found === null
        ? known
        : await data.importFiles.put(
            feed.id,
            found.name,
            upTo(largestUpload, found.bytes),
            clock(),
            ofPlace,
            found.tags,
          );
    if (file === null) return notHad("the address says that nothing has changed, but there is no file from before");
    if (!(await data.importRuns.attach(run.id, worker, file.id))) throw new RunLost(run.id);
    return ok(file);
  } catch (error) {
    if (error instanceof FileNotHad) return (await putOff(deps, run, error, worker)) ? "LATER" : notHad(error.message);
    if (!(error instanceof FileTooLarge)) throw error;
    const { limit } = error;
    const problem: Problem = { code: "TOO_LARGE", path: ["settings", "place"], what: "bytes", size: limit + 1, limit };
    return failed([problem]);
  }
}

const notHadProblem = ({ fetchesFailed }: ImportRun, why: string): Problem => ({
  ...{ code: "FILE_NOT_HAD", path: ["settings", "place"] },
  ...{ why, tries: fetchesFailed + 1 },
});

/** The run waits in the database, so that no worker sleeps for it. false: it was tried often enough, or again is no use. */
async function putOff(
  { data, clock, log }: Deps,
  run: ImportRun,
  { message, passing, cause }: FileNotHad,
  worker: string,
): Promise<boolean> {
  if (cause !== undefined)
    log.warn({ run: run.id, feed: run.feed, err: cause }, "the address of a feed cannot be reached");
  const minutes = fetchWaits[run.fetchesFailed];
  if (passing === null || minutes === undefined) return false;
  const now = clock();
  const asked = Math.min(longestWait, retryAfterOf(passing.retryAfter, now));
  const dueAt = new Date(now.getTime() + Math.max(minutes * 60_000, asked));
  if (!(await data.importRuns.putOff(run.id, worker, dueAt, [notHadProblem(run, message)]))) throw new RunLost(run.id);
  log.warn(
    { run: run.id, feed: run.feed, why: message, dueAt },
    "the file of an import could not be fetched and is tried again later",
  );
  return true;
}
