import type { Warning } from "../../../domain/problem.js";
import type { Caution } from "../../../domain/storage/cautions.js";
import type { WarningNames } from "../../sentences/named-warning.js";
import { warningLines } from "../../sentences/warning-lines.js";
import { besideRegion } from "../../sentences/region-line.js";
import { sourcesText } from "../../words/source-text.js";
import { markup, type Content } from "../markup.js";
import { part, type PlanView } from "../plan-view.js";
import type { NameBook } from "../../words/name-book.js";
import type { Words } from "../../words/words.js";

/** Cautions in the words of the rules, each with where it comes from and what it is about. */
export function cautionsPart({ answer, book }: PlanView): Content {
  return part("care", "Take care", cautionsMarkup(answer.cautions.cautions, book));
}

const cautionsMarkup = (cautions: readonly Caution[], book: NameBook): Content =>
  markup`<ul class="cautions">${cautions.map(
    ({ text, source, restsOn, about }) => markup`<li><p>${text}</p>
${about.length > 0 && markup`<p class="aside">Here for: ${about.map(book.subject).join(", ")}.</p>`}
<p class="quiet">${sourcesText([source, ...restsOn])}</p></li>`,
  )}</ul>`;

/** What the reader should know beside an answer that stands, in the order in which it was found, one line a kind. */
export function warningsPart({ answer, book }: PlanView): Content {
  const texts = warningTexts(
    [...answer.scaled.warnings, ...answer.list.warnings, ...besideRegion(answer.storage.warnings)],
    book,
    book.words,
  );
  return (
    texts.length > 0 &&
    part("notes", "Worth knowing", markup`<ul class="notes">${texts.map((text) => markup`<li>${text}</li>`)}</ul>`)
  );
}

/** Prices that nobody knows are named with the cost. */
export const warningTexts = (warnings: readonly Warning[], names: WarningNames, words: Words): readonly string[] =>
  warningLines(
    warnings.filter(({ code }) => code !== "PRICE_UNKNOWN"),
    names,
    words,
  );
