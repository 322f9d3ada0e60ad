import { Fraction } from "fraction.js";
import type { RationalText } from "../model/amount.js";

/** Numerator and denominator in lowest terms, both safe integers, `d` at least 1. */
export interface Rational {
  readonly n: number;
  readonly d: number;
}

const SHAPE = /^(?:0|[1-9]\d*)(?:\/[1-9]\d*)?$/;

/** Of whole numbers; 0 counts as divided by everything. */
export const greatestCommonDivisor = (a: number, b: number): number => {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
};

/** `rationalText(6, 4)` is `"3/2"`. Throws a RangeError unless `n` >= 0 and `d` >= 1 are safe integers. */
export const rationalText = (n: number, d: number): RationalText => {
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d) || n < 0 || d < 1) {
    throw new RangeError(`not a ratio of safe integers: ${n}/${d}`);
  }
  const divisor = greatestCommonDivisor(n, d);
  return d === divisor ? String(n / divisor) : `${n / divisor}/${d / divisor}`;
};

/** Reads `"3"` or `"6/4"`; null for anything else, for a negative, and where a part is no safe integer. */
export const parseRational = (text: RationalText): Rational | null => {
  if (!SHAPE.test(text)) return null;
  const slash = text.indexOf("/");
  const n = Number(slash < 0 ? text : text.slice(0, slash));
  const d = slash < 0 ? 1 : Number(text.slice(slash + 1));
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d)) return null;
  const divisor = greatestCommonDivisor(n, d);
  return { n: n / divisor, d: d / divisor };
};

/** The nearest double. Throws a RangeError where the text is no rational (documents are checked before they get here). */
export const toNumber = (text: RationalText): number => {
  const rational = parseRational(text);
  if (rational === null) throw new RangeError(`not a rational: "${text.slice(0, 40)}"`);
  return rational.n / rational.d;
};

const exact = (value: Fraction): RationalText | null => {
  const text = value.toFraction();
  return parseRational(text) === null ? null : text;
};

/** Exact sum; null when it no longer fits in safe integers. */
export const addRationals = (a: RationalText, b: RationalText): RationalText | null =>
  exact(new Fraction(a).add(new Fraction(b)));

/** Exact product; null when it no longer fits in safe integers. */
export const multiplyRationals = (a: RationalText, b: RationalText): RationalText | null =>
  exact(new Fraction(a).mul(new Fraction(b)));

/** Exact quotient; null when it no longer fits in safe integers or `b` is zero. */
export const divideRationals = (a: RationalText, b: RationalText): RationalText | null =>
  parseRational(b)?.n === 0 ? null : exact(new Fraction(a).div(new Fraction(b)));

/** -1, 0 or 1. */
export const compareRationals = (a: RationalText, b: RationalText): number => new Fraction(a).compare(new Fraction(b));

/** Deeper fractions have denominators beyond any that is asked for: they grow at least as Fibonacci's numbers do. */
const DEPTH_MAX = 70;

/** The fraction of smallest denominator between two bounds, by continued fractions. 0 <= low <= high. */
const simplestBetween = (low: number, high: number, depth: number): Rational => {
  const whole = Math.floor(low);
  if (whole === low || depth === 0) return { n: whole, d: 1 };
  if (whole + 1 <= high) return { n: whole + 1, d: 1 };
  const rest = simplestBetween(1 / (high - whole), 1 / (low - whole), depth - 1);
  return { n: whole * rest.n + rest.d, d: rest.n };
};

/**
 * The simplest fraction within `relTol` of a computed double, so that 0.333333333333 comes back as 1/3.
 * null when its denominator would pass `maxDenominator`, and for negatives, NaN and infinities.
 */
export const nearestFraction = (value: number, maxDenominator: number, relTol: number): Rational | null => {
  if (!Number.isFinite(value) || value < 0) return null;
  const found = simplestBetween(value * (1 - relTol), value * (1 + relTol), DEPTH_MAX);
  return found.d > maxDenominator || !Number.isSafeInteger(found.n) ? null : found;
};
