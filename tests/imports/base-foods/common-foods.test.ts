import { beforeAll, describe, expect, it } from "vitest";
import { commonFoods } from "./common-foods.js";
import { expectKnown, knownFoods, type KnownFoods } from "./known-foods.js";

let known: KnownFoods;
beforeAll(async () => {
  known = await knownFoods();
}, 60_000);

describe("common foods", () => {
  it("are at least 250, each named once", () => {
    expect(commonFoods.length).toBeGreaterThanOrEqual(250);
    expect(new Set(commonFoods.map(([en]) => en)).size).toBe(commonFoods.length);
  });

  it.each([
    ["English", "en-GB", 0],
    ["German", "de-DE", 1],
  ] as const)("are found by their %s names to 95 %, and described whole to 90 %", (_, locale, at) => {
    const found = expectKnown(
      known,
      commonFoods.map((words) => words[at]),
      locale,
    );
    const clear = found.filter((foods) => foods.length === 1);
    expect(clear.length).toBeGreaterThanOrEqual(0.85 * found.length);
  });
});
