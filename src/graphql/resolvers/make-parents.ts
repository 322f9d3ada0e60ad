import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { LineItem } from "../../domain/model/line.js";
import type { Meal } from "../../domain/model/plan.js";
import { languageOf } from "../../domain/quantity/reader-locale.js";
import { foodNameFor } from "../../exports/words/food-name.js";
import type { RevisionSummary } from "../../services/deps.js";
import { componentIn, foodIn, type FrozenPlan } from "../frozen-plan.js";
import type { ComponentParent, FoodParent, MealParent } from "../parent-types.js";

/** Domain values dressed as parents: each with the revision it was found in. */
export const mealParent = (frozen: FrozenPlan, meal: Meal): MealParent => ({ ...meal, frozen });

export const componentParent = (frozen: FrozenPlan, component: Component): ComponentParent => ({
  ...component,
  frozen,
});

/**
 * @param frozenIn null: as known today
 * @param asked BCP 47 tag of its reader; null: that of the plan it is frozen in, or else as it was written
 */
export function foodParent(food: Food, frozenIn: RevisionSummary | null, asked: string | null): FoodParent {
  const locale =
    frozenIn === null && asked !== null && isWrittenIn(food, asked) ? null : (asked ?? frozenIn?.locale ?? null);
  const last = lastParents.get(food);
  if (last?.frozenIn === frozenIn && last.locale === locale) return last;
  const parent = { ...food, frozenIn, locale };
  lastParents.set(food, parent);
  return parent;
}

/** Whether its reader calls it by its first name. */
const isWrittenIn = (food: Food, locale: string): boolean =>
  food.names[0]?.language === languageOf(locale) && foodNameFor(food, locale) === foodNameFor(food, null);

/** The food of that slug, as the revision froze it, for the reader of the plan. */
export const foodOfPlan = (frozen: FrozenPlan, slug: string): FoodParent =>
  foodParent(foodIn(frozen, slug), frozen.published, frozen.locale);

/** Foods in memory are shown again and again, mostly as of one revision. */
const lastParents = new WeakMap<Food, FoodParent>();

/** The food a line names, or null if it names a component. */
export const foodOf = (frozen: FrozenPlan, item: LineItem): FoodParent | null =>
  item.kind === "FOOD" ? foodOfPlan(frozen, item.food) : null;

/** The component a line names, or null if it names a food. */
export const componentOf = (frozen: FrozenPlan, item: LineItem): ComponentParent | null =>
  item.kind === "COMPONENT" ? componentParent(frozen, componentIn(frozen, item.component)) : null;

/** What an amount of this item is converted by: the food's own facts or the component's. */
export const factsOf = (frozen: FrozenPlan, item: LineItem): Food | Component =>
  item.kind === "FOOD" ? foodIn(frozen, item.food) : componentIn(frozen, item.component);
