import { edibleShare } from "../../component/edible.js";
import type { BaseAmount } from "../../model/amount.js";
import type { Food } from "../../model/food.js";
import type { Span } from "../../nutrition/nutrients.js";
import { inDimension, toBase } from "../../quantity/convert.js";
import type { ScaledLine } from "../scaled.js";

type Grams = Span | null;

/** Water from the tap: by its figures, or what a house always has and pours. */
export const isWater = ({ nutrients, alwaysThere, shoppedBy }: Food): boolean =>
  nutrients === null ? alwaysThere && shoppedBy === "VOLUME" : (nutrients.per100g.waterG ?? 0) >= 99;

/** Grams of a whole food as it was measured. Water without a density weighs a gram the millilitre (USDA SR, NDB 14411: 1 l, 1000 g). */
export function gramsOf(amount: BaseAmount, food: Food, form: string | null): Grams {
  const mass = inDimension(amount, "MASS", food, form);
  if (mass.ok) return mass.amount;
  return amount.dimension === "VOLUME" && isWater(food) ? amount : null;
}

/** Of a whole food's amount: what was weighed ready is eaten, of what was bought the edible share. */
function edibleGrams(amount: BaseAmount, line: ScaledLine, food: Food): Grams {
  const mass = gramsOf(amount, food, line.line.form);
  if (mass === null) return null;
  const { low, high } = mass;
  // A food nobody gives an edible portion for is eaten as it is bought: flour, oil, lentils.
  const ready = line.line.measured === "READY" && amount.dimension !== "COUNT";
  const share = ready ? 1 : (edibleShare(food, line.line.form) ?? 1);
  return { low: low * share, high: high * share };
}

/** Of a part: by weight as it is, by the piece through what one piece gives. */
function partGrams(amount: BaseAmount, partName: string, food: Food): Grams {
  const mass = inDimension(amount, "MASS", food, partName);
  if (amount.dimension !== "COUNT") return mass.ok ? { low: mass.amount.low, high: mass.amount.high } : null;
  const part = food.parts.find(({ name }) => name === partName);
  const gives = part === undefined ? null : toBase(part.perPiece, food, partName);
  if (gives === null || !gives.ok) return null;
  const one = inDimension(gives.amount, "MASS", food, partName);
  return one.ok ? { low: one.amount.low * amount.low, high: one.amount.high * amount.high } : null;
}

/** Figures of one part of a food; null where nobody gives any. */
export const partNutrients = ({ parts }: Food, part: string): Food["nutrients"] =>
  parts.find(({ name }) => name === part)?.nutrients ?? null;

/** Grams of edible portion, raw, that a line puts in; null where it has no amount or nobody knows what that weighs. */
export function gramsPutIn(line: ScaledLine, food: Food, part: string | null): Grams {
  if (line.amount === null) return null;
  return part === null ? edibleGrams(line.amount, line, food) : partGrams(line.amount, part, food);
}
