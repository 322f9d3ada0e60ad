import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { LineItem } from "../../domain/model/line.js";
import type { Meal } from "../../domain/model/plan.js";
import type { RevisionSummary } from "../../services/deps.js";
import { componentIn, foodIn, type FrozenPlan } from "../frozen-plan.js";
import type { ComponentParent, FoodParent, MealParent } from "../parent-types.js";

/** Domain values dressed as parents: each with the revision it was found in. */
export const mealParent = (frozen: FrozenPlan, meal: Meal): MealParent => ({ ...meal, frozen });

export const componentParent = (frozen: FrozenPlan, component: Component): ComponentParent => ({
  ...component,
  frozen,
});

export function foodParent(food: Food, frozenIn: RevisionSummary | null): FoodParent {
  const last = lastParents.get(food);
  if (last?.frozenIn === frozenIn) return last;
  const parent = { ...food, frozenIn };
  lastParents.set(food, parent);
  return parent;
}

/** Foods in memory are shown again and again, mostly as of one revision. */
const lastParents = new WeakMap<Food, FoodParent>();

/** The food a line names, or null if it names a component. */
export const foodOf = (frozen: FrozenPlan, item: LineItem): FoodParent | null =>
  item.kind === "FOOD" ? foodParent(foodIn(frozen, item.food), frozen.published) : null;

/** The component a line names, or null if it names a food. */
export const componentOf = (frozen: FrozenPlan, item: LineItem): ComponentParent | null =>
  item.kind === "COMPONENT" ? componentParent(frozen, componentIn(frozen, item.component)) : null;

/** What an amount of this item is converted by: the food's own facts or the component's. */
export const factsOf = (frozen: FrozenPlan, item: LineItem): Food | Component =>
  item.kind === "FOOD" ? foodIn(frozen, item.food) : componentIn(frozen, item.component);
