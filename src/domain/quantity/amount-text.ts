import type { MeasureSystem, UnitRef } from "../model/amount.js";
import type { SaidMeasure } from "./piece-words.js";
import { fractionText } from "./fraction-text.js";
import type { ReaderLocale } from "./reader-locale.js";
import { roundOn, type Rounded } from "./round.js";
import type { RestUnit, Scale } from "./scale.js";
import { standardUnit } from "./unit.js";
import { unitName, type ShownNumber } from "./unit-name.js";

interface TextReader {
  readonly measures: MeasureSystem;
  readonly locale: ReaderLocale;
}

/** An amount rounded for one scale. */
interface Shown {
  readonly scale: Scale;
  readonly rounded: Rounded;
  /** Too small for the finest grid. */
  readonly tiny: boolean;
}

const plainUnits: ReadonlySet<string> = new Set(["g", "ml"]);

/**
 * The first scale that can show the amount. What rounds up to a scale's end is that end on the next: 1 kg, never 1000 g; 1 lb,
 * never 0 lb 15¾ oz.
 */
export const shownOn = (scales: readonly Scale[], base: number): Shown => {
  const last = scales.at(-1);
  // Nothing is no milligram: of a unit that everybody has.
  const plain = base === 0 ? scales.find(({ unit }) => plainUnits.has(unit)) : undefined;
  if (plain !== undefined) return { scale: plain, rounded: roundOn(plain.grids, 0), tiny: false };
  let least = 0;
  for (const scale of scales) {
    const value = Math.max(base, least) / scale.size;
    const isLast = scale === last;
    if (value >= scale.until && !isLast) continue;
    const rounded = roundOn(scale.grids, value);
    if (rounded.value < scale.until - 1e-9 || isLast) return { scale, rounded, tiny: value > 0 && rounded.value === 0 };
    least = scale.until * scale.size;
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
  readonly unit: UnitRef;
  readonly counted: ShownNumber;
  readonly rest: string;
}

/** What no spoon or knife measures: a pinch, a quarter of a piece; of decimals, two digits. */
const tinyText = ({ style, unit }: Scale, value: number, reader: TextReader): EndText => {
  const one = { value: 1, asFraction: false };
  if (style !== "FRACTION")
    return { number: reader.locale.decimal(value, -1), unit, counted: { ...one, value }, rest: "" };
  if (standardUnit(unit)?.dimension === "VOLUME") return { number: "1", unit: "pinch", counted: one, rest: "" };
  return { number: fractionText(1 / 4, String), unit, counted: { value: 1 / 4, asFraction: true }, rest: "" };
};

const endText = (
  { scale, rounded, tiny }: Shown,
  value: number,
  own: readonly SaidMeasure[],
  reader: TextReader,
): EndText => {
  if (tiny) return tinyText(scale, value, reader);
  const { unit } = scale;
  const counted = { value: rounded.main, asFraction: isFraction(rounded.main, scale) };
  const smaller = rounded.rest === 0 ? undefined : restUnit(rounded.rest, scale.rest);
  const number = numberText(rounded.main, scale, reader.locale);
  if (smaller === undefined) return { number, unit, counted, rest: "" };
  const count = rounded.rest / smaller.counts;
  const asFraction = !Number.isInteger(count);
  const name = unitName(smaller.unit, { value: count, asFraction }, own, reader);
  const written = fractionText(count, (integer) => reader.locale.decimal(integer, 0));
  return { number, unit, counted, rest: `${scale.joiner}${written} ${name}` };
};

const withUnit = (end: EndText, own: readonly SaidMeasure[], reader: TextReader, bare: boolean): string =>
  bare ? end.number : `${end.number} ${unitName(end.unit, end.counted, own, reader)}${end.rest}`;

/**
 * `"1½ cups"`, `"2–3 tbsp"`, `"1 cup + 1 tbsp – 2 cups"`. `low` and `high` are base units (units, on a scale of its own);
 * `from` is the lower end as it is shown; `bare` leaves the unit away.
 */
export const amountText = (
  scales: readonly Scale[],
  from: Shown,
  low: number,
  high: number,
  own: readonly SaidMeasure[],
  reader: TextReader,
  bare: boolean,
): string => {
  const first = endText(from, low / from.scale.size, own, reader);
  const firstText = withUnit(first, own, reader, bare);
  if (low === high) return firstText;
  const to = shownOn(scales, high);
  const last = endText(to, high / to.scale.size, own, reader);
  const lastText = withUnit(last, own, reader, bare);
  if (firstText === lastText) return lastText;
  // Nothing has no unit: 0 – ⅓ cup, never 0 tsp – ⅓ cup.
  if (low === 0) return `${reader.locale.decimal(0, 0)} – ${lastText}`;
  const simple = first.unit === last.unit && first.rest === "" && last.rest === "";
  return simple ? `${first.number}–${lastText}` : `${firstText} – ${lastText}`;
};
