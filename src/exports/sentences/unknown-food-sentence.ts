import type { Problem } from "../../domain/problem.js";
import { orList } from "../words/and-list.js";

type UnknownFood = Extract<Problem, { readonly code: "UNKNOWN_FOOD" }>;

/** What may be meant, and a document of a new food to paste: words that YAML would read otherwise stand in quotes. */
export function unknownFoodSentence({ food, offer }: UnknownFood): string {
  const missing = `There is no food "${food}".`;
  if (offer === undefined) return `${missing} Check the slug, or save the food first.`;
  const { nearest, rows, slug, language } = offer;
  const meant = nearest.length === 0 ? "" : ` Did you mean ${orList(nearest)}?`;
  const table = rows.map(({ ndbNo, description }) => `usda ${ndbNo} (${description})`);
  const ofTable =
    table.length === 0 ? "" : ` The open food table has ${orList(table)}: write its number in place of the food.`;
  const name = JSON.stringify(food);
  const document =
    slug === null
      ? " Look for what it is called with `foods(search)`, or save a food of your own first."
      : ` Or save a food of your own first: {kind: food, slug: ${slug}, names: {${language}: ${name}}, aisle: other, shopped-by: mass}`;
  return `${missing}${meant}${ofTable}${document}`;
}
