import { describe, expect, it } from "vitest";
import { english } from "../../../src/exports/words/messages/english.js";
import { codeName, ruleText } from "../../../src/exports/words/rule-words.js";
import { printedText } from "../../../src/exports/words/printed-text.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";
import { aisles } from "../../../src/domain/model/aisles.js";
import { appliances } from "../../../src/domain/model/appliances.js";
import { rules } from "../demo-answer.js";

const languages = ["de", "fr", "es", "pl"] as const;

const { cautions } = rules.safety;
const cautionTexts = cautions.flatMap(({ text, byRegion }) => [text, ...(byRegion ?? []).map((each) => each.text)]);

/** Numbers and units: what a wrong translation of a caution would get wrong. */
const figures = (text: string): readonly string[] =>
  [...text.matchAll(/\d+(?: ?°[CF])?/g)].map(([figure]) => figure).toSorted();

describe.each(languages)("the shipped rules in %s", (language) => {
  const words = wordsFor(language);

  it("have every caution, with the figures of the English one", () => {
    for (const text of cautionTexts) {
      const said = ruleText("cautionTexts", text, words);
      expect(said, text).not.toBe(text);
      expect(figures(said), said).toEqual(figures(text));
    }
  });

  it("have every condition, note and printed time of the keeping rules, with its figures", () => {
    for (const { condition, note, temperature, printed } of rules.safety.keeping) {
      const said = [
        ...[condition, note, temperature].map((text) => [
          text,
          text === null ? "" : ruleText("ruleTexts", text, words),
        ]),
        [printed, printedText(printed, words)],
      ] as const;
      for (const [text, translated] of said) {
        // "41 F (5 C)" is the same in all.
        if (text === null || text === undefined || !/[a-z]{2}/.test(text)) continue;
        expect(translated, text).not.toBe(text);
        expect(figures(String(translated)), String(translated)).toEqual(figures(text));
      }
    }
  });

  it("have a name for every keeping class", () => {
    const { classes } = rules.safety;
    expect(classes.length).toBeGreaterThan(70);
    const same = classes.filter(({ what }) => ruleText("keepingClassNames", what, words) === what);
    expect(same.map(({ code }) => code).filter((code) => !["guacamole", "tofu"].includes(code))).toEqual([]);
    const names = classes.map(({ what }) => ruleText("keepingClassNames", what, words));
    expect(new Set(names).size).toBe(classes.length);
  });

  it("have a name for every allergen and diet, and every threshold", () => {
    for (const { name, threshold } of rules.allergens.lists.flatMap(({ entries }) => entries)) {
      expect(english.allergenNames, name).toSatisfy((names: object) => Object.values(names).includes(name));
      if (threshold !== null) expect(Object.values(english.ruleTexts)).toContain(threshold);
    }
    for (const { code, name } of rules.allergens.diets) {
      expect(ruleText("dietNames", name, words), name).not.toBe(name);
      expect(words.diets).toHaveProperty([code]);
    }
    for (const { threshold } of rules.allergens.claims) expect(Object.values(english.ruleTexts)).toContain(threshold);
  });

  it("have a name for every aisle, every appliance and every code of an allergen", () => {
    for (const code of aisles) expect(words.aisles).toHaveProperty([code]);
    for (const code of appliances) expect(words.appliances).toHaveProperty([code]);
    for (const code of rules.allergens.lists.flatMap(({ entries }) => entries.flatMap(({ includes }) => includes)))
      expect(words.allergens).toHaveProperty([code]);
  });
});

describe("texts of rules that an operator changed", () => {
  it("are shown as they are written: a translation belongs to the very words it was made from", () => {
    const changed = `${cautionTexts[0] ?? ""} And wash your hands.`;
    expect(ruleText("cautionTexts", changed, wordsFor("de"))).toBe(changed);
    expect(codeName("aisles", "cheese-counter", wordsFor("de"))).toBe("cheese counter");
    expect(codeName("aisles", "constructor", wordsFor("de"))).toBe("constructor");
  });
});

// Regulation (EU) No 1169/2011, Annex II, in the German, French, Spanish and Polish editions (OJ L 304, 22.11.2011, p. 18): the
// fourteen terms, from memory of the editions, in the order of the annex.
describe("allergens of the Union", () => {
  it.each([
    [
      "de",
      "glutenhaltiges Getreide, Krebstiere, Eier, Fische, Erdnüsse, Sojabohnen, Milch, Schalenfrüchte, Sellerie, Senf, Sesamsamen, Schwefeldioxid und Sulfite, Lupinen, Weichtiere",
    ],
    [
      "fr",
      "céréales contenant du gluten, crustacés, œufs, poissons, arachides, soja, lait, fruits à coque, céleri, moutarde, graines de sésame, anhydride sulfureux et sulfites, lupin, mollusques",
    ],
    [
      "es",
      "cereales que contengan gluten, crustáceos, huevos, pescado, cacahuetes, soja, leche, frutos de cáscara, apio, mostaza, granos de sésamo, dióxido de azufre y sulfitos, altramuces, moluscos",
    ],
    [
      "pl",
      "zboża zawierające gluten, skorupiaki, jaja, ryby, orzeszki ziemne (arachidowe), soja, mleko, orzechy, seler, gorczyca, nasiona sezamu, dwutlenek siarki i siarczyny, łubin, mięczaki",
    ],
  ])("are called in %s as its edition calls them", (language, terms) => {
    const eu = rules.allergens.lists.find(({ id }) => id === "eu");
    const said = eu?.entries.map(({ name }) => ruleText("allergenNames", name, wordsFor(language)));
    expect(said?.join(", ")).toBe(terms);
  });
});
