import type { ScaledComponent } from "../../domain/plan/scaled.js";
import { nameBook } from "../words/name-book.js";
import { wayTo } from "./ask.js";
import type { KitchenPageInput } from "./cook/cook-page.js";
import { dateOfDay, dayText } from "./dates.js";
import { markup, type Content } from "./markup.js";
import { subjectMarkup } from "./names-markup.js";
import { pageFrame } from "./page-frame.js";
import { planPath, publisherPath } from "./page-links.js";
import { frozenFor } from "./parts/late-meal.js";
import { mealDay } from "./parts/meals-part.js";
import { keptThings, placesMarkup } from "./parts/storage-part.js";
import type { PlanView } from "./plan-view.js";
import { saidWith } from "./said-with.js";
import { inWritersLanguage, writersLanguage } from "./writers-language.js";

function printPage(
  { answer, form, links }: KitchenPageInput,
  kind: "fridge" | "labels",
  body: (view: PlanView) => Content,
): string {
  const { publication, scaled, reader } = answer;
  const book = nameBook(scaled.bundle, reader);
  const words = book.words.page;
  const named = { publisher: publication.publisher.slug, slug: publication.slug };
  const title = kind === "fridge" ? words.fridgeTitle : words.labelsTitle;
  return pageFrame({
    title: `${title({ plan: scaled.bundle.plan.title })} · ${publication.publisher.name}`,
    words: book.words,
    links,
    canonical: null,
    trail: [{ path: publisherPath(named.publisher), text: publication.publisher.name }],
    kind,
    main: markup`<header class="front"><h1>${saidWith((plan) => title({ plan }), inWritersLanguage(scaled.bundle.plan.title, book))}</h1>
<div class="onward">${wayTo({ path: planPath(named, links), form, text: words.backToPlan })}</div><p class="kept">${words.printHint}</p></header>
${body({ answer, book })}`,
  });
}

/** How long everything keeps and on which day it is eaten, on one sheet for the door of the fridge. */
export const fridgePage = (input: KitchenPageInput): string =>
  printPage(input, "fridge", (view) => {
    const { answer, book } = view;
    const words = book.words.page;
    const rows = (kind: "COMPONENT" | "MEAL"): Content =>
      keptThings(answer.storage.guidance, kind).map(
        ({ subject, rows: own }) =>
          markup`<tr><th scope="row">${subjectMarkup(subject, book)}</th><td>${placesMarkup(own, view, "; ")}</td></tr>`,
      );
    return markup`<table class="door"><thead><tr><th scope="col">${book.words.what}</th><th scope="col">${words.howLong}</th></tr></thead>
<tbody>${rows("COMPONENT")}</tbody></table>
<h2>${book.words.meals}</h2>
<table class="door"><tbody>${answer.scaled.meals
      .toSorted((a, b) => a.meal.day - b.meal.day)
      .map(
        (meal) =>
          markup`<tr><th scope="row">${mealDay(meal, view)}</th><td>${inWritersLanguage(meal.meal.title, book)}${frozenFor(view, meal.meal.slug).length > 0 && markup` <b>(${words.freezeOnCookingDay})</b>`}</td></tr>`,
      )}</tbody></table>
${answer.cautions.cautions.map(({ text }) => markup`<p class="caution">${text}</p>`)}`;
  });

/** A label for every box: what it is, for which meal, how much, and until when it keeps. */
export const labelsPage = (input: KitchenPageInput): string =>
  printPage(
    input,
    "labels",
    (view) => markup`<ul class="boxes">${view.answer.scaled.components.flatMap((made) => boxesOf(made, view))}</ul>`,
  );

/** To be written by hand. */
const blank = "_".repeat(10);

function boxesOf({ component, leftOver }: ScaledComponent, view: PlanView): readonly Content[] {
  const { answer, book } = view;
  const words = book.words.page;
  const places = answer.storage.guidance.filter(
    ({ subject }) => subject.kind === "COMPONENT" && subject.slug === component.slug,
  );
  const keeps = (frozen: boolean): Content =>
    placesMarkup(
      places.filter(({ place }) => (place === "FREEZER") === frozen),
      view,
      "; ",
    );
  const made = dateOfDay(0, answer.household.session);
  const box = (amount: string | null, use: Content, frozen: boolean): Content =>
    markup`<li class="box"><b${writersLanguage(component.title, book)}>${component.title}</b>
<span>${amount !== null && [amount, ", "]}${use}</span>
<span>${words.madeOn({ day: made === null ? blank : dayText(made, book) })}</span>
<span>${frozen && [words.freezeOnCookingDay, places.some(({ place }) => place === "FREEZER") && "; "]}${keeps(frozen)}</span></li>`;
  // What is eaten on the day itself goes into no box.
  const meals = answer.scaled.meals.filter(({ meal }) => meal.day > 0);
  return [
    ...meals.flatMap((meal) =>
      meal.lines
        .filter(({ item }) => item.kind === "COMPONENT" && item.component === component.slug)
        .map(({ amount }) => {
          const isFrozen = frozenFor(view, meal.meal.slug).includes(component.slug);
          const title = inWritersLanguage(meal.meal.title, book);
          const use = [saidWith((named) => words.forMeal({ meal: named }), title), ` (${mealDay(meal, view)})`];
          return box(amount === null ? null : book.show(amount, component), use, isFrozen);
        }),
    ),
    ...(leftOver.high > 0 ? [box(book.show(leftOver, component), words.spareBox, false)] : []),
  ];
}
