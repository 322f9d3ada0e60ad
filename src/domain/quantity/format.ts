import type { BaseAmount, MeasureSystem, RationalText, UnitRef } from "../model/amount.js";
import { amountText, shownOn } from "./amount-text.js";
import { inDimension, toDimensionOf, type MeasureFacts } from "./convert.js";
import { onLadder, type OnLadder } from "./kitchen-amount.js";
import { measuresFor } from "./piece-words.js";
import { nearestFraction, rationalText } from "./rational.js";
import { readerLocale } from "./reader-locale.js";
import { unitName } from "./unit-name.js";
import { standardUnit } from "./unit.js";
import { writersLadder } from "./writers-ladder.js";
import { writtenScales } from "./written-scales.js";

interface AmountReader {
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
  /** The unit that `text` begins with, which may be another of the ladder. */
  readonly saidIn: UnitRef;
  /** The lower end as `text` rounds it, in that unit. */
  readonly rounded: number;
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

interface Weights {
  readonly grams: number | null;
  readonly millilitres: number | null;
}

/** Text and unit of an amount on its ladder. */
const said = (
  { scales, low, high }: OnLadder,
  facts: MeasureFacts,
  reader: AmountReader,
): Pick<PresentedAmount, "unit" | "text" | "saidIn" | "rounded"> & { readonly size: number } => {
  const locale = readerLocale(reader.locale);
  const textReader = { measures: reader.measures, locale };
  const own = measuresFor(facts, locale.tag.language, locale.tag.region);
  const from = shownOn(scales, low);
  const { scale, rounded } = from;
  const bare = scale.unit === "piece" && !own.some(({ name }) => name === "piece");
  const counted = { value: rounded.main, asFraction: scale.style === "FRACTION" && !Number.isInteger(rounded.main) };
  return {
    size: scale.size,
    unit: { id: scale.unit, name: unitName(scale.unit, counted, own, textReader) },
    text: amountText(scales, from, low, high, own, textReader, bare),
    saidIn: scale.unit,
    rounded: from.tiny ? low / scale.size : rounded.value,
  };
};

/** Half an ounce: below it, kitchens that weigh in ounces use spoons. */
const SPOON_GRAMS = 14;

/** Small weights become spoons for readers of ounces, where the food's density is known. */
const inSpoons = (amount: BaseAmount, facts: MeasureFacts, measures: MeasureSystem): BaseAmount => {
  const weighsInOunces = measures === "US_CUSTOMARY" || measures === "UK_IMPERIAL";
  if (!weighsInOunces || amount.dimension !== "MASS" || amount.high >= SPOON_GRAMS) return amount;
  const poured = inDimension(amount, "VOLUME", facts, null);
  return poured.ok ? poured.amount : amount;
};

/**
 * A computed amount in the units this reader cooks with: kilograms and litres, or the cups, spoons, pounds and ounces of
 * the reader's measures. Bounds of the rounding: docs/amounts.md. A count without a piece measure of its own is a bare
 * number. `form` is that which the amount is measured in. Throws a RangeError for negative, reversed or non-finite amounts,
 * which the engine never makes.
 */
export const presentAmount = (
  amount: BaseAmount,
  facts: MeasureFacts,
  reader: AmountReader,
  form: string | null = null,
): PresentedAmount => {
  checked(amount.low, amount.high);
  const ladder = onLadder(inSpoons(amount, facts, reader.measures), facts, form, reader.measures);
  const { size, ...shown } = said(ladder, facts, reader);
  return {
    value: ladder.low / size,
    upTo: ladder.high === ladder.low ? null : ladder.high / size,
    exact: exactText(ladder.low / size),
    ...shown,
    grams: lowIn(amount, "MASS", facts),
    millilitres: lowIn(amount, "VOLUME", facts),
  };
};

const weightsInUnit = (low: number, unit: UnitRef, facts: MeasureFacts): Weights => ({
  grams: lowIn(toDimensionOf(low, unit, "MASS", facts), "MASS", facts),
  millilitres: lowIn(toDimensionOf(low, unit, "VOLUME", facts), "VOLUME", facts),
});

/** `value` counts `unit`; the text stands on `ladder`. */
const inWritersUnit = (
  low: number,
  high: number,
  unit: UnitRef,
  ladder: OnLadder,
  facts: MeasureFacts,
  reader: AmountReader,
): PresentedAmount => {
  const { unit: shown, text, saidIn, rounded } = said(ladder, facts, reader);
  const asFraction = low % 1 !== 0 && standardUnit(unit)?.dimension !== "MASS";
  const textReader = { measures: reader.measures, locale: readerLocale(reader.locale) };
  return {
    value: low,
    upTo: high === low ? null : high,
    exact: exactText(low),
    unit:
      shown.id === unit
        ? shown
        : { id: unit, name: unitName(unit, { value: low, asFraction }, facts.measures, textReader) },
    text,
    saidIn,
    rounded,
    ...weightsInUnit(low, unit, facts),
  };
};

/**
 * A scaled amount in the writer's own unit (a standard unit, `own:…` or `batch`). `low` and `high` count that unit, and so does
 * `value`; the text moves along the ladder the unit belongs to, so that 1,050 g read 1.05 kg. Same errors as `presentAmount`.
 */
export const presentInUnit = (
  low: number,
  high: number,
  unit: UnitRef,
  facts: MeasureFacts,
  reader: AmountReader,
  form: string | null = null,
): PresentedAmount => {
  checked(low, high);
  return inWritersUnit(low, high, unit, writersLadder(low, high, unit, facts, form, reader.measures), facts, reader);
};

/** An amount as it was written or printed on a label: its unit stays, and it is not rounded. Same errors as `presentAmount`. */
export const presentWritten = (
  low: number,
  high: number,
  unit: UnitRef,
  facts: MeasureFacts,
  reader: AmountReader,
): PresentedAmount => {
  checked(low, high);
  return inWritersUnit(low, high, unit, { scales: writtenScales(unit), low, high }, facts, reader);
};
