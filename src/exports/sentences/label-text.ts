import type { NutrientCode } from "../../domain/model/food.js";
import { labelEnds, labelUnit, printsSalt } from "../../domain/nutrition/label-figure.js";
import type { LabelScheme, RoundedFigure } from "../../domain/nutrition/label-rounding.js";
import type { NutrientAmount, Span } from "../../domain/nutrition/nutrients.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";
import { wordsFor } from "../words/words-for.js";

/** A figure as a label may print it. */
interface LabelFigure {
  /** Rounded; the lower end of a range. 0 where `text` says "less than". */
  readonly value: number;
  readonly upTo: number | null;
  /** With its unit: `12 g`, `<0,5 g`, `weniger als 5 mg`. */
  readonly text: string;
}

/** A nutrient as a label may print it. */
interface LabelNutrient {
  readonly name: string;
  readonly unit: string;
  readonly perServing: LabelFigure;
  /** null where the dish cannot be weighed. */
  readonly per100g: LabelFigure | null;
}

/**
 * A figure as a label of the scheme may print it for a reader of a locale, both ends of a range; the unit stands only with "less than".
 * null where the scheme has no rule for the nutrient.
 */
export function labelText(code: NutrientCode, span: Span, scheme: LabelScheme, locale: string): string | null {
  const ends = labelEnds(code, span, scheme);
  if (ends === null) return null;
  return [...new Set(ends.map((end) => endText(end, code, scheme, locale)))].join("–");
}

/** A nutrient on a label of the scheme, in the reader's language; null where there is no scheme, or no rule of it. */
export function labelNutrient(
  code: NutrientCode,
  { perServing, per100g }: Pick<NutrientAmount, "perServing" | "per100g">,
  scheme: LabelScheme | null,
  locale: string,
): LabelNutrient | null {
  const serving = scheme && figureOf(code, perServing, scheme, locale);
  if (scheme === null || serving === null) return null;
  return {
    name: wordsFor(locale).nutrientNames[printsSalt(code, scheme) ? "salt" : code],
    unit: labelUnit(code, scheme),
    perServing: serving,
    per100g: per100g && figureOf(code, per100g, scheme, locale),
  };
}

function figureOf(code: NutrientCode, span: Span, scheme: LabelScheme, locale: string): LabelFigure | null {
  const ends = labelEnds(code, span, scheme);
  if (ends === null) return null;
  const [low, high] = ends;
  const text = labelText(code, span, scheme, locale) ?? "";
  return {
    value: low.value,
    upTo: high.value > low.value ? high.value : null,
    text: high.below === null ? `${text} ${labelUnit(code, scheme)}` : text,
  };
}

/** Labels group no digits. */
const numberText = (value: number, locale: string): string =>
  String(value).replace(".", readerLocale(locale).decimalMark);

function endText({ value, below }: RoundedFigure, code: NutrientCode, scheme: LabelScheme, locale: string): string {
  if (below === null) return numberText(value, locale);
  const amount = `${numberText(below, locale)} ${labelUnit(code, scheme)}`;
  return scheme === "US" ? wordsFor(locale).lessThan({ amount }) : `<${amount}`;
}
