import type { InSlices } from "../../../domain/counted-work.js";
import type { ScaledMeal } from "../../../domain/plan/scaled.js";
import { resolvedMealSteps } from "../../../domain/plan/session/resolved-steps.js";
import type { SessionStep } from "../../../domain/prep-session/session.js";
import { minutesOf } from "../../../domain/prep-session/task.js";
import { lengthText } from "../../sentences/keeping-row.js";
import { hourText } from "../../words/clock-text.js";
import { minutesText } from "../../words/minutes-text.js";
import { dateLocale, dateOfDay, dayText, weekday, whenText } from "../dates.js";
import { markup, type Content } from "../markup.js";
import { folded, part, type PlanView } from "../plan-view.js";
import { picturePart } from "./picture-part.js";
import { lateMealMarkup } from "./late-meal.js";
import { introductionMarkup, notesMarkup } from "./words-part.js";
import { stepsMarkup } from "./steps-with-lines.js";
import { swapNotes, titleMarkup } from "./swapped-foods.js";

/** Meals in the order of their days: what is left to do, until when it keeps, and what to do where that is too short. */
export function* mealsPartInSlices(view: PlanView): InSlices<Content> {
  const written: Content[] = [];
  for (const meal of view.answer.scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day)) {
    yield;
    written.push(mealMarkup(meal, view));
  }
  return part("meals", view.book.words.meals, markup`<ol class="cards">${written}</ol>`);
}

function mealMarkup(scaled: ScaledMeal, view: PlanView): Content {
  const { meal, lines, factor } = scaled;
  const { book } = view;
  const steps = resolvedMealSteps(scaled);
  const minutes = longest(steps, factor);
  const facts = [
    minutes > 0 ? book.words.page.minutes({ time: minutesText(minutes) }) : null,
    keepsText(meal.slug, view),
  ].filter((fact) => fact !== null);
  return markup`<li class="card" id="meal-${meal.slug}">
${picturePart({ image: meal.image, language: book.languageOf(meal.image?.alt ?? meal.title), publisher: view.answer.publication.publisher.slug, sizes: "6rem" })}
<p class="day">${mealDay(scaled, view)}</p>
<h3>${titleMarkup(meal.title, lines, book)}</h3>
${facts.length > 0 && markup`<p class="facts">${facts.join(" · ")}</p>`}
${lateMealMarkup(meal, view)}
${folded(book.words.page.ingredientsAndSteps, [
  introductionMarkup(meal, book),
  swapNotes(lines, book),
  stepsMarkup(steps, lines, { batches: factor, loads: 1 }, book),
  notesMarkup(meal, book),
])}
</li>`;
}

/** `Cooking day, Sunday, 1 March (eat tonight)`; `3 days later` where no start is known. */
export function mealDay({ meal }: Pick<ScaledMeal, "meal">, { answer, book }: PlanView): string {
  const words = book.words.page;
  const date = dateOfDay(meal.day, answer.household.session);
  const hour = meal.at === undefined ? null : words.at({ time: hourText(meal.at, dateLocale(book)) });
  const tonight = meal.at === undefined || meal.at >= "17:00" ? words.eatTonight : words.eatSameDay;
  const day =
    date === null
      ? meal.day === 0
        ? words.cookingDay
        : words.daysLater({ days: meal.day })
      : meal.day === 0
        ? `${words.cookingDay}, ${dayText(date, book)}`
        : `${weekday(date, book)}, ${dayText(date, book).replace(/^[^,]*, /, "")}`;
  return [meal.day === 0 ? `${day} (${tonight})` : day, hour].filter((each) => each !== null).join(", ");
}

/** Minutes from the first step to the last, of what can be done side by side the longer. */
function longest(steps: readonly SessionStep[], factor: number): number {
  const ends = new Map<string, number>();
  for (const step of steps) {
    const from = Math.max(0, ...step.after.map((id) => ends.get(id) ?? 0)) + step.minWait;
    ends.set(step.id, from + minutesOf(step, { batches: factor, loads: 1 }));
  }
  return Math.max(0, ...ends.values());
}

/** Until when a meal keeps in the fridge, as what is in it keeps. */
function keepsText(slug: string, { answer, book }: PlanView): string | null {
  const row = answer.storage.guidance.find(
    ({ subject, place }) => subject.kind === "MEAL" && subject.slug === slug && place !== "FREEZER",
  );
  if (row === undefined) return null;
  const zone = answer.household.session?.zone ?? null;
  const words = book.words.page;
  if (zone !== null && row.keepUntil !== null && row.counts === "HOURS")
    return words.eatBy({ when: whenText(row.keepUntil, zone, book) });
  if (zone !== null && row.lastDay !== null) return words.eatBy({ when: dayText(row.lastDay, book) });
  return words.eatWithin({ length: lengthText(row.days, row.counts, book.words) });
}
