import type { Credit, WordsOfPlan, WritersTexts } from "../../../domain/model/writers-words.js";
import type { Plan } from "../../../domain/model/plan.js";
import type { NameBook } from "../../words/name-book.js";
import type { Words } from "../../words/words.js";
import { between, markup, writing, type Content } from "../markup.js";
import { foldedPart } from "../plan-view.js";
import { saidWith } from "../said-with.js";
import { inWritersLanguage, writersLanguage } from "../writers-language.js";

/** What a writer says of a plan, a meal or a component before anything else. */
export const introductionMarkup = ({ introduction }: WritersTexts, book: NameBook): Content =>
  introduction !== undefined &&
  markup`<div class="written"${writersLanguage(introduction, book)}>${writing(introduction)}</div>`;

/** What is to be at hand beside appliances. */
export const equipmentMarkup = ({ equipment = [] }: WordsOfPlan, book: NameBook): Content =>
  equipment.length > 0 &&
  markup`<p class="quiet">${saidWith(
    (things) => book.words.alsoNeeded({ things }),
    between(
      equipment.map((each) => inWritersLanguage(each, book)),
      "; ",
    ),
  )}</p>`;

/** Notes and tips of a meal or a component, and whom it leans on. */
export const notesMarkup = (said: WordsOfPlan, book: NameBook): Content => [
  ...[said.notes, said.tips].map(
    (text, at) =>
      text !== undefined &&
      markup`<div class="written"><h4>${at === 0 ? book.words.notes : book.words.tips}</h4><div${writersLanguage(text, book)}>${writing(text)}</div></div>`,
  ),
  creditsMarkup(said.credits, book.words),
];

const creditsMarkup = (credits: readonly Credit[] | undefined, words: Words): Content =>
  credits !== undefined &&
  markup`<p class="quiet">${words.credits}: ${between(
    credits.map((credit) => creditMarkup(credit, words)),
    "; ",
  )}</p>`;

const creditMarkup = ({ name, url, licence, adapted }: Credit, words: Words): Content => [
  adapted === true && `${words.adaptedFrom} `,
  url === undefined ? markup`<bdi>${name}</bdi>` : markup`<a href="${url}" rel="noopener nofollow">${name}</a>`,
  licence !== undefined && ` (${licence})`,
];

/** What the writer adds to the plan as a whole; nothing where that is nothing. */
export function writersPart(plan: WordsOfPlan & Pick<Plan, "licence">, book: NameBook): Content {
  const { words } = book;
  const { notes, tips, credits, licence, tags = [] } = plan;
  if ([notes, tips, credits, licence].every((each) => each === undefined) && tags.length === 0) return null;
  return foldedPart("writer", words.fromTheWriter, [
    notes !== undefined &&
      markup`<h3>${words.notes}</h3><div class="written"${writersLanguage(notes, book)}>${writing(notes)}</div>`,
    tips !== undefined &&
      markup`<h3>${words.tips}</h3><div class="written"${writersLanguage(tips, book)}>${writing(tips)}</div>`,
    creditsMarkup(credits, words),
    licence !== undefined && markup`<p class="quiet">${words.licensed({ licence })}</p>`,
    tags.length > 0 &&
      markup`<ul class="tags">${tags.map((tag) => markup`<li${writersLanguage(tag, book)}>${tag}</li>`)}</ul>`,
  ]);
}
