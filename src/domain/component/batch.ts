import { sameShare } from "../engine-limits.js";
import type { BatchRule } from "../model/component.js";
import { toNumber } from "../quantity/rational.js";

/** A batch rule as numbers. `increment` 0: any size of at least `min`. `max` is the largest size of one load. */
export interface BatchSizes {
  readonly min: number;
  readonly max: number;
  readonly increment: number;
}

interface Batches {
  /** In batches, over all loads. */
  readonly made: number;
  readonly loads: number;
}

/**
 * Rounds up, but forgives the last digits of a double: 2.0000000000001 is 2. However little there is, it is something:
 * 1e-12 is 1.
 *
 * @param give how far above a whole number is still that number; a difference has lost digits of what it was taken from
 */
export const ceilForgiving = (value: number, give: number = Math.abs(value) * sameShare): number => {
  const nearest = Math.round(value);
  return Math.abs(value - nearest) <= give ? nearest : Math.ceil(value);
};

/** Rational text was checked when the document was; the largest size is laid on the increment. */
export const batchSizes = (rule: BatchRule): BatchSizes => {
  const min = toNumber(rule.min);
  const increment = rule.increment === null ? 0 : toNumber(rule.increment);
  const max = rule.max === null ? Infinity : toNumber(rule.max);
  if (increment === 0) return { min, max, increment };
  return { min, max: min + increment * Math.floor((max - min) / increment + sameShare), increment };
};

/**
 * The least that covers a demand: as few loads as possible, then as little as possible, each load within the rule.
 *
 * @param demand in batches, >= 0
 * @returns nothing made for no demand; otherwise `made` >= `demand` up to the last digits of a double
 */
export function batchesFor(demand: number, { min, max, increment }: BatchSizes): Batches {
  if (!(demand > 0)) return { made: 0, loads: 0 };
  const loads = Math.max(1, ceilForgiving(demand / max));
  const least = loads * min;
  if (demand <= least) return { made: least, loads };
  if (increment === 0) return { made: demand, loads };
  const more = ceilForgiving((demand - least) / increment, (demand / increment) * sameShare);
  return { made: least + increment * more, loads };
}

/** How often a PER_BATCH line is taken: once for every batch that is begun. */
export const batchesBegun = (made: number): number => ceilForgiving(made);
