import type { Food, Pack } from "../model/food.js";

/** Packs that a publisher adds to a food, as a food that builds on that one and says nothing else. */
export const packsAlone = (slug: string, packs: readonly Pack[]): Food => ({
  ...{ slug, names: [], aisle: "other", shoppedBy: "MASS", ndbNo: null, densities: [], measures: [], parts: [] },
  ...{ edible: [], yields: [], allergens: [], diets: [], nutrients: null, keepsAs: null, keeping: [], packs },
  alwaysThere: false,
  extends: { food: slug, sameIngredients: true },
  leaves: ["aisle", "shoppedBy", "alwaysThere"],
});
