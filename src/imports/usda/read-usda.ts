import type { CatalogueEdition, CatalogueRow } from "../../domain/model/catalogue-row.js";
import type { NutrientCode } from "../../domain/model/food.js";
import { aisleOf } from "./food-group-aisles.js";
import { readTable, type TableProblem, type TableRow } from "./table-rows.js";

/** The edition that comes with the program. */
export const shippedEdition: CatalogueEdition = {
  code: "usda-sr26",
  title: "USDA National Nutrient Database for Standard Reference, Release 26 (USDA ARS, 2013)",
};

const nutrientColumns = {
  energyKcal: "kcal",
  proteinG: "protein_g",
  fatG: "fat_g",
  saturatedFatG: "sat_fat_g",
  carbohydrateG: "carbohydrate_g",
  sugarsG: "sugars_g",
  fibreG: "fibre_g",
  sodiumMg: "sodium_mg",
  calciumMg: "calcium_mg",
  ironMg: "iron_mg",
  potassiumMg: "potassium_mg",
  vitaminCMg: "vitamin_c_mg",
  cholesterolMg: "cholesterol_mg",
  waterG: "water_g",
} as const satisfies Record<NutrientCode, string>;
const nutrients = Object.entries(nutrientColumns) as readonly [NutrientCode, string][];

const foodColumns = [
  "ndb_no",
  "food_group",
  "description",
  "other_names",
  "refuse",
  "refuse_pct",
  ...Object.values(nutrientColumns),
];
const weightColumns = ["ndb_no", "seq", "amount", "measure", "grams"];

export interface CatalogueRead {
  /** By their number in the table. */
  readonly foods: ReadonlyMap<string, CatalogueRow>;
  readonly problems: readonly TableProblem[];
  /** Rows found, good and bad. */
  readonly count: { readonly foods: number; readonly weights: number };
}

/** The open food table, row by row. Allergens, diets and keeping are not in it, so they are unknown. */
export function readUsda(foodBytes: Uint8Array, weightBytes: Uint8Array): CatalogueRead {
  const foodTable = readTable(foodBytes, "foods", foodColumns);
  const weightTable = readTable(weightBytes, "weights", weightColumns);
  const problems = [...foodTable.problems, ...weightTable.problems];
  const report =
    (file: string, columns: ReadonlyMap<string, number>) => (row: TableRow, name: string, expected: string) => {
      const column = (columns.get(name) ?? 0) + 1;
      problems.push({
        file,
        line: row.line(),
        column,
        problem: { code: "BAD_SHAPE", path: [name], expected, got: row.field(name) },
      });
    };
  const badFood = report("foods", foodTable.columns);
  const badWeight = report("weights", weightTable.columns);

  const weights = new Map<string, Weight[]>();
  for (const row of weightTable.rows) {
    const amount = positive(row.field("amount"));
    const grams = positive(row.field("grams"));
    if (amount === null) badWeight(row, "amount", "a number above 0");
    else if (grams === null) badWeight(row, "grams", "a number above 0");
    else {
      const ndbNo = row.field("ndb_no");
      const weight = { measure: row.field("measure"), grams: grams / amount };
      const known = weights.get(ndbNo);
      if (known === undefined) weights.set(ndbNo, [weight]);
      else known.push(weight);
    }
  }

  const foods = new Map<string, CatalogueRow>();
  for (const row of foodTable.rows) {
    const ndbNo = row.field("ndb_no");
    if (!/^\d{5}$/.test(ndbNo)) badFood(row, "ndb_no", "five digits");
    else if (foods.has(ndbNo)) badFood(row, "ndb_no", "a number used once");
    else foods.set(ndbNo, rowOf(row, ndbNo, weights.get(ndbNo) ?? [], badFood));
  }
  const first = weightTable.rows.filter((row) => !foods.has(row.field("ndb_no")));
  for (const row of first) badWeight(row, "ndb_no", "the number of a food in the table");
  return { foods, problems, count: { foods: foodTable.rows.length, weights: weightTable.rows.length } };
}

type Weight = CatalogueRow["weights"][number];

type Report = (row: TableRow, name: string, expected: string) => void;

const rowOf = (row: TableRow, ndbNo: string, weights: readonly Weight[], bad: Report): CatalogueRow => ({
  ndbNo,
  description: row.field("description"),
  otherNames: row
    .field("other_names")
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== ""),
  aisle: aisleOf(row.field("food_group")),
  per100g: nutrientsOf(row, bad),
  refuse: refuseOf(row, bad),
  weights,
});

function nutrientsOf(row: TableRow, bad: Report): CatalogueRow["per100g"] {
  const measured = nutrients.flatMap(([code, column]): [NutrientCode, number][] => {
    const written = row.field(column);
    if (written === "") return [];
    const value = decimal(written);
    if (value !== null) return [[code, value]];
    bad(row, column, "a number, or nothing where it was not measured");
    return [];
  });
  return Object.fromEntries(measured);
}

function refuseOf(row: TableRow, bad: Report): CatalogueRow["refuse"] {
  const percent = row.field("refuse_pct");
  if (percent === "") return null;
  const refuse = decimal(percent);
  if (refuse !== null && refuse < 100) return { percent, what: row.field("refuse") };
  bad(row, "refuse_pct", "a percentage below 100");
  return null;
}

const decimal = (text: string): number | null => (/^\d*\.?\d+$/.test(text) ? Number(text) : null);

const positive = (text: string): number | null => {
  const value = decimal(text);
  return value !== null && value > 0 ? value : null;
};
