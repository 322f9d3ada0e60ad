import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { FeedKind, ImportFile, ImportRun } from "../../persistence/imports/import-data.js";
import type { Deps } from "../deps.js";
import { feedSettingsSchema } from "./feeds/feed-settings.js";
import { FileBeyondLimits } from "../../imports/tables/read-table.js";
import { tableText } from "../../imports/tables/table-text.js";
import { collectFile } from "./files/collect-file.js";
import { documentRows } from "../drafts/document-rows.js";
import { loadCatalogueRows } from "../foods/load-catalogue-rows.js";
import { loadDrafts } from "../drafts/load-drafts.js";
import { mendedRecipeRows } from "./rows/mended-recipe-rows.js";
import { recipeRows } from "./rows/recipe-rows.js";
import { loadFoods } from "../foods/load-foods.js";
import { loadOwnPrices } from "./rows/load-own-prices.js";
import { loadPrices } from "./rows/load-prices.js";
import { importMaker, importPublishes } from "../access/publish-right.js";
import { moreAside, RunLost, type Loaded, type RunningImport } from "./running-import.js";
import { asJob, yieldToOthers } from "../time-slices.js";
import { undoRun } from "./undo/undo-run.js";
import { utcDay } from "../../domain/utc-day.js";

/** How often a running import says that it is alive, and after how long without a word another worker takes it up. */
const heartbeat = { everyMs: 5_000, deadAfterMs: 30_000 } as const satisfies Pulse;

interface Pulse {
  readonly everyMs: number;
  readonly deadAfterMs: number;
  /** Leaves what goes on to another worker. */
  readonly stop?: AbortSignal;
}

type Loader = (deps: Deps, job: RunningImport) => Promise<Loaded>;

const loaders: Readonly<Record<FeedKind, Loader>> = {
  CATALOGUE: loadCatalogueRows,
  PRICES: (deps, job) =>
    job.feed.publisher === null ? loadPrices(deps, job) : loadOwnPrices(deps, job, job.feed.publisher),
  FOODS: loadFoods,
  DOCUMENTS: async (deps, job) => loadDrafts(deps, job, ownerOf(job), await documentRows(deps, job, ownerOf(job))),
  RECIPES: async (deps, job) => {
    const owner = ownerOf(job);
    return loadDrafts(
      deps,
      job,
      owner,
      await ((await isDocument(job)) ? mendedRecipeRows(deps, job, owner) : recipeRows(deps, job, owner)),
    );
  },
};

/** A recipe that was put aside is mended as the document it was to become. JSON and pages begin with a mark. */
async function isDocument({ bytes }: RunningImport): Promise<boolean> {
  for await (const text of tableText(bytes())) {
    const start = text.trimStart();
    if (start !== "") return !/^[{[<]/.test(start);
  }
  return false;
}

function ownerOf({ feed }: RunningImport): string {
  if (feed.publisher === null) throw new Error(`the feed ${feed.slug} of drafts has no publisher`);
  return feed.publisher;
}

/**
 * Works on imports until none waits, one after another; of one feed only one at a time runs, however many workers there are. Answers
 * how many runs ended here.
 */
export async function runImports(deps: Deps, worker: string, given: Partial<Pulse> = {}): Promise<number> {
  const pulse = { ...heartbeat, ...given };
  for (let ended = 0; ;) {
    // Here, and not where a run ends: a worker that is lost between the two leaves rows that belong to nothing.
    if (pulse.stop?.aborted === true) return ended;
    await deps.data.listedPacks.sweep();
    const now = deps.clock();
    const run = await deps.data.importRuns.claim(worker, now, new Date(now.getTime() - pulse.deadAfterMs));
    if (run === null) return ended;
    if (await runOne(deps, run, worker, pulse)) ended += 1;
  }
}

/** false: it has not ended, or not here. */
async function runOne(deps: Deps, run: ImportRun, worker: string, { everyMs, stop }: Pulse): Promise<boolean> {
  const { data, clock, log } = deps;
  const beating = setInterval(() => {
    data.importRuns.beat(run.id, worker, clock()).catch((error: unknown) => {
      log.warn({ run: run.id, err: error }, "the heartbeat of an import could not be stored");
    });
  }, everyMs);
  try {
    // Where readers are served by the same process, rows are read between their requests.
    const loaded = await load(asJob(deps), run, worker, stop);
    if (loaded === "LATER") return false;
    const state = loaded.ok ? "DONE" : isStop(loaded.problems) ? "STOPPED" : "FAILED";
    const problems = loaded.ok ? moreAside(loaded.value) : loaded.problems;
    // A merge ends its run itself, in its own transaction; then this finds nothing to end.
    await data.importRuns.finish(run.id, worker, {
      state,
      at: clock(),
      problems,
      counts: loaded.ok ? loaded.value : null,
    });
    log.info({ run: run.id, feed: run.feed, kind: run.kind, state }, "import ended");
    return true;
  } catch (error) {
    if (error instanceof RunLost) {
      log.warn({ run: run.id }, "an import was cancelled or taken over");
      return false;
    }
    const isTooLarge = error instanceof FileBeyondLimits;
    if (isTooLarge) log.info({ run: run.id, why: error.message }, "a file is not imported");
    else log.error({ run: run.id, err: error }, "an import failed");
    const problem: Problem = isTooLarge ? error.problem : { code: "IMPORT_FAULT", path: [], run: run.id };
    await data.importRuns.finish(run.id, worker, { state: "FAILED", at: clock(), problems: [problem], counts: null });
    return true;
  } finally {
    clearInterval(beating);
  }
}

const isStop = (problems: readonly Problem[]): boolean => problems.every(({ code }) => code === "LIMIT_PASSED");

async function load(
  deps: Deps,
  run: ImportRun,
  worker: string,
  stop: AbortSignal | undefined,
): Promise<Loaded | "LATER"> {
  const { data } = deps;
  const feed = await data.feeds.byId(run.feed);
  if (feed === null) throw new Error(`feed ${run.feed} is gone`);
  if (run.kind === "UNDO") return undoRun(deps, run, feed, worker);
  const said = feedSettingsSchema.parse(feed.settings);
  const file = run.file === null ? await collectFile(deps, run, feed, said, worker) : await keptFile(deps, run.file);
  if (file === "LATER" || !file.ok) return file;
  const { id, name, receivedAt, mended } = file.value;
  const publish = said.publish && (await importPublishes(data, run.askedBy, file.value, feed, deps.clock()));
  if (said.publish && !publish) {
    deps.log.warn(
      { run: run.id, feed: feed.slug },
      "an import saves drafts only: its file is of one who may not publish",
    );
  }
  const settings = { ...said, publish };
  const arrived = utcDay(receivedAt);
  return loaders[feed.kind](deps, {
    ...{ run, feed, settings, worker, arrived, fileName: name, mended },
    maker: await importMaker(data, run.askedBy, file.value, feed.slug),
    bytes: () => untilStopped(deps, data.importFiles.read(id), run, stop),
  });
}

async function keptFile({ data }: Deps, id: string): Promise<Result<ImportFile>> {
  const file = await data.importFiles.byId(id);
  if (file !== null) return ok(file);
  return failed([{ code: "BAD_SHAPE", path: ["file"], expected: "a file that is still kept", got: "none" }]);
}

/** Bytes that are made into rows in one turn: some hundred rows. */
const bytesInTurn = 16 * 1024;

/** A worker that is told to stop reads no further; the run is taken up by another. Requests go on between two pieces. */
async function* untilStopped(
  deps: Deps,
  pieces: AsyncIterable<Uint8Array>,
  run: ImportRun,
  stop: AbortSignal | undefined,
): AsyncGenerator<Uint8Array> {
  for await (const piece of pieces) {
    for (let from = 0; from < piece.length; from += bytesInTurn) {
      if (stop?.aborted === true) throw new RunLost(run.id);
      await yieldToOthers(deps);
      yield piece.subarray(from, from + bytesInTurn);
    }
  }
}
