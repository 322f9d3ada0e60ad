import type { ShoppingLine, ShoppingList } from "../../domain/plan/scaled.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { nameBook, type NameBook } from "../words/name-book.js";
import { warningTexts } from "./parts/care-part.js";
import { attributes, markup, type Content } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";
import { aislesOf, costMarkup, shelfLine } from "./parts/shopping-part.js";

/** A plan on a list, and for how many it was worked out. */
export interface ListedPlan {
  readonly bundle: PlanBundle;
  readonly publisher: { readonly slug: string; readonly name: string };
  readonly servings: number;
  /** Back to its own page, as it was asked. */
  readonly address: string;
}

interface ListPageInput {
  /** At least one. */
  readonly plans: readonly [ListedPlan, ...ListedPlan[]];
  readonly list: ShoppingList;
  readonly reader: Reader;
  readonly links: PageLinks;
  /** Of this list, as it was asked. */
  readonly address: string;
}

const people = (servings: number): string => (servings === 1 ? "for 1" : `for ${servings}`);

/** One list for all the plans, to tick in the shop and to print on paper. Ticks need no script; a script remembers them. */
export function listPage({ plans, list, reader, links, address }: ListPageInput): string {
  const [first] = plans;
  const several = plans.length > 1;
  const books = plans.map(({ bundle }) => nameBook(bundle, reader));
  const known = (slug: string, of: (book: NameBook) => string): string =>
    books.map(of).find((text) => text !== slug) ?? slug;
  const name = (slug: string): string => known(slug, (book) => book.thing(slug));
  const book = nameBook(first.bundle, reader);
  const warnings = warningTexts(
    list.warnings,
    {
      thing: name,
      meal: (slug) => known(slug, (each) => each.meal(slug)),
    },
    book.words,
  );
  return pageFrame({
    title: `To buy: ${plans.map(({ bundle }) => bundle.plan.title).join("; ")} · ${first.publisher.name}`,
    links,
    canonical: links.origin + address,
    trail: [{ path: first.address, text: first.bundle.plan.title }],
    kind: "list",
    ticks: true,
    main: markup`<header class="front"><h1>To buy</h1>
<ul class="for">${plans.map(
      (each) =>
        markup`<li><a href="${each.address}"><bdi>${each.bundle.plan.title}</bdi></a> <b>${people(each.servings)}</b></li>`,
    )}</ul></header>
<form class="ticks" id="ticks" action="#ticks" autocomplete="off"${attributes({ "data-list": address })}>
<div class="aisles">${aislesOf(list.lines, book.words).map(
      ({ title, lines, covered }) => markup`<fieldset class="aisle"><legend>${title}</legend>
<ul>${lines.map((line) => tickMarkup(line, book, several, covered))}</ul></fieldset>`,
    )}</div>
<p class="onward"><button type="reset">Take all ticks away</button></p></form>
<section class="sum" aria-labelledby="cost-title"><h2 id="cost-title">What it costs</h2>${costMarkup(
      list.cost,
      (slugs) => slugs.map(name).join(", "),
      !several,
    )}</section>
${
  warnings.length > 0 &&
  markup`<section class="mind" aria-labelledby="notes-title"><h2 id="notes-title">Worth knowing</h2><ul class="notes">${warnings.map((text) => markup`<li>${text}</li>`)}</ul></section>`
}`,
  });
}

function tickMarkup(line: ShoppingLine, book: NameBook, several: boolean, covered: boolean): Content {
  const { food, take, price, notes } = shelfLine(line, book, several);
  return markup`<li><label><input type="checkbox"${attributes({ name: "got", value: line.food.slug, checked: covered })}>
<span class="thing"><b>${food}</b>${take !== null && ` ${take}`}${price !== null && markup` <span class="price">${price}</span>`}${notes.length > 0 && markup`<span class="quiet"> ${notes.join("; ")}</span>`}</span></label></li>`;
}
