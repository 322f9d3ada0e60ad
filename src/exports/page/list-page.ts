import { languagesPart } from "./parts/languages-part.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { Household } from "../../domain/model/household.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ShoppingLine, ShoppingList } from "../../domain/plan/scaled.js";
import { otherFoodLanguage } from "../words/food-words.js";
import { moneyText } from "../words/money-text.js";
import { nameBook, type NameBook } from "../words/name-book.js";
import { wishTexts } from "../words/wish-texts.js";
import { isPrivate, sharedQuery, wayTo } from "./ask.js";
import type { PlanForm } from "./form/plan-form.js";
import { attributes, between, markup, type Content } from "./markup.js";
import { foodMarkup } from "./names-markup.js";
import { pageFrame } from "./page-frame.js";
import { listPath, planPath, type PageLinks } from "./page-links.js";
import { warningTexts } from "./parts/care-part.js";
import { costMarkup } from "./parts/cost-part.js";
import { aislesOf, shelfLine } from "./parts/shopping-part.js";
import { folded } from "./plan-view.js";
import { inWritersLanguage, writersLanguage } from "./writers-language.js";

/** A plan on a list, and for how many it was worked out. */
export interface ListedPlan {
  readonly bundle: PlanBundle;
  readonly publisher: { readonly slug: string; readonly name: string };
  readonly servings: number;
  /** What its own page is asked. */
  readonly form: PlanForm;
}

interface ListPageInput {
  /** At least one. */
  readonly plans: readonly [ListedPlan, ...ListedPlan[]];
  readonly list: ShoppingList;
  readonly reader: Reader;
  readonly household: Pick<Household, "diets" | "avoidAllergens">;
  /** Foods whose labels are to be read for allergens. */
  readonly labels: ReadonlySet<string>;
  readonly links: PageLinks;
  /** The other plans of this list, as they stand in its address. */
  readonly others: string;
}

/** One list for all the plans, to tick in the shop and to print on paper. Ticks need no script; a script remembers them. */
export const listPage = (input: ListPageInput): string => runToEnd(listPageInSlices(input));

/** The same turn by turn, a line at a time. */
export function* listPageInSlices(input: ListPageInput): InSlices<string> {
  const { plans, list, reader, links, household, others } = input;
  const [first, ...rest] = plans;
  const several = plans.length > 1;
  const book = nameBook(first.bundle, reader);
  const books: ListBooks = [book, ...rest.map(({ bundle }) => nameBook(bundle, reader))];
  const known = (slug: string, of: (book: NameBook) => string): string =>
    books.map(of).find((text) => text !== slug) ?? slug;
  const name = (slug: string): string => known(slug, (book) => book.thing(slug));
  const words = book.words.page;
  const names = { thing: name, meal: (slug: string) => known(slug, (each) => each.meal(slug)) };
  const warnings = warningTexts(list.warnings, names, book.words);
  const { atTill } = list.cost;
  const path = planPath({ publisher: first.publisher.slug, slug: first.bundle.plan.slug }, links);
  const query = sharedQuery(first.form);
  const facts = [
    ...(atTill === null ? [] : [moneyText(atTill, reader)]),
    ...(several ? [] : [words.people({ count: first.servings })]),
    ...wishTexts(household, book.words),
  ];
  const aisles: Content[] = [];
  for (const { title, lines, kind } of aislesOf(list.lines, book.words)) {
    const rows: Content[] = [];
    for (const line of lines) {
      yield;
      rows.push(tickMarkup(line, books, input, kind === "COVERED"));
    }
    aisles.push(markup`<fieldset class="aisle"><legend>${title}</legend>
<ul>${rows}</ul></fieldset>`);
  }
  yield;
  return pageFrame({
    title: `${words.listTitle({ plans: plans.map(({ bundle }) => bundle.plan.title).join("; ") })} · ${first.publisher.name}`,
    words: book.words,
    links,
    canonical: `${links.origin}${listPath({ publisher: first.publisher.slug, slug: first.bundle.plan.slug })}${query}${others === "" ? "" : `${query === "" ? "?" : "&"}${others}`}`,
    trail: [{ path: path + query, text: inWritersLanguage(first.bundle.plan.title, book) }],
    kind: "list",
    script: "ticks",
    main: markup`<header class="front"><h1>${book.words.shoppingList}</h1>
<ul class="for">${plans.map(
      (each, at) =>
        markup`<li>${wayTo({ path: planPath({ publisher: each.publisher.slug, slug: each.bundle.plan.slug }, links), form: each.form, text: markup`<bdi${writersLanguage(each.bundle.plan.title, books[at] ?? book)}>${each.bundle.plan.title}</bdi>` })} <b>${words.forPeople({ count: each.servings })}</b></li>`,
    )}</ul></header>
<form class="ticks" id="ticks" action="#ticks" autocomplete="off"${attributes({ "data-plans": plansKey(plans), "data-private": isPrivate(first.form), "data-count": words.gotOf({ got: "{got}", all: "{all}" }) })}>
<p class="count"><b id="count">${words.things({ count: list.lines.length })}</b> <span class="total">${facts.join(" · ")}</span></p>
<div class="aisles">${aisles}</div>
<details class="basket" id="basket" hidden><summary>${words.inTheBasket} <b id="basket-count"></b></summary><ul></ul></details>
<p class="onward clear"><button type="reset">${words.clearTicks}</button> <button type="button" id="undo" hidden>${words.undo}</button></p></form>
<section class="sum">${folded(
      book.words.cost,
      costMarkup(
        list.cost,
        (slugs) =>
          between(
            slugs.map((slug) => foodMarkup(slug, books.find((each) => each.foodOf(slug) !== undefined) ?? book)),
            ", ",
          ),
        several ? null : first.bundle.plan.meals.length,
        book,
      ),
    )}</section>
${
  warnings.length > 0 &&
  markup`<section class="mind">${folded(words.worthKnowing, markup`<ul class="notes">${warnings.map((text) => markup`<li>${text}</li>`)}</ul>`)}</section>`
}
<p class="quiet kept">${words.ticksKept} ${words.offline}</p>
${!several && languagesPart({ bundle: first.bundle, path: listPath({ publisher: first.publisher.slug, slug: first.bundle.plan.slug }, links), form: first.form, words: book.words })}`,
  });
}

/** Ticks belong to these plans, for however many they are. */
const plansKey = (plans: readonly ListedPlan[]): string =>
  plans
    .map(({ bundle: { plan } }) => `${plan.publisher}/${plan.slug}`)
    .toSorted()
    .join(" ");

/** How the reader knows the things of each plan, in the order of the plans. */
type ListBooks = readonly [NameBook, ...NameBook[]];

function tickMarkup(line: ShoppingLine, books: ListBooks, { plans, labels }: ListPageInput, covered: boolean): Content {
  const [book] = books;
  const { food, take, price, notes, said } = shelfLine(line, book, plans.length > 1);
  const language = otherFoodLanguage(line.food, book.reader.locale, book.words);
  const writers = said.map(({ text, bundle }) => {
    const at = plans.findIndex((each) => isSamePlan(each.bundle, bundle));
    return inWritersLanguage(text, books[at] ?? book);
  });
  return markup`<li><label><input type="checkbox"${attributes({ name: "got", value: line.food.slug, checked: covered })}>
<span class="thing"><b${attributes({ lang: language })}>${food}</b>${take !== null && markup` <span class="take">${take}</span>`}${labels.has(line.food.slug) && markup` <span class="badge">${book.words.page.readTheLabel}</span>`}${notes.length > 0 && markup` <span class="quiet">${notes.join("; ")}</span>`}${writers.length > 0 && markup` <span class="quiet">${between(writers, " ")}</span>`}</span>${price !== null && markup`<span class="price">${price}</span>`}</label></li>`;
}

const isSamePlan = ({ plan: a }: PlanBundle, { plan: b }: PlanBundle): boolean =>
  a.slug === b.slug && a.publisher === b.publisher;
