import type { Problem } from "../../domain/problem.js";
import { unknownCode } from "../../imports/documents/checks/check-codes.js";
import { mergeFoodRow } from "../../imports/food-rows/merge-food-row.js";
import { foodColumns, foodRowReader, type FoodRow } from "../../imports/food-rows/read-food-row.js";
import { readTable } from "../../imports/tables/read-table.js";
import { checksumOf } from "../../persistence/sql/canonical-json.js";
import { feedColumns } from "../imports/feeds/feed-columns.js";
import type { Deps } from "../deps.js";
import type { RuleDeps } from "../rules/find-rules.js";
import { listsOfToday } from "../drafts/load-references.js";
import { loadTable, type ComparedRows } from "../imports/rows/load-table.js";
import type { Loaded, RunningImport } from "../imports/running-import.js";

/** Loads a table of foods. Each row is laid over the food that is there: what it does not say stays. */
export function loadFoods(deps: Deps, job: RunningImport): Promise<Loaded> {
  const { bytes, settings } = job;
  const options = {
    locale: settings.locale ?? "en",
    source: settings.source,
    aisle: "other",
    shoppedBy: "mass",
  } as const;
  const columns = { ...foodColumns, columnNames: feedColumns(settings) };
  return loadTable(deps, job, {
    rows: () => readTable(bytes(), { columns, delimiter: settings.delimiter }, foodRowReader(options)),
    keyOf: ({ food }) => food.slug,
    compare: (data, read) => compareFoods({ ...deps, data }, read, job.mended),
  });
}

/** `answeredFor`: a person has looked at the rows, may take an allergen away, and is not to misspell a code. */
async function compareFoods(
  deps: RuleDeps,
  read: readonly FoodRow[],
  answeredFor: boolean,
): Promise<ComparedRows<FoodRow>> {
  const { data } = deps;
  const lists = await listsOfToday(
    deps,
    read.flatMap(({ food }) => food.ndbNo ?? []),
  );
  const warnings = new Map<FoodRow, readonly Problem[]>();
  const before = await data.foods.bySlugs(read.map(({ food }) => food.slug));
  const refused = new Map<FoodRow, readonly Problem[]>();
  const compared = read.flatMap((row, at) => {
    const was = before[at] ?? null;
    const { food, problems: weakened } = mergeFoodRow(was, row, answeredFor);
    const unknown = row.codes.flatMap((code) => unknownCode(code, lists) ?? []);
    const problems = [...weakened, ...(answeredFor ? unknown : [])];
    if (unknown.length > 0 && problems.length === 0) warnings.set(row, unknown);
    if (problems.length > 0) refused.set(row, problems);
    return problems.length > 0 ? [] : [{ was, food }];
  });
  const moved = compared.filter(({ was, food }) => was === null || checksumOf(was) !== checksumOf(food));
  const known = before.filter((food) => food !== null).length;
  const created = read.length - known;
  return {
    ...{ created, changed: moved.length - created, known, refused, warnings },
    changes: moved.map(({ was, food }) => ({ key: food.slug, before: was, after: food })),
    save: async () => {
      await data.foods.save(moved.map(({ food }) => food));
    },
  };
}
