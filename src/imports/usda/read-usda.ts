import type { CatalogueEdition, CatalogueRow, CatalogueWeight } from "../../domain/model/catalogue-row.js";
import type { Problem } from "../../domain/problem.js";
import { catalogueFoodColumns, catalogueFoodReader } from "./read-catalogue-food.js";
import { catalogueWeightColumns, catalogueWeightReader } from "./read-catalogue-weight.js";
import { readTable, type Table, type TableProblem, type TableRow } from "./table-rows.js";

/** The edition that comes with the program. */
export const shippedEdition: CatalogueEdition = {
  code: "usda-sr26",
  title: "USDA National Nutrient Database for Standard Reference, Release 26 (USDA ARS, 2013)",
};

export interface CatalogueRead {
  /** By their number in the table. */
  readonly foods: ReadonlyMap<string, CatalogueRow>;
  readonly problems: readonly TableProblem[];
  /** Rows found, good and bad. */
  readonly count: { readonly foods: number; readonly weights: number };
}

/** The open food table, row by row. Allergens, diets and keeping are not in it, so they are unknown. */
export function readUsda(foodBytes: Uint8Array, weightBytes: Uint8Array): CatalogueRead {
  const foodTable = readTable(foodBytes, "foods", catalogueFoodColumns.needed);
  const weightTable = readTable(weightBytes, "weights", catalogueWeightColumns.needed);
  const problems = [...foodTable.problems, ...weightTable.problems];
  const report = (file: string, { columns }: Table, row: TableRow, found: readonly Problem[]): void => {
    for (const problem of found)
      problems.push({ file, line: row.line, column: (columns.get(String(problem.path[0])) ?? 0) + 1, problem });
  };
  const bad = (row: TableRow, expected: string): readonly Problem[] => [
    { code: "BAD_SHAPE", path: ["ndb_no"], expected, got: row.field("ndb_no") },
  ];

  const foods = new Map<string, CatalogueRow & { readonly weights: CatalogueWeight[] }>();
  const readFood = catalogueFoodReader(null);
  for (const row of foodTable.rows) {
    const read = readFood({ get: row.field });
    if (!read.ok) report("foods", foodTable, row, read.problems);
    else if (foods.has(read.value.ndbNo)) report("foods", foodTable, row, bad(row, "a number used once"));
    else foods.set(read.value.ndbNo, { ...read.value, weights: [] });
  }
  const readWeight = catalogueWeightReader(null);
  for (const row of weightTable.rows) {
    const read = readWeight({ get: row.field });
    if (!read.ok) {
      report("weights", weightTable, row, read.problems);
      continue;
    }
    const { ndbNo, ...weight } = read.value;
    const food = foods.get(ndbNo);
    if (food === undefined) report("weights", weightTable, row, bad(row, "the number of a food in the table"));
    else food.weights.push(weight);
  }
  return { foods, problems, count: { foods: foodTable.rows.length, weights: weightTable.rows.length } };
}
