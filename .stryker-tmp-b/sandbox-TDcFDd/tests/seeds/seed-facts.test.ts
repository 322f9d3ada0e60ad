// @ts-nocheck
import { readFileSync } from "node:fs";
import path from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../seeds/load-seeds.js";
import type { Food, NutrientCode } from "../../src/domain/model/food.js";
import type { Source } from "../../src/domain/model/source.js";
import { toNumber } from "../../src/domain/quantity/rational.js";
import { standardUnit } from "../../src/domain/quantity/unit.js";

/**
 * Every number of the demo's foods against the published row it names. The rows are copies:
 * USDA National Nutrient Database for Standard Reference, Release 26 (2013; foods and weights), Releases 27 and 28 as
 * named in the rows, and the other titles of the rows' `source` column.
 */
const root = path.resolve(import.meta.dirname, "../..");

const rows = (name: string): readonly Readonly<Record<string, string>>[] =>
  parse(readFileSync(path.join(root, "tests/fixtures/reference", name)), { columns: true, skip_empty_lines: true });

const sr26 = new Map(rows("seed-usda-sr26-foods.csv").map((row) => [row["ndb_no"], row]));
const sr27 = new Map(rows("seed-usda-sr27-foods.csv").map((row) => [row["ndb_no"], row]));
const weights = rows("seed-usda-sr26-weights.csv");
const densities = rows("seed-densities.csv");
const yields = rows("seed-yields.csv");
const storage = rows("seed-storage.csv");

const { foods } = await readSeeds(path.join(root, "seeds"));
const isSr26 = ({ title }: Source): boolean => title.includes("Release 26");
const isSr28 = ({ title }: Source): boolean => title.includes("Release 28");

/** `Weight file, NDB 11215, "clove"`. */
const weightRow = ({ section }: Source) => {
  const [, ndb, measure] = /NDB (\d{5}), "(.+)"$/.exec(section ?? "") ?? [];
  return weights.find((row) => row["ndb_no"] === ndb && row["measure"] === measure);
};

const columns: Record<NutrientCode, string> = {
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
};

const facts = <T>(pick: (food: Food) => readonly T[]): readonly { slug: string; fact: T }[] =>
  foods.flatMap((food) => pick(food).map((fact) => ({ slug: food.slug, fact })));

const millilitresOf = (measure: string): number => {
  const [, count = "", unit = ""] = /^(\S+) (.+)$/.exec(measure) ?? [];
  const id = unit.replace("US fl oz", "us-floz").replace("US ", "us-");
  return Number(count) * (standardUnit(id)?.factor ?? NaN);
};

describe("the nutrients of the demo's foods", () => {
  const known = foods.flatMap((food) => (food.nutrients === null ? [] : [{ ...food, nutrients: food.nutrients }]));

  it.each(known)("$slug: are those of its row, and blank where the row is blank", ({ ndbNo, nutrients }) => {
    const [, ndb] = /NDB (\d{5})/.exec(nutrients.source.section ?? "") ?? [];
    const row = isSr26(nutrients.source) ? sr26.get(ndb) : sr27.get(ndb);
    expect(row).toBeDefined();
    if (isSr26(nutrients.source)) expect(ndbNo).toBe(ndb);
    const published = Object.entries(columns).flatMap(([code, column]) =>
      (row?.[column] ?? "") === "" ? [] : [[code, Number(row?.[column])]],
    );
    expect(nutrients.per100g).toEqual(Object.fromEntries(published));
  });

  it("are missing only where no table has the food", () => {
    expect(foods.filter(({ nutrients }) => nutrients === null).map(({ slug }) => slug)).toEqual(["tinned-lentils"]);
  });
});

describe("the densities of the demo's foods", () => {
  it.each(facts(({ densities: list }) => list))("$slug: $fact.form is the weight of the row's measure", ({ fact }) => {
    if (isSr26(fact.source)) {
      const row = weightRow(fact.source);
      const [measure] = /^(?:cup|tbsp|tsp)/.exec(row?.["measure"] ?? "") ?? [];
      const millilitres = Number(row?.["amount"]) * (standardUnit(`us-${measure}`)?.factor ?? NaN);
      expect(fact.gramsPerMl).toBeCloseTo(Number(row?.["grams"]) / millilitres, 9);
      return;
    }
    const row = densities.find((each) => each["source_section"] === fact.source.section);
    expect(row?.["source"]).toBe(fact.source.title);
    expect(fact.gramsPerMl).toBeCloseTo(Number(row?.["mass_g"]) / millilitresOf(row?.["measure"] ?? ""), 9);
  });
});

describe("the measures of the demo's foods", () => {
  it.each(facts(({ measures }) => measures))("$slug: a $fact.one weighs what its row says", ({ fact }) => {
    const { source, grams } = fact;
    if (source.kind === "INVENTED") return expect(source.section).toMatch(/society/);
    const garlic = yields.find((row) => row["yield_id"] === "cl-garlic-head");
    if (fact.name === "clove") {
      expect(grams).toBe(Number(weights.find((row) => row["measure"] === "clove")?.["grams"]));
      return expect(fact.pieces).toBe(1 / Number(garlic?.["out_qty"]));
    }
    if (source.title === garlic?.["source"]) return expect(garlic?.["from_state"]).toContain(`${grams} g`);
    if (isSr28(source)) {
      const can = yields.find(
        (row) => row["source_section"] === source.section && row["to_state"] === "drained solids",
      );
      return expect(grams).toBe(Number(can?.["out_qty"]));
    }
    const row = weightRow(source);
    expect(row).toBeDefined();
    return expect(grams).toBeCloseTo(Number(row?.["grams"]) / Number(row?.["amount"]), 9);
  });
});

describe("the parts of the demo's foods", () => {
  it.each(facts(({ parts }) => parts))("$slug: one gives as much $fact.name as its row says", ({ slug, fact }) => {
    const row = yields.find(
      (each) =>
        each["source"] === fact.source.title &&
        each["source_section"]?.includes(/NDB \d{5}/.exec(fact.source.section ?? "")?.[0] ?? "text"),
    );
    expect(row?.["food"]).toContain(slug);
    expect(row?.["to_state"]).toContain(fact.name);
    expect(toNumber(fact.perPiece.low)).toBe(Number(row?.["out_qty"]));
    expect(fact.perPiece.unit).toBe(row?.["out_unit"]?.replace("US ", "us-"));
  });
});

describe("the edible portions of the demo's foods", () => {
  it.each(facts(({ edible, ndbNo }) => edible.map((each) => ({ ...each, ndbNo }))))(
    "$slug: is what the row does not throw away",
    ({ fact }) => {
      const row = sr26.get(fact.ndbNo ?? "");
      expect(fact.share).toBeCloseTo(1 - Number(row?.["refuse_pct"]) / 100, 9);
      expect(fact.source.section).toContain(row?.["refuse"] ?? "no row");
    },
  );
});

describe("the yields of the demo's foods", () => {
  it.each(facts((food) => food.yields))("$slug: gives $fact.food as its row says", ({ fact }) => {
    const row = yields.find((each) => fact.source.section?.includes(each["source_section"] ?? "no row"));
    expect(row?.["source"]).toBe(fact.source.title);
    expect(fact.gramsPerGram).toBeCloseTo(Number(row?.["out_qty"]) / Number(row?.["in_qty"]), 9);
    expect(foods.map(({ slug }) => slug)).toContain(fact.food);
  });
});

describe("the keeping of the demo's foods", () => {
  const days: Readonly<Record<string, number>> = { day: 1, week: 7 };

  it.each(facts(({ keeping }) => keeping))("$slug: is not longer than the shortest time of its row", ({ fact }) => {
    const row = storage.find((each) => fact.source.section?.startsWith(each["source_section"] ?? "no row"));
    expect(row?.["source"]).toBe(fact.source.title);
    const shortest = Number(row?.["min_value"] !== "" ? row?.["min_value"] : row["max_value"]);
    expect(fact.days).toBe(shortest * (days[row?.["unit"] ?? ""] ?? NaN));
  });
});

describe("every fact of the demo's foods", () => {
  it("says who says so, and where", () => {
    const sources = foods.flatMap((food) =>
      [...food.densities, ...food.measures, ...food.parts, ...food.edible, ...food.yields, ...food.allergens].map(
        ({ source }) => ({ slug: food.slug, source }),
      ),
    );
    expect(sources.length).toBeGreaterThan(150);
    for (const { slug, source } of sources) expect(source.section, slug).not.toBeNull();
  });
});
