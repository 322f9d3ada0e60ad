import type { Food } from "../domain/model/food.js";
import type { Household } from "../domain/model/household.js";
import type { PlanBundle } from "../domain/model/plan.js";
import { asFrozen, type FoodsToday } from "../domain/plan/foods-today.js";
import { scalePlan } from "../domain/plan/scale-plan.js";
import type { ScaledPlan, ShoppingList } from "../domain/plan/scaled.js";
import { shop } from "../domain/plan/shop.js";
import { failed, ok, type Problem, type Result } from "../domain/problem.js";

/** The most plans one list may hold. */
export const mostPortions = 50;

/** A plan's document and how many it is cooked for. */
export interface Portion {
  readonly bundle: PlanBundle;
  readonly servings: number;
}

/** Reads foods as known today, in the order asked for; null where there is none. */
export type FoodReader = (slugs: readonly string[]) => Promise<readonly (Food | null)[]>;

/** Scales several plans for one household. Problems carry the index of their plan: `["plans", 2, "servings"]`. */
export function scalePortions(portions: readonly Portion[], household: Household): Result<readonly ScaledPlan[]> {
  const problems: Problem[] = [];
  const scaled: ScaledPlan[] = [];
  for (const [index, { bundle, servings }] of portions.entries()) {
    const result = scalePlan(bundle, servings, household);
    if (result.ok) scaled.push(result.value);
    else problems.push(...result.problems.map((problem) => ({ ...problem, path: ["plans", index, ...problem.path] })));
  }
  return problems.length > 0 ? failed(problems) : ok(scaled);
}

/** One list for plans that are scaled already, at the packs and prices of today. */
export async function buildShoppingList(
  plans: readonly ScaledPlan[],
  household: Household,
  readFoods: FoodReader,
): Promise<ShoppingList> {
  const slugs = [...new Set(plans.flatMap(({ bundle }) => bundle.foods.map(({ slug }) => slug)))];
  const found = await readFoods(slugs);
  const today: FoodsToday = {
    ...asFrozen,
    bySlug: new Map(found.flatMap((food) => (food === null ? [] : [[food.slug, food] as const]))),
  };
  return shop(plans, household, today);
}

/** How many plans a list may hold: at least one, so that an empty list is noticed as a mistake. */
export function portionCountProblems(count: number): readonly Problem[] {
  if (count === 0) return [{ code: "BAD_SHAPE", path: ["plans"], expected: "at least one plan", got: "none" }];
  if (count <= mostPortions) return [];
  return [{ code: "TOO_LARGE", path: ["plans"], what: "plans", size: count, limit: mostPortions }];
}
