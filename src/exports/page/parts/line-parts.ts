import type { ScaledLine } from "../../../domain/plan/scaled.js";
import { lineWords, type LineWords } from "../../words/line-words.js";
import type { NameBook } from "../../words/name-book.js";

/** A line in its pieces, so that a page can set them apart. Read one after the other they are the line. */
export interface LineParts extends Pick<LineWords, "amount" | "name"> {
  readonly rest: readonly string[];
}

export function lineParts(scaled: ScaledLine, book: NameBook): LineParts {
  const { amount, name, details, mark } = lineWords(scaled, book);
  return { amount, name, rest: mark === null ? details : [...details, mark] };
}
