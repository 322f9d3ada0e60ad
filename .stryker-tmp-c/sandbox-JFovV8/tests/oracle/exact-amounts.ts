// @ts-nocheck
import { Fraction } from "fraction.js";
import type { Dimension, Measured } from "../../src/domain/model/amount.js";
import type { FoodDensity, OwnMeasure } from "../../src/domain/model/food.js";

/**
 * The plain reading of DESIGN.md in exact fractions: slow, recursive, and written without the engine. Whatever the engine says, the
 * oracle must say too, to nine digits.
 */

export interface Exact {
  readonly dimension: Dimension;
  readonly low: Fraction;
  readonly high: Fraction;
}

export interface Facts {
  readonly densities: readonly FoodDensity[];
  readonly measures: readonly OwnMeasure[];
}

/** Exact by definition: international avoirdupois pound of 1959, US gallon of 231 cubic inches. */
const units: Readonly<Record<string, readonly [Dimension, string]>> = {
  g: ["MASS", "1"],
  kg: ["MASS", "1000"],
  oz: ["MASS", "28.349523125"],
  lb: ["MASS", "453.59237"],
  ml: ["VOLUME", "1"],
  l: ["VOLUME", "1000"],
  "us-cup": ["VOLUME", "236.5882365"],
  "us-tbsp": ["VOLUME", "14.78676478125"],
  "us-tsp": ["VOLUME", "4.92892159375"],
  "metric-tbsp": ["VOLUME", "15"],
  "au-tbsp": ["VOLUME", "20"],
  piece: ["COUNT", "1"],
  dozen: ["COUNT", "12"],
};

export const exactly = (value: number | string): Fraction =>
  new Fraction(typeof value === "number" ? String(value) : value);
export const zero = new Fraction(0);
export const larger = (a: Fraction, b: Fraction): Fraction => (a.compare(b) >= 0 ? a : b);

const facet = (measure: OwnMeasure, dimension: Dimension): number | null => {
  if (dimension === "MASS") return measure.grams;
  if (dimension === "VOLUME") return measure.millilitres;
  return measure.pieces ?? (measure.name === "piece" ? 1 : null);
};

/** Amounts one unit stands for, one for each dimension the writer gave. */
const readings = (unit: string, facts: Facts): readonly (readonly [Dimension, Fraction])[] => {
  if (!unit.startsWith("own:")) {
    const known = units[unit];
    return known === undefined ? [] : [[known[0], exactly(known[1])]];
  }
  const measure = facts.measures.find(({ name }) => `own:${name}` === unit);
  if (measure === undefined) return [];
  return (["MASS", "VOLUME", "COUNT"] as const).flatMap((dimension) => {
    const size = facet(measure, dimension);
    return size === null ? [] : [[dimension, exactly(size)] as const];
  });
};

/** What one of a dimension's base units is in another's, by one fact; null where no fact says so. */
const directly = (from: Dimension, to: Dimension, facts: Facts, form: string | null): Fraction | null => {
  const known = (a: Dimension, b: Dimension): Fraction | null => {
    if (a === "VOLUME" && b === "MASS") {
      const found = facts.densities.find((density) => density.form === form);
      return found === undefined ? null : exactly(found.gramsPerMl);
    }
    if (a !== "COUNT") return null;
    for (const measure of [...facts.measures].sort((x, y) => Number(y.name === "piece") - Number(x.name === "piece"))) {
      const [size, pieces] = [facet(measure, b), facet(measure, "COUNT")];
      if (size !== null && pieces !== null) return exactly(size).div(exactly(pieces));
    }
    return null;
  };
  const forward = known(from, to);
  if (forward !== null) return forward;
  return known(to, from)?.inverse() ?? null;
};

/** In another dimension, by one fact or by two after each other; null where facts are missing. */
export function converted(amount: Exact, to: Dimension, facts: Facts, form: string | null): Exact | null {
  const by = (factor: Fraction): Exact => ({
    dimension: to,
    low: amount.low.mul(factor),
    high: amount.high.mul(factor),
  });
  if (amount.dimension === to) return amount;
  const one = directly(amount.dimension, to, facts, form);
  if (one !== null) return by(one);
  const via = (["MASS", "VOLUME", "COUNT"] as const).find((each) => each !== to && each !== amount.dimension)!;
  const [first, second] = [directly(amount.dimension, via, facts, form), directly(via, to, facts, form)];
  return first === null || second === null ? null : by(first.mul(second));
}

/** As written, in base units. `wanted` picks among the facts of an own measure; otherwise grams before millilitres before pieces. */
export function asWritten(measured: Measured, facts: Facts, wanted: Dimension | null): Exact | null {
  const found = readings(measured.unit, facts);
  const [dimension, size] = found.find(([each]) => each === wanted) ?? found[0] ?? [null, zero];
  if (dimension === null) return null;
  return { dimension, low: exactly(measured.low).mul(size), high: exactly(measured.high).mul(size) };
}
