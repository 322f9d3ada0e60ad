import type { FoodClaims } from "../model/food.js";
import type { Source } from "../model/source.js";
import { onceFor } from "../once-for.js";
import { groupOf, noneMeansNoMember } from "./allergen-codes.js";
import type { DietRule } from "./allergen-rules.js";

/**
 * Codes that are no ingredient of whatever keeps a diet: vegan food has no milk. A diet with gluten in view is a number in law
 * and no list of ingredients: gluten-free wheat starch is still wheat, so it says nothing of any cereal.
 */
const excluded = onceFor((diets: readonly DietRule[]): ReadonlyMap<string, ReadonlySet<string>> => {
  const everywhere = ({ breaks }: DietRule): readonly string[] =>
    breaks.flatMap(({ code, when, region }) =>
      when === "ALWAYS" && region === null && noneMeansNoMember(groupOf(code) ?? code) ? [code] : [],
    );
  return new Map(diets.map((diet) => [diet.code, new Set(everywhere(diet))]));
});

/** Who says something from which it follows that this is no ingredient; null: nobody. A diet that is doubted gives nothing. */
export function derivedAbsence({ diets: stated }: FoodClaims, code: string, diets: readonly DietRule[]): Source | null {
  if (stated.length === 0) return null;
  const rules = excluded(diets);
  const found = stated.find(
    ({ diet, fits }) =>
      fits === true &&
      rules.get(diet)?.has(code) === true &&
      stated.every((other) => other.diet !== diet || other.fits === true),
  );
  return found?.source ?? null;
}
