import { beforeAll, describe, expect, it } from "vitest";
import { expectKnown, knownFoods, type KnownFoods } from "./known-foods.js";
import { englishAndGerman, others } from "./second-opinion.js";

let known: KnownFoods;
beforeAll(async () => {
  known = await knownFoods();
}, 60_000);

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
    expectKnown(known, list, locale);
  });
});
