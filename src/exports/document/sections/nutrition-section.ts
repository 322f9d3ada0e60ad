import type { NutrientCode } from "../../../domain/model/food.js";
import { labelScheme, printsSalt } from "../../../domain/nutrition/label-figure.js";
import type { Nutrition } from "../../../domain/nutrition/nutrients.js";
import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { paragraph, plain, section, tableOf, text, type Block } from "../document.js";
import type { NameBook } from "../../words/name-book.js";
import { nutritionFigures, saysNothing, type NutritionFigure } from "../../sentences/nutrition-figures.js";
import { nutritionNotes } from "../../sentences/nutrition-notes.js";

/** What is shown of each meal. */
const ofMeals: readonly NutrientCode[] = ["energyKcal", "proteinG", "fatG", "carbohydrateG", "sodiumMg"];

/** What a serving of each meal gives, then what all of them give one person; with the basis, and what is missing. */
export function nutritionSection(answer: PlanAnswer, book: NameBook): readonly Block[] {
  const { plan, meals } = answer.nutrition;
  const { words } = book;
  const scheme = labelScheme(answer.household.region);
  const weighed = plan.gramsPerServing !== null;
  const figures = nutritionFigures(plan, scheme, book.reader.locale);
  if (figures.length === 0) return [];
  const name = (code: NutrientCode): string => (printsSalt(code, scheme) ? words.saltG : words.nutrients[code]);
  const inSentence = (code: NutrientCode): string => words.nutrientNames[printsSalt(code, scheme) ? "salt" : code];
  const shown = (of: NutritionFigure, figure: string): string => {
    if (of.complete) return figure;
    if (saysNothing(of, /^0([.,]0+)?$/.test(figure))) return words.figureUnknown;
    return of.atLeast ? words.atLeast({ figure }) : words.aboutFigure({ figure });
  };
  const all = words.perPersonAll({ meals: plan.mealCount });
  const row = (title: string, nutrition: Nutrition, language: string | null = null) => {
    const known = nutritionFigures(nutrition, scheme, book.reader.locale);
    const cells = ofMeals.map((code) => known.find((each) => each.code === code));
    return [
      [[text(title, language)]],
      ...cells.map((cell) => plain(cell === undefined ? words.figureUnknown : shown(cell, cell.perServing))),
    ];
  };
  return section(2, words.nutrition, [
    paragraph(
      [text(`${words.basis[plan.basis]} ${words.roundedBy[scheme]}`)],
      [text(coverageText(figures, plan.missing, inSentence, book))],
      ...nutritionNotes({ ...plan, missing: [] }, book).map((note) => [text(note)]),
    ),
    ...tableOf(
      [words.meal, ...ofMeals.map(name)],
      [
        ...meals.map(({ meal, nutrition }) => row(book.meal(meal), nutrition, book.languageOf(book.meal(meal)))),
        row(all, plan),
      ],
    ),
    ...tableOf(
      [words.nutrient, all, ...(weighed ? [words.hundredGrams] : [])],
      figures.map((figure) => [
        plain(name(figure.code)),
        plain(shown(figure, figure.perServing)),
        ...(weighed ? [plain(figure.per100g === null ? "" : shown(figure, figure.per100g))] : []),
      ]),
    ),
  ]);
}

/** The share of the food that most figures rest on, those that rest on another, and what is missing. */
function coverageText(
  figures: readonly NutritionFigure[],
  missing: readonly string[],
  name: (code: NutrientCode) => string,
  { words, foods }: NameBook,
): string {
  const shares = figures.map(({ coverage }) => `${Math.floor(coverage * 100)} %`);
  const times = (share: string): number => shares.filter((each) => each === share).length;
  const usual = shares.reduce((most, each) => (times(each) > times(most) ? each : most));
  const others = figures.flatMap(({ code }, at) => {
    const share = shares[at] ?? usual;
    return share === usual ? [] : [`${name(code)} ${share}`];
  });
  return words.knownFor({
    share: usual,
    others: others.length === 0 ? "none" : others.join(", "),
    missing: missing.length === 0 ? "none" : foods(missing),
  });
}
