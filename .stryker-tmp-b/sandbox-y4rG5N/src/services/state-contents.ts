// @ts-nocheck
import type { Household } from "../domain/model/household.js";
import { allergenStatement } from "../domain/nutrition/allergens.js";
import { dietStatements } from "../domain/nutrition/diets.js";
import { eatenFoods } from "../domain/plan/eaten.js";
import { effectiveServings } from "../domain/plan/eaters.js";
import { foodsOfMeal, foodsOfPlan, planNutrition } from "../domain/plan/contents.js";
import type { Contents, PlanContents } from "../domain/plan/plan-answer.js";
import type { RuleSet } from "../domain/plan/rule-set.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { cautionedThings } from "../domain/storage/cautioned-things.js";
import { cautionsFor, type CautionsFound } from "../domain/storage/cautions.js";
import type { Clock } from "./deps.js";

export type { Contents } from "../domain/plan/plan-answer.js";

/** Allergens and diets of the whole plan and of each meal by slug, by the lists in force today in the reader's region. */
export function stateContents(
  scaled: ScaledPlan,
  { region }: Household,
  { allergens: rules }: RuleSet,
  clock: Clock,
): PlanContents {
  const today = clock().toISOString().slice(0, 10);
  const of = (foods: Parameters<typeof allergenStatement>[0] & Parameters<typeof dietStatements>[0]): Contents => ({
    allergens: allergenStatement(foods, rules, region, today),
    diets: dietStatements(foods, rules, region),
  });
  return {
    plan: of(foodsOfPlan(scaled)),
    meals: new Map(eatenFoods(scaled).map((eaten) => [eaten.meal.slug, of(foodsOfMeal(eaten))])),
  };
}

/** Nutrition of the plan and its meals for the servings really eaten. */
export const stateNutrition = (scaled: ScaledPlan, household: Household) =>
  planNutrition(scaled, effectiveServings(scaled.servings, household));

/** The cautions that are due, with the routes and foods as they were taken. */
export const findCautions = ({ components, meals, bundle }: ScaledPlan, { safety }: RuleSet): CautionsFound =>
  cautionsFor(cautionedThings(components, meals, bundle.foods), safety);
