import type { AllergenPresence } from "../model/food.js";
import { codesUnder } from "./allergen-codes.js";
import { isWithout, presenceOf } from "./allergen-presence.js";
import type { AllergenFood } from "./allergen-claims.js";
import type { DietRule } from "./allergen-rules.js";
import { asIngredientOfAny } from "./ingredient.js";
import { tracesOfAny } from "./allergen-traces.js";

/**
 * What must be said of a food to whoever avoids an allergen, a group with all its members; null: it is without it, by the same measure as
 * plans are listed as without it (`isWithout`).
 *
 * @param diets every diet there is a rule for: vegan food has no egg
 */
export function avoidedIn(
  food: AllergenFood,
  code: string,
  diets: readonly DietRule[],
): Exclude<AllergenPresence, "DOES_NOT_CONTAIN"> | null {
  const codes = codesUnder(code);
  const as = asIngredientOfAny(food, codes, diets);
  const traces = tracesOfAny(food, codes);
  if (isWithout({ presence: as.presence, traces })) return null;
  const presence = presenceOf(as, traces);
  return presence === "DOES_NOT_CONTAIN" ? null : presence;
}
