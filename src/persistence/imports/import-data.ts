import type { Pack } from "../../domain/model/food.js";
import type { Problem } from "../../domain/problem.js";
import type { RowWarning } from "../../domain/model/import-report.js";
import type { Page, PageRequest } from "../sql/page.js";

export type FeedKind = "CATALOGUE" | "DOCUMENTS" | "FOODS" | "PRICES" | "RECIPES";
export type RunKind = "LOAD" | "DRY_RUN" | "UNDO";
/** STOPPED: a threshold was passed, and nothing was loaded. */
export type RunState = "QUEUED" | "RUNNING" | "DONE" | "STOPPED" | "FAILED" | "CANCELLED";

/** Where files come from and how they are read. `settings` is JSON, checked by the services. */
export interface Feed {
  readonly id: string;
  /** Slug of its publisher; null: the operator's. */
  readonly publisher: string | null;
  readonly slug: string;
  readonly kind: FeedKind;
  readonly settings: unknown;
  /** Five fields, read in `zone`; null: only by hand. */
  readonly cron: string | null;
  readonly zone: string;
  readonly enabled: boolean;
  /** It was last saved before 0.2.0, when IMPORT alone published through feeds. */
  readonly importPublishes: boolean;
}

/** Rows of a run so far. read = created + changed + unchanged + quarantined + repeated once it is done. */
export interface RunCounts {
  readonly read: number;
  readonly created: number;
  readonly changed: number;
  readonly unchanged: number;
  readonly quarantined: number;
  /** Rows that a later row of the same file replaced. */
  readonly repeated: number;
}

export interface ImportRun extends RunCounts {
  readonly id: string;
  readonly feed: string;
  readonly file: string | null;
  readonly kind: RunKind;
  readonly state: RunState;
  readonly askedBy: string;
  readonly force: boolean;
  readonly undoes: string | null;
  readonly createdAt: Date;
  readonly startedAt: Date | null;
  readonly endedAt: Date | null;
  readonly heartbeatAt: Date | null;
  /**
   * Everything up to and with this line was read and put aside; a run that is taken up again goes on behind it. Where a file
   * is loaded in another order than it is written in, this counts steps in that order.
   */
  readonly lastLine: number;
  /** Why it stopped or failed; while it waits for its file, why that could not be had. */
  readonly problems: readonly Problem[];
  /** What is to be said of rows that were taken all the same; the first of them. */
  readonly warnings: readonly RowWarning[];
  /** How often its file could not be had for a passing reason. */
  readonly fetchesFailed: number;
  /** While it waits: not taken up before; null: at once. */
  readonly dueAt: Date | null;
}

interface NewRun {
  readonly feed: string;
  readonly file: string | null;
  readonly kind: RunKind;
  readonly askedBy: string;
  readonly force: boolean;
  readonly undoes: string | null;
}

export interface QuarantinedRow {
  readonly line: number;
  /** From 0: several things may begin on one line. */
  readonly part: number;
  readonly raw: string;
  readonly problems: readonly Problem[];
  readonly offer: string | null;
  readonly settledAt: Date | null;
}

/** A row of a price list that was read. */
export interface ListedPack {
  readonly line: number;
  /** Slug. */
  readonly food: string;
  readonly pack: Omit<Pack, "source">;
}

/** What a change did to one thing, as JSON; null before: it was made; null after: it was taken away. */
export interface ImportChange {
  readonly key: string;
  readonly before: unknown;
  readonly after: unknown;
}

export interface FeedData {
  /** Makes or replaces the feed of that owner and slug; returns its id. @throws UnknownPublisher */
  save(feed: Omit<Feed, "id" | "importPublishes">): Promise<string>;
  find(publisher: string | null, slug: string): Promise<Feed | null>;
  byId(id: string): Promise<Feed | null>;
  /** Of one owner, by slug; `publisher` undefined: all. */
  all(publisher?: string | null): Promise<readonly Feed[]>;
  remove(id: string): Promise<boolean>;
}

export interface ImportFile {
  readonly id: string;
  readonly feed: string;
  readonly name: string;
  readonly sha256: string;
  readonly size: number;
  readonly receivedAt: Date;
  /** What its address called this state of it (RFC 9110, 8.8); null: it does not say, or it came another way. */
  readonly etag: string | null;
  readonly lastModified: string | null;
  /** It holds one row that was put aside, as a person gave it, and nothing else. */
  readonly mended: boolean;
  /** Id of the token that handed it in, or the name of a program; null: nobody wrote it down, before 0.2.0. */
  readonly handedInBy: string | null;
}

/** Whom a file is from. */
export interface HandedIn {
  readonly by: string;
  /** Takes the place of who handed in the same bytes before. */
  readonly countsMore: boolean;
}

export type FileTags = Pick<ImportFile, "etag" | "lastModified">;

export interface ImportFileData {
  /** Stores a file piece by piece, in memory that does not grow with it. The same bytes as before give the file that is there already, which is then the newest. */
  put(
    feed: string,
    name: string,
    bytes: AsyncIterable<Uint8Array>,
    receivedAt: Date,
    from?: HandedIn,
    tags?: FileTags,
  ): Promise<ImportFile>;
  /** The same for a row that was mended: never what `newest` gives, nor one with a file that was handed in. */
  putMended(feed: string, name: string, bytes: AsyncIterable<Uint8Array>, receivedAt: Date): Promise<ImportFile>;
  byId(id: string): Promise<ImportFile | null>;
  /** The whole one that came last; of a feed that has had none null. */
  newest(feed: string): Promise<ImportFile | null>;
  /** The bytes, piece by piece. */
  read(id: string): AsyncIterable<Uint8Array>;
}

export interface ImportRunData {
  /** Queues a run; null: the feed has one that is queued or running, which is the one to wait for. */
  queue(run: NewRun, at: Date): Promise<string | null>;
  /** Whether a run of the feed waits or goes on. */
  isActive(feed: string): Promise<boolean>;
  byId(id: string): Promise<ImportRun | null>;
  /** The newest run of a feed that was asked for between two instants, both included. */
  newestBetween(feed: string, since: Date, until: Date): Promise<ImportRun | null>;
  /** Runs of these feeds that ended at or after an instant, the newest first; at most `most`. */
  endedSince(since: Date, feeds: readonly string[], most: number): Promise<readonly ImportRun[]>;
  /** How many rows each run put aside that nobody has settled, in the order asked for. */
  toMend(ids: readonly string[]): Promise<readonly number[]>;
  /** Newest first. */
  page(feed: string, request: PageRequest): Promise<Page<ImportRun>>;
  /**
   * Takes the oldest run that waits and is due, or one whose worker has not been heard of since `deadSince`; of one feed only one at
   * a time is taken, whatever the number of workers. null: nothing to do.
   */
  claim(worker: string, at: Date, deadSince: Date): Promise<ImportRun | null>;
  /** Gives a run the file that was fetched for it. false: the run is not this worker's any more. */
  attach(id: string, worker: string, file: string): Promise<boolean>;
  /** Lets a run whose file could not be had wait until `dueAt`, for any worker. false: the run is not this worker's any more. */
  putOff(id: string, worker: string, dueAt: Date, problems: readonly Problem[]): Promise<boolean>;
  /** false: the run is not this worker's any more, and it must stop. */
  beat(id: string, worker: string, at: Date): Promise<boolean>;
  /** Counts, and quarantined rows, of a chunk that ends with `lastLine`; inside the transaction of what it loaded. */
  advance(id: string, worker: string, chunk: RunChunk): Promise<boolean>;
  finish(id: string, worker: string, end: RunEnd): Promise<boolean>;
  /** Stops a run that waits or is running. false: it has ended already. */
  cancel(id: string, at: Date): Promise<boolean>;
  quarantined(id: string, request: PageRequest): Promise<Page<QuarantinedRow>>;
  quarantinedRow(id: string, line: number, part: number): Promise<QuarantinedRow | null>;
  settle(id: string, line: number, part: number, by: string, at: Date): Promise<boolean>;
  /** By key; `most`: no more than so many. */
  changes(id: string, most?: number): Promise<readonly ImportChange[]>;
  /** What a run noted of these things so far. */
  changesOf(id: string, keys: readonly string[]): Promise<readonly ImportChange[]>;
}

/** The most rows of one run that are kept to be mended; more are only counted. */
export const mostPutAside = 10_000;

/** Those of a chunk that there is still room for. @param soFar how many the run has put aside, with those of the chunk */
export const keptAside = <Row>(rows: readonly Row[], soFar: number): readonly Row[] =>
  rows.slice(0, Math.max(0, mostPutAside - (soFar - rows.length)));

export interface RunChunk extends RunCounts {
  readonly lastLine: number;
  readonly quarantine: readonly Omit<QuarantinedRow, "settledAt">[];
  readonly changes: readonly ImportChange[];
  readonly warnings?: readonly RowWarning[];
}

export interface RunEnd {
  readonly state: Exclude<RunState, "QUEUED" | "RUNNING">;
  readonly at: Date;
  readonly problems: readonly Problem[];
  /** The final counts, where they are known only now. */
  readonly counts: RunCounts | null;
}

export interface Compared {
  readonly created: number;
  readonly changed: number;
  readonly unchanged: number;
  readonly repeated: number;
  /** Packs of the feed before. */
  readonly known: number;
}

/** Price lists, a transaction of their own each time. */
/** A staged price far from those of its food's other packs; `ratio`: what it costs through what they cost for as much. */
export interface PriceOutlier {
  readonly line: number;
  readonly food: string;
  /** With its currency. */
  readonly price: string;
  readonly ratio: number;
  /** Some of the packs it is held against. */
  readonly packs: readonly string[];
}

export interface ListedPackData {
  /** Puts a chunk of rows aside together with its progress. false: the run is not this worker's any more. */
  stage(run: string, worker: string, rows: readonly ListedPack[], chunk: Omit<RunChunk, "changes">): Promise<boolean>;
  /** Of several rows of one pack only the last stays. What the rest would change, counted. */
  compare(run: string, feed: string): Promise<Compared>;
  /** Staged prices more than `factor` times, or less than one `factor`th of, what is usual for their food. */
  outliers(
    run: string,
    units: readonly (readonly [unit: string, dimension: string, factor: number])[],
    factor: number,
  ): Promise<readonly PriceOutlier[]>;
  /** Takes staged rows back out for a person to look at. false: the run is not this worker's any more. */
  setAside(run: string, worker: string, quarantine: RunChunk["quarantine"]): Promise<boolean>;
  /** Writes down how each pack that would change was and would be, and changes none. */
  note(run: string, feed: string): Promise<void>;
  /** Loads what was put aside and ends the run, all at once. false: the run is not this worker's any more. */
  merge(run: string, feed: string, worker: string, end: RunEnd): Promise<boolean>;
  /** Forgets what was put aside for runs that have ended. */
  sweep(): Promise<void>;
  /** Takes a run's changes back and ends the undoing run. Packs that a later run wrote since stay, and count as unchanged. */
  undo(run: string, feed: string, undone: string, worker: string, at: Date): Promise<RunCounts | null>;
}
