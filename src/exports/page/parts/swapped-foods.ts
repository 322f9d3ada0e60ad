import type { ScaledLine } from "../../../domain/plan/scaled.js";
import type { NameBook } from "../../words/name-book.js";
import { between, markup, type Content } from "../markup.js";
import { foodMarkup } from "../names-markup.js";
import { saidWith } from "../said-with.js";
import { inWritersLanguage, writersLanguage } from "../writers-language.js";

interface Swapped {
  readonly food: string;
  readonly other: string;
  /** What its author says of the change. */
  readonly note: string | null;
}

/** Foods that stand in these lines in place of those that were written, each once. */
export function swappedFoods(lines: readonly ScaledLine[]): readonly Swapped[] {
  const found = new Map<string, Swapped>();
  for (const { item, line } of lines) {
    if (item.kind !== "FOOD" || line.item.kind !== "FOOD" || item.food === line.item.food) continue;
    const note = line.swaps.find(({ food }) => food === item.food)?.note ?? null;
    found.set(`${item.food} ${line.item.food}`, { food: item.food, other: line.item.food, note });
  }
  return [...found.values()];
}

/** A dish is named for what is in it: its title, and what took the place of what. */
export const titleMarkup = (title: string, lines: readonly ScaledLine[], book: NameBook): Content => {
  const swapped = swappedFoods(lines);
  return [
    inWritersLanguage(title, book),
    swapped.length > 0 &&
      markup` <span class="with">${between(
        swapped.map(({ food, other }) =>
          saidWith(
            (own, from) => book.words.page.madeWith({ food: own, other: from }),
            foodMarkup(food, book),
            foodMarkup(other, book),
          ),
        ),
        ", ",
      )}</span>`,
  ];
};

/** What authors say of the swaps that were taken. */
export const swapNotes = (lines: readonly ScaledLine[], book: NameBook): Content =>
  swappedFoods(lines).map(
    ({ note }) => note !== null && markup`<p class="aside"${writersLanguage(note, book)}>${note}</p>`,
  );
