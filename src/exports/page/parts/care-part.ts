import type { Warning } from "../../../domain/problem.js";
import type { WarningNames } from "../../sentences/named-warning.js";
import { besideRegion, regionLine } from "../../sentences/region-line.js";
import { warningLines } from "../../sentences/warning-lines.js";
import type { Words } from "../../words/words.js";
import { sourcesText } from "../../words/source-text.js";
import { markup, type Content } from "../markup.js";
import { subjectsMarkup } from "../names-markup.js";
import { saidWith } from "../said-with.js";
import { folded, foldedPart, part, type PlanView } from "../plan-view.js";

/** Every caution in full in the words of the rules, and what it is about; where they come from is folded away. */
export function cautionsPart({ answer, book }: PlanView): Content {
  const words = book.words.page;
  const { cautions } = answer.cautions;
  return part("care", words.safety, [
    markup`<ul class="cautions">${cautions.map(
      ({ text, about }) => markup`<li><p>${text}</p>
${about.length > 0 && markup`<p class="quiet">${saidWith((things) => words.about({ things }), subjectsMarkup(about, book))}</p>`}</li>`,
    )}</ul>`,
    folded(
      words.sourcesOfCautions,
      markup`<ol class="sources">${cautions.map(
        ({ text, source, restsOn }) =>
          markup`<li><span class="quiet">${text.split(/(?<=\.) /)[0]}</span> ${sourcesText([source, ...restsOn])}</li>`,
      )}</ol>`,
    ),
  ]);
}

/** What the reader should know beside an answer that stands, in the order in which it was found, one line a kind. */
export function warningsPart({ answer, book }: PlanView): Content {
  const region = regionLine(answer, book.words);
  const texts = [
    ...(region === null ? [] : [region]),
    ...warningTexts(
      [...answer.scaled.warnings, ...answer.list.warnings, ...besideRegion(answer.storage.warnings)],
      book,
      book.words,
    ),
  ];
  return (
    texts.length > 0 &&
    foldedPart(
      "notes",
      book.words.page.notes,
      markup`<ul class="notes">${texts.map((text) => markup`<li>${text}</li>`)}</ul>`,
    )
  );
}

/** Prices that nobody knows are named with the cost. */
export const warningTexts = (warnings: readonly Warning[], names: WarningNames, words: Words): readonly string[] =>
  warningLines(
    warnings.filter(({ code }) => code !== "PRICE_UNKNOWN"),
    names,
    words,
  );
