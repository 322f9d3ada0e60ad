import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { NameBook } from "../words/name-book.js";
import type { LineParts } from "./parts/line-parts.js";
import { between, markup, type Content } from "./markup.js";
import { dateOfDay, dayText } from "./dates.js";

/** A plan computed, and the names in it. */
export interface PlanView {
  readonly answer: PlanAnswer;
  readonly book: NameBook;
}

/** A part of the page with its own address. */
export const part = (id: string, title: string, body: Content, note: Content = null): Content =>
  markup`<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${title}</h2>
${note !== null && note !== false && markup`<p class="aside">${note}</p>`}
${body}
</section>`;

/** One line of a recipe: the amount stands out, the rest is quiet. */
export const lineMarkup = ({ amount, name, rest }: LineParts): Content => [
  amount !== null && markup`<b>${amount}</b>`,
  amount !== null && name !== null && " ",
  name,
  rest.length > 0 && markup`<span class="quiet">, ${rest.join(", ")}</span>`,
];

/** `Day 1` with its date, where one is known. */
export function dayName(day: number, { household: { session } }: PlanAnswer): string {
  const date = dateOfDay(day, session);
  return `Day ${day}${date === null ? "" : `, ${dayText(date)}`}`;
}

/** Folded away until it is wanted. */
export const folded = (summary: Content, body: Content): Content =>
  markup`<details><summary>${summary}</summary>
${body}
</details>`;

export const sentences = (texts: readonly Content[]): Content => between(texts, " ");
