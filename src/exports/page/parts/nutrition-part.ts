import type { NutrientCode } from "../../../domain/model/food.js";
import type { NutrientAmount, Nutrition, Span } from "../../../domain/nutrition/nutrients.js";
import { saysNothing } from "../../sentences/nutrition-figures.js";
import { nutritionNotes } from "../../sentences/nutrition-notes.js";
import { capital } from "../../words/capital.js";
import type { NameBook } from "../../words/name-book.js";
import { markup, type Content } from "../markup.js";
import { folded, foldedPart, type PlanView } from "../plan-view.js";
import { writersLanguage } from "../writers-language.js";

const nutrients = [
  ["energyKcal", "kcal", 0],
  ["proteinG", "g", 1],
  ["fatG", "g", 1],
  ["saturatedFatG", "g", 1],
  ["carbohydrateG", "g", 1],
  ["sugarsG", "g", 1],
  ["fibreG", "g", 1],
  ["sodiumMg", "mg", 0],
  ["calciumMg", "mg", 0],
  ["ironMg", "mg", 1],
  ["potassiumMg", "mg", 0],
  ["vitaminCMg", "mg", 0],
  ["cholesterolMg", "mg", 0],
] as const satisfies readonly (readonly [NutrientCode, string, number])[];

const inMeals: readonly NutrientCode[] = ["energyKcal", "proteinG", "fatG", "carbohydrateG", "sodiumMg"];

function spanText({ low, high }: Span, unit: string, places: number, book: NameBook): string {
  const [from, to] = [low, high].map((value) => book.number(value, places));
  return `${from === to ? from : `${from}–${to}`} ${unit}`;
}

const percent = (share: number): string => `${Math.floor(share * 100)} %`;

/** `Fat`, and below it `of which saturated`. */
const nameOf = (code: NutrientCode, { words }: NameBook): string =>
  code === "saturatedFatG" || code === "sugarsG" ? words.page.ofWhich[code] : capital(words.nutrientNames[code]);

/** Figures of a serving of each meal, then of all of them for one person, with what is missing and what they rest on. */
export function nutritionPart({ answer, book }: PlanView): Content {
  const { plan, meals } = answer.nutrition;
  const words = book.words.page;
  const all = words.perPersonAll({ count: plan.mealCount });
  return foldedPart("figures", book.words.nutrition, [
    markup`<dl class="stack">${meals.map(
      ({ meal, nutrition }) =>
        markup`<div><dt${writersLanguage(book.meal(meal), book)}>${book.meal(meal)}</dt><dd>${mealText(nutrition, book)}</dd></div>`,
    )}<div><dt>${all}</dt><dd>${mealText(plan, book)}</dd></div></dl>`,
    nutritionNotes(plan, book).map((note) => markup`<p class="aside">${note}</p>`),
    folded(words.allFigures, table(plan, all, book)),
    markup`<p class="quiet">${words.basisOf[plan.basis]}</p>`,
  ]);
}

function table({ nutrients: known }: Nutrition, all: string, book: NameBook): Content {
  const words = book.words.page;
  return markup`<table class="figures"><caption class="unseen">${words.figuresOf({ what: all })}</caption>
<thead><tr><th scope="col">${book.words.nutrient}</th><th scope="col">${all}</th><th scope="col">${book.words.hundredGrams}</th><th scope="col">${words.knownFor}</th></tr></thead>
<tbody>${nutrients.map(([code, unit, places]) => {
    const amount = known[code];
    return markup`<tr><th scope="row">${nameOf(code, book)}</th>${
      amount === undefined
        ? markup`<td colspan="3">${book.words.figureUnknown}</td>`
        : [
            markup`<td>${figureText(amount, amount.perServing, unit, places, book)}</td>`,
            markup`<td>${amount.per100g === null ? book.words.figureUnknown : figureText(amount, amount.per100g, unit, places, book)}</td>`,
            markup`<td>${amount.complete ? words.allOfIt : words.ofTheFood({ share: percent(amount.coverage) })}</td>`,
          ]
    }</tr>`;
  })}</tbody></table>`;
}

/** A figure nothing of which is known is not "at least 0"; what is not known may only add to it, or not. */
function figureText(amount: NutrientAmount, span: Span, unit: string, places: number, book: NameBook): string {
  const { words } = book;
  if (saysNothing(amount, Number(span.high.toFixed(places)) === 0)) return words.figureUnknown;
  const figure = spanText(span, unit, places, book);
  return amount.complete ? figure : amount.atLeast ? words.atLeast({ figure }) : words.aboutFigure({ figure });
}

function mealText({ nutrients: known }: Nutrition, book: NameBook): string {
  const { words } = book;
  const texts = nutrients.flatMap(([code, unit, places]) => {
    const amount = inMeals.includes(code) ? known[code] : undefined;
    return amount === undefined
      ? []
      : [`${nameOf(code, book)} ${figureText(amount, amount.perServing, unit, places, book)}`];
  });
  return texts.length === 0 ? words.figureUnknown : texts.join(", ");
}
