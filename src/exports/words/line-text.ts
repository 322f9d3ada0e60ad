import type { ScaledLine } from "../../domain/plan/scaled.js";
import { lineWords } from "./line-words.js";
import type { NameBook } from "./name-book.js";

/**
 * A scaled line as a cook reads it: "1.2 kg carrot, peeled, in thumb-sized pieces". In the writer's own unit unless the reader
 * cooks with others.
 */
export function lineText(line: ScaledLine, book: NameBook): string {
  const { amount, name, details, mark } = lineWords(line, book);
  const what = [amount, name].filter((each) => each !== null).join(" ");
  return [what, ...details.map(({ text }) => text)].join(", ") + (mark === null ? "" : ` (${mark})`);
}
