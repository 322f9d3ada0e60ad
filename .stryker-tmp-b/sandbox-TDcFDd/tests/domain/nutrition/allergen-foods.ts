// @ts-nocheck
import type { AllergenPresence, FoodAllergen, FoodDiet } from "../../../src/domain/model/food.js";
import { allergenCodes } from "../../../src/domain/nutrition/allergen-codes.js";
import { invented } from "../../kit/builders.js";

export const has = (code: string, presence: AllergenPresence = "CONTAINS"): FoodAllergen => ({
  code,
  presence,
  source: invented,
});

export const fits = (diet: string, value: boolean | null): FoodDiet => ({ diet, fits: value, source: invented });

/** A food that says of every code but these that it is absent. */
export const onlyWith = (slug: string, ...codes: readonly string[]) => ({
  slug,
  diets: [] as readonly FoodDiet[],
  allergens: allergenCodes.map((code) => has(code, codes.includes(code) ? "CONTAINS" : "DOES_NOT_CONTAIN")),
});

/** A food with just these statements. */
export const saying = (slug: string, ...allergens: readonly FoodAllergen[]) => ({
  slug,
  diets: [] as readonly FoodDiet[],
  allergens,
});
