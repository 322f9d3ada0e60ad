import type { Food } from "../model/food.js";

/** Diets that are a matter of one or more allergens, so that the allergen facts can answer where nobody stated the diet. */
const freeOf: Readonly<Record<string, readonly string[]>> = {
  "gluten-free": ["gluten"],
  "nut-free": ["tree-nuts", "peanuts"],
  "tree-nut-free": ["tree-nuts"],
  "peanut-free": ["peanuts"],
  "milk-free": ["milk"],
  "egg-free": ["egg"],
  "sesame-free": ["sesame"],
  "soy-free": ["soy"],
};

/**
 * Whether a food fits a diet: true or false where its own facts say so, null where they do not. A "may contain" breaks
 * a diet that is about that allergen; an allergen that nobody stated leaves it unknown, never fitting.
 */
export function fitsDiet(food: Food, diet: string): boolean | null {
  const stated = food.diets.find((each) => each.diet === diet)?.fits;
  const presence = (freeOf[diet] ?? []).map(
    (code) => food.allergens.find((allergen) => allergen.code === code)?.presence ?? "UNKNOWN",
  );
  if (presence.some((each) => each === "CONTAINS" || each === "MAY_CONTAIN")) return false;
  if (stated !== undefined) return stated;
  return presence.length > 0 && presence.every((each) => each === "DOES_NOT_CONTAIN") ? true : null;
}
