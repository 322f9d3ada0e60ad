import type { Household } from "../domain/model/household.js";
import type { PlanBundle } from "../domain/model/plan.js";
import { scalePlan } from "../domain/plan/scale-plan.js";
import type { ScaledPlan, ShoppingList } from "../domain/plan/scaled.js";
import { shop } from "../domain/plan/shop.js";
import { failed, ok, type Problem, type Result } from "../domain/problem.js";

export const mostPortions = 50;

/** A plan's document and how many it is cooked for. */
export interface Portion {
  readonly bundle: PlanBundle;
  readonly servings: number;
}

/** One list for several plans. Problems carry the index of their plan: `["plans", 2, "servings"]`. */
export function buildShoppingList(portions: readonly Portion[], household: Household): Result<ShoppingList> {
  const problems: Problem[] = [];
  const scaled: ScaledPlan[] = [];
  for (const [index, { bundle, servings }] of portions.entries()) {
    const result = scalePlan(bundle, servings, household);
    if (result.ok) scaled.push(result.value);
    else problems.push(...result.problems.map((problem) => ({ ...problem, path: ["plans", index, ...problem.path] })));
  }
  return problems.length > 0 ? failed(problems) : ok(shop(scaled, household));
}

/** How many plans a list may hold: at least one, so that an empty list is noticed as a mistake. */
export function portionCountProblems(count: number): readonly Problem[] {
  if (count === 0) return [{ code: "BAD_SHAPE", path: ["plans"], expected: "at least one plan", got: "none" }];
  if (count <= mostPortions) return [];
  return [{ code: "TOO_LARGE", path: ["plans"], what: "plans", size: count, limit: mostPortions }];
}
