import { describe, expect, it } from "vitest";
import type { NutrientCode } from "../../../src/domain/model/food.js";
import { nutritionOf } from "../../../src/domain/nutrition/nutrients.js";
import { referenceTable, sourceOf, type Row } from "../quantity/reference-table.js";

const table = referenceTable("nutrients");

const columns = {
  energyKcal: "kcal",
  proteinG: "protein_g",
  fatG: "fat_g",
  saturatedFatG: "sat_fat_g",
  carbohydrateG: "carbohydrate_g",
  fibreG: "fibre_g",
  sugarsG: "sugars_g",
  sodiumMg: "sodium_mg",
  calciumMg: "calcium_mg",
  ironMg: "iron_mg",
  potassiumMg: "potassium_mg",
  vitaminCMg: "vitamin_c_mg",
  waterG: "water_g",
} as const satisfies Partial<Record<NutrientCode, string>>;
const codes = Object.entries(columns) as readonly [NutrientCode, string][];

const foodOf = (row: Row) => ({
  slug: row["ndb_no"] ?? "",
  nutrients: {
    per100g: Object.fromEntries(
      codes.flatMap(([code, column]) => (row[column] ? [[code, Number(row[column])] as const] : [])),
    ),
    source: { kind: "PUBLISHED" as const, title: row["source"] ?? "", section: null },
  },
});

describe("the table of published nutrients", () => {
  it("has 86 foods", () => expect(table).toHaveLength(86));

  it.each(table.map((row) => ({ food: row["food"], row })))(
    "is what a dish of that food alone has: $food",
    ({ row }) => {
      // 250 g, two servings, nothing lost: 125 g a serving.
      const grams = { low: 250, high: 250 };
      const found = nutritionOf({ inputs: [{ food: foodOf(row), grams }], cookedGrams: grams, servings: 2 });
      for (const [code, column] of codes) {
        const shown = `${column}: ${sourceOf(row)}`;
        const amount = found.nutrients[code];
        if (row[column] === "") expect(amount, shown).toBeUndefined();
        else {
          expect(amount?.per100g?.low, shown).toBeCloseTo(Number(row[column]), 9);
          expect(amount?.perServing.high, shown).toBeCloseTo(Number(row[column]) * 1.25, 9);
        }
      }
    },
  );

  it("is additive: a pot of all 86 holds what its foods hold", () => {
    const grams = { low: 100, high: 100 };
    const all = nutritionOf({
      inputs: table.map((row) => ({ food: foodOf(row), grams })),
      cookedGrams: null,
      servings: 1,
    });
    // Of the foods with energy, their weight less their water; a food of which nobody knows the water, whole.
    const dry = (rows: readonly Row[]): number =>
      rows.filter((row) => row["kcal"] !== "0").reduce((total, row) => total + 100 - Number(row["water_g"]), 0);
    for (const [code, column] of codes) {
      const known = table.filter((row) => row[column] !== "");
      const sum = known.reduce((total, row) => total + Number(row[column]), 0);
      expect(all.nutrients[code]?.total.low, column).toBeCloseTo(sum, 6);
      expect(all.nutrients[code]?.coverage, column).toBeCloseTo(dry(known) / dry(table), 9);
    }
  });

  // Raw and cooked rows of one food: the raw figure over the cooked weight comes near the cooked figure.
  it.each([
    ["16069", "16070", 3.0],
    ["20005", "20006", 2.86],
    ["20444", "20445", 2.81],
    ["16014", "16015", 2.58],
  ])(
    "is, cooked, what the raw one is over the cooked weight: %s to %s, which takes up water to %d times",
    (raw, cooked, yields) => {
      const [from, to] = [raw, cooked].map((ndb) => table.find((row) => row["ndb_no"] === ndb));
      if (from === undefined || to === undefined) throw new Error(`${raw} or ${cooked} is missing`);
      const weight = 100 * yields;
      const found = nutritionOf({
        inputs: [{ food: foodOf(from), grams: { low: 100, high: 100 } }],
        cookedGrams: { low: weight, high: weight },
        servings: 1,
      });
      const energy = found.nutrients.energyKcal?.per100g?.low ?? 0;
      expect(Math.abs(energy / Number(to["kcal"]) - 1), sourceOf(to)).toBeLessThan(0.02);
    },
  );
});
