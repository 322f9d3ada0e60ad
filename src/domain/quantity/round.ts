/** What is added to whole units: a share of the unit, and perhaps so many of a smaller one. */
interface Offset {
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
  let found = base + period;
  let chosen: Offset | null = null;
  for (const offset of offsets) {
    const candidate = base + offset.value;
    if (Math.abs(candidate - value) >= Math.abs(found - value)) continue;
    found = candidate;
    chosen = offset;
  }
  return chosen === null
    ? { value: found, main: found, rest: 0 }
    : { value: found, main: base + chosen.share, rest: chosen.rest };
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
