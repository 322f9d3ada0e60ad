import type { InSlices } from "../../domain/counted-work.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ShoppingList } from "../../domain/plan/scaled.js";
import { costText } from "../words/cost-text.js";
import { heading, paragraph, text, type Block } from "./document.js";
import { foodWords } from "../words/food-words.js";
import { listBlocksInSlices } from "./sections/list-section.js";
import { warningsSection } from "./sections/warnings-section.js";
import { wordsFor } from "../words/words-for.js";

/** A shopping list alone, over one plan or several. */
export interface ListInput {
  readonly list: ShoppingList;
  /** The plans it is for, in the order asked for. */
  readonly plans: readonly Pick<PlanBundle, "plan" | "components">[];
  readonly reader: Reader;
  /** Servings, where the list is for one plan; null for several. */
  readonly servings: number | null;
}

/** The list by aisle, its cost, and what a reader should know beside it. */
export function* listDocumentInSlices({ list, plans, reader, servings }: ListInput): InSlices<readonly Block[]> {
  const words = wordsFor(reader.locale);
  const titles = plans.map(({ plan }) => plan.title).join(", ");
  const names = new Map(list.lines.map(({ food }) => [food.slug, foodWords(food, reader.locale).one]));
  const name = (slug: string): string => names.get(slug) ?? slug;
  const titlesMade = new Map(
    plans.flatMap(({ components }) => components.map((made): [string, string] => [made.slug, made.title])),
  );
  const titlesOfMeals = new Map(plans.flatMap(({ plan }) => plan.meals.map(({ slug, title }) => [slug, title])));
  const lines = yield* listBlocksInSlices(list, reader, plans.length > 1, 2);
  yield;
  return [
    heading(1, words.shoppingListFor({ plans: titles })),
    ...(servings === null ? [] : [paragraph([text(`${words.forServings({ count: servings })}.`)])]),
    ...lines,
    paragraph([text(costText(list.cost, servings, reader, name))]),
    ...warningsSection(list.warnings, words, {
      thing: (slug) => titlesMade.get(slug) ?? name(slug),
      meal: (slug) => titlesOfMeals.get(slug) ?? slug,
    }),
  ];
}
