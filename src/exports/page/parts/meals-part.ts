import type { InSlices } from "../../../domain/counted-work.js";
import { resolvedMealSteps } from "../../../domain/plan/session/resolved-steps.js";
import { stepTime } from "../../words/step-time.js";
import { introductionMarkup, notesMarkup } from "./words-part.js";
import { lineParts } from "./line-parts.js";
import { picturePart } from "./picture-part.js";
import { markup, type Content } from "../markup.js";
import { dayName, lineMarkup, part, type PlanView } from "../plan-view.js";
import type { ScaledMeal } from "../../../domain/plan/scaled.js";

/** Meals in the order of their days: what goes in, and what is left to do on the day. */
export function* mealsPartInSlices({ answer, book }: PlanView): InSlices<Content> {
  const written: Content[] = [];
  for (const meal of answer.scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day)) {
    yield;
    written.push(mealMarkup(meal, { answer, book }));
  }
  return part("eaten", "What is eaten, and when", markup`<ol class="plots">${written}</ol>`);
}

function mealMarkup(scaled: ScaledMeal, { answer, book }: PlanView): Content {
  const { meal, lines, factor } = scaled;
  const late = answer.storage.guidance.some(({ tooLateFor }) => tooLateFor.includes(meal.slug));
  return markup`<li class="plot">
<p class="label">${dayName(meal.day, answer)}${meal.at !== undefined && `, at ${meal.at}`}${meal.day === 0 && markup` <span class="quiet">on the day of the session</span>`}</p>
<h3>${meal.title}</h3>
${picturePart({ image: meal.image, publisher: answer.publication.publisher.slug, sizes: "(min-width: 44rem) 20rem, 100vw" })}
${late && markup`<p class="flag">Something in it does not keep this long: see <a href="#keeps">what to do</a>.</p>`}
${introductionMarkup(meal)}
<ul class="lines">${lines.map((line) => markup`<li>${lineMarkup(lineParts(line, book))}</li>`)}</ul>
${
  meal.steps.length > 0 &&
  markup`<ol class="steps">${resolvedMealSteps(scaled).map((step) => {
    const time = stepTime(step, { batches: factor, loads: 1 });
    return markup`<li>${step.text}${time !== null && markup` <span class="quiet time">${time}</span>`}</li>`;
  })}</ol>`
}
${notesMarkup(meal, book.words)}
</li>`;
}
