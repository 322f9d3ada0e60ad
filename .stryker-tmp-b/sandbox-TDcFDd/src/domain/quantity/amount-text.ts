// @ts-nocheck
import type { MeasureSystem, UnitRef } from "../model/amount.js";
import type { OwnMeasure } from "../model/food.js";
import { fractionText } from "./fraction-text.js";
import type { RestUnit, Scale } from "./kitchen-scales.js";
import type { ReaderLocale } from "./reader-locale.js";
import { roundOn, vanishes, type Rounded } from "./round.js";
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
  const fitting = scales.find(
    (scale) => base / scale.size < scale.until && roundOn(scale.grids, base / scale.size).value < scale.until - 1e-9,
  );
  const scale = fitting ?? scales.at(-1);
  if (scale === undefined) throw new RangeError("no scale to show an amount on");
  const value = base / scale.size;
  return { scale, rounded: roundOn(scale.grids, value), tiny: vanishes(scale.grids, value) };
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
 * `bare` leaves the unit away. Both ends are rounded once, here.
 */
export const amountText = (
  scales: readonly Scale[],
  low: number,
  high: number,
  own: readonly OwnMeasure[],
  reader: TextReader,
  bare: boolean,
): string => {
  const [from, to] = [shownOn(scales, low), shownOn(scales, high)];
  const first = endText(from, low / from.scale.size, own, reader);
  const last = endText(to, high / to.scale.size, own, reader);
  const lastText = withUnit(to.scale.unit, last, own, reader, bare);
  const firstText = withUnit(from.scale.unit, first, own, reader, bare);
  if (low === high || firstText === lastText) return lastText;
  const simple = from.scale.unit === to.scale.unit && first.rest === "" && last.rest === "";
  return simple ? `${first.number}–${lastText}` : `${firstText} – ${lastText}`;
};
