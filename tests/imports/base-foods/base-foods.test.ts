import { readFile } from "node:fs/promises";
import { beforeAll, describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { asIngredient } from "../../../src/domain/nutrition/ingredient.js";
import { checkFoodKeeping } from "../../../src/domain/plan/check/check-keeping.js";
import { compileFoodNames, matchFood } from "../../../src/domain/quantity/food-name.js";
import { measureNames } from "../../../src/domain/quantity/units/unit-names.js";
import { readBase } from "../../kit/base-foods.js";
import { baseFacts, openDiets } from "./base-facts.js";
import { coverageOf, coverageTable } from "./coverage.js";
import { telling } from "./telling-words.js";

let base: Awaited<ReturnType<typeof readBase>>;
beforeAll(async () => {
  base = await readBase();
}, 60_000);

const stated = (food: Food, code: string) =>
  food.allergens.some((each) => each.code === code && ["CONTAINS", "UNKNOWN"].includes(each.presence));
const presence = (food: Food, code: string) => asIngredient(food, code, base.rules.allergens.diets).presence;

describe("the base foods", () => {
  it("are at least 450, and each has names in five languages, a mass, diets and what it contains", () => {
    const { count, rows } = coverageOf(base.whole);
    expect(count).toBeGreaterThanOrEqual(450);
    const lacking = rows
      .filter(({ isOfAll }) => isOfAll)
      .flatMap(({ what, without }) => without.map((slug) => `${slug}: ${what}`));
    expect(lacking).toEqual([]);
  });

  it("are to 95 % known to keep or shelf-stable", () => {
    const [keeping] = coverageOf(base.whole).rows.filter(({ what }) => what.startsWith("keeping"));
    expect(keeping?.have ?? 0).toBeGreaterThanOrEqual(0.95 * base.whole.length);
  });

  it("have no figure without a source", () => {
    const sources = base.whole.flatMap((food) =>
      [
        ...[...food.densities, ...food.measures, ...food.edible, ...food.yields, ...food.allergens, ...food.diets],
        ...[...food.keeping, ...(food.nutrients === null ? [] : [food.nutrients])],
      ].map(({ source }) => ({ slug: food.slug, ...source })),
    );
    expect(sources.length).toBeGreaterThan(5000);
    expect(sources.filter(({ title, section }) => title === "" || section === null || section === "")).toEqual([]);
  });

  it("are counted in docs/base-foods.md", async () => {
    expect(await readFile("docs/base-foods.md", "utf8")).toContain(coverageTable(base));
  });

  it.each(baseFacts)("say of %s: %s %s", (slug, said, allergen) => {
    const food = base.foods.find((each) => each.slug === slug);
    if (food === undefined) throw new Error(`no base food ${slug}`);
    expect(presence(food, allergen)).toBe({ "+": "CONTAINS", "-": "DOES_NOT_CONTAIN", "?": "UNKNOWN" }[said]);
  });

  it.each(openDiets)("leave open whether %s is %s", (slug, diet) => {
    const found = base.foods.find((each) => each.slug === slug)?.diets.filter((each) => each.diet === diet);
    expect(found?.map(({ fits }) => fits)).toEqual([null]);
  });

  it.each(["lady's finger", "Lady's Fingers", "ladies' fingers", "lady fingers", "ladyfingers"])(
    "ask which food is meant by %s, of biscuit or okra",
    (words) => {
      const both = { kind: "AMBIGUOUS", slugs: ["ladyfingers", "okra"] };
      const names = compileFoodNames(base.foods);
      for (const region of [null, "GB", "DE"]) expect(matchFood(names, words, "en", region)).toEqual(both);
      expect(matchFood(names, words, "en", "US")).not.toEqual({ kind: "FOUND", slug: "okra" });
    },
  );

  it("fit no diet that leaves out what they contain or may contain as an ingredient", () => {
    const animal = ["fish", "crustacean", "mollusc"];
    const leftOut = { vegan: ["milk", "egg", ...animal], vegetarian: animal, "gluten-free": ["gluten", "wheat"] };
    const wrong = base.foods.flatMap((food) =>
      Object.entries(leftOut).flatMap(([diet, codes]) =>
        food.diets.some((each) => each.diet === diet && each.fits === true)
          ? codes.filter((code) => stated(food, code)).map((code) => `${food.slug}: ${diet}, yet perhaps ${code}`)
          : [],
      ),
    );
    expect(wrong).toEqual([]);
  });

  it("never say that an allergen is absent which one of their names tells of", () => {
    const wrong = base.foods.flatMap((food) => {
      const names = food.names.flatMap(({ one, many, also }) => [one, many, ...also]);
      return telling
        .filter(
          ({ words, except }) => names.some((name) => words.test(name)) && !names.some((name) => except.test(name)),
        )
        .filter(({ allergen }) => presence(food, allergen) === "DOES_NOT_CONTAIN")
        .map(({ allergen }) => `${food.slug}: ${allergen}`);
    });
    expect(wrong).toEqual([]);
  });

  it("say of no animal that it is vegan, and of no meat or fish that it is vegetarian", () => {
    const animal = new Set(["milk", "egg", "fish", "crustacean", "mollusc"]);
    const fits = (food: Food, diet: string) => food.diets.find((each) => each.diet === diet)?.fits;
    const wrong = base.foods.filter(
      (food) =>
        (fits(food, "vegan") === true &&
          (fits(food, "vegetarian") !== true ||
            ["meat", "poultry", "fish"].includes(food.aisle) ||
            food.allergens.some(({ code, presence: is }) => is === "CONTAINS" && animal.has(code)))) ||
        (fits(food, "gluten-free") === true &&
          food.allergens.some(({ code, presence: is }) => is === "CONTAINS" && code === "gluten")),
    );
    expect(wrong.map(({ slug }) => slug)).toEqual([]);
  });

  it("keep no longer than the published rules of their class allow", () => {
    const found = base.foods.flatMap((food) => checkFoodKeeping(food, base.rules.safety, base.edition.code));
    expect(found).toEqual([]);
  });

  it("tell opened from unopened, and quality from safety", () => {
    const [paste] = base.foods.filter(({ slug }) => slug === "tomato-puree");
    expect(
      paste?.keeping.map(({ place, days, condition, purpose, region }) => [place, days, condition, purpose, region]),
    ).toEqual([
      ["ROOM", 810, "from purchase", "QUALITY", "US"],
      ["FRIDGE", 5, "after opening", "SAFETY", "US"],
      ["FREEZER", 60, null, "QUALITY", "US"],
    ]); // id 501 of the FSIS table: 27 months; 5 days; 2 to 3 months
  });

  it("count in measures that have words in every language", () => {
    const untold = new Set(["piece", "knob", "pinch"]); // a piece is called after its food; of a knob and a pinch only English words are known
    const used = new Set(base.foods.flatMap(({ measures }) => measures.map(({ one }) => one)));
    expect([...used].filter((one) => !measureNames.has(one) && !untold.has(one))).toEqual([]);
  });

  it("leave a word that is another food in America to Britain", () => {
    const called = (slug: string, region: string | null) =>
      base.foods
        .filter((food) => food.slug === slug)
        .flatMap(({ names }) => names.filter((name) => name.language === "en" && name.region === region))
        .flatMap(({ one, also }) => [one, ...also]);
    expect(called("tomato-puree", "GB")).toContain("tomato purée");
    expect(called("tomato-puree", null)).not.toContain("tomato purée");
    expect(called("passata", "US")).toContain("tomato puree");
  });

  it("weigh a clove of garlic as bought, so that the refuse is taken off once", () => {
    const [garlic] = base.whole.filter(({ slug }) => slug === "garlic");
    const clove = garlic?.measures.find(({ name }) => name === "clove")?.grams ?? 0;
    // SR26, NDB 11215: a clove is 3 g of edible material, refuse 13 %.
    expect(clove * (garlic?.edible[0]?.share ?? 1)).toBeCloseTo(3, 9);
    expect(garlic?.measures.find(({ name }) => name === "piece")).toMatchObject({ one: "head", grams: 60, pieces: 1 });
  });
});
