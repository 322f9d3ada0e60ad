/** What is added to whole units: a share of the unit, and perhaps so many of a smaller one. */
// @ts-nocheck

export interface Offset {
  readonly value: number;
  readonly share: number;
  readonly rest: number;
}

/** Values that may be shown: every `period` of the unit, plus any of the offsets. The finest grid holds all coarser ones. */
export interface Grid {
  readonly period: number;
  readonly offsets: readonly Offset[];
  /** Used where it is no further off than this share of the true value. The last grid of a list is always used. */
  readonly within: number;
}

export interface Rounded {
  readonly value: number;
  /** Shown in the unit itself… */
  readonly main: number;
  /** …and in the smaller unit beside it. */
  readonly rest: number;
}

const plain = (value: number): Offset => ({ value, share: value, rest: 0 });

/** Every `step` of the unit. */
export const steps = (step: number, within: number): Grid => ({ period: step, offsets: [plain(0)], within });

/** Whole units and these shares of one. */
export const shares = (fractions: readonly number[], within: number): Grid => ({
  period: 1,
  offsets: fractions.map(plain),
  within,
});

/** These shares, each alone or with one of these counts of a smaller unit (`smaller` of it make one). Fewest parts win. */
export const sharesWithRest = (
  fractions: readonly number[],
  smaller: number,
  counts: readonly number[],
  within: number,
): Grid => {
  const withRest = fractions.flatMap((share) => counts.map((rest) => ({ value: share + rest / smaller, share, rest })));
  const byValue = new Map<number, Offset>();
  for (const offset of [...fractions.map(plain), ...withRest]) {
    const key = Math.round(offset.value * 1e6);
    if (key < 1e6 && !byValue.has(key)) byValue.set(key, offset);
  }
  return { period: 1, offsets: [...byValue.values()], within };
};

const nearest = (value: number, { period, offsets }: Grid): Rounded => {
  const base = Math.floor(value / period) * period;
  const after: Rounded = { value: base + period, main: base + period, rest: 0 };
  return offsets.reduce<Rounded>((best, offset) => {
    const candidate = { value: base + offset.value, main: base + offset.share, rest: offset.rest };
    const [distance, bestDistance] = [Math.abs(candidate.value - value), Math.abs(best.value - value)];
    return distance < bestDistance ? candidate : best;
  }, after);
};

/**
 * The value on the coarsest grid that is near enough. Monotone, because each grid holds the coarser ones: a larger value
 * is never shown as less. `value` is finite and not negative.
 */
export const roundOn = (grids: readonly Grid[], value: number): Rounded => {
  for (const grid of grids) {
    const rounded = nearest(value, grid);
    if (Math.abs(rounded.value - value) <= value * grid.within) return rounded;
  }
  const last = grids.at(-1);
  return last === undefined ? { value, main: value, rest: 0 } : nearest(value, last);
};

/** A share of one step on the finest grid, below which a value would be shown as nothing. */
export const vanishes = (grids: readonly Grid[], value: number): boolean =>
  value > 0 && roundOn(grids, value).value === 0;
