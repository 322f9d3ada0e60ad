import type { BaseAmount, Money } from "../../../domain/model/amount.js";
import type { Cost } from "../../../domain/shopping/cost.js";
import type { ShoppingLine } from "../../../domain/plan/scaled.js";
import { moneyText } from "../../words/money-text.js";
import { noFacts, type NameBook } from "../../words/name-book.js";
import { byAisle, codeWords, coveredLines, isCovered, shoppingText } from "../../document/shopping-text.js";
import { markup, type Content } from "../markup.js";
import type { Words } from "../../words/words.js";
import { part, type PlanView } from "../plan-view.js";

/** What to take from the shelf, as a reader stands before it. */
interface ShelfLine {
  readonly food: string;
  /** Packs, or the bare amount where none is known; null: nothing, or nobody can say how much. */
  readonly take: string | null;
  readonly price: string | null;
  /** How much the kitchen needs of it, what is in the house, what stays over. */
  readonly notes: readonly string[];
  /** Who needs it, each once. */
  readonly users: readonly string[];
}

/** @param severalPlans name the plan of every use too */
export function shelfLine(
  line: ShoppingLine,
  book: Pick<NameBook, "reader" | "show" | "words">,
  severalPlans = false,
): ShelfLine {
  const { food } = line;
  const { food: name, need, onHand, take, packs, price, optional } = shoppingText(line, book.reader, severalPlans);
  const users = line.uses.map(({ bundle, component, meal }) =>
    [severalPlans ? bundle.plan.title : null, component?.title ?? meal?.title].filter((each) => each).join(": "),
  );
  return {
    food: name,
    take,
    price,
    notes: [
      ...(isCovered(line) ? ["nothing to buy"] : []),
      ...(line.need === null
        ? [need]
        : packs === null && onHand === null
          ? []
          : [`${book.show(line.need, food)} needed`]),
      ...(line.need !== null && line.open ? [book.words.plusMore] : []),
      ...(onHand === null ? [] : [onHand]),
      ...(optional ? [book.words.optional] : []),
      ...line.partsOver.map(({ part: piece, pieces }) => `${piece} of ${book.show(count(pieces), noFacts)} left over`),
    ],
    users: [...new Set(users)],
  };
}

const count = (pieces: number): BaseAmount => ({ dimension: "COUNT", low: pieces, high: pieces });

/** `dairy-and-eggs` to `Dairy and eggs`. */
function aisleName(aisle: string): string {
  const words = codeWords(aisle);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Aisles of the shop, and after them what is in the house already. */
interface ListedAisle {
  readonly title: string;
  readonly lines: readonly ShoppingLine[];
  readonly covered: boolean;
}

export function aislesOf(
  lines: readonly ShoppingLine[],
  { inTheHouse }: Pick<Words, "inTheHouse">,
): readonly ListedAisle[] {
  const covered = coveredLines(lines);
  return [
    ...byAisle(lines).map(([aisle, here]) => ({ title: aisleName(aisle), lines: here, covered: false })),
    ...(covered.length === 0 ? [] : [{ title: inTheHouse, lines: covered, covered: true }]),
  ];
}

/** The list by aisle, with the uses of every line. */
export function shoppingPart({ answer, book }: PlanView, listAddress: string): Content {
  return part(
    "bought",
    "What to buy",
    markup`<div class="aisles">${aislesOf(answer.list.lines, book.words).map(
      ({ title, lines }) => markup`<section class="aisle"><h3>${title}</h3>
<ul class="lines">${lines.map((line) => lineMarkup(line, book))}</ul></section>`,
    )}</div>
<p class="onward"><a href="${listAddress}">The same list to tick and print</a></p>`,
  );
}

function lineMarkup(line: ShoppingLine, book: NameBook): Content {
  const { food, take, price, notes, users } = shelfLine(line, book);
  return markup`<li><b>${food}</b>${take !== null && ` ${take}`}${price !== null && markup` <span class="price">${price}</span>`}
<span class="quiet">${[...notes, `for ${users.join(", ")}`].join("; ")}</span></li>`;
}

/** What it costs, and what is in no sum. */
export const costPart = ({ answer, book }: PlanView): Content =>
  part("cost", "What it costs", costMarkup(answer.list.cost, book.foods, true));

/** @param eachServing only where every serving is the same */
export function costMarkup(
  { atTill, used, carriedOver, perServing, unpriced }: Cost,
  foods: (slugs: readonly string[]) => string,
  eachServing: boolean,
): Content {
  if (atTill === null) return markup`<p>No price is known for this place and currency.</p>`;
  const rows: readonly (readonly [string, Money | null])[] = [
    ["At the till", atTill],
    ["Of which is eaten", used],
    ["Stays in the cupboard", carriedOver],
    ["A serving of everything", eachServing ? perServing : null],
  ];
  return [
    markup`<dl class="tally">${rows.map(
      ([term, money]) => money !== null && markup`<div><dt>${term}</dt><dd>${moneyText(money)}</dd></div>`,
    )}</dl>`,
    unpriced.length > 0 && markup`<p class="aside">Not in the total: ${foods(unpriced)}.</p>`,
  ];
}
