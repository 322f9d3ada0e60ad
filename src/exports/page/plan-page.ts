import type { DietRule } from "../../domain/nutrition/allergen-rules.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { PlanAnswer, Publication } from "../../domain/plan/plan-answer.js";
import type { Problem } from "../../domain/problem.js";
import { languagesOfPlan } from "../../domain/plan/translate/texts-of.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import { nameBook, type NameBook } from "../words/name-book.js";
import { writersShow } from "../words/shown-amount.js";
import type { Addresses } from "../addresses.js";
import { schemaOrgTextInSlices } from "../schema-org/schema-org.js";
import { isPrivate, sharedQuery, wayTo } from "./ask.js";
import { openGraph } from "./open-graph.js";
import { cautionsPart, warningsPart } from "./parts/care-part.js";
import { componentsPartInSlices } from "./parts/components-part.js";
import { contentsPart } from "./parts/contents-part.js";
import { costPart } from "./parts/cost-part.js";
import { dateLocale, longDate } from "./dates.js";
import { editionPart } from "./parts/edition-part.js";
import { formChoices } from "./form/form-choices.js";
import { formFaults } from "./form/form-faults.js";
import { between, jsonData, markup, type Content } from "./markup.js";
import { mealsPartInSlices } from "./parts/meals-part.js";
import { picturePart } from "./parts/picture-part.js";
import { languagesPart } from "./parts/languages-part.js";
import { nutritionPart } from "./parts/nutrition-part.js";
import { pageFrame } from "./page-frame.js";
import {
  cookPath,
  feedLinks,
  fridgePath,
  labelsPath,
  listPath,
  otherFormPath,
  planPath,
  publisherPath,
  revisionPath,
  type PageLinks,
} from "./page-links.js";
import { formQuery, type PlanForm } from "./form/plan-form.js";
import { folded, type PlanView } from "./plan-view.js";
import { saidWith } from "./said-with.js";
import { sessionPart } from "./parts/session-part.js";
import { statePart } from "./parts/state-part.js";
import { storagePart } from "./parts/storage-part.js";
import { verdictPart } from "./parts/verdict-part.js";
import { equipmentMarkup, introductionMarkup, writersPart } from "./parts/words-part.js";
import { waysPart, type RouteDifferences } from "./parts/ways-part.js";
import { inLanguage, writersLanguage } from "./writers-language.js";

interface PlanPageInput {
  readonly publication: Publication;
  readonly bundle: PlanBundle;
  readonly form: PlanForm;
  /** Of the rules in use. */
  readonly diets: readonly Pick<DietRule, "code">[];
  /** null: it could not be worked out, because of the problems. */
  readonly answer: PlanAnswer | null;
  readonly problems: readonly Problem[];
  /** BCP 47 tag of the reader's language, where there is no answer that says it; left out: the plan's. */
  readonly locale?: string;
  readonly links: PageLinks;
  /** What other routes would change; left out: nobody weighed them. */
  readonly differences?: RouteDifferences;
}

/** Everything about one plan for one household, as a page; with faults in the form, the form and what to put right. */
export const planPage = (input: PlanPageInput): string => runToEnd(planPageInSlices(input));

/** The same, a turn for each of its parts. */
export function* planPageInSlices(input: PlanPageInput): InSlices<string> {
  const { publication, bundle, form, answer, links } = input;
  const { plan } = bundle;
  const named = { publisher: publication.publisher.slug, slug: publication.slug };
  const book = nameBook(bundle, answer?.reader ?? writersShow({ ...plan, locale: input.locale ?? plan.locale }));
  const words = book.words.page;
  const faults = formFaults(input.problems, book.words);
  const action = planPath(named, links);
  const asked = { plan, action, form, choices: formChoices(bundle, input.diets, book), faults, book };
  const ways = (): Content => [
    wayTo({ path: listPath(named, links), form, text: book.words.shoppingList, kind: "go" }),
    wayTo({ path: cookPath(named, links), form, text: words.toKitchen, kind: "go" }),
  ];
  const parts = answer === null ? null : yield* body({ answer, book });
  yield;
  const shared = links.origin + action + sharedQuery(form);
  const head = [
    feedLinks(publication.publisher, links),
    otherLanguages(bundle, (locale) => links.origin + action + sharedQuery({ ...form, locale })),
    openGraph({
      title: plan.title,
      description: plan.summary,
      address: shared,
      site: publication.publisher.name,
      locale: plan.locale,
    }),
    // Structured data is of the plan as anybody may find it: not of somebody's diets.
    answer !== null && !isPrivate(form) && jsonData(yield* schemaOrgTextInSlices(answer, addresses(form))),
  ];
  return pageFrame({
    title: `${faults.size > 0 ? `${words.lookAgain}: ` : ""}${plan.title} · ${publication.publisher.name}`,
    links,
    canonical: faults.size > 0 || isPrivate(form) ? null : shared,
    head: faults.size > 0 || links.preview !== undefined ? null : head,
    description: plan.summary,
    trail: [{ path: publisherPath(named.publisher), text: publication.publisher.name }],
    kind: "plan",
    words: book.words,
    main: markup`<header class="front">
<h1${writersLanguage(plan.title, book)}>${plan.title}</h1>
${plan.summary !== null && markup`<p class="summary"${writersLanguage(plan.summary, book)}>${plan.summary}</p>`}
${picturePart({ image: plan.image, language: book.languageOf(plan.image?.alt ?? plan.title), publisher: named.publisher, sizes: "(min-width: 44rem) 40rem, 100vw", first: true })}
${publication.withdrawnAt !== null && withdrawnFlag(publication, publication.withdrawnAt, book)}
${statePart(asked, answer)}
${answer !== null && verdictPart({ answer, book })}
${answer !== null && markup`<div class="ways">${ways()}</div>`}
${plan.introduction !== undefined && folded(words.aboutThisPlan, introductionMarkup(plan, book))}
</header>
${parts}
${languagesPart({ bundle, path: action, form, words: book.words })}
${answer !== null && markup`<div class="rail"><nav class="bar" aria-label="${words.shortcuts}">${ways()}</nav></div>`}`,
  });

  function addresses(asked: PlanForm): Addresses {
    const revision = links.origin + revisionPath(named, publication.revision, asked);
    return {
      plan: links.origin + action + formQuery(asked),
      revision,
      publisher: links.origin + publisherPath(named.publisher),
      list: links.origin + listPath(named) + formQuery(asked),
      calendar: links.origin + otherFormPath(named, "ics", null, asked),
    };
  }

  function* body(view: PlanView): InSlices<Content> {
    const written: Content[] = [
      yield* mealsPartInSlices(view),
      equipmentMarkup(plan, book),
      yield* componentsPartInSlices(view, (made) => waysPart(made, view, action, form, input.differences ?? new Map())),
    ];
    const toKitchen = markup`<div class="onward">${wayTo({ path: cookPath(named, links), form, text: words.toKitchen })}</div>`;
    const printed = markup`<div class="onward">${words.toPrint}: ${wayTo({ path: fridgePath(named, links), form, text: words.fridgeDoor })} · ${wayTo({ path: labelsPath(named, links), form, text: words.boxLabels })}</div>`;
    for (const part of [
      () => sessionPart(view, toKitchen),
      () => storagePart(view, printed),
      () => cautionsPart(view),
      () => contentsPart(view),
      () => nutritionPart(view),
      () => costPart(view),
      () => warningsPart(view),
      () => writersPart(plan, book),
      () => editionPart(publication, plan, form, links, book),
    ]) {
      yield;
      written.push(part());
    }
    return markup`<nav class="contents" aria-label="${words.onThisPage}"><ul>${contents(book).map(([id, text]) => markup`<li><a href="#${id}">${text}</a></li>`)}</ul></nav>
<div class="parts">
${between(written, "\n")}
</div>`;
  }
}

/** Where the same page can be read in each language that the plan is in; nothing where that is one. */
const otherLanguages = (bundle: PlanBundle, address: (locale: string) => string): Content => {
  const languages = languagesOfPlan(bundle);
  return (
    languages.length > 1 &&
    languages.map(
      (language) => markup`<link rel="alternate" hreflang="${language}" href="${address(language)}">
`,
    )
  );
};

const contents = ({ words }: NameBook): readonly (readonly [string, string])[] => [
  ["meals", words.meals],
  ["made", words.page.cookedAhead],
  ["session", words.page.orderOfWork],
  ["keeps", words.page.storage],
  ["care", words.page.safety],
  ["allergens", words.contents],
  ["figures", words.nutrition],
  ["cost", words.cost],
  ["edition", words.page.version],
];

function withdrawnFlag({ withdrawnBecause }: Publication, at: Date, book: NameBook): Content {
  const words = book.words.page;
  return markup`<p class="flag">${words.withdrawn({ when: longDate(at, dateLocale(book)) })}${withdrawnBecause !== null && [" ", saidWith((reason) => words.withdrawnWhy({ reason }), inLanguage(withdrawnBecause, book.originalLanguage))]} ${words.withdrawnKept}</p>`;
}
