import type { Food, FoodClaims } from "../model/food.js";
import { memoize } from "../memoize.js";

/** A food as far as allergens and diets go. */
export type AllergenFood = Pick<Food, "slug" | "allergens"> &
  Partial<Pick<Food, "diets" | "singleIngredient" | "beside">>;

const none: FoodClaims["diets"] = [];

/** Everything that is said of a food: by itself, and beside it. */
export function claimsOf(food: AllergenFood): readonly FoodClaims[] {
  const { beside } = food;
  return beside === undefined || beside.length === 0 ? [own(food)] : [own(food), ...beside];
}

/** The same object each time, because much is known of it as long as it lives. */
const own = memoize((food: AllergenFood): FoodClaims =>
  food.diets === undefined ? { ...food, diets: none } : (food as FoodClaims),
);
