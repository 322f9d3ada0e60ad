import type { CatalogueRow } from "../../domain/model/catalogue-row.js";
import type { Food } from "../../domain/model/food.js";
import { anyLanguage, type NamedFood } from "../../domain/quantity/food-name.js";
import { foodSlug } from "../../domain/model/open-table-slug.js";

/**
 * The food that a row of the open table is by itself, before it inherits its figures (merge-catalogue-food.ts): its names and where a shop has
 * it. Nobody says what allergens it contains, which diets it fits, how long it keeps and how it is sold.
 */
export function foodOfRow({ ndbNo, description, otherNames, aisle }: CatalogueRow): Food {
  return {
    slug: foodSlug(`usda ${ndbNo}`),
    names: [
      {
        language: "en",
        region: null,
        one: description,
        many: description,
        also: [...spoken(description), ...otherNames],
      },
    ],
    aisle,
    shoppedBy: "MASS",
    ndbNo,
    densities: [],
    measures: [],
    parts: [],
    edible: [],
    yields: [],
    allergens: [],
    diets: [],
    nutrients: null,
    keepsAs: null,
    keeping: [],
    packs: [],
    alwaysThere: false,
  };
}

/** As a line of text names it: by its number alone, in whatever language. Its English words are many foods' words. */
export const calledByNumber = (food: Food): NamedFood => {
  const number = food.slug.replace("-", " ");
  return { ...food, names: [{ language: anyLanguage, region: null, one: number, many: number, also: [] }] };
};

/** "Beans, kidney, raw" is spoken of as "kidney Beans": by such words cautions know a food. */
function spoken(description: string): readonly string[] {
  const [noun, kind] = description.split(", ");
  return noun === undefined || kind === undefined ? [] : [`${kind} ${noun}`];
}
