import type { Food } from "../domain/model/food.js";
import { foodColumns, foodRowReader } from "../imports/food-rows/read-food-row.js";
import { readTable } from "../imports/tables/read-table.js";
import { checksumOf } from "../persistence/canonical-json.js";
import { calledHere } from "./called-here.js";
import type { Data, Deps } from "./deps.js";
import { loadTable, type ComparedRows } from "./load-table.js";
import type { Loaded, RunningImport } from "./running-import.js";

/** Loads a table of foods. Packs of a food stay. */
export function loadFoods(deps: Deps, job: RunningImport): Promise<Loaded> {
  const { bytes, settings } = job;
  const options = {
    locale: settings.locale ?? "en",
    source: settings.source,
    aisle: "other",
    shoppedBy: "mass",
  } as const;
  const columns = { ...foodColumns, calledHere: calledHere(settings) };
  return loadTable(deps, job, {
    rows: () => readTable(bytes(), { columns, delimiter: settings.delimiter }, foodRowReader(options)),
    keyOf: ({ slug }) => slug,
    compare: compareFoods,
  });
}

async function compareFoods(data: Data, read: readonly Food[]): Promise<ComparedRows<Food>> {
  const before = await data.foods.bySlugs(read.map(({ slug }) => slug));
  const compared = read.map((food, at) => {
    const was = before[at] ?? null;
    return { was, food: { ...food, packs: was?.packs ?? [] } };
  });
  const moved = compared.filter(({ was, food }) => was === null || checksumOf(was) !== checksumOf(food));
  const known = before.filter((food) => food !== null).length;
  const created = read.length - known;
  return {
    ...{ created, changed: moved.length - created, known, refused: new Map() },
    changes: moved.map(({ was, food }) => ({ key: food.slug, before: was, after: food })),
    save: async () => {
      await data.foods.save(moved.map(({ food }) => food));
    },
  };
}
