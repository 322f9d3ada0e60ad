import type { DietRule } from "../../domain/nutrition/allergen-rules.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { PlanAnswer, Publication } from "../../domain/plan/plan-answer.js";
import type { Problem } from "../../domain/problem.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import { minutesText } from "../words/minutes-text.js";
import { moneyText } from "../words/money-text.js";
import { regionLine } from "../sentences/region-line.js";
import type { Words } from "../words/words.js";
import { nameBook } from "../words/name-book.js";
import { writersShow } from "../words/shown-amount.js";
import { cautionsPart, warningsPart } from "./parts/care-part.js";
import { componentsPartInSlices } from "./parts/components-part.js";
import { allergensPart, dietsPart } from "./parts/contents-part.js";
import { longDate } from "./dates.js";
import { editionPart } from "./parts/edition-part.js";
import { formChoices } from "./form/form-choices.js";
import { formFaults } from "./form/form-faults.js";
import { householdForm } from "./form/household-form.js";
import { between, markup, type Content } from "./markup.js";
import { mealsPartInSlices } from "./parts/meals-part.js";
import { nutritionPart } from "./parts/nutrition-part.js";
import { pageFrame } from "./page-frame.js";
import { listPath, planPath, publisherPath, type PageLinks } from "./page-links.js";
import { formQuery, type PlanForm } from "./form/plan-form.js";
import { picturePart } from "./parts/picture-part.js";
import { sessionPart } from "./parts/session-part.js";
import { costPart, shoppingPart } from "./parts/shopping-part.js";
import { equipmentMarkup, introductionMarkup, writersPart } from "./parts/words-part.js";
import { storagePart } from "./parts/storage-part.js";

interface PlanPageInput {
  readonly publication: Publication;
  readonly bundle: PlanBundle;
  readonly form: PlanForm;
  /** Of the rules in use. */
  readonly diets: readonly Pick<DietRule, "code" | "name">[];
  /** null: it could not be worked out, because of the problems. */
  readonly answer: PlanAnswer | null;
  readonly problems: readonly Problem[];
  readonly links: PageLinks;
}

const parts = [
  ["eaten", "Eaten"],
  ["made", "Made ahead"],
  ["bought", "Bought"],
  ["session", "The session"],
  ["keeps", "How long it keeps"],
  ["allergens", "Allergens"],
  ["diets", "Diets"],
  ["figures", "In figures"],
  ["cost", "Cost"],
  ["care", "Take care"],
  ["edition", "This edition"],
] as const;

/** Everything about one plan for one household, as a page; with faults in the form, the form and what to put right. */
export const planPage = (input: PlanPageInput): string => runToEnd(planPageInSlices(input));

/** The same, a turn for each of its parts. */
export function* planPageInSlices(input: PlanPageInput): InSlices<string> {
  const { publication, bundle, form, answer, links } = input;
  const { plan } = bundle;
  const named = { publisher: publication.publisher.slug, slug: publication.slug };
  const book = nameBook(bundle, answer?.reader ?? writersShow(plan));
  const faults = formFaults(input.problems);
  const formInput = {
    plan,
    action: planPath(named, links),
    form,
    choices: formChoices(bundle, input.diets, book),
    faults,
  };
  const worked = answer === null ? null : yield* body(answer, input, listPath(named, links) + formQuery(form));
  yield;
  return pageFrame({
    title: `${faults.size > 0 ? "Please look again: " : ""}${plan.title} · ${publication.publisher.name}`,
    links,
    canonical: faults.size > 0 ? null : links.origin + planPath(named) + formQuery(form),
    trail: [{ path: publisherPath(named.publisher), text: publication.publisher.name }],
    kind: "plan",
    main: markup`<header class="front">
<h1>${plan.title}</h1>
${plan.summary !== null && markup`<p class="summary">${plan.summary}</p>`}
${picturePart({ image: plan.image, publisher: named.publisher, sizes: "(min-width: 44rem) 40rem, 100vw", first: true })}
${introductionMarkup(plan)}
${publication.withdrawnAt !== null && markup`<p class="flag">The writer withdrew this revision on ${longDate(publication.withdrawnAt)}.${publication.withdrawnBecause !== null && ` The reason given: ${publication.withdrawnBecause}`} It is kept so that old letters still lead somewhere; do not begin with it.</p>`}
${answer !== null && regionFlag(answer, book.words)}
${answer !== null && glance(answer)}
</header>
<aside class="side">
${faults.size > 0 && markup`<p class="fault" role="alert">Nothing was worked out yet. Put right what is marked below, and ask again; nothing you typed is lost.</p>`}
${householdForm(formInput)}
${answer !== null && markup`<nav class="contents" aria-label="On this page"><ul>${parts.map(([id, text]) => markup`<li><a href="#${id}">${text}</a></li>`)}</ul></nav>`}
</aside>
${worked}`,
  });

  function* body(computed: PlanAnswer, { links: where }: PlanPageInput, listAddress: string): InSlices<Content> {
    const view = { answer: computed, book };
    const written: Content[] = [
      yield* mealsPartInSlices(view),
      equipmentMarkup(plan, book.words),
      yield* componentsPartInSlices(view),
    ];
    for (const part of [
      () => shoppingPart(view, listAddress),
      () => sessionPart(view),
      () => storagePart(view),
      () => allergensPart(view),
      () => dietsPart(view),
      () => nutritionPart(view),
      () => costPart(view),
      () => cautionsPart(view),
      () => warningsPart(view),
      () => writersPart(plan, book.words),
      () => editionPart(publication, plan, form, where),
    ]) {
      yield;
      written.push(part());
    }
    return markup`<div class="parts">
${between(written, "\n")}
</div>`;
  }
}

function regionFlag(answer: PlanAnswer, words: Words): Content {
  const line = regionLine(answer, words);
  return line !== null && markup`<p class="flag">${line}</p>`;
}

/** The few figures by which one decides. */
function glance({ scaled, list, session }: PlanAnswer): Content {
  const days = new Set(scaled.meals.map(({ meal }) => meal.day)).size;
  const facts: readonly (readonly [string, string | null])[] = [
    ["For", scaled.servings === 1 ? "1 person" : `${scaled.servings} people`],
    ["Meals", `${scaled.meals.length} on ${days === 1 ? "1 day" : `${days} days`}`],
    ["Session", session === null ? null : minutesText(session.totalMinutes)],
    ["Hands on", session === null ? null : minutesText(session.handsOnMinutes)],
    ["A serving of all", list.cost.perServing === null ? null : moneyText(list.cost.perServing)],
  ];
  return markup`<dl class="glance">${facts.map(
    ([term, value]) => value !== null && markup`<div><dt>${term}</dt><dd>${value}</dd></div>`,
  )}</dl>`;
}
