import type { BaseAmount } from "../model/amount.js";
import { inDimension, type MeasureFacts } from "./convert.js";
import { countedIn, kitchenScales, weighedFromMl, type Kitchen } from "./kitchen-scales.js";
import type { Scale } from "./scale.js";
import { ownMeasureRef } from "./unit.js";

/** An amount, counted as its scales count, and the scales it is shown on. */
export interface OnLadder {
  readonly scales: readonly Scale[];
  readonly low: number;
  readonly high: number;
}

/** From nearly half a piece on, it is halved. */
const HALF = 0.45;

/** Below half a piece, the food's own smaller measure: cloves of a head. */
const smallCount = ({ low, high }: BaseAmount, { measures }: MeasureFacts): OnLadder | null => {
  if (high >= HALF || low <= 0) return null;
  const smaller = measures.find(
    ({ name, pieces }) => name !== "piece" && pieces !== null && pieces > 0 && pieces < HALF,
  );
  if (smaller === undefined || smaller.pieces === null) return null;
  const { pieces, name } = smaller;
  return { scales: [countedIn(ownMeasureRef(name))], low: low / pieces, high: high / pieces };
};

/** What is not poured, measured by so much volume that a kitchen weighs it. */
const weighed = (amount: BaseAmount, facts: MeasureFacts, form: string | null, fromMl: number): BaseAmount => {
  if (amount.dimension !== "VOLUME" || facts.shoppedBy !== "MASS" || amount.high < fromMl) return amount;
  const mass = inDimension(amount, "MASS", facts, form);
  return mass.ok ? mass.amount : amount;
};

/** An amount in base units on the ladder of a kitchen. `form` null is the food as bought. */
export const onLadder = (
  amount: BaseAmount,
  facts: MeasureFacts,
  form: string | null,
  kitchen: Kitchen,
  fromMl: number = weighedFromMl[kitchen],
): OnLadder => {
  const small = amount.dimension === "COUNT" ? smallCount(amount, facts) : null;
  if (small !== null) return small;
  const { dimension, low, high } = weighed(amount, facts, form, fromMl);
  const poured = facts.shoppedBy === undefined || facts.shoppedBy === "VOLUME";
  return { scales: kitchenScales(kitchen, dimension, poured), low, high };
};
