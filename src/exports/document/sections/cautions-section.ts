import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { aside, listOf, section, text, type Block } from "../document.js";
import type { NameBook } from "../../words/name-book.js";
import { sourceText, sourcesText } from "../../words/source-text.js";

/** Cautions in the very words of the rules, each on a line of its own, then what it is about and where it comes from. */
export const cautionsSection = ({ cautions }: Pick<PlanAnswer, "cautions">, book: NameBook): readonly Block[] =>
  section(
    2,
    book.words.cautions,
    listOf(
      "ITEMS",
      cautions.cautions.map(({ text: words, source, restsOn, about }) => [
        [text(words)],
        ...(about.length === 0 ? [] : [[aside(book.words.about({ things: about.map(book.subject).join(", ") }))]]),
        [aside(book.words.source({ titles: sourceText(source) }))],
        ...(restsOn.length === 0 ? [] : [[aside(book.words.restsOn({ titles: sourcesText(restsOn) }))]]),
      ]),
    ),
  );
