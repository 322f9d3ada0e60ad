import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { mostPutAside, type Feed, type ImportRun, type RunCounts } from "../../persistence/imports/import-data.js";
import type { Actor } from "../access/actor.js";
import type { FeedSettings } from "./feeds/feed-settings.js";

/** A run that this worker has, with all that loading it needs. */
export interface RunningImport {
  readonly run: ImportRun;
  readonly feed: Feed;
  readonly settings: FeedSettings;
  /** Names the worker, so that a run taken over by another is noticed. */
  readonly worker: string;
  /** ISO date of the file's arrival: prices without a day of their own were seen then. */
  readonly arrived: string;
  readonly fileName: string;
  /** Who answers for what the import schedules: the token that asked for it or handed its file in, else the import itself. */
  readonly maker: Actor;
  /** A person answers for what it says: it is one row that was put aside and settled, and nothing else. */
  readonly mended: boolean;
  /** The file from its beginning; may be asked for more than once. */
  readonly bytes: () => AsyncIterable<Uint8Array>;
}

/** How a loader ended: with final counts, or with the problems that stopped it before anything was loaded. */
export type Loaded = Result<RunCounts>;

/** The run belongs to another worker now, or was cancelled: nothing more may be written. */
export class RunLost extends Error {
  override readonly name = "RunLost";

  constructor(run: string) {
    super(`run ${run} is not this worker's any more`);
  }
}

export const noCounts: RunCounts = { read: 0, created: 0, changed: 0, unchanged: 0, quarantined: 0, repeated: 0 };

/** What a run that is done says of rows that it put aside and did not keep. */
export const moreAside = ({ quarantined }: RunCounts): readonly Problem[] =>
  quarantined > mostPutAside
    ? [{ code: "MORE_PUT_ASIDE", path: [], count: quarantined - mostPutAside, kept: mostPutAside }]
    : [];

/** The counts of a run as it stands. */
export const countsOf = ({ read, created, changed, unchanged, quarantined, repeated }: RunCounts): RunCounts => ({
  ...{ read, created, changed, unchanged, quarantined, repeated },
});

/** Holds the counts against the feed's limits, unless the run was told to go on all the same. */
export function withinLimits(
  { run, settings: { limits } }: Pick<RunningImport, "run" | "settings">,
  counts: RunCounts,
  known: number,
): Loaded {
  if (run.force) return ok(counts);
  const shares = [
    { what: "changed", share: known === 0 ? 0 : counts.changed / known, limit: limits.changed },
    { what: "quarantined", share: counts.read === 0 ? 0 : counts.quarantined / counts.read, limit: limits.quarantined },
  ] as const;
  const problems = shares
    .filter(({ share, limit }) => limit < 1 && share > limit)
    .map(({ what, share, limit }): Problem => ({ code: "LIMIT_PASSED", path: ["limits", what], what, share, limit }));
  return problems.length > 0 ? failed(problems) : ok(counts);
}
