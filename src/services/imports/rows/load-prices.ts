import { ok } from "../../../domain/problem.js";
import type { PriceRow } from "../../../imports/prices/read-price-row.js";
import type { TableRow } from "../../../imports/tables/read-table.js";
import type { ListedPack, QuarantinedRow } from "../../../persistence/imports/import-data.js";
import type { Deps } from "../../deps.js";
import { priceRows } from "./price-rows.js";
import { quarantineOutliers } from "./quarantine-outliers.js";
import { moreAside, RunLost, withinLimits, type Loaded, type RunningImport } from "../running-import.js";

/** Rows put aside at a time, each time in one transaction with the run's progress. */
const chunkSize = 10_000;

interface Chunk {
  readonly rows: ListedPack[];
  readonly quarantine: Omit<QuarantinedRow, "settledAt">[];
  lastLine: number;
  read: number;
}

const emptyChunk = (): Chunk => ({ rows: [], quarantine: [], lastLine: 0, read: 0 });

/**
 * Loads a price list: rows are read and put aside chunk by chunk, going on behind the last chunk of an interrupted run; then
 * they are compared with the list as it is, held against the feed's limits, and merged all at once. A dry run ends before that.
 */
export async function loadPrices(deps: Deps, job: RunningImport): Promise<Loaded> {
  const { data } = deps;
  const { run, feed, worker } = job;
  // What is being written while the next chunk is read.
  let writing: Promise<void> = Promise.resolve();
  const write = async ({ rows, quarantine, lastLine, read }: Chunk): Promise<void> => {
    const counts = { read, created: 0, changed: 0, unchanged: 0, quarantined: quarantine.length, repeated: 0 };
    if (!(await data.listedPacks.stage(run.id, worker, rows, { ...counts, lastLine, quarantine })))
      throw new RunLost(run.id);
  };
  let chunk = emptyChunk();
  const flush = async (): Promise<void> => {
    await writing;
    const full = chunk;
    chunk = emptyChunk();
    writing = write(full);
    // Whoever awaits it next sees the failure; until then it must not count as unheard of.
    writing.catch(() => undefined);
  };
  for await (const rows of await pricesOf(deps, job)) {
    for (const row of rows) {
      if (row.line <= run.lastLine) continue;
      take(chunk, row);
      if (chunk.read >= chunkSize) await flush();
    }
  }
  if (chunk.read > 0) await flush();
  await writing;

  // First of several rows of one pack only the last stays, then what nobody should believe is put aside.
  await data.listedPacks.compare(run.id, feed.id);
  await quarantineOutliers(deps, job);
  const { known, ...compared } = await data.listedPacks.compare(run.id, feed.id);
  const staged = await data.importRuns.byId(run.id);
  const counts = { read: staged?.read ?? 0, quarantined: staged?.quarantined ?? 0, ...compared };
  const checked = withinLimits(job, counts, known);
  if (checked.ok && run.kind === "LOAD") {
    const end = { state: "DONE", at: deps.clock(), problems: moreAside(counts), counts } as const;
    if (!(await data.listedPacks.merge(run.id, feed.id, worker, end))) throw new RunLost(run.id);
  }
  if (checked.ok && run.kind === "DRY_RUN") await data.listedPacks.note(run.id, feed.id);
  return checked.ok ? ok(counts) : checked;
}

async function pricesOf(deps: Deps, job: RunningImport): Promise<AsyncGenerator<readonly TableRow<PriceRow>[]>> {
  return (await priceRows(deps, job, null))();
}

function take(into: Chunk, row: TableRow<PriceRow>): void {
  const chunk = into;
  chunk.read += 1;
  chunk.lastLine = row.line;
  if (row.ok) chunk.rows.push({ line: row.line, food: row.value.food, pack: row.value.pack });
  else chunk.quarantine.push({ line: row.line, part: 0, raw: row.raw, problems: row.problems, offer: null });
}
