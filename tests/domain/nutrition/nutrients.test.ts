import { describe, expect, it } from "vitest";
import type { NutrientCode } from "../../../src/domain/model/food.js";
import { nutritionOf, type NutritionInput } from "../../../src/domain/nutrition/nutrients.js";
import { invented } from "../../kit/builders.js";

const exactly = (grams: number) => ({ low: grams, high: grams });
const input = (
  slug: string,
  per100g: Partial<Record<NutrientCode, number>> | null,
  grams: NutritionInput["grams"] | number,
  facts: Partial<NutritionInput> = {},
): NutritionInput => ({
  food: { slug, nutrients: per100g === null ? null : { per100g, source: invented } },
  grams: typeof grams === "number" ? exactly(grams) : grams,
  ...facts,
});

describe("nutrition of a dish", () => {
  it("takes raw figures over the cooked weight (O-33: 400 g dry rice at 365 kcal, cooked 1200 g, serving 150 g)", () => {
    // method: FAO, Food composition data, dishes from recipes; 365 kcal is a test parameter
    const rice = nutritionOf({
      inputs: [input("rice", { energyKcal: 365 }, 400)],
      cookedGrams: exactly(1200),
      servings: 8,
    });
    const energy = rice.nutrients.energyKcal;
    expect(energy?.total).toEqual(exactly(1460));
    expect(energy?.per100g?.low).toBeCloseTo(121.667, 3);
    expect(energy?.perServing.low).toBeCloseTo(182.5, 9);
    expect(rice.gramsPerServing).toEqual(exactly(150));
    expect(rice.basis).toBe("RAW_FOODS_OVER_COOKED_WEIGHT");
    expect(energy).toMatchObject({ coverage: 1, complete: true, unknown: [] });
  });

  it("says per serving but not per 100 g where nobody weighed the dish", () => {
    const rice = nutritionOf({ inputs: [input("rice", { energyKcal: 365 }, 400)], cookedGrams: null, servings: 8 });
    expect(rice).toMatchObject({ basis: "RAW_FOODS_OVER_SERVINGS", gramsPerServing: null });
    expect(rice.nutrients.energyKcal).toMatchObject({ per100g: null, perServing: exactly(182.5) });
  });

  it("leaves out what is not eaten, and says of which food, how much and why", () => {
    const beans = input("tinned-beans", { sodiumMg: 300 }, 240, { notEaten: exactly(160), why: ["STATED"] });
    const found = nutritionOf({ inputs: [beans], cookedGrams: exactly(240), servings: 2 });
    expect(found.nutrients.sodiumMg?.total.low).toBeCloseTo(720, 9);
    expect(found.notEaten).toEqual([{ food: "tinned-beans", share: exactly(0.4), why: ["STATED"] }]);
  });

  it("knows no share of what nobody can weigh", () => {
    const leaf = input("bay-leaf", null, 0, { notEaten: exactly(0), why: ["STATED"] });
    const found = nutritionOf({ inputs: [leaf], cookedGrams: null, servings: 1 });
    expect(found).toMatchObject({ notEaten: [{ food: "bay-leaf", share: null }], missing: [], unweighed: [] });
  });

  it("shows both ends of a range: least over the heaviest dish, most over the lightest", () => {
    const oil = input("oil", { fatG: 100 }, { low: 20, high: 30 });
    const found = nutritionOf({ inputs: [oil], cookedGrams: { low: 200, high: 400 }, servings: 2 });
    expect(found.nutrients.fatG).toMatchObject({ total: { low: 20, high: 30 }, perServing: { low: 10, high: 15 } });
    expect(found.nutrients.fatG?.per100g).toEqual({ low: 5, high: 15 });
  });

  it("says for each nutrient what share of the weight has a figure, and which foods have none", () => {
    const inputs = [input("kale", { energyKcal: 49, ironMg: 1.47 }, 300), input("spice", { energyKcal: 300 }, 100)];
    const { nutrients } = nutritionOf({ inputs, cookedGrams: exactly(400), servings: 1 });
    expect(nutrients.energyKcal).toMatchObject({ coverage: 1, complete: true });
    expect(nutrients.ironMg).toMatchObject({ coverage: 0.75, complete: false, unknown: ["spice"] });
  });

  it("leaves out a nutrient that nobody measured: unknown is not zero", () => {
    const { nutrients } = nutritionOf({
      inputs: [input("kale", { energyKcal: 49 }, 300)],
      cookedGrams: null,
      servings: 1,
    });
    expect(Object.keys(nutrients)).toEqual(["energyKcal"]);
    expect(nutritionOf({ inputs: [], cookedGrams: null, servings: 1 }).nutrients).toEqual({});
  });

  it("names the foods that nobody can weigh, and calls nothing complete that they may add to", () => {
    const inputs = [
      input("kale", { energyKcal: 49, sodiumMg: 38 }, 300),
      input("salt", { energyKcal: 0, sodiumMg: 38_758 }, null),
    ];
    const found = nutritionOf({ inputs, cookedGrams: null, servings: 1 });
    expect(found.unweighed).toEqual(["salt"]);
    expect(found.nutrients.sodiumMg).toMatchObject({ coverage: 1, complete: false, atLeast: true, unknown: ["salt"] });
    // Salt has no energy, however much of it goes in.
    expect(found.nutrients.energyKcal).toMatchObject({ complete: true, atLeast: false, unknown: [] });
  });

  it("adds up what was weighed of a food that is also added to taste", () => {
    const salt = input("salt", { energyKcal: 0, sodiumMg: 38_758 }, 5, { rest: ["TO_TASTE"] });
    const found = nutritionOf({ inputs: [salt], cookedGrams: null, servings: 1 });
    expect(found.nutrients.sodiumMg?.total.low).toBeCloseTo(1937.9, 9);
    expect(found.nutrients.sodiumMg).toMatchObject({ complete: false, atLeast: true, unknown: ["salt"] });
    expect(found).toMatchObject({ added: ["salt"], unweighed: [] });
  });

  it("counts coverage by the dry weight of what bears energy, so that water and leaves hide no packet of pasta", () => {
    const inputs = [
      input("water", { energyKcal: 0, waterG: 99.9 }, 1000),
      input("leaves", { energyKcal: 20, waterG: 90 }, 400),
      input("pasta", null, 160),
    ];
    const found = nutritionOf({ inputs, cookedGrams: null, servings: 1 });
    expect(found.nutrients.energyKcal?.coverage).toBeCloseTo(40 / 200, 9);
    expect(found.missing).toEqual(["pasta"]);
  });

  it("says at least only where nothing counted can be less", () => {
    const mystery = input("pasta", null, 100);
    const energy = (facts: Partial<NutritionInput>) =>
      nutritionOf({
        inputs: [input("cheese", { energyKcal: 300 }, 50, facts), mystery],
        cookedGrams: null,
        servings: 1,
      }).nutrients.energyKcal?.atLeast;
    expect(energy({})).toBe(true);
    expect(energy({ mayBeLeftOut: true })).toBe(false);
    expect(energy({ why: ["DRAINED"] })).toBe(false);
    expect(energy({ why: ["STATED"] })).toBe(true);
    const { vitaminCMg } = nutritionOf({
      inputs: [input("kale", { vitaminCMg: 93 }, 100), mystery],
      cookedGrams: null,
      servings: 1,
    }).nutrients;
    expect(vitaminCMg).toMatchObject({ atLeast: false, raw: true });
  });

  it("refuses servings and weights that are none", () => {
    const rice = input("rice", { energyKcal: 365 }, 400);
    const ask = (facts: object) => () => nutritionOf({ inputs: [rice], cookedGrams: null, servings: 1, ...facts });
    expect(ask({ servings: 0 })).toThrow(RangeError);
    expect(ask({ cookedGrams: exactly(0) })).toThrow(RangeError);
    expect(ask({ inputs: [{ ...rice, grams: { low: 2, high: 1 } }] })).toThrow(/rice/);
    expect(ask({ inputs: [{ ...rice, grams: exactly(-1) }] })).toThrow(RangeError);
  });
});
