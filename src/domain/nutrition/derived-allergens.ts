import type { FoodClaims } from "../model/food.js";
import { usualSpelling } from "../model/code-lists.js";
import type { Source } from "../model/source.js";
import { memoize } from "../memoize.js";
import { groupOf, noneMeansNoMember } from "./allergen-codes.js";
import type { DietRule } from "./allergen-rules.js";

/**
 * Codes that are no ingredient of whatever keeps a diet: vegan food has no milk. A diet with gluten in view is a number in law
 * and no list of ingredients: gluten-free wheat starch is still wheat, so it says nothing of any cereal.
 */
const excluded = memoize((diets: readonly DietRule[]): ReadonlyMap<string, ReadonlySet<string>> => {
  const everywhere = ({ breaks }: DietRule): readonly string[] =>
    breaks.flatMap(({ code, when, region }) =>
      when === "ALWAYS" && region === null && noneMeansNoMember(groupOf(code) ?? code) ? [code] : [],
    );
  return new Map(diets.map((diet) => [diet.code, new Set(everywhere(diet))]));
});

const codesOf = memoize((diets: readonly DietRule[]): ReadonlySet<string> => new Set(diets.map(({ code }) => code)));

/**
 * Whether it is said to keep a diet not, or not surely, that no rule has a code for, as old documents and feeds may: it may be
 * any diet. One that something unknown is kept leaves nothing open, and settles nothing.
 */
export const doubtsUnknownDiet = ({ diets: stated }: Pick<FoodClaims, "diets">, diets: readonly DietRule[]): boolean =>
  stated.some(({ diet, fits }) => fits !== true && !codesOf(diets).has(usualSpelling("diet", diet)));

/** Who says something from which it follows that this is no ingredient; null: nobody. A diet that is doubted gives nothing. */
export function derivedAbsence({ diets: stated }: FoodClaims, code: string, diets: readonly DietRule[]): Source | null {
  if (stated.length === 0 || doubtsUnknownDiet({ diets: stated }, diets)) return null;
  const rules = excluded(diets);
  const said = (diet: string): string => usualSpelling("diet", diet);
  const found = stated.find(
    ({ diet, fits }) =>
      fits === true &&
      rules.get(said(diet))?.has(code) === true &&
      stated.every((other) => said(other.diet) !== said(diet) || other.fits === true),
  );
  return found?.source ?? null;
}
