import type { ScaledLine } from "../../domain/plan/scaled.js";
import { foodWords } from "../food-words.js";
import { noFacts, type NameBook } from "../name-book.js";
import { showScaledLine } from "../shown-amount.js";

/** A line in its pieces, so that a page can set them apart. Read one after the other they are the line. */
export interface LineParts {
  /** `200 g`, `3 onions`; null for an amount to taste. */
  readonly amount: string | null;
  /** null where the amount names the food already. */
  readonly name: string | null;
  /** What it takes the place of, which part, how it is prepared, whether it is wanted at all. */
  readonly rest: readonly string[];
}

export function lineParts(scaled: ScaledLine, book: NameBook): LineParts {
  const { line, item } = scaled;
  const { words } = book;
  const food = item.kind === "FOOD" ? book.foodOf(item.food) : undefined;
  const names = food === undefined ? null : foodWords(food, book.reader.locale);
  const one = names?.one ?? (item.kind === "FOOD" ? item.food : book.component(item.component));
  const facts = food ?? (item.kind === "COMPONENT" ? book.componentOf(item.component) : undefined) ?? noFacts;
  const swapped = item.kind === "FOOD" && line.item.kind === "FOOD" && item.food !== line.item.food;
  const shown = showScaledLine(scaled, facts, book.reader);
  const rest = [
    swapped && line.item.kind === "FOOD" ? words.inPlaceOf(book.food(line.item.food)) : null,
    item.kind === "FOOD" ? item.part : null,
    line.preparation,
    shown === null ? words.toTaste : null,
    line.extra ? words.plusMore : null,
    line.optional ? words.optional : null,
    line.mark,
  ].filter((each) => each !== null);
  if (shown === null) return { amount: null, name: names?.many ?? one, rest };
  const pieces = shown.unit.code === "piece";
  const namesItself = pieces && facts.measures.some(({ name }) => name === "piece");
  const several = pieces && (shown.upTo ?? shown.value) > 1;
  return { amount: shown.text, name: namesItself ? null : several ? (names?.many ?? one) : one, rest };
}
