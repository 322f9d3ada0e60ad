// @ts-nocheck
import type {
  EdiblePortion,
  Food,
  FoodDensity,
  FoodNutrients,
  NutrientCode,
  OwnMeasure,
} from "../../domain/model/food.js";
import type { Source } from "../../domain/model/source.js";
import { aisleOf } from "./food-group-aisles.js";
import { readHouseholdMeasure } from "./household-measure.js";
import { readTable, type TableProblem, type TableRow } from "./table-rows.js";

const release = "USDA National Nutrient Database for Standard Reference, Release 26 (USDA ARS, 2013)";
const sourceOf = (section: string): Source => ({ kind: "PUBLISHED", title: release, section });

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
  /** Foods by their number in the table. Allergens, diets and keeping are not in it, so they are unknown. */
  readonly foods: ReadonlyMap<string, Food>;
  readonly problems: readonly TableProblem[];
  /** Rows found, good and bad. */
  readonly count: { readonly foods: number; readonly weights: number };
}

/**
 * The open food table as foods: nutrients and edible portion per 100 g, densities from cups and spoons, own measures from
 * the other weights. Names are the table's descriptions; slugs are made from them, the same for the same file, and unique.
 */
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
      const weight = { measure: row.field("measure"), gramsOfOne: grams / amount };
      const known = weights.get(ndbNo);
      if (known === undefined) weights.set(ndbNo, [weight]);
      else known.push(weight);
    }
  }

  const readMeasure = remembered(readHouseholdMeasure);
  const foods = new Map<string, Food>();
  const slugs = slugsOf(foodTable.rows);
  for (const row of foodTable.rows) {
    const ndbNo = row.field("ndb_no");
    if (!/^\d{5}$/.test(ndbNo)) badFood(row, "ndb_no", "five digits");
    else if (foods.has(ndbNo)) badFood(row, "ndb_no", "a number used once");
    else foods.set(ndbNo, foodOf(row, ndbNo, slugs.get(row) ?? ndbNo, weights.get(ndbNo) ?? [], readMeasure, badFood));
  }
  const first = weightTable.rows.filter((row) => !foods.has(row.field("ndb_no")));
  for (const row of first) badWeight(row, "ndb_no", "the number of a food in the table");
  return { foods, problems, count: { foods: foodTable.rows.length, weights: weightTable.rows.length } };
}

/** The same few measures stand in thousands of rows. */
function remembered<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const value = read(text);
    known.set(text, value);
    return value;
  };
}

interface Weight {
  readonly measure: string;
  readonly gramsOfOne: number;
}

type Report = (row: TableRow, name: string, expected: string) => void;

function foodOf(
  row: TableRow,
  ndbNo: string,
  slug: string,
  weights: readonly Weight[],
  readMeasure: typeof readHouseholdMeasure,
  bad: Report,
): Food {
  const description = row.field("description");
  const also = row
    .field("other_names")
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
  return {
    slug,
    names: [{ language: "en", region: null, one: description, many: description, also }],
    aisle: aisleOf(row.field("food_group")),
    shoppedBy: "MASS",
    ndbNo,
    ...measuresOf(ndbNo, weights, readMeasure),
    parts: [],
    edible: edibleOf(row, ndbNo, bad),
    yields: [],
    allergens: [],
    diets: [],
    nutrients: nutrientsOf(row, ndbNo, bad),
    keepsAs: null,
    keeping: [],
    packs: [],
    alwaysThere: false,
  };
}

function nutrientsOf(row: TableRow, ndbNo: string, bad: Report): FoodNutrients {
  const measured = nutrients.flatMap(([code, column]): [NutrientCode, number][] => {
    const written = row.field(column);
    if (written === "") return [];
    const value = decimal(written);
    if (value !== null) return [[code, value]];
    bad(row, column, "a number, or nothing where it was not measured");
    return [];
  });
  return { per100g: Object.fromEntries(measured), source: sourceOf(`NDB ${ndbNo}, ${row.field("description")}`) };
}

function edibleOf(row: TableRow, ndbNo: string, bad: Report): readonly EdiblePortion[] {
  const written = row.field("refuse_pct");
  if (written === "") return [];
  const refuse = decimal(written);
  if (refuse === null || refuse >= 100) {
    bad(row, "refuse_pct", "a percentage below 100");
    return [];
  }
  const what = row.field("refuse");
  const section = `Food description file, NDB ${ndbNo}, refuse ${written} %${what === "" ? "" : ` (${what})`}`;
  return [{ form: null, share: 1 - refuse / 100, source: sourceOf(section) }];
}

/** Of several measures of one form the largest is the least rounded. */
function measuresOf(ndbNo: string, weights: readonly Weight[], readMeasure: typeof readHouseholdMeasure) {
  const densities = new Map<string | null, FoodDensity & { readonly millilitres: number }>();
  const measures = new Map<string, OwnMeasure>();
  for (const { measure, gramsOfOne } of weights) {
    const read = readMeasure(measure);
    const source = sourceOf(`Weight file, NDB ${ndbNo}, "${measure}"`);
    if (read.kind === "OWN" && !measures.has(read.name) && !measures.has(read.name.replace(/s$/, ""))) {
      const { name, one } = read;
      measures.set(name, { name, one, many: one, grams: gramsOfOne, millilitres: null, pieces: null, source });
    }
    if (read.kind !== "VOLUME") continue;
    const { millilitres } = read;
    for (const form of read.forms)
      if ((densities.get(form)?.millilitres ?? 0) < millilitres)
        densities.set(form, { form, gramsPerMl: gramsOfOne / millilitres, source, millilitres });
  }
  const plain = [...densities.values()].map(({ form, gramsPerMl, source }): FoodDensity => ({
    form,
    gramsPerMl,
    source,
  }));
  return { densities: plain, measures: [...measures.values()] };
}

/** Slugs from descriptions; those that several rows share carry the number of the table. */
function slugsOf(rows: readonly TableRow[]): ReadonlyMap<TableRow, string> {
  const plain = rows.map((row) => ({ row, slug: slugOf(row.field("description")) }));
  const seen = new Map<string, number>();
  for (const { slug } of plain) seen.set(slug, (seen.get(slug) ?? 0) + 1);
  return new Map(plain.map(({ row, slug }) => [row, seen.get(slug) === 1 ? slug : `${slug}-${row.field("ndb_no")}`]));
}

const slugOf = (description: string): string => {
  const whole = description
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return whole.length <= 70 ? whole : whole.slice(0, 70).replace(/-[^-]*$/, "");
};

const decimal = (text: string): number | null => (/^\d*\.?\d+$/.test(text) ? Number(text) : null);

const positive = (text: string): number | null => {
  const value = decimal(text);
  return value !== null && value > 0 ? value : null;
};
