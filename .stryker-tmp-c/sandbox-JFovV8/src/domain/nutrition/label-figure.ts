// @ts-nocheck
import { regionCovers } from "../model/region.js";
import type { NutrientCode } from "../model/food.js";
import {
  roundForEuLabel,
  roundForUsLabel,
  saltOfSodium,
  type EuLabelNutrient,
  type LabelFigure,
  type LabelScheme,
  type UsLabelNutrient,
} from "./label-rounding.js";
import type { Span } from "./nutrients.js";

const us: Partial<Record<NutrientCode, UsLabelNutrient>> = {
  energyKcal: "calories",
  fatG: "total fat",
  saturatedFatG: "saturated fat",
  cholesterolMg: "cholesterol",
  sodiumMg: "sodium",
  carbohydrateG: "total carbohydrate",
  fibreG: "dietary fibre",
  sugarsG: "total sugars",
  proteinG: "protein",
};

const eu: Partial<Record<NutrientCode, EuLabelNutrient>> = {
  energyKcal: "energy",
  fatG: "fat",
  saturatedFatG: "saturates",
  carbohydrateG: "carbohydrate",
  sugarsG: "sugars",
  fibreG: "fibre",
  proteinG: "protein",
  sodiumMg: "salt",
};

function rounded(code: NutrientCode, value: number, scheme: LabelScheme): LabelFigure | null {
  if (scheme === "US") {
    const nutrient = us[code];
    return nutrient === undefined ? null : roundForUsLabel(nutrient, value);
  }
  const nutrient = eu[code];
  if (nutrient === undefined) return null;
  return roundForEuLabel(nutrient, nutrient === "salt" ? saltOfSodium(value) : value);
}

/** A figure as a label of the scheme may print it, both ends of a range; null where the scheme has no rule for the nutrient. */
export function labelFigure(code: NutrientCode, { low, high }: Span, scheme: LabelScheme): string | null {
  const ends = [rounded(code, low, scheme), rounded(code, high, scheme)];
  const texts = ends.flatMap((end) => (end === null ? [] : [end.says ?? String(end.value)]));
  return texts.length < 2 ? null : [...new Set(texts)].join("–");
}

/** The label rules of a region: those of the United States there, the Union's everywhere else. */
export const labelScheme = (region: string | null): LabelScheme =>
  region !== null && regionCovers("US", region) ? "US" : "EU";
