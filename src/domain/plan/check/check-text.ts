import { limits } from "../../engine-limits.js";
import type { Measured, RationalText } from "../../model/amount.js";
import type { Path, Problem } from "../../problem.js";
import { compareRationals, parseRational } from "../../quantity/rational.js";

/** A rational as text that is one, in lowest terms or not, and inside the bounds; else the problem with it. */
export function checkRational(
  text: RationalText,
  path: Path,
  bounds: { readonly min: number; readonly max: number },
): Problem[] {
  const rational = parseRational(text);
  if (rational === null) return [{ code: "BAD_AMOUNT", path, written: text.slice(0, 80), why: "NOT_A_NUMBER" }];
  const value = rational.n / rational.d;
  if (value >= bounds.min && value <= bounds.max) return [];
  return [{ code: "AMOUNT_OUT_OF_RANGE", path, value: text.slice(0, 80), min: bounds.min, max: bounds.max }];
}

/** Both ends of a measured amount, in order. Its unit is checked where it is converted. */
export function checkMeasured(measured: Measured, path: Path, min: number): Problem[] {
  const bounds = { min, max: limits.amount };
  const problems = [...checkRational(measured.low, path, bounds), ...checkRational(measured.high, path, bounds)];
  if (problems.length > 0) return problems.slice(0, 1);
  if (compareRationals(measured.low, measured.high) <= 0) return [];
  return [{ code: "BAD_AMOUNT", path, written: `${measured.low}-${measured.high}`, why: "RANGE_UPSIDE_DOWN" }];
}

export function checkNumber(
  value: number,
  path: Path,
  bounds: { readonly min: number; readonly max: number },
): Problem[] {
  if (Number.isFinite(value) && value >= bounds.min && value <= bounds.max) return [];
  return [{ code: "AMOUNT_OUT_OF_RANGE", path, value: String(value), min: bounds.min, max: bounds.max }];
}

export function checkCount(size: number, limit: number, what: string, path: Path): Problem[] {
  return size <= limit ? [] : [{ code: "TOO_LARGE", path, what, size, limit }];
}

export function checkText(text: string, what: string, path: Path): Problem[] {
  if (text.length === 0)
    return [{ code: "BAD_SHAPE", path, expected: `${what} of at least one character`, got: "nothing" }];
  return checkCount(text.length, limits.text, `characters of ${what}`, path);
}

/** Each value once; the second and later ones are named. */
export function checkUnique(values: readonly string[], pathOf: (value: string) => Path): Problem[] {
  const seen = new Set<string>();
  const problems: Problem[] = [];
  for (const value of values) {
    if (seen.has(value)) problems.push({ code: "DUPLICATE", path: pathOf(value), value: value.slice(0, 80) });
    seen.add(value);
  }
  return problems;
}
