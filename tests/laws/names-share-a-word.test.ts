import fc from "fast-check";
import { beforeAll, expect, it } from "vitest";
import { readBaseFolder } from "../../src/app/setup/read-base-folder.js";
import type { Food } from "../../src/domain/model/food.js";
import { compileFoodNames, findFood, type FoodNames } from "../../src/domain/quantity/food-name.js";

/**
 * A food is never answered for words of which it has none in its names. Words are compared by an own, coarser measure than the resolver's:
 * their first three letters without accents, of one text with all spaces taken out.
 */
const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/œ/g, "oe")
    .replace(/ł/g, "l")
    .normalize("NFD")
    .replace(/[^\p{L}\p{N} ]/gu, " ")
    .replace(/\p{M}/gu, "");
const starts = (text: string): readonly string[] =>
  bare(text)
    .split(" ")
    .flatMap((word) => (word.length < 2 ? [] : [word.slice(0, 3).replace(/e$/u, ""), word.slice(0, 2)]));

let foods: readonly Food[] = [];
let names: FoodNames;
let words: readonly string[] = [];
let all: readonly string[] = [];
const spelt = (food: Food): readonly string[] => food.names.flatMap(({ one, many, also }) => [one, many, ...also]);

beforeAll(async () => {
  ({ foods } = await readBaseFolder("seeds"));
  names = compileFoodNames(foods);
  all = foods.flatMap(spelt);
  words = [...new Set(all.flatMap((name) => name.split(" ")))];
}, 60_000);

const language = fc.constantFrom(null, "en", "de", "fr", "es", "pl", "xx");

/** Words of names, of other kinds, and rubbish, in any order, with marks between them. */
const query = fc
  .array(
    fc.oneof(
      { weight: 5, arbitrary: fc.nat().map((at) => words[at % words.length] ?? "") },
      {
        weight: 2,
        arbitrary: fc.constantFrom("fresh", "large", "organic", "frisch", "bio", "frais", "dried", "of", "milk", "oil"),
      },
      { weight: 1, arbitrary: fc.string({ maxLength: 12, unit: "grapheme" }) },
    ),
    { minLength: 1, maxLength: 4 },
  )
  .chain((parts) =>
    fc.oneof(
      fc.constant(parts),
      fc.nat().map((at) => [all[at % all.length] ?? "", ...parts.slice(2)]),
    ),
  )
  .chain((parts) => fc.constantFrom(" ", ", ", "-", "  ").map((mark) => parts.join(mark)));

it("law 7: no food is answered none of whose names shares a word with what was asked", () => {
  let answered = 0;
  fc.assert(
    fc.property(query, language, (asked, spoken) => {
      const match = findFood(names, asked, spoken, null);
      if (match.kind === "NONE") return;
      answered += 1;
      const wanted = new Set(starts(asked));
      for (const slug of match.kind === "FOUND" ? [match.slug] : match.slugs) {
        const food = foods.find((each) => each.slug === slug);
        expect(
          food && spelt(food).some((name) => starts(name).some((start) => wanted.has(start))),
          `${asked}: ${slug}`,
        ).toBe(true);
      }
    }),
    { numRuns: 3000 },
  );
  // A resolver that answered nothing would keep the law as well.
  expect(answered).toBeGreaterThan(100);
});

it("law 7: a word that makes another food of it is never left out", () => {
  const makes = {
    en: ["dried", "smoked", "frozen", "tinned", "ground", "sweet", "paste", "flour", "milk", "oil"],
    de: ["getrocknete", "geräucherte", "Mehl", "Öl", "Milch", "süße"],
    fr: ["séché", "fumé", "farine", "huile", "lait"],
    es: ["seco", "ahumado", "harina", "aceite", "leche"],
    pl: ["suszony", "wędzony", "mąka", "olej", "mleko"],
  } as const;
  for (const [spoken, added] of Object.entries(makes))
    for (const food of foods)
      for (const name of food.names.filter((each) => each.language === spoken))
        for (const word of added)
          for (const asked of [`${word} ${name.one}`, `${name.one} ${word}`, `${name.one}, ${word}`]) {
            const match = findFood(names, asked, spoken, null);
            if (match.kind !== "FOUND" || match.slug !== food.slug) continue;
            // Then the food is called so itself.
            const has = spelt(food).some(
              (each) => bare(each).includes(bare(word).slice(0, 3)) || bare(each).includes(tins[word] ?? "\0"),
            );
            expect(has, `${asked}: ${food.slug}`).toBe(true);
          }
});

const tins: Readonly<Record<string, string>> = { tinned: "canned", dried: "dry", getrocknete: "trocken", séché: "sec" };
