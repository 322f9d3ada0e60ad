import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BaseAmount, Dimension, MeasureSystem } from "../../../src/domain/model/amount.js";
import { toBase } from "../../../src/domain/quantity/convert.js";
import { presentAmount, presentInUnit, presentWritten } from "../../../src/domain/quantity/format.js";
import { parseLine } from "../../../src/domain/quantity/parse.js";
import { standardUnit } from "../../../src/domain/quantity/unit.js";
import { density, facts, measure, noFacts } from "./facts.js";

const systems: readonly MeasureSystem[] = ["US_CUSTOMARY", "METRIC_CUP", "AUSTRALIAN", "UK_IMPERIAL", "METRIC"];
const locales = ["en", "en-GB", "de", "de-CH", "fr", "es", "pl"];

const of = (dimension: Dimension, low: number, high = low): BaseAmount => ({ dimension, low, high });

const text = (amount: BaseAmount, measures: MeasureSystem, locale = "en", about = noFacts): string =>
  presentAmount(amount, about, { measures, locale }).text;

const ml = (low: number, measures: MeasureSystem, locale = "en"): string => text(of("VOLUME", low), measures, locale);
const g = (low: number, measures: MeasureSystem, locale = "en"): string => text(of("MASS", low), measures, locale);

const cup = 236.5882365;
const tsp = 4.92892159375;
const lb = 453.59237;

describe("amounts by volume", () => {
  it.each([
    [0, "0 tsp"],
    [0.1, "1 pinch"],
    [tsp / 8, "⅛ tsp"],
    [tsp / 4, "¼ tsp"],
    [tsp / 2, "½ tsp"],
    [tsp, "1 tsp"],
    [tsp * 1.5, "1½ tsp"],
    [tsp * 0.35, "¼ tsp"],
    [tsp * 1.0625, "1 tsp"],
    [tsp * 1.3, "1¼ tsp"],
    [tsp * 2.87, "1 tbsp"],
    [tsp * 2.99, "1 tbsp"],
    [tsp * 3, "1 tbsp"],
    [tsp * 4, "1 tbsp + 1 tsp"],
    [tsp * 4.5, "1½ tbsp"],
    [tsp * 6, "2 tbsp"],
    [cup / 4, "¼ cup"],
    [tsp * 13, "¼ cup + 1 tsp"],
    [tsp * 15, "¼ cup + 1 tbsp"],
    [cup / 3, "⅓ cup"],
    [(cup * 2) / 3, "⅔ cup"],
    [(cup * 3) / 4, "¾ cup"],
    [cup, "1 cup"],
    [cup * 1.5, "1½ cups"],
    [cup * 2.25, "2¼ cups"],
    [cup * 4, "4 cups"],
    [cup * 16, "4 quarts"],
    [cup * 18, "4½ quarts"],
    [cup * 256, "16 gallons"],
  ])("%d ml is %s in the US", (amount, expected) => {
    expect(ml(amount, "US_CUSTOMARY")).toBe(expected);
  });

  it.each([
    [5, "METRIC_CUP", "1 tsp"],
    [15, "METRIC_CUP", "1 tbsp"],
    [20, "AUSTRALIAN", "1 tbsp"],
    [15, "AUSTRALIAN", "3 tsp"],
    [30, "AUSTRALIAN", "1½ tbsp"],
    [62.5, "METRIC_CUP", "¼ cup"],
    [72.5, "AUSTRALIAN", "¼ cup + 2 tsp"],
    [112.5, "AUSTRALIAN", "¼ cup + 2½ tbsp"],
    [250, "AUSTRALIAN", "1 cup"],
    [1000, "METRIC_CUP", "1 l"],
    [15, "UK_IMPERIAL", "1 tbsp"],
    [5 * 28.4130625, "UK_IMPERIAL", "5 fl oz"],
    [568.26125, "UK_IMPERIAL", "1 pint"],
    [568.26125 + 3 * 28.4130625, "UK_IMPERIAL", "1 pint + 3 fl oz"],
    [2.5, "METRIC", "½ tsp"],
    [14.2, "METRIC", "14 ml"],
    [5, "METRIC", "5 ml"],
    [15, "METRIC", "15 ml"],
    [42, "METRIC", "42 ml"],
    [152, "METRIC", "150 ml"],
    [333, "METRIC", "330 ml"],
    [999, "METRIC", "1 l"],
    [1250, "METRIC", "1.25 l"],
    [12_340, "METRIC", "12.3 l"],
  ] as const)("%d ml is, in %s, %s", (amount, measures, expected) => {
    expect(ml(amount, measures)).toBe(expected);
  });
});

describe("nothing", () => {
  it.each(systems)("is no milligram and no spoon in %s", (measures) => {
    expect(g(0, measures)).toBe("0 g");
    expect(ml(0, measures)).toMatch(/^0 (ml|tsp)$/);
  });
});

describe("amounts by mass", () => {
  it.each([
    [0.05, "50 mg"],
    [0.25, "0.25 g"],
    [3.3, "3.3 g"],
    [7.5, "7.5 g"],
    [42.4, "42 g"],
    [113, "115 g"],
    [252, "250 g"],
    [998, "1 kg"],
    [1250, "1.25 kg"],
    [2004, "2 kg"],
    [291, "290 g"],
    [16.8, "17 g"],
    [1050, "1.05 kg"],
    [12_340, "12.3 kg"],
  ])("%d g is %s on a metric scale", (amount, expected) => {
    expect(g(amount, "METRIC")).toBe(expected);
    expect(g(amount, "AUSTRALIAN")).toBe(expected);
  });

  it.each([
    [10, "10 g"],
    [20, "¾ oz"],
    [15.9 * 28.349523125, "1 lb"],
    [lb * 0.985, "15¾ oz"],
    [lb * 9.99, "10 lb"],
    [28.349523125, "1 oz"],
    [100, "3½ oz"],
    [lb / 4, "4 oz"],
    [lb, "1 lb"],
    [lb * 1.5, "1½ lb"],
    [lb * 1.25, "1¼ lb"],
    [500, "1 lb 1¾ oz"],
    [lb * 12.3, "12 lb 5 oz"],
    [lb * 40, "40 lb"],
  ])("%d g is %s on a scale of pounds", (amount, expected) => {
    expect(g(amount, "US_CUSTOMARY")).toBe(expected);
    expect(g(amount, "UK_IMPERIAL")).toBe(expected);
  });

  it("O-11's card: 4.35 lb are 4 lb 5½ oz and 3.2625 lb are 3 lb 4¼ oz", () => {
    // Armed Forces Recipe Service, general information on standardized recipes: quarter ounces.
    expect(g(4.35 * lb, "US_CUSTOMARY")).toBe("4 lb 5½ oz");
    expect(g(3.2625 * lb, "US_CUSTOMARY")).toBe("3 lb 4¼ oz");
  });

  it("gives a reader of ounces spoons for what weighs under half an ounce, where the density is known", () => {
    // 6 g to the teaspoon of table salt: USDA SR 28, NDB 02047.
    const salt = facts([density(6 / tsp)]);
    expect(text(of("MASS", 6), "US_CUSTOMARY", "en", salt)).toBe("1 tsp");
    expect(text(of("MASS", 6), "UK_IMPERIAL", "en", salt)).toBe("1 tsp");
    expect(text(of("MASS", 6), "METRIC", "en", salt)).toBe("6 g");
    expect(text(of("MASS", 14), "US_CUSTOMARY", "en", salt)).toBe("14 g");
    expect(text(of("MASS", 6), "US_CUSTOMARY", "en", noFacts)).toBe("6 g");
  });
});

describe("counts", () => {
  const egg = facts([], [measure("piece", { one: "egg", many: "eggs", grams: 50 })]);

  it("O-12 a: half of three eggs are 1½ eggs, 75 g", () => {
    const shown = presentAmount(of("COUNT", 1.5), egg, { measures: "METRIC", locale: "en" });
    expect(shown).toMatchObject({
      value: 1.5,
      upTo: null,
      exact: "3/2",
      unit: { id: "piece", name: "eggs" },
      text: "1½ eggs",
      grams: 75,
      millilitres: null,
    });
  });

  it.each([
    [0.5, "½ egg", "½"],
    [1, "1 egg", "1"],
    [2 / 3, "⅔ egg", "⅔"],
    [2, "2 eggs", "2"],
    [7.01, "7 eggs", "7"],
    [0.119, "¼ egg", "¼"],
    [2.39, "2½ eggs", "2½"],
    [5.25, "5 eggs", "5"],
    [0.05, "¼ egg", "¼"],
    [1200, "1,200 eggs", "1,200"],
  ])("%d is shown as %s, and as %s where the food has no word for a piece", (count, named, bare) => {
    expect(text(of("COUNT", count), "US_CUSTOMARY", "en", egg)).toBe(named);
    expect(text(of("COUNT", count), "US_CUSTOMARY")).toBe(bare);
  });
});

describe("ranges", () => {
  it("O-02: are shown at both ends, in one unit where one will do", () => {
    expect(text(of("VOLUME", 2 * tsp, 4 * tsp), "US_CUSTOMARY")).toBe("2 tsp – 1 tbsp + 1 tsp");
    expect(text(of("VOLUME", 6 * tsp, 9 * tsp), "US_CUSTOMARY")).toBe("2–3 tbsp");
    expect(text(of("MASS", 12 * lb, 14 * lb), "US_CUSTOMARY")).toBe("12–14 lb");
    expect(text(of("MASS", 500, 1500), "METRIC")).toBe("500 g – 1.5 kg");
    expect(text(of("COUNT", 2, 3), "METRIC")).toBe("2–3");
  });

  it("keep both unrounded ends, in the unit of the lower", () => {
    const shown = presentAmount(of("VOLUME", tsp, cup), noFacts, { measures: "US_CUSTOMARY", locale: "en" });
    expect([shown.value, shown.upTo, shown.exact, shown.unit.id]).toEqual([1, cup / tsp, "1", "us-tsp"]);
  });

  it("name no unit of nothing", () => {
    expect(text(of("VOLUME", 0, cup / 3), "US_CUSTOMARY")).toBe("0 – ⅓ cup");
    expect(text(of("MASS", 0, 250), "METRIC", "de")).toBe("0 – 250 g");
  });

  it("become one number where both ends are shown alike", () => {
    expect(text(of("MASS", 250, 250.4), "METRIC")).toBe("250 g");
  });
});

describe("the writer's own unit", () => {
  const shown = (low: number, unit: string, measures: MeasureSystem, locale = "en", high = low): string =>
    presentInUnit(low, high, unit, noFacts, { measures, locale }).text;

  it.each([
    [113, "g", "115 g"],
    [12.5, "g", "13 g"],
    [16.8, "g", "17 g"],
    [291, "g", "290 g"],
    [1050, "g", "1.05 kg"],
    [4500, "ml", "4.5 l"],
    [0.25, "l", "250 ml"],
    [1.375, "kg", "1.37 kg"],
    [1.5, "dl", "1.5 dl"],
    [12, "dl", "1.2 l"],
    [7 / 16, "us-cup", "¼ cup + 3 tbsp"],
    [2.875, "us-cup", "2¾ cups + 2 tbsp"],
    [9, "us-tsp", "3 tbsp"],
    [1 / 3, "us-tsp", "¼ tsp"],
    [14.5, "oz", "14½ oz"],
    [15.75, "oz", "15¾ oz"],
    [15.9, "oz", "1 lb"],
    [0.02, "us-tsp", "1 pinch"],
    [45, "ladle-4", "5½ quarts"],
    [1.75, "dozen", "1¾ dozen"],
    [1.3, "dozen", "16"],
    [0.88, "batch", "1 batch"],
    [2, "batch", "2 batches"],
    [1, "batch", "1 batch"],
    [2, "scoop-8", "2 No. 8 scoops"],
    [1, "can-no2half", "1 No. 2½ can"],
    [3, "ladle-4", "3 4 oz ladles"],
    [1, "gn-1-2-65", "1 GN 1/2 65 mm"],
    [2, "stick-butter", "2 sticks of butter"],
    [2, "us-dry-pint", "2 dry pints"],
    [2, "own:clove", "2 clove"],
  ])("%d %s reads %s", (low, unit, expected) => {
    expect(shown(low, unit, "US_CUSTOMARY")).toBe(expected);
  });

  it.each([
    [113, "g", "113 g"],
    [12.5, "g", "12.5 g"],
    [414, "ml", "414 ml"],
    [1500, "g", "1.5 kg"],
    [1.375, "kg", "1.375 kg"],
    [7 / 16, "us-cup", "7/16 cup"],
    [1 / 3, "us-tsp", "⅓ tsp"],
    [15.5, "oz", "15½ oz"],
  ])("as it stands on a label, %d %s is %s", (low, unit, expected) => {
    const reader = { measures: "US_CUSTOMARY", locale: "en" } as const;
    expect(presentWritten(low, low, unit, noFacts, reader).text).toBe(expected);
  });

  it("moves in the text alone: the unit and its value stay the writer's", () => {
    const reader = { measures: "METRIC", locale: "en" } as const;
    expect(presentInUnit(1050, 1050, "g", noFacts, reader)).toMatchObject({
      value: 1050,
      upTo: null,
      exact: "1050",
      unit: { id: "g", name: "g" },
      text: "1.05 kg",
      grams: 1050,
      millilitres: null,
    });
  });

  it("weighs much of what is not poured, and keeps it in cups where its weight is not known", () => {
    const oats = { ...facts([density(81 / cup)]), shoppedBy: "MASS" } as const;
    const unknown = { ...noFacts, shoppedBy: "MASS" } as const;
    const milk = { ...facts([density(1.03)]), shoppedBy: "VOLUME" } as const;
    const six = (about: typeof noFacts, measures: MeasureSystem): string =>
      presentAmount(of("VOLUME", 6 * cup), about, { measures, locale: "en" }).text;
    expect([six(oats, "METRIC"), six(oats, "METRIC_CUP"), six(oats, "US_CUSTOMARY")]).toEqual([
      "490 g",
      "490 g",
      "6 cups",
    ]);
    expect([six(unknown, "METRIC_CUP"), six(milk, "METRIC_CUP")]).toEqual(["5⅔ cups", "1.42 l"]);
  });

  it("counts cloves below half a head, heads from two on, and weighs what nobody counts out with a ladle", () => {
    const garlic = {
      ...facts(
        [],
        [measure("clove", { grams: 3, pieces: 0.1 }), measure("piece", { one: "head", many: "heads", pieces: 1 })],
      ),
      shoppedBy: "COUNT",
    } as const;
    const soup = facts([], [measure("ladle", { grams: 200 })]);
    const reader = { measures: "METRIC", locale: "en" } as const;
    const heads = (count: number): string => presentAmount(of("COUNT", count), garlic, reader).text;
    expect([heads(0.119), heads(0.5), heads(3)]).toEqual(["1¼ cloves", "½ head", "3 heads"]);
    const cloves = (count: number): string => presentInUnit(count, count, "own:clove", garlic, reader).text;
    expect([cloves(11 / 16), cloves(12), cloves(30)]).toEqual(["⅔ clove", "12 cloves", "3 heads"]);
    expect(presentInUnit(45, 45, "own:ladle", soup, reader).text).toBe("9 kg");
    expect(presentInUnit(6, 6, "own:ladle", soup, reader).text).toBe("6 ladles");
  });

  it("uses the food's own words for its own measures", () => {
    const garlic = facts([], [measure("clove", { one: "clove", many: "cloves", grams: 3 })]);
    const reader = { measures: "METRIC", locale: "en" } as const;
    expect(presentInUnit(1, 1, "own:clove", garlic, reader).text).toBe("1 clove");
    expect(presentInUnit(0.5, 0.5, "own:clove", garlic, reader).text).toBe("½ clove");
    expect(presentInUnit(2, 3, "own:clove", garlic, reader)).toMatchObject({
      value: 2,
      upTo: 3,
      exact: "2",
      unit: { id: "own:clove", name: "cloves" },
      text: "2–3 cloves",
      grams: 6,
      millilitres: null,
    });
  });

  it.each([
    ["au-tbsp", "US_CUSTOMARY", "en", "2 Australian tbsp"],
    ["au-tbsp", "AUSTRALIAN", "en", "2 tbsp"],
    ["au-tbsp", "METRIC", "de", "2 EL (AU)"],
    ["us-cup", "METRIC", "de", "2 Tassen (US)"],
    ["us-cup", "METRIC_CUP", "fr", "2 tasses (US)"],
    ["metric-cup", "US_CUSTOMARY", "en", "2 metric cups"],
    ["metric-cup", "UK_IMPERIAL", "en", "2 cups"],
    ["metric-tbsp", "US_CUSTOMARY", "en", "2 tbsp"],
    ["label-cup", "US_CUSTOMARY", "en", "2 cups"],
    ["imp-pint", "US_CUSTOMARY", "en", "2 imperial pints"],
    ["us-pint", "UK_IMPERIAL", "es", "2 pintas (US)"],
    ["us-pint", "US_CUSTOMARY", "en", "2 pints"],
    ["jp-cup", "METRIC", "pl", "2 szklanki (JP)"],
    ["us-cup", "UK_IMPERIAL", "en", "2 US cups"],
  ] as const)("says whose %s it is to a reader of %s (%s)", (unit, measures, locale, expected) => {
    expect(shown(2, unit, measures, locale)).toBe(expected);
  });
});

describe("languages", () => {
  it.each([
    ["en", "½ cup", "1 cup", "1½ cups", "2 cups", "5 cups"],
    ["de", "½ Tasse", "1 Tasse", "1½ Tassen", "2 Tassen", "5 Tassen"],
    ["fr", "½ tasse", "1 tasse", "1½ tasse", "2 tasses", "5 tasses"],
    ["es", "½ taza", "1 taza", "1½ tazas", "2 tazas", "5 tazas"],
    ["pl", "½ szklanki", "1 szklanka", "1½ szklanki", "2 szklanki", "5 szklanek"],
  ])("%s declines a cup as CLDR does", (locale, ...expected) => {
    const reader = { measures: "METRIC_CUP", locale } as const;
    const texts = [0.5, 1, 1.5, 2, 5].map((count) => presentWritten(count, count, "metric-cup", noFacts, reader).text);
    expect(texts).toEqual(expected);
  });

  it.each([
    ["en-GB", "7 eggs", "1 egg", "2½ cloves"],
    ["de", "7 Eier", "1 Ei", "2½ Zehen"],
    ["fr", "7 œufs", "1 œuf", "2½ gousses"],
    ["es", "7 huevos", "1 huevo", "2½ dientes"],
    ["pl", "7 jajka", "1 jajko", "2½ ząbka"],
    ["it", "7 eggs", "1 egg", "2½ cloves"],
  ])("%s names pieces by the food's name there, and the trade's measures: %s, %s, %s", (locale, seven, one, cloves) => {
    const name = (language: string, single: string, many: string) => ({
      language,
      region: null,
      one: single,
      many,
      also: [],
    });
    const names = [
      name("en", "egg", "eggs"),
      name("de", "Ei", "Eier"),
      name("fr", "œuf", "œufs"),
      name("es", "huevo", "huevos"),
      name("pl", "jajko", "jajka"),
    ];
    const egg = { ...facts([], [measure("piece", { one: "egg", many: "eggs" })]), names };
    const garlic = facts([], [measure("clove", { pieces: 0.1 })]);
    const reader = { measures: "METRIC", locale } as const;
    expect(presentAmount(of("COUNT", 7), egg, reader).text).toBe(seven);
    expect(presentInUnit(1, 1, "piece", egg, reader).text).toBe(one);
    expect(presentInUnit(2.5, 2.5, "own:clove", garlic, reader).text).toBe(cloves);
  });

  it.each([
    ["de", "1,5 l", "1.500 kg"],
    ["fr", "1,5 l", "1\u202f500 kg"],
    ["en", "1.5 l", "1,500 kg"],
    ["pl", "1,5 l", "1500 kg"],
    ["it", "1,5 l", "1500 kg"],
    ["de-DE-u-nu-arab", "1,5 l", "1.500 kg"],
    ["no such tag", "1.5 l", "1,500 kg"],
  ])("O-34 e: %s writes 1.5 litres as %s and 1500 kg as %s", (locale, litres, weight) => {
    const reader = { measures: "METRIC", locale } as const;
    expect(presentAmount(of("VOLUME", 1500), noFacts, reader).text).toBe(litres);
    expect(presentInUnit(1500, 1500, "kg", noFacts, reader).text).toBe(weight);
  });

  it("O-34 e: knows that Switzerland is not Germany", () => {
    const reader = { measures: "METRIC", locale: "de-CH" } as const;
    expect(presentAmount(of("VOLUME", 1500), noFacts, reader).text).toBe("1.5 l");
    expect(presentInUnit(1500, 1500, "kg", noFacts, reader).text).toMatch(/^1['’]500 kg$/);
  });

  it("O-34 e: never localises the numbers beside the text", () => {
    const shown = presentAmount(of("VOLUME", 1500), noFacts, { measures: "METRIC", locale: "de" });
    expect([shown.value, shown.exact]).toEqual([1.5, "3/2"]);
  });

  it("has a name for every unit in every language", () => {
    for (const locale of ["en", "de", "fr", "es", "pl"]) {
      for (const unit of [
        "us-cup",
        "imp-gill",
        "us-bushel",
        "us-fluid-dram",
        "jp-go",
        "can-no10",
        "scoop-100",
        "ladle-1",
        "gn-1-6-150",
        "metric-pound",

        "us-dry-quart",
        "label-oz",
      ]) {
        const { name } = presentInUnit(3, 3, unit, noFacts, { measures: "US_CUSTOMARY", locale }).unit;
        expect(name, `${unit} in ${locale}`).not.toBe("");
        expect(name, `${unit} in ${locale}`).not.toBe(unit);
      }
    }
  });
});

describe("what stands beside the text", () => {
  it("is unrounded, with thirds as thirds", () => {
    const shown = presentAmount(of("VOLUME", cup / 3), noFacts, { measures: "US_CUSTOMARY", locale: "en" });
    expect(shown.value).toBeCloseTo(1 / 3, 14);
    expect([shown.exact, shown.text, shown.grams]).toEqual(["1/3", "⅓ cup", null]);
    expect(shown.millilitres).toBeCloseTo(cup / 3, 12);
    expect(presentAmount(of("MASS", Math.PI), noFacts, { measures: "METRIC", locale: "en" }).exact).toBeNull();
  });

  it("weighs what it can through the food's own density", () => {
    const milk = facts([density(1.03)]);
    const shown = presentAmount(of("VOLUME", 500), milk, { measures: "METRIC", locale: "en" });
    expect([shown.grams, shown.millilitres]).toEqual([515, 500]);
  });

  it.each([
    [-1, 1],
    [2, 1],
    [Number.NaN, 1],
    [1, Number.NaN],
    [1, Infinity],
  ])("refuses %d to %d, which no engine makes", (low, high) => {
    const reader = { measures: "METRIC", locale: "en" } as const;
    expect(() => presentAmount(of("MASS", low, high), noFacts, reader)).toThrow(RangeError);
    expect(() => presentInUnit(low, high, "g", noFacts, reader)).toThrow(RangeError);
  });
});

describe("the name of a unit beside its number", () => {
  const unit = (low: number, id: string, locale = "en") =>
    presentInUnit(low, low, id, noFacts, { measures: "METRIC_CUP", locale }).unit.name;

  it("is singular for a fraction of one, in every language but Polish", () => {
    expect([0.5, 1, 1.5, 2].map((count) => unit(count, "metric-cup"))).toEqual(["cup", "cup", "cups", "cups"]);
    expect([0.5, 1, 1.5, 2].map((count) => unit(count, "metric-cup", "de"))).toEqual([
      "Tasse",
      "Tasse",
      "Tassen",
      "Tassen",
    ]);
    expect(unit(0.5, "metric-cup", "pl")).not.toBe(unit(1, "metric-cup", "pl"));
  });

  it("is that of a piece only where the food has one", () => {
    const egg = facts([], [measure("piece", { grams: 50 })]);
    const count = (about: typeof egg, value: number) => text(of("COUNT", value), "METRIC", "en", about);
    expect(count(egg, 2)).toBe(`2 ${egg.measures[0]?.many}`);
    expect(count(facts([], [measure("carton", { pieces: 6 })]), 2)).toBe("2");
  });
});

describe("laws of rounding (docs/amounts.md)", () => {
  const readBack = (shown: string, measures: MeasureSystem, locale: string): BaseAmount => {
    const { amount, confidence } = parseLine(`${shown} kale`, { locale, measures });
    const base = amount === null ? null : toBase(amount, noFacts, null);
    if (base?.ok !== true) throw new Error(`cannot read back "${shown}" (${locale}, ${measures}, ${confidence})`);
    return base.amount;
  };

  const measures = fc.constantFrom(...systems);
  const locale = fc.constantFrom(...locales);
  const spread = (min: number, max: number) =>
    fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map((power) => Math.exp(power));
  /** How far off, as a share; a spoon of volume (¼ tsp) and of weight (⅛ oz) is never called off. */
  const relative = (shown: number, value: number, finest = 0): number => {
    const off = Math.abs(shown - value);
    return off <= finest + 1e-9 ? 0 : off / value;
  };
  const quarterSpoon = 1.25;
  const eighthOunce = 28.349523125 / 8;

  it("a volume of a teaspoon or more is within 6 % or a quarter of a teaspoon, in every system and language, as a reader reads it", () => {
    fc.assert(
      fc.property(measures, locale, spread(5, 50_000), (system, language, value) => {
        const shown = text(of("VOLUME", value), system, language);
        expect(relative(readBack(shown, system, language).low, value, quarterSpoon), shown).toBeLessThanOrEqual(0.06);
      }),
      { numRuns: 3000 },
    );
  });

  it.each(systems)("no volume of %s from a teaspoon to 5 l is a gap that rounds by more than 6 %", (system) => {
    for (let value = 5; value < 5000; value *= 1.0015) {
      const shown = text(of("VOLUME", value), system);
      const off = relative(readBack(shown, system, "en").low, value, quarterSpoon);
      expect(off, `${value} ml as ${shown}`).toBeLessThanOrEqual(0.06);
    }
  });

  it.each(systems)("no mass of %s from 10 mg to 10 kg is a gap that rounds by more than 5 %", (system) => {
    for (let value = 0.0101; value < 10_000; value *= 1.003) {
      const shown = text(of("MASS", value), system);
      const off = relative(readBack(shown, system, "en").low, value, eighthOunce);
      expect(off, `${value} g as ${shown}`).toBeLessThanOrEqual(0.05);
    }
  });

  it("a volume below a teaspoon is within an eighth of one", () => {
    fc.assert(
      fc.property(measures, spread(0.33, 4.9), (system, value) => {
        const shown = text(of("VOLUME", value), system);
        expect(Math.abs(readBack(shown, system, "en").low - value), shown).toBeLessThanOrEqual(5 / 8 + 1e-9);
      }),
    );
  });

  it("a mass of 10 mg or more is within 5 % or an eighth of an ounce", () => {
    fc.assert(
      fc.property(measures, locale, spread(0.01, 500_000), (system, language, value) => {
        const shown = text(of("MASS", value), system, language);
        expect(relative(readBack(shown, system, language).low, value, eighthOunce), shown).toBeLessThanOrEqual(0.05);
      }),
      { numRuns: 3000 },
    );
  });

  it("a count of a quarter or more is within an eighth or 5 %", () => {
    fc.assert(
      fc.property(measures, spread(0.25, 5000), (system, value) => {
        const shown = text(of("COUNT", value), system);
        const off = Math.abs(readBack(shown, system, "en").low - value);
        expect(off, shown).toBeLessThanOrEqual(Math.max(1 / 8 + 1e-9, value * 0.05));
      }),
    );
  });

  it("an amount in the writer's own unit is within 6 %, a quarter of a teaspoon or an eighth of an ounce", () => {
    const units = fc.constantFrom("us-cup", "us-tbsp", "oz", "lb", "g", "kg", "ml", "l", "dl", "cl", "dag", "us-quart");
    fc.assert(
      fc.property(units, spread(0.04, 3000), (unit, value) => {
        const shown = presentInUnit(value, value, unit, noFacts, { measures: "US_CUSTOMARY", locale: "en" }).text;
        const { factor, dimension } = standardUnit(unit)!;
        fc.pre(value * factor > 0.31);
        const finest = dimension === "MASS" ? eighthOunce : quarterSpoon;
        const off = Math.abs(readBack(shown, "US_CUSTOMARY", "en").low - value * factor);
        expect(off, shown).toBeLessThanOrEqual(Math.max(0.06 * value * factor, finest) + 1e-9);
      }),
    );
  });

  it("more is never shown as less", () => {
    const dimension = fc.constantFrom<Dimension>("MASS", "VOLUME", "COUNT");
    fc.assert(
      fc.property(measures, dimension, spread(0.32, 50_000), spread(1, 1.2), (system, kind, value, more) => {
        const [less, larger] = [value, value * more].map((each) => {
          const shown = text(of(kind, each), system);
          return readBack(shown, system, "en").low;
        });
        expect(less).toBeLessThanOrEqual((larger ?? 0) * (1 + 1e-9));
      }),
      { numRuns: 3000 },
    );
  });

  it("both ends of a range are read back, the lower first", () => {
    fc.assert(
      fc.property(measures, spread(5, 5000), spread(1, 8), (system, low, more) => {
        const shown = text(of("VOLUME", low, low * more), system);
        const back = readBack(shown, system, "en");
        expect(relative(back.low, low, quarterSpoon), shown).toBeLessThanOrEqual(0.06);
        expect(relative(back.high, low * more, quarterSpoon), shown).toBeLessThanOrEqual(0.06);
      }),
    );
  });

  it("value and exact are never rounded", () => {
    fc.assert(
      fc.property(measures, spread(0.001, 1e6), (system, value) => {
        const shown = presentAmount(of("VOLUME", value), noFacts, { measures: system, locale: "en" });
        expect(shown.value * (standardUnit(shown.unit.id)?.factor ?? 0)).toBeCloseTo(value, 6);
      }),
    );
  });
});
