import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Food } from "../../src/domain/model/food.js";
import { noHousehold } from "../../src/domain/model/household.js";
import type { Line } from "../../src/domain/model/line.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { nutrientCodes, type Nutrition } from "../../src/domain/nutrition/nutrients.js";
import { planNutrition } from "../../src/domain/plan/contents/contents.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { arbitraryPlan } from "../kit/arbitrary/arbitrary-plan.js";
import { bundle, component, food, invented, line, made, meal, step } from "../kit/builders.js";

const nutritionOf = (of: PlanBundle, servings: number) => {
  const scaled = scalePlan(of, servings, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return planNutrition(scaled.value, servings);
};

/** Figures drawn from the seed, so that a plan's foods differ; every fifth has none. */
const withFigures = (of: PlanBundle): PlanBundle => ({
  ...of,
  foods: of.foods.map((each, at): Food => ({
    ...each,
    nutrients:
      at % 5 === 4
        ? null
        : { per100g: { energyKcal: (at * 83) % 700, sodiumMg: (at * 37) % 400, proteinG: at % 7 }, source: invented },
  })),
});

/** The whole kind: a line to taste, one with an amount, one nobody can weigh, one that is thrown away; in a meal or a component. */
const addedLine = (foods: readonly Food[]): fc.Arbitrary<Line> =>
  fc
    .record({
      at: fc.nat(),
      amount: fc.constantFrom(null, "0 g", "3 g", "40 g", "10-30 g"),
      eaten: fc.constantFrom(undefined, "0", "2/5"),
      extra: fc.boolean(),
      optional: fc.boolean(),
    })
    .map(({ at, amount, eaten, ...facts }) => ({
      ...line(amount, foods[at % foods.length]!.slug, facts),
      id: "added",
      ...(eaten === undefined ? {} : { eaten }),
    }));

const plansAndLines = arbitraryPlan().chain((plan) => {
  const figured = withFigures(plan);
  return fc.record({
    plan: fc.constant(figured),
    added: addedLine(figured.foods),
    inComponent: fc.boolean(),
    place: fc.nat(),
    servings: fc.integer({ min: 1, max: 40 }),
  });
});

function withLine(of: PlanBundle, added: Line, inComponent: boolean, place: number): PlanBundle {
  const at = <T>(list: readonly T[]): number => place % list.length;
  if (inComponent && of.components.length > 0) {
    const { components } = of;
    return {
      ...of,
      components: components.map((each, index) =>
        index === at(components) ? { ...each, lines: [...each.lines, added] } : each,
      ),
    };
  }
  const { meals } = of.plan;
  return {
    ...of,
    plan: {
      ...of.plan,
      meals: meals.map((each, index) => (index === at(meals) ? { ...each, lines: [...each.lines, added] } : each)),
    },
  };
}

function expectNoLess(before: Nutrition, after: Nutrition): void {
  for (const code of nutrientCodes) {
    const [was, is] = [before.nutrients[code], after.nutrients[code]];
    if (was === undefined) continue;
    expect(is, code).toBeDefined();
    for (const end of ["low", "high"] as const) {
      expect(is?.total[end], code).toBeGreaterThanOrEqual(was.total[end] * (1 - 1e-9));
      expect(is?.perServing[end], code).toBeGreaterThanOrEqual(was.perServing[end] * (1 - 1e-9));
    }
  }
}

describe("law 4: a line that is added", () => {
  it("never lowers a nutrient, of its meal or of any other", () => {
    fc.assert(
      fc.property(plansAndLines, ({ plan, added, inComponent, place, servings }) => {
        const before = nutritionOf(plan, servings);
        const after = nutritionOf(withLine(plan, added, inComponent, place), servings);
        expectNoLess(before.plan, after.plan);
        before.meals.forEach(({ nutrition }, index) => expectNoLess(nutrition, after.meals[index]!.nutrition));
      }),
      { numRuns: 200 },
    );
  });

  // More water in a drained pot does take more salt with it, and a pot whose yield stays while its beans double is another pot.
  it("never lowers a nutrient of a drained pot either, where what it weighs is weighed again", () => {
    const salt = food("salt", { nutrients: { per100g: { energyKcal: 0, sodiumMg: 38_758 }, source: invented } });
    const water = food("water", {
      nutrients: { per100g: { energyKcal: 0, sodiumMg: 4, waterG: 99.9 }, source: invented },
    });
    const beans = food("beans", {
      nutrients: { per100g: { energyKcal: 337, sodiumMg: 12, waterG: 11.75 }, source: invented },
    });
    const pot = (grams: number, more: number, seasoned: readonly Line[]): PlanBundle => {
      const lines = [
        line("500 g", "beans"),
        line("2500 g", "water"),
        line("9 g", "salt"),
        ...(more > 0 ? [line(`${more} g`, "beans")] : []),
        ...seasoned,
      ];
      const boiled = component("boiled", `${grams + more} g`, lines, {
        steps: [step("boil", 60, { lines: ["1", "2", "3"] }), step("drain", 3, { after: ["boil"], drains: true })],
      });
      const ids = { ...boiled, lines: boiled.lines.map((each, index) => ({ ...each, id: String(index + 1) })) };
      return bundle([meal("m", [line("1 batch", made("boiled"))])], [ids], [salt, water, beans]);
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 600, max: 2000 }),
        fc.integer({ min: 0, max: 900 }),
        fc.subarray([line(null, "salt"), line("2 g", "salt")]),
        (grams, more, seasoned) => {
          expectNoLess(nutritionOf(pot(grams, 0, []), 4).plan, nutritionOf(pot(grams, more, seasoned), 4).plan);
        },
      ),
    );
  });
});
