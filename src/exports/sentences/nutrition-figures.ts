import type { NutrientCode } from "../../domain/model/food.js";
import type { LabelScheme } from "../../domain/nutrition/label-rounding.js";
import { nutrientCodes, type Nutrition, type Span } from "../../domain/nutrition/nutrients.js";
import { labelText } from "./label-text.js";

/** A nutrient as a label of the scheme may print it. */
export interface NutritionFigure {
  readonly code: NutrientCode;
  readonly perServing: string;
  /** null where the dish cannot be weighed. */
  readonly per100g: string | null;
  /** Share of the food with energy in it that has a figure, 0..1. */
  readonly coverage: number;
  /** false: there may be more of it. */
  readonly complete: boolean;
  /** There is no less of it. */
  readonly atLeast: boolean;
}

/**
 * Whether a figure says nothing: none of it is known, and "at least none" is not what the food has.
 *
 * @param isNone what is shown of it is nought
 */
export const saysNothing = (
  { complete, atLeast, coverage }: Pick<NutritionFigure, "complete" | "atLeast" | "coverage">,
  isNone: boolean,
): boolean => !complete && (coverage === 0 || (atLeast && isNone));

/** Those the scheme has a rule for, in the order of the codes, with the numbers of a locale. Sodium comes as salt, in grams, where the scheme says salt. */
export function nutritionFigures(
  { nutrients }: Nutrition,
  scheme: LabelScheme,
  locale: string,
): readonly NutritionFigure[] {
  const label = (code: NutrientCode, span: Span): string | null => labelText(code, span, scheme, locale);
  return nutrientCodes.flatMap((code): readonly NutritionFigure[] => {
    const amount = nutrients[code];
    if (amount === undefined) return [];
    const perServing = label(code, amount.perServing);
    if (perServing === null) return [];
    const per100g = amount.per100g === null ? null : label(code, amount.per100g);
    return [
      { code, perServing, per100g, coverage: amount.coverage, complete: amount.complete, atLeast: amount.atLeast },
    ];
  });
}
