import { describe, expect, it } from "vitest";
import type { MeasureSystem } from "../../../src/domain/model/amount.js";
import { readerLocale } from "../../../src/domain/quantity/reader-locale.js";
import { unitName } from "../../../src/domain/quantity/unit-name.js";
import { measure } from "./facts.js";

const said = (id: string, value: number, language: string, measures: MeasureSystem, asFraction = false): string =>
  unitName(id, { value, asFraction }, [], { measures, locale: readerLocale(language) });

/** Numbers of each plural category: CLDR, cardinal rules (Polish: 1, 2, 5, 1.5). */
const numbers = { en: [1, 2], de: [1, 2], fr: [1, 2], es: [1, 2], pl: [1, 2, 5, 1.5] };

const forms = (id: string, measures: MeasureSystem): string[] =>
  Object.entries(numbers).map(([language, values]) =>
    [...new Set(values.map((value) => said(id, value, language, measures)))].join("|"),
  );

// The words of each language: common practice, no source.
describe("names of units in five languages", () => {
  it.each([
    ["us-tsp", "tsp", "TL", "c. à c.", "cdta.|cdtas.", "łyżeczka|łyżeczki|łyżeczek"],
    ["us-tbsp", "tbsp", "EL", "c. à s.", "cda.|cdas.", "łyżka|łyżki|łyżek"],
    ["us-cup", "cup|cups", "Tasse|Tassen", "tasse|tasses", "taza|tazas", "szklanka|szklanki|szklanek"],
    ["us-floz", "fl oz", "fl oz", "fl oz", "fl oz", "fl oz"],
    ["us-pint", "pint|pints", "Pint|Pints", "pinte|pintes", "pinta|pintas", "pinta|pinty|pint"],
    ["us-quart", "quart|quarts", "Quart|Quarts", "qt", "qt", "kwarta|kwarty|kwart"],
    ["us-gallon", "gallon|gallons", "Gallone|Gallonen", "gallon|gallons", "galón|galones", "galon|galony|galonów|galonu"],
    ["us-gill", "gill|gills", "Gill|Gills", "gill|gills", "gill|gills", "gill|gille|gilli|gilla"],
    ["us-fluid-dram", "fl dr", "fl dr", "fl dr", "fl dr", "fl dr"],
    ["us-dry-pint", "dry pint|dry pints", "Dry Pint|Dry Pints", "dry pint|dry pints", "dry pint|dry pints", "dry pint"],
    ["us-dry-quart", "dry quart|dry quarts", "Dry Quart|Dry Quarts", "dry quart|dry quarts", "dry quart|dry quarts", "dry quart"],
    ["us-bushel", "bushel|bushels", "Bushel|Bushels", "boisseau|boisseaux", "bushel|bushels", "buszel|buszle|buszli|buszla"],
    ["jp-go", "gō", "gō", "gō", "gō", "gō"],
    ["stone", "stone", "Stone", "stone", "stone", "stone"],
    ["metric-pound", "pound (500 g)|pounds (500 g)", "Pfund", "livre|livres", "libra (500 g)|libras (500 g)", "funt (500 g)|funty (500 g)|funtów (500 g)|funta (500 g)"],
    ["stick-butter", "stick of butter|sticks of butter", "US-Stück Butter", "bâtonnet de beurre|bâtonnets de beurre", "barra de mantequilla|barras de mantequilla", "kostka masła US|kostki masła US|kostek masła US"],
    ["piece", "piece|pieces", "Stück", "pièce|pièces", "unidad|unidades", "sztuka|sztuki|sztuk"],
    ["dozen", "dozen", "Dutzend", "douzaine|douzaines", "docena|docenas", "tuzin|tuziny|tuzinów|tuzina"],
    ["batch", "batch|batches", "Ansatz|Ansätze", "fournée|fournées", "tanda|tandas", "partia|partie|partii"],
    ["gn-1-2-65", "GN 1/2 65 mm", "GN 1/2 65 mm", "GN 1/2 65 mm", "GN 1/2 65 mm", "GN 1/2 65 mm"],
    ["can-no10", "No. 10 can|No. 10 cans", "Dose Nr. 10|Dosen Nr. 10", "boîte n° 10|boîtes n° 10", "lata n.º 10|latas n.º 10", "puszka nr 10|puszki nr 10|puszek nr 10"],
    ["scoop-8", "No. 8 scoop|No. 8 scoops", "Portionierer Nr. 8", "cuillère à portionner n° 8|cuillères à portionner n° 8", "porcionador n.º 8|porcionadores n.º 8", "porcjoner nr 8|porcjonery nr 8|porcjonerów nr 8|porcjonera nr 8"],
    ["ladle-4", "4 oz ladle|4 oz ladles", "Schöpfkelle 4 oz|Schöpfkellen 4 oz", "louche 4 oz|louches 4 oz", "cucharón 4 oz|cucharones 4 oz", "chochla 4 oz|chochle 4 oz|chochli 4 oz"],
  ])("%s", (id, ...names) => {
    expect(forms(id, "US_CUSTOMARY")).toEqual(names);
  }); // prettier-ignore

  it.each(["g", "kg", "mg", "dag", "ml", "cl", "dl", "l", "oz", "lb"])("%s is a symbol everywhere", (id) => {
    expect(forms(id, "METRIC")).toEqual([id, id, id, id, id]);
  });

  it.each([
    ["can-no300", "No. 300 can"],
    ["can-no303", "No. 303 can"],
    ["can-no2", "No. 2 can"],
    ["can-no2half", "No. 2½ can"],
    ["can-no5", "No. 5 can"],
  ])("%s is a %s", (id, name) => {
    expect(said(id, 1, "en", "METRIC")).toBe(name);
  });

  it("take the plural of the number they stand behind; shares of one are singular, but in Polish", () => {
    expect(said("us-cup", 0.5, "en", "US_CUSTOMARY", true)).toBe("cup");
    expect(said("us-cup", 0.5, "en", "US_CUSTOMARY")).toBe("cups");
    expect(said("us-cup", 0, "en", "US_CUSTOMARY", true)).toBe("cups");
    expect(said("us-cup", 1.5, "en", "US_CUSTOMARY", true)).toBe("cups");
    expect(said("us-bushel", 0.5, "pl", "US_CUSTOMARY", true)).toBe("buszla");
  });
});

describe("units whose size is not the reader's own", () => {
  it.each([
    ["us-cup", "METRIC_CUP", "US cup", "Tasse (US)", "tasse (US)", "taza (US)", "szklanka (US)"],
    ["metric-cup", "US_CUSTOMARY", "metric cup", "Tasse (metr.)", "tasse (métr.)", "taza (métr.)", "szklanka (metr.)"],
    ["imp-pint", "US_CUSTOMARY", "imperial pint", "Pint (UK)", "pinte (UK)", "pinta (UK)", "pinta (UK)"],
    ["au-tbsp", "METRIC", "Australian tbsp", "EL (AU)", "c. à s. (AU)", "cda. (AU)", "łyżka (AU)"],
    ["label-cup", "METRIC", "label cup", "Tasse (Etikett)", "tasse (étiquette)", "taza (etiqueta)", "szklanka (etykieta)"],
    ["jp-cup", "METRIC_CUP", "Japanese cup", "Tasse (JP)", "tasse (JP)", "taza (JP)", "szklanka (JP)"],
  ] as const)("%s, read in %s", (id, measures, ...names) => {
    expect(["en", "de", "fr", "es", "pl"].map((language) => said(id, 1, language, measures))).toEqual(names);
  }); // prettier-ignore

  it.each([
    ["us-cup", "US_CUSTOMARY", "cup"],
    ["metric-cup", "AUSTRALIAN", "cup"],
    ["metric-cup", "UK_IMPERIAL", "cup"],
    ["us-cup", "UK_IMPERIAL", "US cup"],
    ["us-tbsp", "METRIC_CUP", "tbsp"],
    ["metric-tbsp", "AUSTRALIAN", "metric tbsp"],
    ["label-cup", "US_CUSTOMARY", "cup"],
    ["us-pint", "US_CUSTOMARY", "pint"],
    ["us-gallon", "METRIC", "gallon"],
    ["imp-gallon", "METRIC", "imperial gallon"],
    ["us-dry-pint", "METRIC", "dry pint"],
  ] as const)("%s, read in %s, is a %s", (id, measures, name) => {
    expect(said(id, 1, "en", measures)).toBe(name);
  });
});

describe("a food's own measures", () => {
  const reader = { measures: "METRIC", locale: readerLocale("en") } as const;
  const own = [
    measure("clove", { one: "clove of garlic", many: "cloves of garlic" }),
    measure("head", { one: "head of garlic", many: "heads of garlic" }),
    measure("piece", { one: "bulb", many: "bulbs" }),
  ];

  it.each([
    ["own:clove", 1, "clove of garlic"],
    ["own:head", 1, "head of garlic"],
    ["own:head", 3, "heads of garlic"],
    ["piece", 1, "bulb"],
    ["piece", 2, "bulbs"],
    ["own:sprig", 2, "sprig"],
    ["g", 2, "g"],
  ])("%s, %d of it: %s", (id, value, name) => {
    expect(unitName(id, { value, asFraction: false }, own, reader)).toBe(name);
  });

  it("are not asked for a piece where the food has no word for it", () => {
    expect(unitName("piece", { value: 2, asFraction: false }, [], reader)).toBe("pieces");
  });
});

describe("a measure of which its writer named only one", () => {
  const named = (name: string, value: number, language = "en"): string => {
    const own = [measure(name, { grams: 100, one: name, many: name })];
    return unitName(`own:${name}`, { value, asFraction: false }, own, {
      measures: "METRIC",
      locale: readerLocale(language),
    });
  };

  it("is several where there are several, if the word is a usual one", () => {
    expect([named("can", 1), named("can", 2), named("loaf", 3), named("bunch", 2)]).toEqual([
      "can",
      "cans",
      "loaves",
      "bunches",
    ]);
    expect(named("can", 2, "de")).toBe("Dosen");
    expect(named("Knolle", 2, "de")).toBe("Knolle");
    expect(named("zest-strip", 2)).toBe("zest-strip");
  });
});
