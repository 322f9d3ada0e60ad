import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, it } from "vitest";
import { isMessage, type Arguments, type Catalogue } from "../../../src/exports/words/message.js";
import { english } from "../../../src/exports/words/messages/english.js";
import { french } from "../../../src/exports/words/messages/french.js";
import { german } from "../../../src/exports/words/messages/german.js";
import { polish } from "../../../src/exports/words/messages/polish.js";
import { spanish } from "../../../src/exports/words/messages/spanish.js";
import { speak } from "../../../src/exports/words/speak.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

const translations = { de: german, fr: french, es: spanish, pl: polish } as const;
const languages = ["en", "de", "fr", "es", "pl"] as const;
type Language = (typeof languages)[number];

interface Entry {
  readonly path: string;
  readonly text: string;
  /** null: words without arguments. */
  readonly example: Arguments | null;
  readonly said: unknown;
}

const own = (of: unknown, key: string): unknown => (of as Readonly<Record<string, unknown>>)[key];

/** Every entry of a catalogue in one language, by the path of its keys. */
function entries(catalogue: Catalogue, translation: unknown, words: unknown, above = ""): readonly Entry[] {
  return Object.entries(catalogue).flatMap(([key, entry]): readonly Entry[] => {
    const path = above + key;
    const [translated, said] = [translation === null ? null : own(translation, key), own(words, key)];
    if (typeof entry === "string")
      return [{ path, text: translation === null ? entry : String(translated), example: null, said }];
    if (isMessage(entry))
      return [{ path, text: translation === null ? entry.text : String(translated), example: entry.example, said }];
    return entries(entry, translated, said, `${path}.`);
  });
}

const entriesIn = (language: Language): readonly Entry[] =>
  entries(english, language === "en" ? null : translations[language], wordsFor(language));

/** Names of arguments, and the forms that a sentence has by number or by word. */
function partsOf(text: string): { readonly names: readonly string[]; readonly forms: readonly string[] } {
  const names = new Set<string>();
  const forms: string[] = [];
  const walk = (elements: ReturnType<IntlMessageFormat["getAst"]>): void => {
    for (const element of elements) {
      if (element.type === 0 || element.type === 7) continue;
      if ("value" in element && typeof element.value === "string") names.add(element.value);
      if (!("options" in element) || element.options === undefined || element.options === null) continue;
      for (const [form, option] of Object.entries(element.options as Record<string, { value: typeof elements }>)) {
        forms.push(`${element.type === 6 ? "plural" : "select"} ${String(element.value)} ${form}`);
        walk(option.value);
      }
    }
  };
  walk(new IntlMessageFormat(text, "en", undefined, { ignoreTag: true }).getAst());
  return { names: [...names].toSorted(), forms };
}

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
      const forms = partsOf(text).forms.filter((form) => form.startsWith("plural "));
      const names = new Set(forms.map((form) => form.split(" ")[1]));
      for (const name of names) {
        const given = forms.flatMap((form) => (form.split(" ")[1] === name ? [form.split(" ")[2] ?? ""] : []));
        for (const form of given) if (!form.startsWith("=")) expect([...known], `${path}: ${form}`).toContain(form);
        for (const form of known) expect(given, path).toContain(form);
      }
    }
  });

  it("choose by the same words as the English sentence", () => {
    const choices = (text: string): readonly string[] =>
      [...new Set(partsOf(text).forms.filter((form) => form.startsWith("select ")))].toSorted();
    const inEnglish = new Map(entriesIn("en").map(({ path, text }) => [path, text]));
    for (const { path, text } of all) expect(choices(text), path).toEqual(choices(inEnglish.get(path) ?? ""));
  });

  it("name things without ICU's quoting, which a straight apostrophe before a brace would begin", () => {
    for (const { path, text } of all) if (language !== "en") expect(text, path).not.toContain("'");
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
