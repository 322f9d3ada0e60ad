// @ts-nocheck
import type { Measured, RationalText, UnitRef } from "../../model/amount.js";
import { addRationals, compareRationals, divideRationals, multiplyRationals } from "../rational.js";
import { standardUnit } from "../unit.js";

/** How many of `to` one `from` is, exactly; null across dimensions and for unlike own measures. */
const exactRatio = (from: UnitRef, to: UnitRef): RationalText | null => {
  if (from === to) return "1";
  const [source, target] = [standardUnit(from), standardUnit(to)];
  if (source === null || target === null || source.dimension !== target.dimension) return null;
  return divideRationals(source.exact, target.exact);
};

const times = (value: RationalText, ratio: RationalText | null): RationalText | null =>
  ratio === null ? null : multiplyRationals(value, ratio);

/** The amount counted in another unit, exactly; null where only a food's facts could tell. */
export const measuredIn = (measured: Measured, unit: UnitRef): Measured | null => {
  const ratio = exactRatio(measured.unit, unit);
  const [low, high] = [times(measured.low, ratio), times(measured.high, ratio)];
  return low === null || high === null ? null : { low, high, unit };
};

/** Exact sum in the unit of `a`; null where the units do not convert by definition. */
export const addMeasured = (a: Measured, b: Measured): Measured | null => {
  const same = measuredIn(b, a.unit);
  const low = same === null ? null : addRationals(a.low, same.low);
  const high = same === null ? null : addRationals(a.high, same.high);
  return low === null || high === null ? null : { low, high, unit: a.unit };
};

/** From `a` up to `b`, in the unit of `a`; null where the units do not convert or `b` is the smaller. */
export const measuredRange = (a: Measured, b: Measured): Measured | null => {
  const same = measuredIn(b, a.unit);
  return same === null || compareRationals(a.low, same.high) > 0 ? null : { ...a, high: same.high };
};

/** Exact product, both ends; null when it no longer fits. */
export const scaleMeasured = ({ low, high, unit }: Measured, factor: RationalText): Measured | null => {
  const [first, last] = [multiplyRationals(low, factor), multiplyRationals(high, factor)];
  return first === null || last === null ? null : { low: first, high: last, unit };
};
