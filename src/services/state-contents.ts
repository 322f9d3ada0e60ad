import type { Food } from "../domain/model/food.js";
import type { Household } from "../domain/model/household.js";
import { latest, onceFor } from "../domain/once-for.js";
import { allergenStatement } from "../domain/nutrition/allergens.js";
import type { AllergenRules } from "../domain/nutrition/allergen-rules.js";
import { dietStatements } from "../domain/nutrition/diets.js";
import type { CompiledPlan } from "../domain/plan/compiled-plan.js";
import { effectiveServings } from "../domain/plan/eaters.js";
import { planNutrition } from "../domain/plan/contents.js";
import { foodsEaten } from "../domain/plan/foods-eaten.js";
import type { Contents, PlanContents } from "../domain/plan/plan-answer.js";
import type { RuleSet } from "../domain/plan/rule-set.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { cautionedThings } from "../domain/storage/cautioned-things.js";
import { cautionsFor, type CautionsFound } from "../domain/storage/cautions.js";
import type { Clock } from "./deps.js";

export type { Contents } from "../domain/plan/plan-answer.js";

/** Allergens and diets of the whole plan and of each meal by slug, by the lists in force today in the reader's region. */
export function stateContents(
  { compiled }: ScaledPlan,
  { region }: Household,
  { allergens: rules }: RuleSet,
  clock: Clock,
): PlanContents {
  return contentsOf(compiled)(rules)({ region, today: clock().toISOString().slice(0, 10) });
}

/** A plan is compiled for one region, so it is asked the same all day. */
const contentsOf = onceFor((plan: CompiledPlan) =>
  onceFor((rules: AllergenRules) =>
    latest(
      1,
      ({ region, today }) => JSON.stringify([region, today]),
      ({ region, today }: { readonly region: string | null; readonly today: string }): PlanContents => {
        const of = (foods: readonly Food[]): Contents => ({
          allergens: allergenStatement(foods, rules, region, today),
          diets: dietStatements(foods, rules, region),
        });
        const foods = foodsEaten(plan);
        return { plan: of(foods.plan), meals: new Map([...foods.meals].map(([meal, eaten]) => [meal, of(eaten)])) };
      },
    ),
  ),
);

/** Nutrition of the plan and its meals for the servings really eaten. */
export const stateNutrition = (scaled: ScaledPlan, household: Household) =>
  planNutrition(scaled, effectiveServings(scaled.servings, household));

/** The cautions that are due, with the routes and foods as they were taken. */
export const findCautions = ({ compiled }: ScaledPlan, { safety }: RuleSet): CautionsFound =>
  cautionsOf(compiled)(safety);

const cautionsOf = onceFor((plan: CompiledPlan) => {
  const made = plan.makeOrder.map((index) => plan.components[index]!);
  const things = cautionedThings(made, plan.meals, plan.bundle.foods);
  return onceFor((safety: RuleSet["safety"]) => cautionsFor(things, safety));
});
