import type { Household } from "../domain/model/household.js";
import type { PlanBundle } from "../domain/model/plan.js";
import { scalePlan } from "../domain/plan/scale-plan.js";
import type { ScaledPlan, ShoppingList } from "../domain/plan/scaled.js";
import { shop } from "../domain/plan/shop.js";
import { ok, type Result } from "../domain/problem.js";

export interface ScaledForHousehold {
  readonly scaled: ScaledPlan;
  /** Computed when first asked for, and once. */
  readonly list: () => ShoppingList;
}

/** A published plan for a number of servings and one household. Fails as `scalePlan` does. */
export function scalePublishedPlan(
  bundle: PlanBundle,
  servings: number,
  household: Household,
): Result<ScaledForHousehold> {
  const result = scalePlan(bundle, servings, household);
  if (!result.ok) return result;
  const scaled = result.value;
  let list: ShoppingList | undefined;
  return ok({ scaled, list: () => (list ??= shop([scaled], household)) });
}
