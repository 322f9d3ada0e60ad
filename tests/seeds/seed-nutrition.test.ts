import path from "node:path";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../seeds/load-seeds.js";
import { noHousehold } from "../../src/domain/model/household.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { planNutrition } from "../../src/domain/plan/contents/contents.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";

const { bundles } = await readSeeds(path.resolve(import.meta.dirname, "../../seeds"));

/** Nothing is drained, thrown away or left on the plate. */
const allEaten = (bundle: PlanBundle): PlanBundle => ({
  ...bundle,
  components: bundle.components.map((each) => ({
    ...each,
    lines: each.lines.map(({ eaten: _, ...line }) => line),
    steps: each.steps.map((step) => ({ ...step, drains: false })),
  })),
});

const mealsOf = (slug: string, prepare: (bundle: PlanBundle) => PlanBundle, servings = 4) => {
  const bundle = bundles.find(({ plan }) => plan.slug === slug);
  if (bundle === undefined) throw new Error(`the demo has no plan ${slug}`);
  const scaled = scalePlan(prepare(bundle), servings, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return planNutrition(scaled.value, servings).meals;
};

describe("the sodium of a demo meal, for four", () => {
  // Worked by hand from USDA SR 26: every weighed gram of salt, before what is poured away.
  it.each([
    ["roots-and-barley", "kale-and-barley-salad", 615],
    ["roots-and-barley", "root-mash-and-egg", 571],
    ["roots-and-barley", "barley-soup", 452],
    ["lentils-and-greens", "spread-on-toast", 803],
    ["lentils-and-greens", "lentil-broth", 480],
    ["bean-night", "bean-pot", 474],
  ])("counts all that was weighed although there is more to taste: %s, %s, %d mg", (plan, slug, milligrams) => {
    const found = mealsOf(plan, allEaten).find(({ meal }) => meal === slug)?.nutrition;
    const sodium = found?.nutrients.sodiumMg;
    expect(Math.round(sodium?.perServing.low ?? 0)).toBe(milligrams);
    expect(sodium?.complete).toBe(false);
    expect(found?.added).toContain("salt");
  });

  it("is less where the pot is drained, and the same where nothing is", () => {
    const sodium = (prepare: (bundle: PlanBundle) => PlanBundle) =>
      new Map(
        mealsOf("roots-and-barley", prepare).map(({ meal, nutrition }) => [
          meal,
          nutrition.nutrients.sodiumMg?.perServing.low ?? 0,
        ]),
      );
    const [all, eaten] = [sodium(allEaten), sodium((bundle) => bundle)];
    for (const meal of ["warm-root-bowl", "kale-and-barley-salad", "barley-soup"]) {
      expect(eaten.get(meal), meal).toBeLessThan(all.get(meal) ?? 0);
    }
    expect(eaten.get("root-mash-and-egg")).toBe(all.get("root-mash-and-egg"));
  });
});
