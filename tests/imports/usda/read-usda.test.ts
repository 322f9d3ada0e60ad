import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CatalogueRow } from "../../../src/domain/model/catalogue-row.js";
import { catalogueFacts, type CatalogueFacts } from "../../../src/imports/usda/catalogue-facts.js";
import { readHouseholdMeasure } from "../../../src/imports/usda/household-measure.js";
import { mergeCatalogueFood } from "../../../src/imports/usda/merge-catalogue-food.js";
import { readUsda, shippedEdition } from "../../../src/imports/usda/read-usda.js";
import { referenceTable, sourceOf } from "../../domain/quantity/reference-table.js";
import { density, edible, food, invented, own } from "../../kit/builders.js";

const bytes = (name: string): Uint8Array => readFileSync(new URL(`../../../seeds/catalogue/${name}`, import.meta.url));
const foodBytes = bytes("usda-sr26-foods.csv");
const weightBytes = bytes("usda-sr26-weights.csv");
const catalogue = readUsda(foodBytes, weightBytes);
const rowOf = (ndbNo: string): CatalogueRow => {
  const found = catalogue.foods.get(ndbNo);
  if (found === undefined) throw new Error(ndbNo);
  return found;
};
const entry = (ndbNo: string): CatalogueFacts => catalogueFacts(rowOf(ndbNo), shippedEdition);
const facts = [...catalogue.foods.values()].map((row) => ({
  ...catalogueFacts(row, shippedEdition),
  ndbNo: row.ndbNo,
}));
const cup = 236.5882365; // NIST Handbook 44, Appendix C

describe("the open food table", () => {
  it("is read whole: 5,484 foods and 10,825 weights", () => {
    expect(catalogue.count).toEqual({ foods: 5484, weights: 10_825 });
    expect(catalogue.problems).toEqual([]);
    expect(catalogue.foods.size).toBe(5484);
  });

  it("keeps the description, the other names, and the part of the shop of its group", () => {
    expect(rowOf("16056")).toMatchObject({
      description: "Chickpeas (garbanzo beans, bengal gram), mature seeds, raw",
      otherNames: [],
      aisle: "dry-goods",
    });
    expect(new Set([...catalogue.foods.values()].map(({ aisle }) => aisle)).size).toBeGreaterThan(8);
  });

  it("keeps a blank a blank and a zero a zero", () => {
    // Release 26, NDB 12087, cashew nuts, raw: saturated fat is blank; NDB 04053, olive oil: no water
    expect(entry("12087").nutrients.per100g).not.toHaveProperty("saturatedFatG");
    expect(entry("04053").nutrients.per100g.waterG).toBe(0);
    for (const { nutrients } of facts)
      for (const value of Object.values(nutrients.per100g)) expect(value).toBeGreaterThanOrEqual(0);
  });

  it("gives cups and spoons as densities by form, and the largest measure where there are several", () => {
    const flour = entry("20081"); // Release 26, wheat flour, white, all-purpose, enriched, bleached: cup 125 g
    expect(flour.densities.find(({ form }) => form === null)?.gramsPerMl).toBeCloseTo(125 / cup, 9);
    const kale = entry("11233"); // cup, chopped 67 g
    expect(kale.densities.find(({ form }) => form === "chopped")?.gramsPerMl).toBeCloseTo(67 / cup, 9);
    const honey = entry("19296"); // cup 339 g, tbsp 21 g
    expect(honey.densities).toHaveLength(1);
    expect(honey.densities[0]).toMatchObject({ form: null, source: { kind: "PUBLISHED" } });
    expect(honey.densities[0]?.gramsPerMl).toBeCloseTo(339 / cup, 9);
  });

  it("gives other measures as measures of the food, for one of them", () => {
    // Release 26: 3 cloves of garlic 9 g and 1 clove 3 g; celery stalk, medium 40 g
    expect(entry("11215").measures).toMatchObject([{ name: "clove", grams: 3 }]);
    expect(entry("11143").measures.map(({ grams }) => grams)).toContain(40);
  });

  it("turns refuse into the edible share, with its reason", () => {
    // Release 26, NDB 11215: refuse 13 % (knob and skin); NDB 04053: none
    expect(entry("11215").edible).toMatchObject([{ form: null, share: 0.87 }]);
    expect(entry("11215").edible[0]?.source.section).toMatch(/13 %/);
    expect(entry("04053").edible).toMatchObject([{ share: 1 }]);
    for (const { edible: shares } of facts)
      for (const { share } of shares) {
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThanOrEqual(1);
      }
  });

  it("has densities of food, not of lead or feathers", () => {
    for (const { ndbNo: slug, densities, measures } of facts) {
      for (const { gramsPerMl } of densities) {
        expect(gramsPerMl, slug).toBeGreaterThan(0.01);
        expect(gramsPerMl, slug).toBeLessThan(2.2);
      }
      expect(new Set(densities.map(({ form }) => form)).size, slug).toBe(densities.length);
      expect(new Set(measures.map(({ name }) => name)).size, slug).toBe(measures.length);
    }
  });
});

describe("the catalogue and the table of published nutrients", () => {
  const rows = referenceTable("nutrients");
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
  } as const;

  // The table prints Release 27. Where Release 26 printed something else, the difference is between the releases.
  const changedSince: Readonly<Record<string, readonly string[]>> = {
    "16056": [
      "kcal",
      "protein_g",
      "sat_fat_g",
      "carbohydrate_g",
      "fibre_g",
      "calcium_mg",
      "iron_mg",
      "potassium_mg",
      "water_g",
    ],
    "16069": [
      ...["kcal", "protein_g", "sat_fat_g", "carbohydrate_g", "fibre_g", "calcium_mg", "iron_mg", "potassium_mg"],
      ...["vitamin_c_mg", "water_g"],
    ],
    "20012": ["fibre_g"],
    "11508": ["sat_fat_g"],
    "11135": ["sat_fat_g"],
    "12087": ["sat_fat_g"],
    "12061": ["sugars_g"],
    "16398": [
      ...["kcal", "protein_g", "fat_g", "sat_fat_g", "carbohydrate_g", "fibre_g", "sugars_g", "calcium_mg", "iron_mg"],
      ...["potassium_mg", "water_g"],
    ],
  };
  const notInRelease26 = ["08120", "08121"];

  it.each(rows.map((row) => ({ ndb: row["ndb_no"] ?? "", row })))(
    "agree about $ndb, but for what a later release changed",
    ({ ndb, row }) => {
      const found = catalogue.foods.get(ndb);
      expect(found === undefined, sourceOf(row)).toBe(notInRelease26.includes(ndb));
      if (found === undefined) return;
      const differing = Object.entries(columns).flatMap(([code, column]) => {
        const here = found.per100g[code as keyof typeof columns];
        const there = row[column] === "" ? undefined : Number(row[column]);
        return here === there ? [] : [column];
      });
      expect(differing.sort(), sourceOf(row)).toEqual([...(changedSince[ndb] ?? [])].sort());
    },
  );
});

describe("a household measure", () => {
  it.each([
    ["cup", [null], 1],
    ["cup,", [null], 1],
    ["cup (8 fl oz)", [null], 1],
    ["cup (78 kernels)", [null], 1],
    ["cup, chopped", ["chopped"], 1],
    ["cup chopped", ["chopped"], 1],
    ["cup, chopped or diced", ["chopped", "diced"], 1],
    ["cup, crushed, sliced, or chunks", ["crushed", "sliced", "chunks"], 1],
    ['cup (1" pieces)', ['1" pieces'], 1],
    ["cup shelled (50 halves)", ["shelled"], 1],
    ["tbsp, ground", ["ground"], 1 / 16],
    ["tablespoon", [null], 1 / 16],
    ["tsp", [null], 1 / 48],
    ["fl oz", [null], 1 / 8],
    ["quart", [null], 4],
  ])("%s is a volume", (text, forms, cups) => {
    const read = readHouseholdMeasure(text);
    expect(read).toMatchObject({ kind: "VOLUME", forms });
    if (read.kind === "VOLUME") expect(read.millilitres).toBeCloseTo(cup * cups, 6);
  });

  it.each([
    ["oz", "is a weight"],
    ["cup (4 fl oz)", "is not a cup"],
    ["cup, with pits, yields", "is what a cup yields"],
    ["tbsp, rounded", "is heaped"],
    ["cup small fast food, 16 fl oz capacity, weight of the drink only with no ice added", "is a paper cup"],
    ["serving (3 oz)", "is a serving"],
    ["piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)", "is a yield"],
    ["cubic inch", "is not a kitchen measure"],
    ["tsp or 1 packet", "is two things"],
  ])("%s gives nothing, because it %s", (text) => expect(readHouseholdMeasure(text)).toEqual({ kind: "NONE" }));

  it("of the food itself keeps its words, and never claims to be the whole item", () => {
    expect(readHouseholdMeasure("slice, thin")).toEqual({ kind: "OWN", name: "slice-thin", one: "slice, thin" });
    expect(readHouseholdMeasure("piece")).toMatchObject({ name: "a-piece" });
    expect(readHouseholdMeasure("cupcake")).toMatchObject({ kind: "OWN", name: "cupcake" });
  });
});

describe("a table with faults", () => {
  const text = (from: Uint8Array, lines: number): string =>
    new TextDecoder().decode(from).split("\n").slice(0, lines).join("\n");
  const encode = (table: string): Uint8Array => new TextEncoder().encode(table);
  const foods = text(foodBytes, 4);
  const weights = text(weightBytes, 4);

  it.each([
    ["a number that is none", foods.replace("15.87,717", "15.87,71x"), weights, { file: "foods", line: 2, column: 8 }],
    ["a negative number", foods.replace("15.87,717", "15.87,-717"), weights, { file: "foods", line: 2, column: 8 }],
    ["a number of a food used twice", foods.replace("01002", "01001"), weights, { file: "foods", line: 3, column: 1 }],
    ["a number of a food that is none", foods.replace("01002", "1002"), weights, { file: "foods", line: 3, column: 1 }],
    ["a weight of nothing", foods, weights.replace(",5.0", ",0"), { file: "weights", line: 2, column: 5 }],
    [
      "a weight of an unknown food",
      foods,
      weights.replace("01001,2", "99999,2"),
      { file: "weights", line: 3, column: 1 },
    ],
    ["a row that is too short", `${foods}\n01009,Dairy`, weights, { file: "foods", line: 5 }],
    ["a missing column", foods.replace("refuse_pct", "rest"), weights, { file: "foods", line: 1 }],
    ["an open quote", foods.replace('"Butter, salted"', '"Butter, salted'), weights, { file: "foods", line: 2 }],
  ])("%s is named with its line and column", (_, foodText, weightText, place) => {
    const read = readUsda(encode(foodText), encode(weightText));
    expect(read.problems[0]).toMatchObject({ ...place, problem: { code: "BAD_SHAPE" } });
  });

  it("loses one row, and no other, to a quotation mark too many", () => {
    const broken = foods.replace('"Butter, salted"', '"Butter, salted');
    const whole = readUsda(encode(foods), encode(weights)).foods;
    const read = readUsda(encode(broken), encode(weights));
    expect(read.foods.size).toBe(whole.size - 1);
    for (const [ndbNo, row] of read.foods) expect(row).toEqual(whole.get(ndbNo));
  });

  it("counts lines through a quoted line break", () => {
    const broken = foods.replace('"Butter, salted"', '"Butter,\nsalted"').replace("01003", "x1003");
    expect(readUsda(encode(broken), encode(weights)).problems[0]).toMatchObject({ line: 5 });
  });

  it("of any bytes gives problems, never a crash", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (noise) => {
        expect(readUsda(encode(noise), encode(weights)).problems.length).toBeGreaterThan(0);
        expect(readUsda(encode(`${foods}\n${noise}`), encode(`${weights}\n${noise}`)).foods.size).toBeLessThanOrEqual(
          4,
        );
      }),
    );
  });
});

describe("a writer's food and its entry in the catalogue", () => {
  const writers = food("kale", {
    ndbNo: "11233",
    densities: [density(0.1, "chopped")],
    measures: [own("bunch", { grams: 200 })],
    edible: [edible(0.6)],
  });

  it("merge fact by fact, and the writer's come first", () => {
    const merged = mergeCatalogueFood(writers, {
      ...entry("11233"),
      densities: [density(0.3, "chopped"), density(0.2)],
      measures: [own("bunch", { grams: 999 }), own("leaf", { grams: 10 })],
    });
    expect(merged.densities.map(({ form, gramsPerMl }) => [form, gramsPerMl])).toEqual([
      ["chopped", 0.1],
      [null, 0.2],
    ]);
    expect(merged.measures.map(({ name, grams }) => [name, grams])).toEqual([
      ["bunch", 200],
      // As bought: ten grams that are eaten, at the writer's edible portion.
      ["leaf", 10 / 0.6],
    ]);
    expect(merged.edible).toEqual(writers.edible);
    expect(merged.nutrients).toEqual(entry("11233").nutrients);
    expect({ slug: merged.slug, names: merged.names, allergens: merged.allergens }).toEqual({
      slug: "kale",
      names: writers.names,
      allergens: [],
    });
  });

  it("keep the writer's nutrients whole, because they have one source", () => {
    const nutrients = { per100g: { energyKcal: 35 }, source: invented };
    expect(mergeCatalogueFood({ ...writers, nutrients }, entry("11233")).nutrients).toEqual(nutrients);
  });

  it("gain no fact that neither has: what is unknown stays unknown", () => {
    // Release 26, NDB 12087: saturated fat of raw cashews is blank, and no refuse is given for some foods.
    const cashews = mergeCatalogueFood(food("cashews", { ndbNo: "12087" }), entry("12087"));
    expect(cashews.nutrients?.per100g).not.toHaveProperty("saturatedFatG");
    expect([cashews.allergens, cashews.diets, cashews.keeping, cashews.keepsAs, cashews.parts, cashews.packs]).toEqual([
      [],
      [],
      [],
      null,
      [],
      [],
    ]);
    const bare = { ...rowOf("12087"), refuse: null, weights: [], per100g: {} };
    const merged = mergeCatalogueFood(food("cashews"), catalogueFacts(bare, shippedEdition));
    expect([merged.edible, merged.densities, merged.measures, merged.nutrients?.per100g]).toEqual([[], [], [], {}]);
  });

  it("name the edition and the place in it at every fact that is inherited", () => {
    const merged = mergeCatalogueFood(food("carrot", { ndbNo: "11124" }), entry("11124"));
    const sources = [...merged.densities, ...merged.measures, ...merged.edible].map(({ source }) => source);
    expect(sources.length).toBeGreaterThan(5);
    for (const source of sources) {
      expect(source).toMatchObject({ kind: "PUBLISHED", title: shippedEdition.title });
      expect(source.section).toContain("NDB 11124");
    }
  });

  // "Weights are given for edible material without refuse": documentation of the weight file, Standard Reference.
  it("weigh a measure of the table as bought, by the edible portion that holds", () => {
    // Release 26, NDB 11124: medium 61 g, refuse 11 %; NDB 12061, almonds: refuse 60 % (shells), 24 kernels in an ounce.
    const medium = (carrot: ReturnType<typeof food>) =>
      mergeCatalogueFood(carrot, entry("11124")).measures.find(({ name }) => name === "medium");
    expect(medium(food("carrot"))?.grams).toBeCloseTo(61 / 0.89, 9);
    expect(medium(food("carrot"))?.source.section).toContain("61 g of edible material");
    expect(medium(food("carrot", { edible: [edible(0.8)] }))?.grams).toBeCloseTo(61 / 0.8, 9);
    expect(medium(food("carrot", { edible: [edible(1)] }))).toEqual(
      entry("11124").measures.find(({ name }) => name === "medium"),
    );
  });
});
