import { aisles } from "../../../domain/model/aisles.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import type { ShoppingLine } from "../../../domain/plan/scaled.js";
import type { NameBook } from "../../words/name-book.js";
import { byAisle, coveredLines, isCovered, shoppingText } from "../../document/shopping-text.js";
import { capital } from "../../words/capital.js";
import { codeName } from "../../words/rule-words.js";
import type { Words } from "../../words/words.js";

/** What to take from the shelf, as a reader stands before it. */
interface ShelfLine {
  readonly food: string;
  /** Packs, or the bare amount where none is known; null: nothing, or nobody can say how much. */
  readonly take: string | null;
  readonly price: string | null;
  /** How much the kitchen needs of it, what is in the house, what stays over. */
  readonly notes: readonly string[];
  /** What writers say of the swaps that brought it onto the list, in their own words, each once, with the plan where it stands. */
  readonly said: readonly { readonly text: string; readonly bundle: PlanBundle }[];
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
  const words = book.words.page;
  const { food: name, need, onHand, take, packs, price, optional, over } = shoppingText(line, book.reader);
  const users = line.uses.map(({ bundle, component, meal }) =>
    [severalPlans ? bundle.plan.title : null, component?.title ?? meal?.title].filter((each) => each).join(": "),
  );
  return {
    food: name,
    take,
    price,
    notes: [
      ...(isCovered(line) ? [words.nothingToBuy] : []),
      ...(line.need === null
        ? [need]
        : packs === null && onHand === null
          ? []
          : [words.uses({ amount: book.show(line.need, food) })]),
      ...(line.need !== null && line.open ? [book.words.plusMore] : []),
      ...(onHand === null ? [] : [onHand]),
      ...(optional ? [book.words.optional] : []),
      ...over.map((what) => words.leftOverParts({ what })),
    ],
    said: swapNotesOf(line),
    users: [...new Set(users)],
  };
}

/** A food that a dish was not written with came into it by a swap. */
function swapNotesOf({ food, uses }: ShoppingLine): ShelfLine["said"] {
  const notes = uses.flatMap(({ bundle, component, meal }) => {
    const lines =
      component === null
        ? (meal?.lines ?? [])
        : [...component.lines, ...component.routes.flatMap((route) => route.lines)];
    const isWritten = lines.some(({ item }) => item.kind === "FOOD" && item.food === food.slug);
    if (isWritten) return [];
    return lines.flatMap(({ swaps }) =>
      swaps.flatMap((swap) => (swap.food === food.slug && swap.note !== null ? [{ text: swap.note, bundle }] : [])),
    );
  });
  return [...new Map(notes.map((note) => [note.text, note])).values()];
}

/** `dairy-and-eggs` to `Dairy and eggs`. */
const aisleName = (aisle: string, words: Words): string => capital(codeName("aisles", aisle, words));

/** Aisles of the shop in the order of a round through it, then what most kitchens have, then what this one has. */
interface ListedAisle {
  readonly title: string;
  readonly kind: "AISLE" | "PROBABLY" | "COVERED";
  readonly lines: readonly ShoppingLine[];
}

/** Aisles of what a kitchen has in store, and grams or millilitres of it that it may well have left. Common practice, no source. */
const inStore: Readonly<Record<string, number>> = { spices: 50, "oils-and-vinegars": 250, house: 250 };

/** A spoon of a spice, some oil, salt to taste: what need not be bought for one plan. */
function isProbablyThere({ food, need }: ShoppingLine): boolean {
  const most = inStore[food.aisle];
  if (most === undefined) return false;
  return need === null || need.dimension === "COUNT" || need.high <= most;
}

const placeOf = (aisle: string): number => {
  const at = (aisles as readonly string[]).indexOf(aisle);
  return at < 0 ? aisles.length : at;
};

export function aislesOf(lines: readonly ShoppingLine[], words: Words): readonly ListedAisle[] {
  const { page } = words;
  const covered = coveredLines(lines);
  const open = lines.filter((line) => !covered.includes(line));
  const probably = open.filter(isProbablyThere);
  const walked = byAisle(open.filter((line) => !probably.includes(line))).toSorted(
    ([a], [b]) => placeOf(a) - placeOf(b),
  );
  const group = (title: string, kind: ListedAisle["kind"], of: readonly ShoppingLine[]): readonly ListedAisle[] =>
    of.length === 0 ? [] : [{ title, kind, lines: of }];
  return [
    ...walked.flatMap(([aisle, here]) => group(aisleName(aisle, words), "AISLE", here)),
    ...group(page.probablyAtHome, "PROBABLY", probably),
    ...group(page.atHomeAlready, "COVERED", covered),
  ];
}
