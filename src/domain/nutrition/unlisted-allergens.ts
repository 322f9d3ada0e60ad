import { usualSpelling } from "../model/code-lists.js";
import { groupMembers } from "./allergen-codes.js";
import { claimsOf, type AllergenFood } from "./allergen-claims.js";

/** An allergen that is contained, and in which foods. */
export interface UnlistedAllergen {
  readonly code: string;
  readonly foods: readonly string[];
}

/**
 * What is contained and on none of the lists. A group is left out where the food says which member it is and that one is
 * on a list: of barley nobody needs to hear that it is a cereal with gluten as well.
 */
export function unlistedAllergens(
  foods: readonly AllergenFood[],
  listed: ReadonlySet<string>,
): readonly UnlistedAllergen[] {
  const contained = foods.flatMap((food) => {
    const codes = new Set(
      claimsOf(food).flatMap(({ allergens, singleIngredient }) => [
        ...allergens.flatMap(({ code, presence }) =>
          presence === "CONTAINS" ? [usualSpelling("allergen", code)] : [],
        ),
        // What the ingredient is itself, whether or not a statement repeats it.
        ...(singleIngredient?.is ?? []),
      ]),
    );
    const isNamed = (code: string): boolean => groupMembers(code).some((each) => codes.has(each) && listed.has(each));
    return [...codes].flatMap((code) => (listed.has(code) || isNamed(code) ? [] : [{ code, slug: food.slug }]));
  });
  return [...new Set(contained.map(({ code }) => code))].map((code) => ({
    code,
    foods: [...new Set(contained.filter((one) => one.code === code).map(({ slug }) => slug))],
  }));
}
