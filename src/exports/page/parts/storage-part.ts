import type { StorageGuidance, Subject } from "../../../domain/storage/guidance.js";
import { lengthText } from "../../sentences/keeping-row.js";
import { degreeText } from "../../words/degree-text.js";
import { dayText, whenText } from "../dates.js";
import { between, markup, type Content } from "../markup.js";
import { subjectMarkup, subjectsMarkup } from "../names-markup.js";
import { folded, part, type PlanView } from "../plan-view.js";
import { saidWith } from "../said-with.js";
import { inLanguage } from "../writers-language.js";
import { conditionMarkup, keepingSources } from "./keeping-sources.js";

/** Where something keeps, for how long and until when, in one line: `fridge 48 hours, until Tue, 3 Mar, 14:00`. */
function placeMarkup(guidance: StorageGuidance, { answer, book }: PlanView): Content {
  const words = book.words.page;
  const { place, days, counts, keepUntil, lastDay, limitedBy, purpose } = guidance;
  const zone = answer.household.session?.zone ?? null;
  const until =
    place === "FREEZER" || keepUntil === null || zone === null
      ? null
      : counts === "HOURS"
        ? whenText(keepUntil, zone, book)
        : lastDay && dayText(lastDay, book);
  const told: readonly Content[] = [
    `${words.place[place]} ${lengthText(days, counts, book.words)}`,
    ...(until === null ? [] : [words.until({ when: until })]),
    ...(purpose === "QUALITY" && place !== "FREEZER" ? [words.bestQuality] : []),
    ...(limitedBy === null ? [] : [saidWith((thing) => words.becauseOf({ thing }), subjectMarkup(limitedBy, book))]),
  ];
  return between(told, ", ");
}

/** All the places of one thing, in one line. */
export const placesMarkup = (rows: readonly StorageGuidance[], view: PlanView, separator = " · "): Content =>
  between(
    rows.map((row) => placeMarkup(row, view)),
    separator,
  );

/** Everything of one kind that keeps, in the order given, with all its places. */
export function keptThings(
  guidance: readonly StorageGuidance[],
  kind: Subject["kind"],
): readonly { readonly subject: Subject; readonly rows: readonly StorageGuidance[] }[] {
  const bySlug = new Map<string, StorageGuidance[]>();
  for (const row of guidance) {
    if (row.subject.kind === kind) bySlug.set(row.subject.slug, [...(bySlug.get(row.subject.slug) ?? []), row]);
  }
  return [...bySlug].map(([slug, rows]) => ({ subject: { kind, slug }, rows }));
}

function rowsMarkup(kind: Subject["kind"], view: PlanView): Content {
  const things = keptThings(view.answer.storage.guidance, kind);
  return (
    things.length > 0 &&
    markup`<dl class="keeping">${things.map(
      ({ subject, rows }) =>
        markup`<div><dt>${subjectMarkup(subject, view.book)}</dt><dd>${placesMarkup(rows, view)}${howMarkup(rows, view)}</dd></div>`,
    )}</dl>`
  );
}

/** In what, and on which condition. */
function howMarkup(rows: readonly StorageGuidance[], { book }: PlanView): Content {
  const texts = new Map<string, Content>();
  for (const { container, basis } of rows) {
    if (container !== null) texts.set(container, inLanguage(degreeText(container), book.languageOf(container)));
    for (const each of basis)
      if (each.decides && each.condition !== null && !texts.has(each.condition))
        texts.set(each.condition, conditionMarkup(each, book));
  }
  return texts.size > 0 && markup`<span class="quiet">${between([...texts.values()], ", ")}</span>`;
}

/** How long everything keeps, a row each, on whose word, and where nobody says. */
export function storagePart(view: PlanView, printed: Content): Content {
  const { guidance, unknown } = view.answer.storage;
  const words = view.book.words.page;
  const silent = [...new Map(unknown.map(({ subject }) => [`${subject.kind} ${subject.slug}`, subject])).values()];
  const meals = rowsMarkup("MEAL", view);
  const fresh = rowsMarkup("FOOD", view);
  return part("keeps", words.storage, [
    rowsMarkup("COMPONENT", view),
    meals !== false && folded(words.mealsTogether, meals),
    (fresh !== false || silent.length > 0) &&
      folded(words.fresh, [
        fresh,
        silent.length > 0 &&
          markup`<p>${saidWith((things) => words.noTime({ things }), subjectsMarkup(silent, view.book))}</p>`,
      ]),
    guidance.length > 0 && folded(words.sources, keepingSources(guidance, view)),
    printed,
  ]);
}
