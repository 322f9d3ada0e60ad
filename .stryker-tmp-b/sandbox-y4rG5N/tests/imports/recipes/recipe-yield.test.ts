// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readRecipeYield } from "../../../src/imports/recipes/recipe-yield.js";

const short = (value: unknown) => {
  const { servings, yields, unread } = readRecipeYield(value);
  return {
    servings: servings === null ? null : [servings.from, servings.to],
    yields: yields.map(({ count, upTo, of }) => [count, upTo, of]),
    unread,
  };
};

// Case O-35: shapes (c) to (f) occur in public test fixtures of schema readers; (g) and (h) from memory.
describe("O-35: what a recipe says it gives", () => {
  it.each([
    ["a", 6, null, [[6, 6, null]]],
    ["b", "4 servings", [4, 4], [[4, 4, "servings"]]],
    ["c", ["4", "4 servings"], [4, 4], [[4, 4, "servings"]]],
    [
      "d",
      ["8 slices", "4 servings"],
      [4, 4],
      [
        [8, 8, "slices"],
        [4, 4, "servings"],
      ],
    ],
    [
      "e",
      ["2 loaves", "12 rolls"],
      null,
      [
        [2, 2, "loaves"],
        [12, 12, "rolls"],
      ],
    ],
    ["f", ["24 cookies", "pour 24"], null, [[24, 24, "cookies"]]],
    ["g", "4-6 servings", [4, 6], [[4, 6, "servings"]]],
    ["h", "Makes about 1 quart", null, [[1, 1, "quart"]]],
  ])("(%s) %j", (_, written, servings, yields) => {
    expect(short(written)).toEqual({ servings, yields, unread: [] });
  });

  it("joins no two numbers to one, and reports what it cannot read", () => {
    expect(short("a crowd")).toEqual({ servings: null, yields: [], unread: ["a crowd"] });
    expect(short("2 loaves of 12 slices").unread).toEqual(["2 loaves of 12 slices"]);
    expect(short({ "@type": "Thing" })).toEqual({ servings: null, yields: [], unread: [] });
    expect(short("Serves 4").servings).toEqual([4, 4]);
    expect(short("4 Portionen").servings).toEqual([4, 4]);
  });

  it("never makes a number that stands nowhere in the text", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 30 }), { maxLength: 5 }), (texts) => {
        const written = texts.join(" ");
        for (const { count, upTo } of readRecipeYield(texts).yields) {
          expect(written).toContain(String(count));
          expect(written).toContain(String(upTo));
        }
      }),
    );
  });
});
