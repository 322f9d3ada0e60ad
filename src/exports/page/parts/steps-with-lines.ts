import type { ScaledLine } from "../../../domain/plan/scaled.js";
import type { SessionStep } from "../../../domain/prep-session/session.js";
import { heatBothText } from "../../words/degree-text.js";
import type { NameBook } from "../../words/name-book.js";
import { stepTime } from "../../words/step-time.js";
import { markup, type Content } from "../markup.js";
import { lineMarkup } from "./line-markup.js";
import { inWritersLanguage } from "../writers-language.js";

interface StepWithLines {
  readonly step: SessionStep;
  /** What it takes, each line at the first step that does. */
  readonly lines: readonly ScaledLine[];
}

/** Lines with the first step that uses them, and those that no step names. */
export function stepsWithLines(
  steps: readonly SessionStep[],
  lines: readonly ScaledLine[],
): { readonly steps: readonly StepWithLines[]; readonly others: readonly ScaledLine[] } {
  const firstStep = new Map<string, string>();
  for (const step of steps) {
    for (const id of step.lines) if (!firstStep.has(id)) firstStep.set(id, step.id);
  }
  return {
    steps: steps.map((step) => ({ step, lines: lines.filter(({ line }) => firstStep.get(line.id) === step.id) })),
    others: lines.filter(({ line }) => !firstStep.has(line.id)),
  };
}

export const linesMarkup = (lines: readonly ScaledLine[], book: NameBook): Content =>
  lines.length > 0 && markup`<ul class="lines">${lines.map((line) => markup`<li>${lineMarkup(line, book)}</li>`)}</ul>`;

/** How to make something: each step with its time, its heat and what it takes. */
export function stepsMarkup(
  steps: readonly SessionStep[],
  lines: readonly ScaledLine[],
  made: { readonly batches: number; readonly loads: number },
  book: NameBook,
): Content {
  const together = stepsWithLines(steps, lines);
  return [
    linesMarkup(together.others, book),
    steps.length > 0 &&
      markup`<ol class="steps">${together.steps.map(({ step, lines: own }) => {
        const facts = [stepTime(step, made), heatBothText(step, book.reader)].filter((fact) => fact !== null);
        return markup`<li>${inWritersLanguage(step.text, book)}${facts.length > 0 && markup` <span class="quiet time">${facts.join(", ")}</span>`}${linesMarkup(own, book)}</li>`;
      })}</ol>`,
  ];
}
