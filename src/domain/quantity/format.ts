import type { BaseAmount, MeasureSystem, RationalText, UnitRef } from "../model/amount.js";
import { amountText, shownOn } from "./amount-text.js";
import { inDimension, toDimensionOf, type MeasureFacts } from "./convert.js";
import { kitchenScales, scaleOfUnit, type Scale } from "./kitchen-scales.js";
import { nearestFraction, rationalText } from "./rational.js";
import { readerLocale } from "./reader-locale.js";
import { unitName } from "./unit-name.js";

export interface AmountReader {
  readonly measures: MeasureSystem;
  /** BCP 47 tag. */
  readonly locale: string;
}

/** An amount as a reader gets it. Only `text` is rounded. */
export interface PresentedAmount {
  /** Of the unit, unrounded; the lower end of a range. */
  readonly value: number;
  /** The upper end of a range, or null. */
  readonly upTo: number | null;
  /** `value` as a fraction where it is one of a denominator up to 1000 ("1/3"), else null. */
  readonly exact: RationalText | null;
  readonly unit: { readonly id: UnitRef; readonly name: string };
  readonly text: string;
  /** The same as `value` by mass and by volume, through the food's own facts as bought; null where one is missing. */
  readonly grams: number | null;
  readonly millilitres: number | null;
}

/** Largest denominator, and distance, at which a computed double counts as a fraction. */
const EXACT_DENOMINATOR_MAX = 1000;
const EXACT_WITHIN = 1e-11;

const exactText = (value: number): RationalText | null => {
  // What the search below would find too, as long as its distance is less than a half.
  if (Number.isInteger(value) && value < 1e9) return String(value);
  const found = nearestFraction(value, EXACT_DENOMINATOR_MAX, EXACT_WITHIN);
  return found === null ? null : rationalText(found.n, found.d);
};

const checked = (low: number, high: number): void => {
  if (!(low >= 0 && high >= low && high < Infinity)) throw new RangeError(`not an amount: ${low} to ${high}`);
};

const lowIn = (amount: BaseAmount | null, dimension: "MASS" | "VOLUME", facts: MeasureFacts): number | null => {
  const converted = amount === null ? null : inDimension(amount, dimension, facts, null);
  return converted?.ok === true ? converted.amount.low : null;
};

interface Ends {
  readonly low: number;
  readonly high: number;
}

const present = (
  scales: readonly Scale[],
  { low, high }: Ends,
  weights: { readonly grams: number | null; readonly millilitres: number | null },
  facts: MeasureFacts,
  reader: AmountReader,
): PresentedAmount => {
  const textReader = { measures: reader.measures, locale: readerLocale(reader.locale) };
  const from = shownOn(scales, low);
  const { scale, rounded } = from;
  const bare = scale.unit === "piece" && !facts.measures.some(({ name }) => name === "piece");
  const counted = { value: rounded.main, asFraction: scale.style === "FRACTION" && !Number.isInteger(rounded.main) };
  return {
    value: low / scale.size,
    upTo: high === low ? null : high / scale.size,
    exact: exactText(low / scale.size),
    unit: { id: scale.unit, name: unitName(scale.unit, counted, facts.measures, textReader) },
    text: amountText(scales, from, low, high, facts.measures, textReader, bare),
    ...weights,
  };
};

/** Half an ounce: below it, kitchens that weigh in ounces use spoons. */
const SPOON_GRAMS = 14;

/** Small weights become spoons for readers of ounces, where the food's density is known. */
const kitchenAmount = (amount: BaseAmount, facts: MeasureFacts, measures: MeasureSystem): BaseAmount => {
  const weighsInOunces = measures === "US_CUSTOMARY" || measures === "UK_IMPERIAL";
  if (!weighsInOunces || amount.dimension !== "MASS" || amount.high >= SPOON_GRAMS) return amount;
  const poured = inDimension(amount, "VOLUME", facts, null);
  return poured.ok ? poured.amount : amount;
};

/**
 * A computed amount in the units this reader cooks with: kilograms and litres, or the cups, spoons, pounds and ounces of
 * the reader's measures. Bounds of the rounding: docs/amounts.md. A count without a piece measure of its own is a bare
 * number. Throws a RangeError for negative, reversed or non-finite amounts, which the engine never makes.
 */
export const presentAmount = (amount: BaseAmount, facts: MeasureFacts, reader: AmountReader): PresentedAmount => {
  checked(amount.low, amount.high);
  const shown = kitchenAmount(amount, facts, reader.measures);
  const weights = { grams: lowIn(amount, "MASS", facts), millilitres: lowIn(amount, "VOLUME", facts) };
  return present(kitchenScales(reader.measures, shown.dimension), shown, weights, facts, reader);
};

/**
 * An amount in the writer's own unit (a standard unit, `own:…` or `batch`), which it keeps. `low` and `high` count that
 * unit. Same errors as `presentAmount`.
 */
export const presentInUnit = (
  low: number,
  high: number,
  unit: UnitRef,
  facts: MeasureFacts,
  reader: AmountReader,
): PresentedAmount => {
  checked(low, high);
  const weights = {
    grams: lowIn(toDimensionOf(low, unit, "MASS", facts), "MASS", facts),
    millilitres: lowIn(toDimensionOf(low, unit, "VOLUME", facts), "VOLUME", facts),
  };
  return present([scaleOfUnit(unit)], { low, high }, weights, facts, reader);
};
