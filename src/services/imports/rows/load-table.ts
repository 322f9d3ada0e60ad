import { ok, type Problem } from "../../../domain/problem.js";
import type { TableRow } from "../../../imports/tables/read-table.js";
import type { ImportChange, RunCounts } from "../../../persistence/imports/import-data.js";
import type { Data, Deps } from "../../deps.js";
import { countsOf, noCounts, RunLost, withinLimits, type Loaded, type RunningImport } from "../running-import.js";

/** Rows read at a time, saved in one transaction with the run's progress. */
const chunkSize = 500;

/** What a table is of, and what becomes of its rows. */
interface TableLoader<T> {
  /** The file from its beginning; asked for more than once. */
  readonly rows: () => AsyncIterable<readonly TableRow<T>[]>;
  /** What a row stands for: of several rows for one thing the last counts. */
  readonly keyOf: (value: T) => string;
  /** Before anything is compared that will be saved in the same transaction. */
  readonly begin?: (data: Data) => Promise<void>;
  readonly compare: (data: Data, values: readonly T[]) => Promise<ComparedRows<T>>;
}

export interface ComparedRows<T> {
  readonly created: number;
  readonly changed: number;
  /** How many of them there were before. */
  readonly known: number;
  /** Rows that read well and cannot be taken all the same. */
  readonly refused: ReadonlyMap<T, readonly Problem[]>;
  /** Rows that are taken all the same, and what is to be said of them. */
  readonly warnings?: ReadonlyMap<T, readonly Problem[]>;
  readonly changes: readonly ImportChange[];
  /** Gives the changes as they were saved, where only that tells. */
  readonly save: () => Promise<readonly ImportChange[] | void>;
}

/**
 * Loads a table: read once to count what it would change and hold that against the feed's limits, then again to save, going
 * on behind the last chunk of an interrupted run.
 */
export async function loadTable<T>(deps: Deps, job: RunningImport, table: TableLoader<T>): Promise<Loaded> {
  const { run, worker } = job;
  const last = await lastLines(table);
  let counts = noCounts;
  let known = 0;
  for await (const rows of chunks(table)) {
    const compared = await compareChunk(deps.data, table, rows, last);
    counts = added(counts, compared.chunk);
    known += compared.known;
  }
  const checked = withinLimits(job, counts, known);
  const loads = checked.ok && run.kind === "LOAD";
  for await (const rows of chunks(table)) {
    const rest = rows.filter(({ line }) => line > run.lastLine);
    if (rest.length === 0) continue;
    await deps.data.transaction(async (data) => {
      if (loads) await table.begin?.(data);
      const { chunk, save } = await compareChunk(data, table, rest, last);
      const saved = loads ? await save() : undefined;
      const done = checked.ok
        ? { ...chunk, changes: saved ?? chunk.changes }
        : { ...chunk, created: 0, changed: 0, unchanged: 0, repeated: 0, changes: [] };
      if (!(await data.importRuns.advance(run.id, worker, done))) throw new RunLost(run.id);
    });
  }
  if (!checked.ok || run.lastLine === 0) return checked;
  // What was saved before the run was interrupted counts as unchanged when it is compared again.
  const ended = await deps.data.importRuns.byId(run.id);
  if (ended === null) throw new RunLost(run.id);
  return ok(countsOf(ended));
}

async function* chunks<T>({ rows }: TableLoader<T>): AsyncGenerator<readonly TableRow<T>[]> {
  let held: TableRow<T>[] = [];
  for await (const some of rows()) {
    for (const row of some) {
      held.push(row);
      if (held.length < chunkSize) continue;
      yield held;
      held = [];
    }
  }
  if (held.length > 0) yield held;
}

/** The last line of each thing. */
async function lastLines<T>({ rows, keyOf }: TableLoader<T>): Promise<ReadonlyMap<string, number>> {
  const last = new Map<string, number>();
  for await (const some of rows()) for (const row of some) if (row.ok) last.set(keyOf(row.value), row.line);
  return last;
}

async function compareChunk<T>(
  data: Data,
  { keyOf, compare }: TableLoader<T>,
  rows: readonly TableRow<T>[],
  last: ReadonlyMap<string, number>,
) {
  const read = rows.flatMap((row) => (row.ok && last.get(keyOf(row.value)) === row.line ? [row.value] : []));
  const { created, changed, known, refused, warnings, changes, save } = await compare(data, read);
  const quarantine = rows.flatMap((row) => {
    const problems = row.ok ? refused.get(row.value) : row.problems;
    return problems === undefined ? [] : [{ line: row.line, part: 0, raw: row.raw, problems, offer: null }];
  });
  const chunk = {
    read: rows.length,
    ...{ created, changed, unchanged: read.length - refused.size - created - changed },
    quarantined: quarantine.length,
    repeated: rows.length - quarantine.length - (read.length - refused.size),
    lastLine: rows.at(-1)?.line ?? 0,
    ...{ quarantine, changes },
    warnings: rows.flatMap((row) =>
      row.ok ? (warnings?.get(row.value) ?? []).map((problem) => ({ line: row.line, part: 0, problem })) : [],
    ),
  };
  return { chunk, known, save };
}

const added = (one: RunCounts, other: RunCounts): RunCounts => ({
  read: one.read + other.read,
  created: one.created + other.created,
  changed: one.changed + other.changed,
  unchanged: one.unchanged + other.unchanged,
  quarantined: one.quarantined + other.quarantined,
  repeated: one.repeated + other.repeated,
});
