import type { NutrientCode } from "../../../domain/model/food.js";
import type { NutrientAmount, Nutrition, Span } from "../../../domain/nutrition/nutrients.js";
import { saysNothing } from "../../sentences/nutrition-figures.js";
import { nutritionNotes } from "../../sentences/nutrition-notes.js";
import { markup, type Content } from "../markup.js";
import { folded, part, type PlanView } from "../plan-view.js";

const nutrients = [
  ["energyKcal", "Energy", "kcal", 0],
  ["proteinG", "Protein", "g", 1],
  ["fatG", "Fat", "g", 1],
  ["saturatedFatG", "of which saturated", "g", 1],
  ["carbohydrateG", "Carbohydrate", "g", 1],
  ["sugarsG", "of which sugars", "g", 1],
  ["fibreG", "Fibre", "g", 1],
  ["sodiumMg", "Sodium", "mg", 0],
  ["calciumMg", "Calcium", "mg", 0],
  ["ironMg", "Iron", "mg", 1],
  ["potassiumMg", "Potassium", "mg", 0],
  ["vitaminCMg", "Vitamin C", "mg", 0],
  ["cholesterolMg", "Cholesterol", "mg", 0],
] as const satisfies readonly (readonly [NutrientCode, string, string, number])[];

const inMeals: readonly NutrientCode[] = ["energyKcal", "proteinG", "fatG", "carbohydrateG", "sodiumMg"];

const bases = {
  RAW_FOODS_OVER_COOKED_WEIGHT:
    "Worked out from the raw foods, divided by the weight of the cooked dish; what is lost in cooking is not taken off.",
  RAW_FOODS_OVER_SERVINGS:
    "Worked out from the raw foods and divided by the servings; the cooked weight is not known, so nothing is said per 100 g.",
} as const satisfies Record<Nutrition["basis"], string>;

function spanText({ low, high }: Span, unit: string, places: number): string {
  const [from, to] = [low.toFixed(places), high.toFixed(places)];
  return `${from === to ? from : `${from}–${to}`} ${unit}`;
}

const percent = (share: number): string => `${Math.floor(share * 100)} %`;

/** Figures of a serving of each meal, then of all of them for one person, with what is missing and what they rest on. */
export function nutritionPart({ answer, book }: PlanView): Content {
  const { plan, meals } = answer.nutrition;
  const all = book.words.perPersonAll({ meals: plan.mealCount });
  return part(
    "figures",
    "Nutrition",
    [
      markup`<dl class="stack">${meals.map(
        ({ meal, nutrition }) => markup`<div><dt>${book.meal(meal)}</dt><dd>${mealText(nutrition)}</dd></div>`,
      )}<div><dt>${all}</dt><dd>${mealText(plan)}</dd></div></dl>`,
      nutritionNotes(plan, book).map((note) => markup`<p class="aside">${note}</p>`),
      folded("All figures", table(plan, all)),
    ],
    bases[plan.basis],
  );
}

function table({ nutrients: known }: Nutrition, all: string): Content {
  return markup`<table class="figures"><caption class="unseen">${all}, in figures</caption>
<thead><tr><th scope="col">What</th><th scope="col">${all}</th><th scope="col">100 g</th><th scope="col">Known for</th></tr></thead>
<tbody>${nutrients.map(([code, name, unit, places]) => {
    const amount = known[code];
    return markup`<tr><th scope="row">${name}</th>${
      amount === undefined
        ? markup`<td colspan="3">not known</td>`
        : [
            markup`<td>${figureText(amount, amount.perServing, unit, places)}</td>`,
            markup`<td>${amount.per100g === null ? "not known" : figureText(amount, amount.per100g, unit, places)}</td>`,
            markup`<td>${amount.complete ? "all of it" : `${percent(amount.coverage)} of the food`}</td>`,
          ]
    }</tr>`;
  })}</tbody></table>`;
}

/** Whether what is not known can only add to it. */
const qualified = ({ complete, atLeast }: NutrientAmount): string => (complete ? "" : atLeast ? "at least " : "about ");

/** A figure nothing of which is known is not "at least 0". */
function figureText(amount: NutrientAmount, span: Span, unit: string, places: number): string {
  if (saysNothing(amount, Number(span.high.toFixed(places)) === 0)) return "not known";
  return `${qualified(amount)}${spanText(span, unit, places)}`;
}

function mealText({ nutrients: known }: Nutrition): string {
  const texts = nutrients.flatMap(([code, name, unit, places]) => {
    const amount = inMeals.includes(code) ? known[code] : undefined;
    return amount === undefined ? [] : [`${name.toLowerCase()} ${figureText(amount, amount.perServing, unit, places)}`];
  });
  return texts.length === 0 ? "not known" : texts.join(", ");
}
