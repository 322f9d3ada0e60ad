import { foodColumns, foodRowReader } from "../imports/food-rows/read-food-row.js";
import type { Food } from "../domain/model/food.js";
import { readTable, type TableRow } from "../imports/tables/read-table.js";
import { checksumOf } from "../persistence/canonical-json.js";
import type { RunChunk, RunCounts } from "../persistence/import-data.js";
import type { Data, Deps } from "./deps.js";
import { ok } from "../domain/problem.js";
import { countsOf, noCounts, RunLost, withinLimits, type Loaded, type RunningImport } from "./running-import.js";

/** Foods saved at a time, in one transaction with the run's progress. */
const chunkSize = 500;

/**
 * Loads a table of foods: read once to count what it would change and hold that against the feed's limits, then again to
 * save, going on behind the last chunk of an interrupted run. Of several rows of one food the last counts. Packs of a food stay.
 */
export async function loadFoods(deps: Deps, job: RunningImport): Promise<Loaded> {
  const { run, worker } = job;
  const last = await lastLines(job);
  let counts = noCounts;
  let known = 0;
  for await (const rows of chunks(job)) {
    const compared = await compare(deps.data, rows, last);
    counts = added(counts, compared.chunk);
    known += compared.known;
  }
  const checked = withinLimits(job, counts, known);
  const loads = checked.ok && run.kind === "LOAD";
  for await (const rows of chunks(job)) {
    const rest = rows.filter(({ line }) => line > run.lastLine);
    if (rest.length === 0) continue;
    await deps.data.transaction(async (data) => {
      const { chunk, foods } = await compare(data, rest, last);
      const done = checked.ok ? chunk : { ...chunk, created: 0, changed: 0, unchanged: 0, repeated: 0, changes: [] };
      if (!(await data.importRuns.advance(run.id, worker, done))) throw new RunLost(run.id);
      if (loads) await data.foods.save(foods);
    });
  }
  if (!checked.ok || run.lastLine === 0) return checked;
  // What was saved before the run was interrupted counts as unchanged when it is compared again.
  const ended = await deps.data.importRuns.byId(run.id);
  if (ended === null) throw new RunLost(run.id);
  return ok(countsOf(ended));
}

const rowsOf = ({ bytes, settings }: RunningImport): AsyncGenerator<readonly TableRow<Food>[]> => {
  const calledHere = new Map(Object.entries(settings.columns).map(([name, ours]) => [name.trim().toLowerCase(), ours]));
  const options = {
    locale: settings.locale ?? "en",
    source: settings.source,
    aisle: "other",
    shoppedBy: "mass",
  } as const;
  return readTable(
    bytes(),
    { columns: { ...foodColumns, calledHere }, delimiter: settings.delimiter },
    foodRowReader(options),
  );
};

async function* chunks(job: RunningImport): AsyncGenerator<readonly TableRow<Food>[]> {
  let held: TableRow<Food>[] = [];
  for await (const rows of rowsOf(job)) {
    for (const row of rows) {
      held.push(row);
      if (held.length < chunkSize) continue;
      yield held;
      held = [];
    }
  }
  if (held.length > 0) yield held;
}

/** The last line of each food. */
async function lastLines(job: RunningImport): Promise<ReadonlyMap<string, number>> {
  const last = new Map<string, number>();
  for await (const rows of rowsOf(job)) for (const row of rows) if (row.ok) last.set(row.value.slug, row.line);
  return last;
}

async function compare(
  data: Data,
  rows: readonly TableRow<Food>[],
  last: ReadonlyMap<string, number>,
): Promise<{ readonly chunk: RunChunk; readonly foods: readonly Food[]; readonly known: number }> {
  const read = rows.flatMap((row) => (row.ok && last.get(row.value.slug) === row.line ? [row.value] : []));
  const before = await data.foods.bySlugs(read.map(({ slug }) => slug));
  const foods = read.map((food, at): Food => ({ ...food, packs: before[at]?.packs ?? [] }));
  const moved = foods.filter((food, at) => before[at] === null || checksumOf(before[at]) !== checksumOf(food));
  const known = before.filter((food) => food !== null).length;
  const created = read.length - known;
  const quarantine = rows.flatMap((row) =>
    row.ok ? [] : [{ line: row.line, part: 0, raw: row.raw, problems: row.problems, offer: null }],
  );
  const byRow = new Map(read.map(({ slug }, at) => [slug, before[at] ?? null]));
  const chunk: RunChunk = {
    read: rows.length,
    created,
    changed: moved.length - created,
    unchanged: read.length - moved.length,
    quarantined: quarantine.length,
    repeated: rows.length - quarantine.length - read.length,
    lastLine: rows.at(-1)?.line ?? 0,
    quarantine,
    changes: moved.map((food) => ({ key: food.slug, before: byRow.get(food.slug) ?? null, after: food })),
  };
  return { chunk, foods: moved, known };
}

const added = (one: RunCounts, other: RunCounts): RunCounts => ({
  read: one.read + other.read,
  created: one.created + other.created,
  changed: one.changed + other.changed,
  unchanged: one.unchanged + other.unchanged,
  quarantined: one.quarantined + other.quarantined,
  repeated: one.repeated + other.repeated,
});
