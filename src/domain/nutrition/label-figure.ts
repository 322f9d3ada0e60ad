import { regionCovers } from "../model/region.js";
import type { NutrientCode } from "../model/food.js";
import {
  roundForEuLabel,
  roundForUsLabel,
  saltOfSodium,
  type EuLabelNutrient,
  type LabelScheme,
  type RoundedFigure,
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

function rounded(code: NutrientCode, value: number, scheme: LabelScheme): RoundedFigure | null {
  if (scheme === "US") {
    const nutrient = us[code];
    return nutrient === undefined ? null : roundForUsLabel(nutrient, value);
  }
  const nutrient = eu[code];
  if (nutrient === undefined) return null;
  return roundForEuLabel(nutrient, nutrient === "salt" ? saltOfSodium(value) : value);
}

/** Both ends of a range as a label of the scheme may print them; null where the scheme has no rule for the nutrient. */
export function labelEnds(
  code: NutrientCode,
  { low, high }: Span,
  scheme: LabelScheme,
): readonly [RoundedFigure, RoundedFigure] | null {
  const ends = [rounded(code, low, scheme), rounded(code, high, scheme)] as const;
  return ends[0] === null || ends[1] === null ? null : [ends[0], ends[1]];
}

/** Whether a scheme prints salt in grams where the food has a figure for sodium. */
export const printsSalt = (code: NutrientCode, scheme: LabelScheme): boolean => code === "sodiumMg" && scheme === "EU";

/** What a label of the scheme counts a nutrient in. */
export function labelUnit(code: NutrientCode, scheme: LabelScheme): "kcal" | "g" | "mg" {
  if (code === "energyKcal") return "kcal";
  return code.endsWith("Mg") && !printsSalt(code, scheme) ? "mg" : "g";
}

/**
 * Where Regulation (EU) No 1169/2011 holds beside the Union: the United Kingdom, which kept it, and Iceland, Liechtenstein and Norway,
 * by the EEA Agreement.
 */
const likeTheUnion = ["EU", "GB", "IS", "LI", "NO"];

/** The scheme by which labels in a region are rounded; null: none that is known here, or no region. */
export function labelSchemeOf(region: string | null): LabelScheme | null {
  if (region === null) return null;
  if (regionCovers("US", region)) return "US";
  return likeTheUnion.some((rule) => regionCovers(rule, region)) ? "EU" : null;
}

/** The scheme that documents round by, which say by which: where none is known, the Union's. */
export const labelScheme = (region: string | null): LabelScheme => labelSchemeOf(region) ?? "EU";
