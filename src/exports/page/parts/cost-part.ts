import type { Money } from "../../../domain/model/amount.js";
import type { Cost } from "../../../domain/shopping/cost.js";
import { moneyText } from "../../words/money-text.js";
import type { NameBook } from "../../words/name-book.js";
import { markup, type Content } from "../markup.js";
import { foodsMarkup } from "../names-markup.js";
import { saidWith } from "../said-with.js";
import { foldedPart, type PlanView } from "../plan-view.js";

/** What it costs, and what is in no sum. */
export function costPart({ answer, book }: PlanView): Content {
  const { cost } = answer.list;
  const beside = cost.atTill === null ? null : moneyText(cost.atTill, book.reader);
  return foldedPart(
    "cost",
    book.words.cost,
    costMarkup(cost, (slugs) => foodsMarkup(slugs, book), answer.nutrition.plan.mealCount, book),
    beside,
  );
}

/** @param meals that one person eats; null where a list is of several plans, of which no serving is the same */
export function costMarkup(
  { atTill, used, carriedOver, perServing, unpriced }: Cost,
  foods: (slugs: readonly string[]) => Content,
  meals: number | null,
  { reader, words: { page: words } }: Pick<NameBook, "reader" | "words">,
): Content {
  if (atTill === null) return markup`<p>${words.noPrice}</p>`;
  const rows: readonly (readonly [string, Money | null])[] = [
    [words.atTill, atTill],
    [words.foodYouEat, used],
    [words.leftInPacks, carriedOver],
    ...(meals === null ? [] : [[words.perPersonAll({ count: meals }), perServing] as const]),
  ];
  return [
    markup`<dl class="tally">${rows.map(
      ([term, money]) => money !== null && markup`<div><dt>${term}</dt><dd>${moneyText(money, reader)}</dd></div>`,
    )}</dl>`,
    unpriced.length > 0 && markup`<p>${saidWith((names) => words.excludes({ foods: names }), foods(unpriced))}</p>`,
  ];
}
