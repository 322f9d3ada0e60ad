import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nutrientCodes, nutritionOf, type NutritionInput } from "../../../src/domain/nutrition/nutrients.js";
import { invented } from "../../kit/builders.js";

describe("what is said about nutrition", () => {
  const amount = fc.double({ min: 0, max: 500, noNaN: true });
  const input: fc.Arbitrary<NutritionInput> = fc.record({
    food: fc.record({
      slug: fc.constantFrom("a", "b", "c"),
      nutrients: fc.option(
        fc.dictionary(fc.constantFrom(...nutrientCodes), amount).map((per100g) => ({ per100g, source: invented })),
      ),
    }),
    grams: fc.option(fc.tuple(amount, amount).map(([low, more]) => ({ low, high: low + more }))),
  });

  it("becomes no more complete and no larger by forgetting a figure or a weight", () => {
    fc.assert(
      fc.property(fc.array(input, { minLength: 1, maxLength: 5 }), fc.nat(4), fc.boolean(), (inputs, at, weight) => {
        const target = inputs[at % inputs.length];
        const bare = inputs.map((each) =>
          each === target
            ? weight
              ? { ...each, grams: null }
              : { ...each, food: { ...each.food, nutrients: null } }
            : each,
        );
        const before = nutritionOf({ inputs, cookedGrams: null, servings: 2 }).nutrients;
        const after = nutritionOf({ inputs: bare, cookedGrams: null, servings: 2 }).nutrients;
        for (const code of nutrientCodes) {
          const less = after[code];
          if (less === undefined) continue;
          const more = before[code];
          expect(more).toBeDefined();
          if (less.complete) expect(more?.complete).toBe(true);
          expect(less.total.high).toBeLessThanOrEqual((more?.total.high ?? 0) * (1 + 1e-12));
        }
      }),
    );
  });

  it("halves for twice the servings, and doubles with the pot", () => {
    fc.assert(
      fc.property(fc.array(input, { maxLength: 5 }), fc.integer({ min: 1, max: 50 }), (inputs, servings) => {
        const once = nutritionOf({ inputs, cookedGrams: null, servings }).nutrients;
        const twice = nutritionOf({ inputs, cookedGrams: null, servings: servings * 2 }).nutrients;
        const double = nutritionOf({ inputs: [...inputs, ...inputs], cookedGrams: null, servings }).nutrients;
        for (const code of nutrientCodes) {
          expect((twice[code]?.perServing.high ?? 0) * 2).toBeCloseTo(once[code]?.perServing.high ?? 0, 6);
          expect(double[code]?.total.low ?? 0).toBeCloseTo((once[code]?.total.low ?? 0) * 2, 6);
        }
      }),
    );
  });
});
