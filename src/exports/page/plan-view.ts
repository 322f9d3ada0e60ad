import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { NameBook } from "../words/name-book.js";
import { between, markup, type Content } from "./markup.js";
import { dateOfDay, dayText } from "./dates.js";

/** A plan computed, and the names in it. */
export interface PlanView {
  readonly answer: PlanAnswer;
  readonly book: NameBook;
}

/** A part of the page with its own address. */
export const part = (id: string, title: string, body: Content): Content =>
  markup`<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${title}</h2>
${body}
</section>`;

/** A part of one line, that unfolds. */
export const foldedPart = (id: string, title: string, body: Content, beside: Content = null): Content =>
  markup`<section id="${id}" class="fold"><details><summary><h2>${title}</h2>${beside !== null && beside !== false && markup` <span class="quiet">${beside}</span>`}</summary>
${body}
</details></section>`;

/** A day in the middle of a sentence: `Sun, 1 Mar`, or `3 days after cooking` where no start is known. */
export function dayInWords(day: number, { household: { session } }: PlanAnswer, book: NameBook): string {
  const date = dateOfDay(day, session);
  return date === null ? book.words.page.dayAfter({ days: day }) : dayText(date, book);
}

/** Folded away until it is wanted. */
export const folded = (summary: Content, body: Content): Content =>
  markup`<details><summary>${summary}</summary>
${body}
</details>`;

export const sentences = (texts: readonly Content[]): Content =>
  between(
    texts.filter((text) => text !== null && text !== false),
    " ",
  );
