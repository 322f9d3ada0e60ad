import type { Credit, WordsOfPlan, WritersTexts } from "../../../domain/model/writers-words.js";
import type { Plan } from "../../../domain/model/plan.js";
import type { Words } from "../../words/words.js";
import { between, markup, writing, type Content } from "../markup.js";
import { foldedPart } from "../plan-view.js";

/** What a writer says of a plan, a meal or a component before anything else. */
export const introductionMarkup = ({ introduction }: WritersTexts): Content =>
  introduction !== undefined && markup`<div class="written">${writing(introduction)}</div>`;

/** What is to be at hand beside appliances. */
export const equipmentMarkup = ({ equipment = [] }: WordsOfPlan, words: Words): Content =>
  equipment.length > 0 && markup`<p class="quiet">${words.alsoNeeded({ things: equipment.join("; ") })}</p>`;

/** Notes and tips of a meal or a component, and whom it leans on. */
export const notesMarkup = (said: WordsOfPlan, words: Words): Content => [
  said.notes !== undefined && markup`<div class="written"><h4>${words.notes}</h4>${writing(said.notes)}</div>`,
  said.tips !== undefined && markup`<div class="written"><h4>${words.tips}</h4>${writing(said.tips)}</div>`,
  creditsMarkup(said.credits, words),
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
export function writersPart(plan: WordsOfPlan & Pick<Plan, "licence">, words: Words): Content {
  const { notes, tips, credits, licence, tags = [] } = plan;
  if ([notes, tips, credits, licence].every((each) => each === undefined) && tags.length === 0) return null;
  return foldedPart("writer", words.fromTheWriter, [
    notes !== undefined && markup`<h3>${words.notes}</h3><div class="written">${writing(notes)}</div>`,
    tips !== undefined && markup`<h3>${words.tips}</h3><div class="written">${writing(tips)}</div>`,
    creditsMarkup(credits, words),
    licence !== undefined && markup`<p class="quiet">${words.licensed({ licence })}</p>`,
    tags.length > 0 && markup`<ul class="tags">${tags.map((tag) => markup`<li>${tag}</li>`)}</ul>`,
  ]);
}
