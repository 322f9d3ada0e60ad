import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { readLine, type ReadLine } from "../../../src/domain/quantity/read-line.js";
import { knownFoods, type KnownFoods } from "./known-foods.js";

let known: KnownFoods;
beforeAll(async () => {
  known = await knownFoods();
}, 60_000);

const read = (line: string, locale: string): ReadLine =>
  readLine(line, {
    locale,
    measures: locale === "en-US" ? "US_CUSTOMARY" : "METRIC",
    region: locale.slice(3),
    foods: known.names,
  });

/** Without the words that tell how it was written. */
const said = ({ match, taken, line, reasons }: ReadLine) => ({
  match,
  taken,
  food: line.food,
  amounts: [line.amount, ...line.choices],
  reasons: reasons.filter(({ code }) => code !== "COUNT_ASSUMED"),
});

/** One of a measure as each language leaves the number out, with the joint behind it. Dictionary forms, common practice. */
const measures = {
  "en-US": ["cup of ", "tablespoon of ", "teaspoon of ", "glass of ", "handful of ", "bunch of ", "clove of ", "tin of "],
  "de-DE": ["Tasse ", "Esslöffel ", "Teelöffel ", "Glas ", "Handvoll ", "Bund ", "Zehe ", "Dose "],
  "fr-FR": ["tasse de ", "cuillère à soupe de ", "cuillère à café de ", "verre de ", "poignée de ", "botte de ", "gousse d'"],
  "es-ES": ["taza de ", "cucharada de ", "cucharadita de ", "vaso de ", "puñado de ", "manojo de ", "diente de ", "lata de "],
  "pl-PL": ["szklanka ", "łyżka ", "łyżeczka ", "garść ", "pęczek ", "ząbek ", "puszka ", "kubek "],
} as const; // prettier-ignore

/** In the case that Polish asks for. */
const foods = {
  "en-US": ["flour", "milk", "olive oil", "spinach", "parsley", "garlic", "chickpeas"],
  "de-DE": ["Mehl", "Milch", "Olivenöl", "Spinat", "Petersilie", "Knoblauch", "Kichererbsen"],
  "fr-FR": ["farine", "lait", "sucre", "persil", "ail", "pois chiches"],
  "es-ES": ["harina", "leche", "aceite de oliva", "espinacas", "perejil", "ajo", "garbanzos"],
  "pl-PL": ["mąki", "mleka", "oliwy", "szpinaku", "pietruszki", "czosnku", "ciecierzycy"],
} as const;

const locales = ["en-US", "de-DE", "fr-FR", "es-ES", "pl-PL"] as const;

describe("a measure without a number", () => {
  it.each(locales)("is one of it in %s", (locale) => {
    fc.assert(
      fc.property(fc.constantFrom(...measures[locale]), fc.constantFrom(...foods[locale]), (measure, food) => {
        expect(said(read(measure + food, locale))).toEqual(said(read(`1 ${measure}${food}`, locale)));
      }),
      { numRuns: 60 },
    );
  });

  it("says that the one was assumed", () => {
    const { taken, reasons } = read("łyżka oliwy", "pl-PL");
    expect(taken).toMatchObject({ food: "olive-oil", amount: { low: "1", high: "1" } });
    expect(reasons).toEqual([{ code: "COUNT_ASSUMED", about: "łyżka oliwy" }]);
  });

  it.each([
    ["en-US", "a cup of flour", "plain-flour", "us-cup"],
    ["en-US", "cup of flour", "plain-flour", "us-cup"],
    ["de-DE", "ein Esslöffel Olivenöl", "olive-oil", "metric-tbsp"],
    ["fr-FR", "une cuillère à soupe d'huile d'olive", "olive-oil", "metric-tbsp"],
    ["fr-FR", "gousse d'ail", "garlic", "own:clove"],
    ["es-ES", "cucharada de aceite de oliva", "olive-oil", "metric-tbsp"],
    ["pl-PL", "łyżka oliwy", "olive-oil", "metric-tbsp"],
    ["pl-PL", "garść szpinaku", "spinach", "own:handful"],
    ["pl-PL", "ząbek czosnku", "garlic", "own:clove"],
    ["de-DE", "Knoblauchzehe", "garlic", "own:clove"],
    ["en-GB", "a glass of milk", "whole-milk", "own:glass"],
    ["de-DE", "ein Glas Milch", "whole-milk", "own:glass"],
    ["fr-FR", "un verre de lait", "whole-milk", "own:glass"],
    ["es-ES", "vaso de leche", "whole-milk", "own:glass"],
  ])("is taken in %s: %s", (locale, line, food, unit) => {
    expect(read(line, locale).taken).toMatchObject({ food, amount: { low: "1", high: "1", unit } });
  });

  // A cup or a mug differs from kitchen to kitchen: one, and a person says of which.
  it.each([
    ["en-GB", "a cup of flour", "plain-flour"],
    ["de-DE", "eine Tasse Mehl", "plain-flour"],
    ["es-ES", "un vaso de harina", "plain-flour"],
    ["fr-FR", "tasse de farine", "plain-flour"],
    ["es-ES", "una taza de harina", "plain-flour"],
    ["pl-PL", "szklanka mąki", "plain-flour"],
    ["pl-PL", "szklanka mleka", "whole-milk"],
    ["pl-PL", "kubek mleka", "whole-milk"],
  ])("is one of what only a kitchen knows in %s: %s", (locale, line, slug) => {
    const { taken, match, line: parsed, reasons } = read(line, locale);
    expect([taken, match]).toEqual([null, { kind: "FOUND", slug }]);
    expect([parsed.amount, ...parsed.choices].filter((each) => each !== null).map(({ low }) => low)).toContain("1");
    expect(reasons.map(({ code }) => code)).not.toContain("NO_AMOUNT");
  });

  // A number was lost, or none was ever meant.
  it.each([
    ["en-GB", "cups flour"],
    ["en-GB", "g flour"],
    ["en-GB", "tbsp olive oil"],
    ["en-GB", "cup mushrooms"],
    ["en-GB", "stem ginger"],
    ["en-GB", "onion"],
    ["en-GB", "ground cloves"],
    ["de-DE", "Tassen Mehl"],
    ["de-DE", "EL Olivenöl"],
    ["de-DE", "ml Milch"],
    ["de-DE", "Suppenwürfel"],
    ["fr-FR", "gousses d'ail"],
    ["fr-FR", "noix de coco râpée"],
    ["es-ES", "dientes de ajo"],
    ["pl-PL", "szklanki mąki"],
    ["pl-PL", "ząbki czosnku"],
    ["pl-PL", "cebula"],
  ])("is not read into %s: %s", (locale, line) => {
    expect(read(line, locale).taken).toBeNull();
  });
});

describe("cinnamon in sticks", () => {
  it.each([
    ["en-GB", "1 cinnamon stick"],
    ["en-GB", "a cinnamon stick"],
    ["en-GB", "1 stick of cinnamon"],
    ["en-GB", "cinnamon stick"],
    ["de-DE", "1 Zimtstange"],
    ["de-DE", "eine Stange Zimt"],
    ["de-DE", "Zimtstange"],
    ["fr-FR", "un bâton de cannelle"],
    ["fr-FR", "1 bâton de cannelle"],
    ["fr-FR", "bâton de cannelle"],
    ["es-ES", "una rama de canela"],
    ["es-ES", "1 palo de canela"],
    ["es-ES", "rama de canela"],
    ["pl-PL", "laska cynamonu"],
    ["pl-PL", "1 laska cynamonu"],
    ["pl-PL", "jedna laska cynamonu"],
  ])("is one stick in %s: %s", (locale, line) => {
    expect(read(line, locale).taken).toMatchObject({ food: "cinnamon-stick", amount: { low: "1", high: "1" } });
  });

  it.each([
    ["en-GB", "2 sticks of cinnamon"],
    ["de-DE", "2 Stangen Zimt"],
    ["fr-FR", "2 bâtons de cannelle"],
    ["es-ES", "2 ramas de canela"],
    ["pl-PL", "2 laski cynamonu"],
  ])("are two in %s: %s", (locale, line) => {
    expect(read(line, locale).taken).toMatchObject({ food: "cinnamon-stick", amount: { low: "2", high: "2" } });
  });

  it.each([
    ["en-GB", "1 tsp cinnamon"],
    ["de-DE", "1 TL Zimt"],
    ["fr-FR", "1 c. à c. de cannelle"],
    ["es-ES", "1 cucharadita de canela"],
    ["pl-PL", "1 łyżeczka cynamonu"],
  ])("is ground by the spoon in %s: %s", (locale, line) => {
    expect(read(line, locale).taken?.food).toBe("cinnamon");
  });
});

describe("leaves of two beets", () => {
  it.each([
    ["en-GB", "chard"], ["en-GB", "Swiss chard"], ["en-GB", "chard leaves"], ["en-GB", "silverbeet"],
    ["de-DE", "Mangold"], ["de-DE", "Mangoldblätter"], ["de-DE", "Krautstiel"],
    ["fr-FR", "blettes"], ["fr-FR", "bettes"], ["fr-FR", "poirée"],
    ["es-ES", "acelgas"], ["pl-PL", "boćwiny"], ["pl-PL", "buraka liściowego"], ["pl-PL", "mangoldu"],
  ])("are chard in %s: %s", (locale, words) => {
    expect(read(`200 g ${words}`, locale).taken?.food).toBe("chard");
  }); // prettier-ignore

  it.each([
    ["en-GB", "beetroot leaves"], ["en-GB", "beet tops"], ["en-US", "beet greens"],
    ["de-DE", "Rote-Bete-Blätter"], ["de-DE", "Rote Bete Blätter"], ["de-DE", "Blätter von Roter Bete"],
    ["fr-FR", "fanes de betteraves"], ["fr-FR", "feuilles de betterave"],
    ["es-ES", "hojas de remolacha"], ["pl-PL", "botwiny"], ["pl-PL", "botwinki"], ["pl-PL", "liści buraka"],
  ])("are those of beetroot in %s: %s", (locale, words) => {
    expect(read(`200 g ${words}`, locale).taken?.food).toBe("beet-greens");
  }); // prettier-ignore

  it.each([
    ["en-GB", "beetroot", "beetroot"],
    ["de-DE", "Rote Bete", "beetroot"],
    ["de-DE", "Rübenkraut", "beet-syrup"],
    ["fr-FR", "betterave", "beetroot"],
    ["es-ES", "remolacha", "beetroot"],
    ["pl-PL", "buraka", "beetroot"],
  ])("are not the root or its syrup in %s: %s", (locale, words, food) => {
    expect(read(`200 g ${words}`, locale).taken?.food).toBe(food);
  });
});
