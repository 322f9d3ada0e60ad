import { describe, expect, it } from "vitest";
import { greatestCommonDivisor } from "../../../src/domain/quantity/rational.js";
import { contentGrid } from "../../../src/domain/shopping/packs-grid.js";

describe("the grid of contents", () => {
  it.each([
    [
      [400, 2400],
      [1, 6],
    ],
    [
      [500, 750, 1000],
      [2, 3, 4],
    ],
    [
      [0.1, 0.25],
      [2, 5],
    ],
    [
      [425.24, 453.59237],
      [42_524_000, 45_359_237],
    ],
    [[7], [1]],
    [
      [0.5, 0.75, 1000],
      [2, 3, 4000],
    ],
    [
      [1000, 0.001],
      [1_000_000, 1],
    ],
    [
      [0.3, 0.1 * 3],
      [1, 1],
    ],
    [
      [1e9, 2.5e8],
      [4, 1],
    ],
  ])("of %j is %j", (contents, grid) => {
    expect(contentGrid(contents)).toEqual(grid);
  });

  it("keeps whole numbers exact where contents share no decimal place", () => {
    const [third, pound] = contentGrid([453.59237 / 3, 453.59237]);
    expect(Number.isSafeInteger(third) && Number.isSafeInteger(pound)).toBe(true);
    expect(pound! / third!).toBeCloseTo(3, 9);
  });

  it("never rounds a content to nothing", () => {
    expect(contentGrid([1e-9, 1e9])[0]).toBeGreaterThanOrEqual(1);
  });
});

describe("the greatest common divisor", () => {
  it.each([
    [12, 18, 6],
    [0, 5, 5],
    [5, 0, 5],
    [7, 13, 1],
  ])("of %i and %i is %i", (a, b, divisor) => {
    expect(greatestCommonDivisor(a, b)).toBe(divisor);
  });
});
