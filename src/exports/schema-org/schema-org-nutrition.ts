import type { NutritionInformation } from "schema-dts";
import type { NutrientCode } from "../../domain/model/food.js";
import { labelScheme, printsSalt } from "../../domain/nutrition/label-figure.js";
import type { Nutrition } from "../../domain/nutrition/nutrients.js";
import { oneLine } from "../words/legible-text.js";
import type { NameBook } from "../words/name-book.js";
import { nutritionNotes } from "../sentences/nutrition-notes.js";
import { nutritionFigures } from "../sentences/nutrition-figures.js";

/** schema.org 27: what NutritionInformation has a property for. */
const properties = {
  energyKcal: ["calories", "calories"],
  proteinG: ["proteinContent", "g"],
  fatG: ["fatContent", "g"],
  saturatedFatG: ["saturatedFatContent", "g"],
  carbohydrateG: ["carbohydrateContent", "g"],
  sugarsG: ["sugarContent", "g"],
  fibreG: ["fiberContent", "g"],
  sodiumMg: ["sodiumContent", "mg"],
  cholesterolMg: ["cholesterolContent", "mg"],
} as const satisfies Partial<Record<NutrientCode, readonly [string, string]>>;

/**
 * One serving as a label may print it, with its basis. Only nutrients for which every food has a figure: half a sum would read
 * as all there is. Where the scheme prints salt, sodium is left out. null where nothing is known whole.
 */
export function schemaOrgNutrition(
  nutrition: Nutrition,
  region: string | null,
  book: Pick<NameBook, "words" | "number" | "foods" | "food">,
): Exclude<NutritionInformation, string> | null {
  const { words, number } = book;
  const scheme = labelScheme(region);
  // Programs read these.
  const figures = nutritionFigures(nutrition, scheme, "en").flatMap(
    ({ code, perServing, complete }): [string, string][] => {
      if (!complete || printsSalt(code, scheme) || !isNamed(code)) return [];
      const [property, unit] = properties[code];
      // "less than 1 g" has its unit already.
      return [[property, /[a-z]/.test(perServing) ? perServing : `${perServing} ${unit}`]];
    },
  );
  if (figures.length === 0) return null;
  const grams = nutrition.gramsPerServing;
  return {
    "@type": "NutritionInformation",
    servingSize:
      grams === null ? words.servings({ count: 1 }) : `${words.servings({ count: 1 })} (${number(grams.low, 0)} g)`,
    description: oneLine(
      [words.basis[nutrition.basis], words.roundedBy[scheme], ...nutritionNotes(nutrition, book)].join(" "),
    ),
    ...Object.fromEntries(figures),
  };
}

const isNamed = (code: NutrientCode): code is keyof typeof properties => code in properties;
