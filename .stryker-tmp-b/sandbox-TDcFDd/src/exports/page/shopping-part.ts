// @ts-nocheck
import type { Cost, ShoppingLine, ShoppingList } from "../../domain/plan/scaled.js";
import type { Money } from "../../domain/model/amount.js";
import { markup, type Content } from "./markup.js";
import { aisleName, foodName, packsText, type PlanWords } from "./plan-words.js";
import { part, type PlanView } from "./plan-view.js";

export const moneyText = ({ amount, currency }: Money): string => `${amount} ${currency}`;

/** Lines of a list by the aisle they stand in, aisles in the order of the list. */
export function byAisle(
  list: ShoppingList,
): readonly { readonly aisle: string; readonly lines: readonly ShoppingLine[] }[] {
  const aisles = [...new Set(list.lines.map(({ food }) => food.aisle))];
  return aisles.map((aisle) => ({ aisle, lines: list.lines.filter(({ food }) => food.aisle === aisle) }));
}

/** What to take from the shelf, in the reader's words. */
export interface ShoppingWords {
  readonly food: string;
  /** Packs, or the bare amount where none is known; null: to taste, or nothing. */
  readonly take: string | null;
  /** How much the kitchen needs, where packs hold another amount. */
  readonly need: string | null;
  readonly price: string | null;
  readonly notes: readonly string[];
}

export function shoppingWords(line: ShoppingLine, words: PlanWords, region: string | null): ShoppingWords {
  const show = (amount: NonNullable<ShoppingLine["need"]>): string => words.amountOf(amount, line.food);
  const packs = packsText(line, words.reader);
  const has = line.onHand !== null && line.onHand.high > 0;
  const enough = has && line.toBuy !== null && line.toBuy.high === 0;
  const bare = line.toBuy === null || enough ? null : show(line.toBuy);
  const over = line.partsOver.map(({ part: name, pieces }) => `${name} of ${Number(pieces.toFixed(2))} left over`);
  return {
    food: foodName(line.food, words.reader, region),
    take: packs ?? bare,
    need: packs === null || line.need === null ? null : show(line.need),
    price: line.cost.atTill === null || packs === null ? null : moneyText(line.cost.atTill),
    notes: [
      ...(enough ? ["nothing to buy: there is enough in the house"] : []),
      ...(has && !enough && line.onHand !== null ? [`${show(line.onHand)} is in the house`] : []),
      ...(line.need === null ? ["to taste"] : line.open ? ["and a little more to taste"] : []),
      ...over,
    ],
  };
}

/** Who needs it, each once, in the order of the uses. */
export const usersOf = (line: ShoppingLine): readonly string[] => [
  ...new Set(line.uses.flatMap(({ component, meal }) => component?.title ?? meal?.title ?? [])),
];

/** The list by aisle, with the uses of every line. */
export function shoppingPart({ answer, words }: PlanView, listAddress: string): Content {
  const { list, household } = answer;
  return part(
    "bought",
    "What to buy",
    markup`<div class="aisles">${byAisle(list).map(
      ({ aisle, lines }) => markup`<section class="aisle"><h3>${aisleName(aisle)}</h3>
<ul class="lines">${lines.map((line) => lineOf(line, words, household.region))}</ul></section>`,
    )}</div>
<p class="onward"><a href="${listAddress}">The same list to tick and print</a></p>`,
  );
}

function lineOf(line: ShoppingLine, words: PlanWords, region: string | null): Content {
  const { food, take, need, price, notes } = shoppingWords(line, words, region);
  return markup`<li><b>${food}</b>${take !== null && ` ${take}`}${price !== null && markup` <span class="price">${price}</span>`}
<span class="quiet">${[...(need === null ? [] : [`${need} needed`]), ...notes, `for ${usersOf(line).join(", ")}`].join(
    "; ",
  )}</span></li>`;
}

/** What it costs, and what is in no sum. */
export function costPart({ answer, words }: PlanView): Content {
  const { cost } = answer.list;
  return part("cost", "What it costs", [costMarkup(cost), unpriced(cost, words)]);
}

function costMarkup({ atTill, used, carriedOver, perServing }: Cost): Content {
  if (atTill === null) return markup`<p>No price is known for this place and currency.</p>`;
  const rows: readonly (readonly [string, Money | null])[] = [
    ["At the till", atTill],
    ["Of which is eaten", used],
    ["Stays in the cupboard", carriedOver],
    ["A serving of everything", perServing],
  ];
  return markup`<dl class="tally">${rows.map(
    ([term, money]) => money !== null && markup`<div><dt>${term}</dt><dd>${moneyText(money)}</dd></div>`,
  )}</dl>`;
}

const unpriced = (cost: Cost, words: PlanWords): Content =>
  cost.unpriced.length > 0 &&
  cost.atTill !== null &&
  markup`<p class="aside">Without a price, and in no sum: ${words.foodNames(cost.unpriced)}.</p>`;
