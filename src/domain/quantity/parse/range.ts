import type { Rational } from "../rational.js";
import type { NumberFault } from "./decimal.js";
import type { NumberMarks } from "./number-marks.js";
import { readNumeral, skipSpaces } from "./numeral.js";

type ReadRange =
  | {
      readonly ok: true;
      readonly low: Rational;
      readonly high: Rational;
      readonly end: number;
      readonly foreignMark: boolean;
    }
  | { readonly ok: false; readonly fault: NumberFault; readonly end: number };

const CONNECTOR = /\s*[-–—−~]\s*|\s+(?:to|or|bis|oder|à|ou|a|o|do|lub)\s+/iy;

/** Index after a dash or a word that joins the ends of a range, or null. */
export const afterRangeWord = (text: string, start: number): number | null => {
  CONNECTOR.lastIndex = start;
  return CONNECTOR.test(text) ? CONNECTOR.lastIndex : null;
};

/** Order of two fractions; products stay safe because amounts and denominators are bounded. */
const below = (a: Rational, b: Rational): boolean => a.n / a.d < b.n / b.d;

/**
 * A number or a range of two at `start`: `2`, `½–1`, `3 to 3 ½`. A range whose upper end is the smaller is refused.
 * null where no number begins.
 */
export const readRange = (text: string, start: number, marks: NumberMarks | null): ReadRange | null => {
  const low = readNumeral(text, start, marks);
  if (low === null || !low.ok) return low;
  const single: ReadRange = { ok: true, low: low.value, high: low.value, end: low.end, foreignMark: low.foreignMark };
  const next = afterRangeWord(text, low.end);
  if (next === null) return single;
  const high = readNumeral(text, skipSpaces(text, next), marks);
  if (high === null) return single;
  if (!high.ok) return high;
  if (below(high.value, low.value)) return { ok: false, fault: "RANGE_REVERSED", end: high.end };
  return {
    ok: true,
    low: low.value,
    high: high.value,
    end: high.end,
    foreignMark: low.foreignMark || high.foreignMark,
  };
};
