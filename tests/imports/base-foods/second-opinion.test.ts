import { beforeAll, describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { compileFoodNames, type FoodNames } from "../../../src/domain/quantity/food-name.js";
import { readLine } from "../../../src/domain/quantity/read-line.js";
import { readBase } from "../../kit/base-foods.js";
import { lacks } from "./coverage.js";
import { englishAndGerman, others } from "./second-opinion.js";

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

const asked: readonly (readonly [locale: string, words: readonly string[]])[] = [
  ["en-GB", englishAndGerman.map(([en]) => en)],
  ["de-DE", englishAndGerman.map(([, de]) => de)],
  ["fr-FR", others.fr],
  ["es-ES", others.es],
  ["pl-PL", others.pl],
];

describe("foods of a second opinion", () => {
  it("are 120 in English and German and 30 in each other language, each named once", () => {
    expect(asked.map(([, words]) => new Set(words).size)).toEqual([120, 120, 30, 30, 30]);
  });

  it.each(asked)("are found by their names in %s to 95 %%, and described whole to 90 %%", (locale, list) => {
    const found = list.map((words) => ({ words, found: meant(words, locale) }));
    const notFound = found.filter((each) => each.found.length === 0).map(({ words }) => words);
    const notWhole = found.filter(
      (each) => each.found.length === 0 || each.found.some((food) => lacks(food).length > 0),
    );
    expect(notFound.length, notFound.join(", ")).toBeLessThanOrEqual(0.05 * list.length);
    expect(notWhole.length, notWhole.map(({ words }) => words).join(", ")).toBeLessThanOrEqual(0.1 * list.length);
  });
});
