import type { NutrientCode } from "../../domain/model/food.js";
import { labelScheme } from "../../domain/nutrition/label-figure.js";
import type { Nutrition } from "../../domain/nutrition/nutrients.js";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { paragraph, plain, section, tableOf, text, type Block } from "../document.js";
import type { NameBook } from "../name-book.js";
import { nutritionFigures, type NutritionFigure } from "../nutrition-figures.js";
import { nutritionNotes } from "../nutrition-notes.js";

/** What is shown of each meal. */
const ofMeals: readonly NutrientCode[] = ["energyKcal", "proteinG", "fatG", "carbohydrateG", "sodiumMg"];

/** What a serving of each meal gives, then what all of them give one person; with the basis, and what is missing. */
export function nutritionSection(answer: PlanAnswer, book: NameBook): readonly Block[] {
  const { plan, meals } = answer.nutrition;
  const { words } = book;
  const scheme = labelScheme(answer.household.region);
  const weighed = plan.gramsPerServing !== null;
  const figures = nutritionFigures(plan, scheme);
  if (figures.length === 0) return [];
  const name = (code: NutrientCode): string =>
    code === "sodiumMg" && scheme === "EU" ? words.saltG : words.nutrients[code];
  const shown = ({ complete, atLeast }: NutritionFigure, figure: string): string =>
    complete ? figure : atLeast ? words.atLeast(figure) : words.aboutFigure(figure);
  const all = words.perPersonAll(plan.mealCount);
  const row = (title: string, nutrition: Nutrition) => {
    const known = nutritionFigures(nutrition, scheme);
    const cells = ofMeals.map((code) => known.find((each) => each.code === code));
    return [plain(title), ...cells.map((cell) => plain(cell === undefined ? "" : shown(cell, cell.perServing)))];
  };
  return section(2, words.nutrition, [
    paragraph(
      [text(`${words.basis[plan.basis]} ${words.roundedBy[scheme]}`)],
      ...nutritionNotes(plan, book).map((note) => [text(note)]),
    ),
    ...tableOf(
      [words.meal, ...ofMeals.map(name)],
      [...meals.map(({ meal, nutrition }) => row(book.meal(meal), nutrition)), row(all, plan)],
    ),
    ...tableOf(
      [words.nutrient, all, ...(weighed ? [words.hundredGrams] : []), words.coverage],
      figures.map((figure) => [
        plain(name(figure.code)),
        plain(shown(figure, figure.perServing)),
        ...(weighed ? [plain(figure.per100g === null ? "" : shown(figure, figure.per100g))] : []),
        plain(`${Math.floor(figure.coverage * 100)} %`),
      ]),
    ),
  ]);
}
