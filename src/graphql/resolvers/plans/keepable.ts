import type { Subject } from "../../../domain/storage/guidance.js";
import { componentIn, mealIn, type FrozenPlan } from "../../frozen-plan.js";
import type { FoodParent, KeepableParent } from "../../parent-types.js";
import { componentParent, foodOfPlan, mealParent } from "../make-parents.js";

/** The thing that keeps, is made, or is minded, as a parent of its own type. */
export function keepable(frozen: FrozenPlan, { kind, slug }: Subject): KeepableParent {
  switch (kind) {
    case "COMPONENT":
      return { ...componentParent(frozen, componentIn(frozen, slug)), __typename: "Component" };
    case "FOOD":
      return { ...foodOfPlan(frozen, slug), __typename: "Food" };
    case "MEAL":
      return { ...mealParent(frozen, mealIn(frozen, slug)), __typename: "Meal" };
  }
}

/** Foods of the frozen plan by slug, in the order given. */
export const foodsIn = (frozen: FrozenPlan, slugs: readonly string[]): FoodParent[] =>
  slugs.map((slug) => foodOfPlan(frozen, slug));
