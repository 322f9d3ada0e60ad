// @ts-nocheck
import type { BaseAmount, Dimension, Measured } from "../model/amount.js";
import type { Food, FoodPart } from "../model/food.js";
import type { Line } from "../model/line.js";
import { inDimension, missingText, toBase, toDimension, type Conversion } from "../quantity/convert.js";
import { edibleShare } from "./edible.js";

/** What a line makes one buy: an amount as purchased, or the fact that is missing to say so. */
export interface PurchaseNeed {
  /** In the food's need dimension, or in the line's own where `notCombined` says why; null for a part nobody can count. */
  readonly amount: BaseAmount | null;
  /** The fact without which it cannot join the food's other lines. */
  readonly notCombined: string | null;
  readonly edibleUnknown: boolean;
}

/** A food with parts is counted in pieces, since its parts come out of the same pieces; others as shops sell them. */
export const needDimension = (food: Food): Dimension => (food.parts.length > 0 ? "COUNT" : food.shoppedBy);

const divided = ({ dimension, low, high }: BaseAmount, by: number): BaseAmount => ({
  dimension,
  low: low / by,
  high: high / by,
});

/** Pieces for an amount of a part. Of a piece that gives a range, the least is counted on, so that there is enough. */
const piecesForPart = (amount: BaseAmount, part: FoodPart, food: Food): BaseAmount | string => {
  const gives = toBase(part.perPiece, food, part.name);
  if (!gives.ok) return missingText(gives.missing);
  const { dimension, low, high } = gives.amount;
  // "Zest of 2 lemons": pieces of the whole, unless one piece is said to give so many pieces of the part.
  if (amount.dimension === "COUNT" && dimension !== "COUNT") return amount;
  // The weight of the whole food says nothing about the weight of its part.
  if (amount.dimension === "MASS" && dimension === "COUNT") return `GRAMS_OF_ONE_PIECE:${part.name}`;
  if (amount.dimension === "VOLUME" && dimension === "COUNT") return `MILLILITRES_OF_ONE_PIECE:${part.name}`;
  const same = inDimension(amount, dimension, food, part.name);
  if (!same.ok) return missingText(same.missing);
  return { dimension: "COUNT", low: same.amount.low / high, high: same.amount.high / low };
};

/** A READY amount is weighed after trimming: back to what was bought. Whole pieces stay whole. */
const asBought = (
  amount: BaseAmount,
  line: Pick<Line, "measured" | "form">,
  food: Food,
): { amount: BaseAmount; edibleUnknown: boolean } => {
  if (line.measured === "AS_BOUGHT" || amount.dimension === "COUNT") return { amount, edibleUnknown: false };
  const share = edibleShare(food, line.form);
  return share === null ? { amount, edibleUnknown: true } : { amount: divided(amount, share), edibleUnknown: false };
};

/**
 * As purchased = ready amount / edible portion, then into the dimension the food's needs are added up in.
 *
 * @param written the line's amount in base units of the dimension it was written in
 * @param measured the same as it was written, where it was: an own measure may know the wanted dimension itself
 */
export function purchaseNeed(
  written: BaseAmount,
  measured: Measured | null,
  line: Pick<Line, "measured" | "form">,
  part: FoodPart | null,
  food: Food,
): PurchaseNeed {
  if (part !== null) {
    const pieces = piecesForPart(written, part, food);
    return typeof pieces === "string"
      ? { amount: null, notCombined: pieces, edibleUnknown: false }
      : { amount: pieces, notCombined: null, edibleUnknown: false };
  }
  const { amount, edibleUnknown } = asBought(written, line, food);
  const into = (dimension: Dimension): Conversion =>
    amount === written && measured !== null
      ? toDimension(measured, dimension, food, line.form)
      : inDimension(amount, dimension, food, line.form);
  const joined = into(needDimension(food));
  if (joined.ok) return { amount: joined.amount, notCombined: null, edibleUnknown };
  const shopped = into(food.shoppedBy);
  return { amount: shopped.ok ? shopped.amount : amount, notCombined: missingText(joined.missing), edibleUnknown };
}
