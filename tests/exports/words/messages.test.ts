import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, it } from "vitest";
import type { Arguments } from "../../../src/exports/words/message.js";
import { zoneOfCity } from "../../../src/domain/quantity/naming/zones-of-cities.js";
import { speak } from "../../../src/exports/words/speak.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";
import { entriesIn, languages, partsOf, readings } from "./catalogue-entries.js";

const numbers = [0, 1, 2, 5, 22, 1.5];

/** The example, and the same with other numbers in it. */
const variants = (example: Arguments): readonly Arguments[] => {
  const counted = Object.keys(example).filter((name) => typeof example[name] === "number");
  return counted.length === 0
    ? [example]
    : numbers.map((number) => ({ ...example, ...Object.fromEntries(counted.map((name) => [name, number])) }));
};

describe.each(languages)("the fixed words in %s", (language) => {
  const all = entriesIn(language);

  it("say every sentence, with 0, 1, 2, 5, 22 and 1.5 of what is counted", () => {
    for (const { path, example, said } of all) {
      if (example === null) {
        expect(said, path).toMatch(/\S/);
        continue;
      }
      for (const given of variants(example)) {
        const text = (said as (given: Arguments) => string)(given);
        expect(text, path).toMatch(/\S/);
        expect(text, path).not.toMatch(/[{}#]|undefined|null|NaN|\bplural\b,/);
      }
    }
  });

  // The library that parses the sentences formats them in its own way: a second opinion of each.
  it("say what intl-messageformat says", () => {
    for (const { path, text, example, said } of all) {
      if (example === null) continue;
      const format = new IntlMessageFormat(text, language, undefined, { ignoreTag: true });
      for (const given of variants(example))
        expect((said as (given: Arguments) => string)(given), path).toBe(format.format(given));
    }
  });

  it("take the arguments of the English sentence, every one of them", () => {
    for (const { path, text, example } of all) {
      expect(partsOf(text).names, path).toEqual(example === null ? [] : Object.keys(example).toSorted());
    }
  });

  // Unicode CLDR, plural rules: https://www.unicode.org/cldr/charts/latest/supplemental/language_plural_rules.html
  it("have the plural forms that the language has in CLDR, and no other", () => {
    const known = new Set(new Intl.PluralRules(language).resolvedOptions().pluralCategories);
    for (const { path, text } of all) {
      const forms = partsOf(text).forms.filter(({ by }) => by === "plural");
      for (const name of new Set(forms.map((form) => form.name))) {
        const given = forms.flatMap((form) => (form.name === name ? [form.form] : []));
        for (const form of given) if (!form.startsWith("=")) expect([...known], `${path}: ${form}`).toContain(form);
        for (const form of known) expect(given, path).toContain(form);
      }
    }
  });

  it("choose by the same words as the English sentence", () => {
    const choices = (text: string): readonly string[] =>
      [
        ...new Set(partsOf(text).forms.flatMap(({ by, name, form }) => (by === "select" ? [`${name} ${form}`] : []))),
      ].toSorted();
    const inEnglish = new Map(entriesIn("en").map(({ path, text }) => [path, text]));
    for (const { path, text } of all) expect(choices(text), path).toEqual(choices(inEnglish.get(path) ?? ""));
  });

  it("name a city that the form knows where they ask for one", () => {
    expect(zoneOfCity(wordsFor(language).page.cityExample, null)).toBe("Europe/Lisbon");
  });

  it("name things without ICU's quoting, which a straight apostrophe before a brace would begin", () => {
    for (const { path, text } of all) if (language !== "en") expect(text, path).not.toContain("'");
  });
});

/** Groups whose entries are looked up by a code, or by a text of the rules. */
const byCode = [
  "aisles",
  "keepingClassNames",
  "allergens",
  "allergenNames",
  "appliances",
  "cautionTexts",
  "dietNames",
  "diets",
  "ruleTexts",
];

describe("the catalogues", () => {
  it("hold nothing that no file says", async () => {
    const files = await readdir("src", { recursive: true });
    const said = await Promise.all(
      files
        .filter((file) => file.endsWith(".ts") && !file.includes(join("words", "messages")))
        .map((file) => readFile(join("src", file), "utf8")),
    );
    const words = new Set(said.join("\n").match(/[\w/-]+/g));
    const unsaid = entriesIn("en").filter(
      ({ path }) => !byCode.includes(path.split(".")[0] ?? "") && !words.has(path.split(".").at(-1) ?? ""),
    );
    expect(unsaid.map(({ path }) => path)).toEqual([]);
  });
});

describe("the table for native readers", () => {
  it("says each form of a sentence once, in every language", () => {
    const said = (language: (typeof languages)[number], path: string) =>
      entriesIn(language).flatMap((entry) => (entry.path === path ? readings(entry, language) : []));
    expect(said("en", "days")).toEqual(["1 day", "2 days"]);
    expect(said("pl", "days")).toEqual(["1 dzień", "1,5 dnia", "2 dni", "5 dni"]);
    expect(said("de", "sessionOfDay")).toEqual(["Der erste Tag", "Einen Tag später", "2 Tage später"]);
    expect(said("en", "load")).toEqual(["load 1 of 3", "loads 1 to 2 of 3"]);
  });
});

describe("words of a reader", () => {
  it("are those of the language, with the numbers of the locale", () => {
    expect(wordsFor("de-CH").hours({ count: 1.5 })).toBe("1.5 Stunden");
    expect(wordsFor("de").hours({ count: 1.5 })).toBe("1,5 Stunden");
    expect(wordsFor("pl").hours({ count: 22 })).toBe("22 godziny");
    expect(wordsFor("pl").hours({ count: 5 })).toBe("5 godzin");
    expect(wordsFor("pl").hours({ count: 1.5 })).toBe("1,5 godziny");
    expect(wordsFor("fr").hours({ count: 1.5 })).toBe("1,5 heure");
  });

  it("are English where the language has none, and for a malformed tag", () => {
    expect(wordsFor("it").language).toBe("en");
    expect(wordsFor("no such tag").shoppingList).toBe("Shopping list");
    expect(wordsFor("DE-at").language).toBe("de");
  });

  it("never write a sentence without what it is about", () => {
    const say = speak({ made: { text: "{amount} made", example: { amount: "" } } }, null, "en").made as (
      given: Arguments,
    ) => string;
    expect(() => say({})).toThrow("amount");
  });
});
