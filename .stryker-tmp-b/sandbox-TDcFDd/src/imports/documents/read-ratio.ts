// @ts-nocheck
import { Fraction } from "fraction.js";
import type { RationalText } from "../../domain/model/amount.js";
import { failed, ok } from "../../domain/problem.js";
import type { Path, Result } from "../../domain/problem.js";

const shape = /^\d{1,9}( \d{1,4}\/\d{1,4}|\/\d{1,4}|\.\d{1,9})?$/;

/** A bare number in lowest terms: `2`, `0.75`, `3/4`, `1 1/2`, always with a decimal point. */
export function readRatio(written: string, path: Path): Result<RationalText> {
  const text = written.trim();
  if (!shape.test(text) || /\/0+$/.test(text)) {
    return failed([{ code: "BAD_AMOUNT", path, written, why: "a number or a fraction without a unit is expected" }]);
  }
  return ok(new Fraction(text).toFraction());
}
