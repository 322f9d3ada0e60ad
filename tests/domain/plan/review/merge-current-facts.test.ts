import { describe, expect, it } from "vitest";
import type { AllergenPresence, Food } from "../../../../src/domain/model/food.js";
import { allergenStatement } from "../../../../src/domain/nutrition/allergens.js";
import { dietJudge, dietStatement } from "../../../../src/domain/nutrition/diets.js";
import { mergeCurrentFacts } from "../../../../src/domain/plan/review/merge-current-facts.js";
import { asFrozen, type FoodsToday } from "../../../../src/domain/plan/review/foods-today.js";
import { foodsEaten } from "../../../../src/domain/plan/contents/foods-eaten.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { publishedRules } from "../../../imports/rules/published-rules.js";
import { bundle, food, household, line, meal, plan, swap } from "../../../kit/builders.js";
import { fits, has } from "../../nutrition/allergen-foods.js";

const { allergens: rules } = publishedRules;
const carrot = (facts: Partial<Food> = {}) => food("carrot", facts);
const now = (...foods: readonly Food[]): FoodsToday => ({
  ...asFrozen,
  bySlug: new Map(foods.map((each) => [each.slug, each])),
  fitsDiet: dietJudge(rules.diets, null),
});
const week = (...foods: readonly Food[]) =>
  bundle(
    plan([
      meal(
        "supper",
        foods.map(({ slug }) => line("100 g", slug)),
      ),
    ]),
    [],
    foods,
  );

const presences: readonly AllergenPresence[] = ["CONTAINS", "MAY_CONTAIN", "UNKNOWN", "DOES_NOT_CONTAIN"];

describe("facts of today about a food that a plan froze", () => {
  const told = (frozen: readonly AllergenPresence[], today: readonly AllergenPresence[]) => {
    const say = (each: readonly AllergenPresence[]) => carrot({ allergens: each.map((one) => has("peanut", one)) });
    const { foods } = mergeCurrentFacts(week(say(frozen)), now(say(today)));
    const { findings } = allergenStatement(foods, rules, "US", "2026-11-25");
    return findings.find(({ code }) => code === "peanut");
  };

  it.each(presences.flatMap((frozen) => presences.map((today) => [frozen, today] as const)))(
    "stand where they are less safe: frozen %s, today %s",
    (frozen, today) => {
      const worst = presences[Math.min(presences.indexOf(frozen), presences.indexOf(today))];
      expect(told([frozen], [today])?.presence).toBe(worst);
    },
  );

  it("count where the plan froze nothing at all", () => {
    expect(told([], ["CONTAINS"])).toMatchObject({ presence: "CONTAINS", contains: ["carrot"] });
    expect(told([], ["DOES_NOT_CONTAIN"])?.presence).toBe("UNKNOWN");
    expect(told(["CONTAINS"], [])?.presence).toBe("CONTAINS");
  });

  it("of a diet count in the same way", () => {
    const told = (frozen: boolean | null, today: boolean | null) => {
      const { foods } = mergeCurrentFacts(
        week(carrot({ diets: [fits("vegan", frozen)] })),
        now(carrot({ diets: [fits("vegan", today)] })),
      );
      const vegan = rules.diets.find(({ code }) => code === "vegan")!;
      return dietStatement(foods, vegan, null, rules.claims, rules.diets).fits;
    };
    const strict = [false, null, true] as const;
    for (const [a, frozen] of strict.entries())
      for (const [b, today] of strict.entries()) expect(told(frozen, today)).toBe(strict[Math.min(a, b)]);
  });

  it("count for the food that it is shopped as", () => {
    const today: FoodsToday = {
      ...now(food("groundnut-oil", { allergens: [has("peanut")] })),
      canonical: (slug) => (slug === "frying-oil" ? "groundnut-oil" : slug),
    };
    const { foods } = mergeCurrentFacts(week(food("frying-oil")), today);
    const { findings } = allergenStatement(foods, rules, "GB", "2026-11-25");
    expect(findings.find(({ code }) => code === "peanut")).toMatchObject({ contains: ["frying-oil"] });
  });

  it("decide which swap a line takes", () => {
    const frozen = carrot({ diets: [fits("no-peanut", true)] });
    const line0 = line("100 g", "carrot", { swaps: [swap("swede")] });
    const swede = food("swede", { diets: [fits("no-peanut", true)] });
    const written = bundle(plan([meal("supper", [line0])]), [], [frozen, swede]);
    const eaten = (today: FoodsToday): readonly string[] => {
      const scaled = scalePlan(written, 2, household({ diets: ["no-peanut"] }), today);
      if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
      return foodsEaten(scaled.value.compiled).plan.map(({ slug }) => slug);
    };
    expect(eaten(now(frozen, swede))).toEqual(["carrot"]);
    expect(eaten(now(carrot({ allergens: [has("peanut")] }), swede))).toEqual(["swede"]);
  });

  it("change neither the plan's bundle nor the one that is computed while they stay the same", () => {
    const frozen = week(carrot());
    expect(mergeCurrentFacts(frozen, now(carrot()))).toBe(frozen);
    const corrected = now(carrot({ allergens: [has("peanut")] }));
    expect(mergeCurrentFacts(frozen, corrected)).toBe(mergeCurrentFacts(frozen, corrected));
    expect(frozen.foods[0]?.beside).toBeUndefined();
  });
});
