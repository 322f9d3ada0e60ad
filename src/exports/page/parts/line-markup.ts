import type { ScaledLine } from "../../../domain/plan/scaled.js";
import { itemLanguage, lineWords, type LineWords } from "../../words/line-words.js";
import type { NameBook } from "../../words/name-book.js";
import { markup, type Content } from "../markup.js";
import { foodMarkup } from "../names-markup.js";
import { saidWith } from "../said-with.js";
import { inLanguage, inWritersLanguage } from "../writers-language.js";

/** One line of a recipe: the amount stands out, the rest is quiet. */
export function lineMarkup(scaled: ScaledLine, book: NameBook): Content {
  const { amount, name, details, mark } = lineWords(scaled, book);
  const language = itemLanguage(scaled, book);
  const rest = [...details, ...(mark === null ? [] : [{ text: mark, isWriters: true }])];
  return [
    // "3 onions": where nothing else names it, the amount does.
    amount !== null && markup`<b>${name === null ? inLanguage(amount, language) : amount}</b>`,
    amount !== null && name !== null && " ",
    name !== null && inLanguage(name, language),
    rest.length > 0 && markup`<span class="quiet">${rest.map((each) => [", ", detailMarkup(each, book)])}</span>`,
  ];
}

const detailMarkup = ({ text, isWriters, inPlaceOf }: LineWords["details"][number], book: NameBook): Content =>
  inPlaceOf !== undefined
    ? saidWith((food) => book.words.inPlaceOf({ food }), foodMarkup(inPlaceOf, book))
    : isWriters === true
      ? inWritersLanguage(text, book)
      : text;
