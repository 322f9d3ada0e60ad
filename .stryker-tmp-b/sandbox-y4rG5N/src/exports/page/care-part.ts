// @ts-nocheck
import type { Warning } from "../../domain/problem.js";
import type { Caution } from "../../domain/storage/cautions.js";
import { namedWarning } from "../named-warning.js";
import { warningText } from "../problem-text.js";
import { sourcesText } from "../source-text.js";
import { markup, type Content } from "./markup.js";
import { part, type PlanView } from "./plan-view.js";
import type { PlanWords } from "./plan-words.js";

/** Cautions in the words of the rules, each with where it comes from and what it is about. */
export function cautionsPart({ answer, words }: PlanView): Content {
  return part("care", "Take care", cautionsMarkup(answer.cautions.cautions, words));
}

export const cautionsMarkup = (cautions: readonly Caution[], words: PlanWords): Content =>
  markup`<ul class="cautions">${cautions.map(
    ({ text, source, restsOn, about }) => markup`<li><p>${text}</p>
${about.length > 0 && markup`<p class="aside">Here for: ${about.map(words.subject).join(", ")}.</p>`}
<p class="quiet">${sourcesText([source, ...restsOn])}</p></li>`,
  )}</ul>`;

/** What the reader should know beside an answer that stands, in the order in which it was found, each once. */
export function warningsPart({ answer, words }: PlanView): Content {
  const texts = warningTexts([...answer.scaled.warnings, ...answer.list.warnings, ...answer.storage.warnings], words);
  return (
    texts.length > 0 &&
    part("notes", "Worth knowing", markup`<ul class="notes">${texts.map((text) => markup`<li>${text}</li>`)}</ul>`)
  );
}

export const warningTexts = (warnings: readonly Warning[], words: PlanWords): readonly string[] => [
  ...new Set(warnings.map((warning) => warningText(namedWarning(warning, words.thing)))),
];
