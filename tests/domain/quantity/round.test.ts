import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fractionText } from "../../../src/domain/quantity/fraction-text.js";
import { roundOn, shares, sharesWithRest, steps } from "../../../src/domain/quantity/round.js";

describe("rounding on nested grids", () => {
  const grids = [shares([0], 0.01), shares([0, 0.5], 0.02), shares([0, 0.25, 0.5, 0.75], 0)];

  it.each([
    [2, 2],
    [2.019, 2],
    [2.021, 2],
    [2.2, 2.25],
    [2.49, 2.5],
    [2.99, 3],
    [0, 0],
    [0.1, 0],
    [0.13, 0.25],
  ])("%d becomes %d", (value, rounded) => {
    expect(roundOn(grids, value)).toEqual({ value: rounded, main: rounded, rest: 0 });
  });

  it("takes the coarsest grid that is near enough, else the finest", () => {
    expect(roundOn([steps(5, 0.05), steps(1, 0)], 102).value).toBe(100);
    expect(roundOn([steps(5, 0.01), steps(1, 0)], 102).value).toBe(102);
    expect(roundOn([steps(5, 0.01), steps(1, 0)], 102.4).value).toBe(102);
  });

  it("knows an exact tie and keeps the larger", () => {
    expect(roundOn([steps(1, 0)], 2.5).value).toBe(3);
  });

  it("shows a rest in the smaller unit, and the fewest parts for one value", () => {
    const cups = sharesWithRest([0, 0.25, 0.5], 48, [3, 12], 0);
    expect(roundOn([cups], 1 + 3 / 48)).toEqual({ value: 1 + 3 / 48, main: 1, rest: 3 });
    expect(roundOn([cups], 1.25)).toEqual({ value: 1.25, main: 1.25, rest: 0 });
    expect(cups.offsets.filter(({ value }) => value >= 1)).toEqual([]);
  });

  it("leaves a value alone where there is no grid", () => {
    expect(roundOn([], 1.234)).toEqual({ value: 1.234, main: 1.234, rest: 0 });
  });

  it("never shows more as less", () => {
    const value = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(value, value, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(roundOn(grids, less).value).toBeLessThanOrEqual(roundOn(grids, more).value);
      }),
    );
  });
});

describe("fractions as text", () => {
  it.each([
    [0, "0"],
    [0.5, "½"],
    [1.5, "1½"],
    [1 / 3, "⅓"],
    [2 + 2 / 3, "2⅔"],
    [7 / 8, "⅞"],
    [1 / 16, "1/16"],
    [1 + 3 / 16, "1 3/16"],
    [3, "3"],
    [2.9999999999, "3"],
  ])("%d is %s", (value, text) => {
    expect(fractionText(value, String)).toBe(text);
  });
});
