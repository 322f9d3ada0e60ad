import type { BaseAmount, Dimension, Measured } from "../model/amount.js";
import type { Food, FoodPart } from "../model/food.js";
import type { Line } from "../model/line.js";
import { inDimension, missingText, toBase, toDimension } from "../quantity/convert.js";
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
  const wanted = needDimension(food);
  const { amount, edibleUnknown } = asBought(written, line, food);
  const direct = amount === written && measured !== null ? toDimension(measured, wanted, food, line.form) : null;
  const joined = direct?.ok === true ? direct : inDimension(amount, wanted, food, line.form);
  if (joined.ok) return { amount: joined.amount, notCombined: null, edibleUnknown };
  return { amount, notCombined: missingText(joined.missing), edibleUnknown };
}
