// @ts-nocheck
import { labelScheme } from "../../domain/nutrition/label-figure.js";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { paragraph, plain, section, tableOf, text, type Block } from "../document.js";
import type { NameBook } from "../name-book.js";
import { nutritionFigures, type NutritionFigure } from "../nutrition-figures.js";

/** What one serving of all meals together gives, with its basis and for how much of the food it is known. */
export function nutritionSection(answer: PlanAnswer, book: NameBook): readonly Block[] {
  const { plan } = answer.nutrition;
  const { words, foods } = book;
  const scheme = labelScheme(answer.household.region);
  const weighed = plan.gramsPerServing !== null;
  const figures = nutritionFigures(plan, scheme);
  if (figures.length === 0) return [];
  const name = ({ code }: NutritionFigure): string =>
    code === "sodiumMg" && scheme === "EU" ? words.saltG : words.nutrients[code];
  const shown = ({ complete }: NutritionFigure, figure: string): string => (complete ? figure : words.atLeast(figure));
  return section(2, words.nutrition, [
    paragraph(
      [text(`${words.basis[plan.basis]} ${words.roundedBy[scheme]}`)],
      ...(plan.unweighed.length === 0 ? [] : [[text(words.unweighed(foods(plan.unweighed)))]]),
    ),
    ...tableOf(
      [words.nutrient, words.oneServing, ...(weighed ? [words.hundredGrams] : []), words.coverage],
      figures.map((figure) => [
        plain(name(figure)),
        plain(shown(figure, figure.perServing)),
        ...(weighed ? [plain(figure.per100g === null ? "" : shown(figure, figure.per100g))] : []),
        plain(`${Math.floor(figure.coverage * 100)} %`),
      ]),
    ),
  ]);
}
