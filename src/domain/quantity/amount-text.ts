import type { MeasureSystem, UnitRef } from "../model/amount.js";
import type { OwnMeasure } from "../model/food.js";
import { fractionText } from "./fraction-text.js";
import type { RestUnit, Scale } from "./kitchen-scales.js";
import type { ReaderLocale } from "./reader-locale.js";
import { roundOn, type Rounded } from "./round.js";
import { unitName, type ShownNumber } from "./unit-name.js";

export interface TextReader {
  readonly measures: MeasureSystem;
  readonly locale: ReaderLocale;
}

/** An amount rounded for one scale. */
interface Shown {
  readonly scale: Scale;
  readonly rounded: Rounded;
  /** Too small for the finest grid: shown as a decimal of two digits instead of nothing. */
  readonly tiny: boolean;
}

/** The first scale that can show the amount. What rounds up to a scale's end belongs to the next: 1 kg, never 1000 g. */
export const shownOn = (scales: readonly Scale[], base: number): Shown => {
  const last = scales.at(-1);
  for (const scale of scales) {
    const value = base / scale.size;
    const isLast = scale === last;
    if (value >= scale.until && !isLast) continue;
    const rounded = roundOn(scale.grids, value);
    if (rounded.value < scale.until - 1e-9 || isLast) return { scale, rounded, tiny: value > 0 && rounded.value === 0 };
  }
  throw new RangeError("no scale to show an amount on");
};

const numberText = (value: number, { style }: Scale, { decimal }: ReaderLocale): string =>
  style === "FRACTION" ? fractionText(value, (integer) => decimal(integer, 0)) : decimal(value, style.places);

/** The largest unit that the rest is whole ones or halves of. */
const restUnit = (rest: number, units: readonly RestUnit[]): RestUnit | undefined =>
  units.find(({ counts }) => rest >= counts && Number.isInteger((2 * rest) / counts)) ?? units.at(-1);

const isFraction = (value: number, scale: Scale): boolean => scale.style === "FRACTION" && !Number.isInteger(value);

/** One end of an amount: its number, the number its unit is declined for, and a smaller unit's share beside it. */
interface EndText {
  readonly number: string;
  readonly counted: ShownNumber;
  readonly rest: string;
}

const endText = (
  { scale, rounded, tiny }: Shown,
  value: number,
  own: readonly OwnMeasure[],
  reader: TextReader,
): EndText => {
  if (tiny) return { number: reader.locale.decimal(value, -1), counted: { value, asFraction: false }, rest: "" };
  const counted = { value: rounded.main, asFraction: isFraction(rounded.main, scale) };
  const smaller = rounded.rest === 0 ? undefined : restUnit(rounded.rest, scale.rest);
  const number = numberText(rounded.main, scale, reader.locale);
  if (smaller === undefined) return { number, counted, rest: "" };
  const count = rounded.rest / smaller.counts;
  const asFraction = !Number.isInteger(count);
  const name = unitName(smaller.unit, { value: count, asFraction }, own, reader);
  const written = fractionText(count, (integer) => reader.locale.decimal(integer, 0));
  return { number, counted, rest: `${scale.joiner}${written} ${name}` };
};

const withUnit = (
  unit: UnitRef,
  end: EndText,
  own: readonly OwnMeasure[],
  reader: TextReader,
  bare: boolean,
): string => (bare ? end.number : `${end.number} ${unitName(unit, end.counted, own, reader)}${end.rest}`);

/**
 * `"1½ cups"`, `"2–3 tbsp"`, `"1 cup + 1 tbsp – 2 cups"`. `low` and `high` are base units (units, on a scale of its own);
 * `from` is the lower end as it is shown; `bare` leaves the unit away.
 */
export const amountText = (
  scales: readonly Scale[],
  from: Shown,
  low: number,
  high: number,
  own: readonly OwnMeasure[],
  reader: TextReader,
  bare: boolean,
): string => {
  const first = endText(from, low / from.scale.size, own, reader);
  const firstText = withUnit(from.scale.unit, first, own, reader, bare);
  if (low === high) return firstText;
  const to = shownOn(scales, high);
  const last = endText(to, high / to.scale.size, own, reader);
  const lastText = withUnit(to.scale.unit, last, own, reader, bare);
  if (firstText === lastText) return lastText;
  const simple = from.scale.unit === to.scale.unit && first.rest === "" && last.rest === "";
  return simple ? `${first.number}–${lastText}` : `${firstText} – ${lastText}`;
};
