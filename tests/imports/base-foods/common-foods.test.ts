import { beforeAll, describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { compileFoodNames, type FoodNames } from "../../../src/domain/quantity/food-name.js";
import { readLine } from "../../../src/domain/quantity/read-line.js";
import { readBase } from "../../kit/base-foods.js";
import { commonFoods } from "./common-foods.js";
import { lacks } from "./coverage.js";

let names: FoodNames;
let foods: ReadonlyMap<string, Food>;
beforeAll(async () => {
  const { whole } = await readBase();
  names = compileFoodNames(whole.map((food) => ({ ...food, base: true })));
  foods = new Map(whole.map((food) => [food.slug, food]));
}, 60_000);

/** Foods that may be meant: one, or the few of a question. */
function meant(words: string, locale: string): readonly Food[] {
  const { match } = readLine(`100 g ${words}`, { locale, measures: "METRIC", region: locale.slice(3), foods: names });
  const slugs = match.kind === "FOUND" ? [match.slug] : match.kind === "AMBIGUOUS" ? match.slugs : [];
  return slugs.length > 4 ? [] : slugs.flatMap((slug) => foods.get(slug) ?? []);
}

describe("common foods", () => {
  it("are at least 250, each named once", () => {
    expect(commonFoods.length).toBeGreaterThanOrEqual(250);
    expect(new Set(commonFoods.map(([en]) => en)).size).toBe(commonFoods.length);
  });

  it.each([
    ["English", "en-GB", 0],
    ["German", "de-DE", 1],
  ] as const)("are found by their %s names to 95 %, and described whole to 90 %", (_, locale, at) => {
    const asked = commonFoods.map((words) => ({ words: words[at], found: meant(words[at], locale) }));
    const notFound = asked.filter(({ found }) => found.length === 0).map(({ words }) => words);
    const notWhole = asked.filter(({ found }) => found.length === 0 || found.some((food) => lacks(food).length > 0));
    expect(notFound.length, notFound.join(", ")).toBeLessThanOrEqual(0.05 * asked.length);
    expect(notWhole.length, notWhole.map(({ words }) => words).join(", ")).toBeLessThanOrEqual(0.1 * asked.length);
    const clear = asked.filter(({ found }) => found.length === 1);
    expect(clear.length).toBeGreaterThanOrEqual(0.85 * asked.length);
  });
});
