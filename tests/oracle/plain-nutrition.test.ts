import path from "node:path";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../seeds/load-seeds.js";
import { noHousehold } from "../../src/domain/model/household.js";
import { planNutrition } from "../../src/domain/plan/contents/contents.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { plainMeals, plainNutrients, plainPlans } from "./plain-nutrition.js";

const { bundles } = await readSeeds(path.resolve(import.meta.dirname, "../../seeds"));
const cases = bundles.flatMap((bundle) =>
  [1, 4, 7, 30].map((servings) => ({ slug: bundle.plan.slug, bundle, servings })),
);

// Source of the figures: USDA SR 26 (seeds/catalogue), of two foods without a number the figures in their documents.
describe("energy, protein, sodium and fibre of the demo, worked out a second time from its documents and the open table", () => {
  it.each(cases)("agree within half a percent: $slug for $servings", ({ slug, bundle, servings }) => {
    const scaled = scalePlan(bundle, servings, noHousehold);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    const { meals, plan } = planNutrition(scaled.value, servings);
    const plain = plainMeals(plainPlans.get(slug)!, servings);
    expect([...plain.keys()].toSorted()).toEqual(meals.map(({ meal }) => meal).toSorted());
    for (const code of plainNutrients) {
      let all = 0;
      for (const { meal, nutrition } of meals) {
        const own = plain.get(meal)![code];
        all += own;
        const found = nutrition.nutrients[code]?.perServing.low ?? 0;
        expect(Math.abs(found - own), `${meal} ${code}: ${found}, by hand ${own}`).toBeLessThanOrEqual(
          own * 0.005 + 1e-9,
        );
      }
      expect(all, code).toBeGreaterThan(0);
      const found = plan.nutrients[code]?.perServing.low ?? 0;
      expect(Math.abs(found - all), `all ${code}: ${found}, by hand ${all}`).toBeLessThanOrEqual(all * 0.005);
    }
  });
});
