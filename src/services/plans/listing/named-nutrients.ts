import type { NutrientCode } from "../../../domain/model/food.js";

/** Limits that have names of their own in every way to ask; of all other nutrients there is a general one. */
export const namedNutrientLimits = {
  minProteinGrams: { nutrient: "proteinG", end: "min" },
  minFibreGrams: { nutrient: "fibreG", end: "min" },
  maxEnergyKcal: { nutrient: "energyKcal", end: "max" },
  maxCarbohydrateGrams: { nutrient: "carbohydrateG", end: "max" },
  maxSaturatedFatGrams: { nutrient: "saturatedFatG", end: "max" },
  maxSugarsGrams: { nutrient: "sugarsG", end: "max" },
  maxSodiumMilligrams: { nutrient: "sodiumMg", end: "max" },
} as const satisfies Readonly<Record<string, { readonly nutrient: NutrientCode; readonly end: "min" | "max" }>>;

export type NamedNutrientLimit = keyof typeof namedNutrientLimits;

export const nutrientLimitNames = Object.keys(namedNutrientLimits) as readonly NamedNutrientLimit[];
