import { describe, expect, it } from "vitest";
import type { MeasureSystem } from "../../../../src/domain/model/amount.js";
import { parseLine, type ParsedLine } from "../../../../src/domain/quantity/parse.js";
import { LINE_MAX, LINES_MAX, TEXT_MAX } from "../../../../src/domain/quantity/parse/limits.js";
import { scaleMeasured } from "../../../../src/domain/quantity/parse/measured-sum.js";
import { parseLines } from "../../../../src/domain/quantity/parse/parse-lines.js";

const line = (raw: string, locale: string | null = "en", measures: MeasureSystem = "US_CUSTOMARY"): ParsedLine =>
  parseLine(raw, { locale, measures });

const of = (low: string, unit: string, high = low) => ({ low, high, unit });

/** Everything but the words and what was understood of them is empty. */
const clear = (raw: string, parts: Partial<ParsedLine>): ParsedLine => ({
  raw,
  amount: null,
  noAmount: null,
  choices: [],
  pack: null,
  alternates: [],
  additions: [],
  food: "",
  part: null,
  form: null,
  preparation: null,
  modifiers: [],
  notes: [],
  confidence: 1,
  reasons: [],
  ...parts,
});

const understood = (
  raw: string,
  parts: Partial<ParsedLine>,
  locale: string | null = "en",
  measures?: MeasureSystem,
) => {
  const { whole: _, ...read } = line(raw, locale, measures);
  expect(read).toEqual(clear(raw, parts));
};

describe("O-01: one half, written six ways", () => {
  it.each([
    ["½ cup barley", "1/2", "us-cup", "barley"],
    ["1½ cups barley", "3/2", "us-cup", "barley"],
    ["1 ½ cups barley", "3/2", "us-cup", "barley"],
    ["1⁄2 tsp turmeric", "1/2", "us-tsp", "turmeric"],
    ["1/2 tsp turmeric", "1/2", "us-tsp", "turmeric"],
    ["1 1/2 cups barley", "3/2", "us-cup", "barley"],
    ["1-1/2 cups barley", "3/2", "us-cup", "barley"],
    ["1¹⁄₂ cups barley", "3/2", "us-cup", "barley"],
    ["one half cup barley", "1/2", "us-cup", "barley"],
    ["half a cup of barley", "1/2", "us-cup", "barley"],
  ])("%s", (raw, low, unit, food) => {
    understood(raw, { amount: of(low, unit), food });
  });

  it("drops the empty tick box and keeps the alternate amount", () => {
    understood("▢6 ounces dried shells (2 cups)", {
      amount: of("6", "oz"),
      alternates: [of("2", "us-cup")],
      food: "dried shells",
    });
  });

  it.each(["- 2 cups oats", "• 2 cups oats", "☐ 2 cups oats", "[ ] 2 cups oats", "* 2 cups oats", "\t2  cups\toats"])(
    "%j is free of list marks",
    (raw) => {
      understood(raw, { amount: of("2", "us-cup"), food: "oats" });
    },
  );
});

describe("O-02: ranges stay ranges", () => {
  it("keeps both ends and the reader's freedom, and scales both", () => {
    const raw = "½–1 tsp smoked paprika, or to taste";
    understood(raw, { amount: of("1/2", "us-tsp", "1"), food: "smoked paprika", modifiers: ["TO_TASTE"] });
    expect(scaleMeasured(of("1/2", "us-tsp", "1"), "4")).toEqual(of("2", "us-tsp", "4"));
  });

  it("knows a word range with fractions, and scales it", () => {
    understood("3 to 3 ½ pounds squash", { amount: of("3", "lb", "7/2"), food: "squash" });
    expect(scaleMeasured(of("3", "lb", "7/2"), "4")).toEqual(of("12", "lb", "14"));
  });

  it.each([
    ["2-3 carrots", of("2", "piece", "3"), "carrots"],
    ["1 or 2 onions", of("1", "piece", "2"), "onions"],
    ["200 g–250 g flour", of("200", "g", "250"), "flour"],
    ["1 tsp to 1 tbsp chili", of("1", "us-tsp", "3"), "chili"],
    ["1 tbsp – 1/4 cup + 1 tbsp oil", of("1", "us-tbsp", "5"), "oil"],
  ])("%s", (raw, amount, food) => {
    const read = line(raw);
    expect([read.amount, read.food, read.confidence]).toEqual([amount, food, 1]);
  });

  it("does not make a range of what cannot be one", () => {
    const read = line("3-2 cups flour");
    expect([read.amount, read.noAmount, read.reasons]).toEqual([
      null,
      "UNCLEAR",
      [{ code: "BAD_NUMBER", about: "3-2" }],
    ]);
    expect(line("1 cup to 1 g salt").amount).toEqual(of("1", "us-cup"));
  });
});

describe("O-03: how many packages of what size", () => {
  const pack = (count: string, size: string, unit: string, net: string, container: string) => ({
    amount: of(count, container),
    pack: { size: of(size, unit), net: of(net, unit) },
  });

  it.each([
    ["2 (15-oz) cans chickpeas, drained", pack("2", "15", "oz", "30", "own:can"), "chickpeas", "drained"],
    ["1 ½ (24 ounce) jars tomato passata", pack("3/2", "24", "oz", "36", "own:jar"), "tomato passata", null],
    [
      "3 x 400g tins butter beans, drained, liquid kept",
      pack("3", "400", "g", "1200", "own:tin"),
      "butter beans",
      "drained, liquid kept",
    ],
    ["1 3 lb. cabbage", pack("1", "3", "lb", "3", "piece"), "cabbage", null],
    ["2 cans (15 oz each) chickpeas", pack("2", "15", "oz", "30", "own:can"), "chickpeas", null],
    ["1 can (400 g) chickpeas", pack("1", "400", "g", "400", "own:can"), "chickpeas", null],
    ["2 14.5-ounce cans diced tomatoes", pack("2", "29/2", "oz", "29", "own:can"), "diced tomatoes", null],
    ["2 400g tins lentils", pack("2", "400", "g", "800", "own:tin"), "lentils", null],
    ["2x400g tins lentils", pack("2", "400", "g", "800", "own:tin"), "lentils", null],
    ["4 chicken thighs (150 g each)", pack("4", "150", "g", "600", "piece"), "chicken thighs", null],
    ["1 can coconut milk, 14 oz", pack("1", "14", "oz", "14", "own:can"), "coconut milk", null],
    ["2 (6 oz) salmon steaks", pack("2", "6", "oz", "12", "piece"), "salmon steaks", null],
  ] as const)("%s", (raw, parts, food, preparation) => {
    understood(raw, { ...parts, food, preparation });
  });

  it("scales the count, never the size", () => {
    const read = line("2 (15-oz) cans chickpeas, drained");
    expect(read.amount && scaleMeasured(read.amount, "3/2")).toEqual(of("3", "own:can"));
    expect(read.pack?.size).toEqual(of("15", "oz"));
  });

  it("keeps a range of packages", () => {
    const read = line("2-3 (15-oz) cans chickpeas");
    expect([read.amount, read.pack?.net]).toEqual([of("2", "own:can", "3"), of("30", "oz", "45")]);
  });

  it("says that it took one where only the size is written", () => {
    understood("14-oz can coconut milk", {
      ...pack("1", "14", "oz", "14", "own:can"),
      food: "coconut milk",
      confidence: 0.8,
      reasons: [{ code: "COUNT_ASSUMED", about: "14-oz can" }],
    });
  });

  it("does not take a length for an amount", () => {
    understood("1 2-inch piece ginger, grated", {
      amount: of("1", "piece"),
      food: "ginger",
      preparation: "grated",
      notes: ["2-inch"],
      confidence: 0.7,
      reasons: [{ code: "SIZE_BY_LENGTH", about: "1 2-inch piece" }],
    });
    expect(line("3-inch piece ginger").amount).toEqual(of("1", "piece"));
    expect(line("1 (2-inch) stick cinnamon").amount).toEqual(of("1", "own:stick"));
  });
});

describe("O-04: alternatives are not added, additions are", () => {
  it("keeps the second unit of a pair beside the first, uncorrected", () => {
    understood("350g/12oz leeks, finely sliced", {
      amount: of("350", "g"),
      alternates: [of("12", "oz")],
      food: "leeks",
      preparation: "finely sliced",
    });
    understood("1 cup / 240 ml stock", { amount: of("1", "us-cup"), alternates: [of("240", "ml")], food: "stock" });
    expect(line("1 cup (240 ml) / 8 fl oz water").alternates).toEqual([of("240", "ml"), of("8", "us-floz")]);
    understood("1 lb (500 g) flour", { amount: of("1", "lb"), alternates: [of("500", "g")], food: "flour" });
    expect(scaleMeasured(of("350", "g"), "3")).toEqual(of("1050", "g"));
    expect(scaleMeasured(of("12", "oz"), "3")).toEqual(of("36", "oz"));
  });

  it("adds exactly what is joined by plus", () => {
    understood("2 tbsp plus 1/4 cup oil", {
      amount: of("6", "us-tbsp"),
      additions: [of("1/4", "us-cup")],
      food: "oil",
    });
    expect(line("2 tbsp plus 1/4 cup oil", "en-AU", "AUSTRALIAN").amount).toEqual(of("41/8", "au-tbsp"));
    expect(line("1 cup flour plus 2 tbsp").amount).toEqual(of("9/8", "us-cup"));
    expect(line("1 cup + 1 tbsp water").amount).toEqual(of("17/16", "us-cup"));
    expect(line("1 cup and 2 tablespoons water").amount).toEqual(of("9/8", "us-cup"));
  });

  it("adds the ounces behind the pounds", () => {
    understood("1 lb 4 oz chicken", { amount: of("5/4", "lb"), additions: [of("4", "oz")], food: "chicken" });
    expect(line("1 lb 9 oz chicken").amount).toEqual(of("25/16", "lb"));
    expect(line("1 lb 0.5 oz chicken").amount).toEqual(of("33/32", "lb"));
    expect(line("500 g 00 flour").food).toBe("00 flour");
    expect(line("1 oz 2 lb odd").amount).toEqual(of("1", "oz"));
  });

  it("says so where an addition cannot be summed without a fact about the food", () => {
    const read = line("1 cup plus 20 g sugar");
    expect([read.amount, read.additions, read.confidence]).toEqual([of("1", "us-cup"), [of("20", "g")], 0.5]);
    expect(read.reasons).toEqual([{ code: "ADDITION_NOT_SUMMED", about: "20 g" }]);
  });

  it("flags a pair that cannot be one amount", () => {
    expect(line("1 lb (200 g) flour").reasons).toEqual([{ code: "ALTERNATES_DISAGREE", about: "g" }]);
    expect(line("1 lb / 380 g flour").reasons).toEqual([]);
  });

  it("takes 'or' before an amount for an alternative, before a food for a choice", () => {
    expect(line("1 cup or 240 ml stock").alternates).toEqual([of("240", "ml")]);
    const read = line("½ cup butter or margarine");
    expect([read.amount, read.confidence]).toEqual([of("1/2", "us-cup"), 0.6]);
    expect(read.reasons).toEqual([{ code: "SEVERAL_FOODS", about: "butter or margarine" }]);
  });
});

describe("O-05: amounts that are not numbers", () => {
  it.each([
    ["a pinch of salt", "PINCH"],
    ["pinch salt", "PINCH"],
    ["2 pinches of salt", "PINCH"],
    ["a generous pinch of salt", "PINCH"],
    ["a splash of salt", "DASH"],
    ["some salt", "SOME"],
    ["a little salt", "SOME"],
    ["salt as needed", "AS_NEEDED"],
  ] as const)("%s has no number, and %s says why", (raw, noAmount) => {
    understood(raw, { noAmount, food: "salt" });
  });

  it("keeps 'to taste' as such", () => {
    understood("salt, to taste", { noAmount: "TO_TASTE", food: "salt", modifiers: ["TO_TASTE"] });
    understood("salt to taste", { noAmount: "TO_TASTE", food: "salt", modifiers: ["TO_TASTE"] });
  });

  it("keeps heaped spoons as written, without a factor", () => {
    understood("1 heaping tablespoon of flaxseed", {
      amount: of("1", "us-tbsp"),
      food: "flaxseed",
      modifiers: ["HEAPED"],
    });
    expect(line("2 scant cups flour").modifiers).toEqual(["SCANT"]);
    expect(line("1 level tsp salt").modifiers).toEqual(["LEVEL"]);
    expect(line("about 2 cups flour").modifiers).toEqual(["APPROXIMATE"]);
  });

  it("keeps the open extra beside the measured amount", () => {
    understood("2 tablespoons olive oil, plus more for serving", {
      amount: of("2", "us-tbsp"),
      food: "olive oil",
      modifiers: ["PLUS_MORE"],
      notes: ["plus more for serving"],
    });
    expect(line("2 tbsp oil (plus extra)").modifiers).toEqual(["PLUS_MORE"]);
  });

  it.each([
    ["1 bunch kale (optional)", "kale", ["OPTIONAL"], []],
    ["1 bunch kale, optional", "kale", ["OPTIONAL"], []],
    ["½ cup sugar, divided", "sugar", ["DIVIDED"], []],
    ["1 tbsp parsley for garnish", "parsley", ["FOR_SERVING"], ["for garnish"]],
  ] as const)("%s", (raw, food, modifiers, notes) => {
    const read = line(raw);
    expect([read.food, read.modifiers, read.notes, read.confidence]).toEqual([food, modifiers, notes, 1]);
  });

  it("flags a line that says nothing about its amount", () => {
    understood("fresh parsley", {
      noAmount: "UNSTATED",
      food: "fresh parsley",
      confidence: 0.7,
      reasons: [{ code: "NO_AMOUNT", about: "fresh parsley" }],
    });
    expect(line("salt and pepper").reasons.map(({ code }) => code)).toEqual(["NO_AMOUNT", "SEVERAL_FOODS"]);
  });
});

describe("O-06: what the count counts", () => {
  it.each([
    ["juice of 2 lemons", "2", "lemons", "juice"],
    ["grated zest of 1 lemon", "1", "lemon", "zest"],
    ["2 lemons, juiced", "2", "lemons", "juice"],
    ["juice of half a lemon", "1/2", "lemon", "juice"],
    ["4 egg whites", "4", "egg", "white"],
    ["3 egg yolks", "3", "egg", "yolk"],
  ])("%s counts %s of the %s for its %s", (raw, low, food, part) => {
    const read = line(raw);
    expect([read.amount, read.food, read.part, read.confidence]).toEqual([of(low, "piece"), food, part, 1]);
  });

  it("counts a fruit once for two of its parts, and asks a person to list them", () => {
    understood("Zest and juice of 1 lime", {
      amount: of("1", "piece"),
      food: "lime",
      notes: ["Zest and juice of"],
      confidence: 0.6,
      reasons: [{ code: "SEVERAL_PARTS", about: "Zest and juice of" }],
    });
  });

  it("tells what is chopped and then measured from what is measured and then chopped", () => {
    understood("1 cup almonds, chopped", { amount: of("1", "us-cup"), food: "almonds", preparation: "chopped" });
    understood("1 cup chopped almonds", { amount: of("1", "us-cup"), food: "almonds", form: "chopped" });
  });

  it.each([
    ["1 cup finely chopped onion", "onion", "chopped"],
    ["1 packed cup brown sugar", "brown sugar", "packed"],
    ["1 cup firmly packed brown sugar", "brown sugar", "packed"],
    ["½ of a finely diced red onion", "red onion", "diced"],
    ["1 lb peeled, sliced carrots", "carrots", "peeled, sliced"],
    ["1 lb peeled and diced carrots", "carrots", "peeled, diced"],
    ["2 cups shredded cooked chicken", "cooked chicken", "shredded"],
    ["2 lb diced watermelon, no rind", "watermelon", "diced"],
  ])("%s is %s, %s", (raw, food, form) => {
    const read = line(raw);
    expect([read.food, read.form, read.confidence]).toEqual([food, form, 1]);
  });

  it("leaves the form in the name of what is sold so", () => {
    const read = line("1 (14.5-ounce) can diced tomatoes, undrained");
    expect([read.food, read.form, read.preparation]).toEqual(["diced tomatoes", null, "undrained"]);
  });
});

describe("units that only the food decides", () => {
  it("O-08: an ounce is weight; of a liquid it is a fluid ounce only with a warning", () => {
    understood("8 oz honey", { amount: of("8", "oz"), food: "honey" });
    understood("8 oz milk", {
      amount: of("8", "us-floz"),
      food: "milk",
      confidence: 0.6,
      reasons: [{ code: "OUNCE_OF_LIQUID", about: "oz" }],
    });
    understood("8 fl oz milk", { amount: of("8", "us-floz"), food: "milk" });
    expect(line("8 oz milk", "en-GB", "UK_IMPERIAL").amount).toEqual(of("8", "imp-floz"));
    const metric = line("8 oz milk", "en-NZ", "METRIC_CUP");
    expect([metric.amount, metric.confidence]).toEqual([of("8", "oz"), 0.6]);
  });

  it("O-09: the tablespoon is the plan's", () => {
    expect(line("2 tbsp tahini", "en-AU", "AUSTRALIAN").amount).toEqual(of("2", "au-tbsp"));
    expect(line("2 tbsp tahini", "en-US").amount).toEqual(of("2", "us-tbsp"));
    expect(line("2 tbsp tahini", "en-NZ", "METRIC_CUP").amount).toEqual(of("2", "metric-tbsp"));
  });

  it("O-10: three pints", () => {
    understood("1 pint cherry tomatoes", { amount: of("1", "us-dry-pint"), food: "cherry tomatoes" });
    understood("1 pint blueberries", { amount: of("1", "us-dry-pint"), food: "blueberries" });
    understood("1 pint cream", { amount: of("1", "us-pint"), food: "cream" });
    understood("1 pint milk", { amount: of("1", "imp-pint"), food: "milk" }, "en-GB", "UK_IMPERIAL");
    understood("1 pint honey", {
      noAmount: "UNCLEAR",
      choices: [of("1", "us-pint"), of("1", "us-dry-pint")],
      food: "honey",
      confidence: 0.4,
      reasons: [{ code: "AMBIGUOUS_UNIT", about: "pint" }],
    });
  });

  it("a stick of butter is one only in the US, and a stick of anything else is its own", () => {
    expect(line("1 stick butter").amount).toEqual(of("1", "stick-butter"));
    expect(line("2 sticks of unsalted butter").amount).toEqual(of("2", "stick-butter"));
    expect(line("1 stick butter", "en-AU", "AUSTRALIAN").amount).toEqual(of("1", "own:stick"));
    expect(line("1 stick celery").amount).toEqual(of("1", "own:stick"));
  });

  it("counting words keep their name, and are the food where there is no other", () => {
    expect(line("2 cloves garlic, minced").amount).toEqual(of("2", "own:clove"));
    expect(line("2 large heads of cauliflower").notes).toEqual(["large"]);
    understood("10 cloves", { amount: of("10", "piece"), food: "cloves" });
    expect(line("2 stone fruits").amount).toEqual(of("2", "piece"));
    expect(line("a dozen eggs").amount).toEqual(of("1", "dozen"));
    expect(line("2 cup(s) flour").amount).toEqual(of("2", "us-cup"));
  });
});

describe("O-20 to O-22: names", () => {
  it("keeps ripeness and size as a note", () => {
    understood("3 ripe tomatoes", { amount: of("3", "piece"), food: "tomatoes", notes: ["ripe"] });
    understood("2 large eggs, beaten", {
      amount: of("2", "piece"),
      food: "eggs",
      notes: ["large"],
      preparation: "beaten",
    });
  });

  it("does not cut a name at a comma between describing words", () => {
    understood("1 lb boneless, skinless chicken breast", {
      amount: of("1", "lb"),
      food: "boneless, skinless chicken breast",
    });
  });

  it.each(["tomato paste", "coconut milk", "peanut butter", "cream of tartar", "garlic powder", "couscous", "2% milk"])(
    "leaves %s whole",
    (food) => {
      understood(`2 tbsp ${food}`, { amount: of("2", "us-tbsp"), food });
    },
  );

  it("keeps a joining word where it joins nothing that was taken away", () => {
    expect(line("1 tsp i onion").food).toBe("i onion");
  });

  it("does not take 'and' in the name of a measured food for a second food", () => {
    understood("2 cups macaroni and cheese", { amount: of("2", "us-cup"), food: "macaroni and cheese" });
  });

  it("leaves a food its last word, whatever that is", () => {
    expect(line("2 large").food).toBe("large");
  });

  it("does not take a number in a name for an amount", () => {
    expect(line("7-grain bread")).toMatchObject({ amount: null, food: "7-grain bread" });
    expect(line("2% milk").reasons.map(({ code }) => code)).toEqual(["NO_AMOUNT", "NUMBER_LEFT_OVER"]);
  });
});

describe("O-34: the comma", () => {
  it("is read by the locale", () => {
    understood("1,5 dl Sahne", { amount: of("3/2", "dl"), food: "Sahne" }, "de", "METRIC");
    understood("1,000 g flour", { amount: of("1000", "g"), food: "flour" });
    understood("1.000 g Mehl", { amount: of("1000", "g"), food: "Mehl" }, "de", "METRIC");
    understood("1\u202f000 g farine", { amount: of("1000", "g"), food: "farine" }, "fr", "METRIC");
  });

  it("waits for a person without one", () => {
    understood(
      "1,000 g flour",
      {
        noAmount: "UNCLEAR",
        food: "g flour",
        confidence: 0.1,
        reasons: [{ code: "AMBIGUOUS_NUMBER", about: "1,000" }],
      },
      null,
    );
  });

  it("is flagged where it is not the mark of the locale", () => {
    const read = line("1,5 cups flour", "en");
    expect([read.amount, read.confidence]).toEqual([of("3/2", "us-cup"), 0.7]);
    expect(read.reasons).toEqual([{ code: "MARK_OF_OTHER_LOCALE", about: "1,5 cups" }]);
  });
});

describe("other languages", () => {
  it.each([
    ["de", "2 EL Olivenöl", of("2", "metric-tbsp"), "Olivenöl"],
    ["de", "200 g gehackte Mandeln", of("200", "g"), "Mandeln"],
    ["de", "ein halber Kopf Blumenkohl", of("1/2", "own:kopf"), "Blumenkohl"],
    ["de", "1 Pfund Mehl", of("1", "metric-pound"), "Mehl"],
    ["de", "Mehl 200 g", of("200", "g"), "Mehl"],
    ["de", "2 Dosen (400 g) Kichererbsen", of("2", "own:dose"), "Kichererbsen"],
    ["fr", "2 c. à s. d'huile", of("2", "metric-tbsp"), "huile"],
    ["fr", "2 gousses d’ail, hachées", of("2", "own:gousse"), "ail"],
    ["fr", "un quart de citron", of("1/4", "piece"), "citron"],
    ["fr", "250 g de farine", of("250", "g"), "farine"],
    ["es", "3 cucharadas de aceite", of("3", "metric-tbsp"), "aceite"],
    ["es", "once tomates", of("11", "piece"), "tomates"],
    ["es", "2 rebanadas de pan", of("2", "own:rebanada"), "pan"],
    ["pl", "2 łyżki oliwy", of("2", "metric-tbsp"), "oliwy"],
    ["pl", "pół główki kapusty", of("1/2", "own:główka"), "kapusty"],
    ["pl", "10 dag sera", of("10", "dag"), "sera"],
  ])("%s: %s", (locale, raw, amount, food) => {
    const read = line(raw, locale, "METRIC");
    expect([read.amount, read.food, read.confidence]).toEqual([amount, food, 1]);
  });

  it.each([
    ["de", "eine Prise Salz", "PINCH", "Salz"],
    ["fr", "une pincée de sel", "PINCH", "sel"],
    ["es", "sal al gusto", "TO_TASTE", "sal"],
    ["pl", "sól do smaku", "TO_TASTE", "sól"],
    ["de", "Salz nach Geschmack", "TO_TASTE", "Salz"],
  ])("%s: %s", (locale, raw, noAmount, food) => {
    const read = line(raw, locale, "METRIC");
    expect([read.noAmount, read.food, read.confidence]).toEqual([noAmount, food, 1]);
  });

  it("names forms in one language, before or behind the food", () => {
    expect(line("1 taza de cebolla picada", "es", "METRIC_CUP").form).toBe("chopped");
    expect(line("200 g gehackte Mandeln", "de", "METRIC").form).toBe("chopped");
    expect(line("jus de 2 citrons", "fr", "METRIC").part).toBe("juice");
    expect(line("Saft von 2 Zitronen", "de", "METRIC").part).toBe("juice");
  });

  it("asks about a cup where the plan's measures have none", () => {
    const read = line("1 Tasse Mehl", "de", "METRIC");
    expect([read.amount, read.choices]).toEqual([null, [of("1", "metric-cup"), of("1", "us-cup")]]);
  });
});

describe("what a person must look at", () => {
  it.each([
    ["", "EMPTY", 0],
    ["  ▢ ", "EMPTY", 0],
    ["-5 g salt", "NEGATIVE_NUMBER", 0.1],
    ["1/0 cup salt", "BAD_NUMBER", 0.1],
    ["99999999999 g salt", "BAD_NUMBER", 0.1],
    ["For the sauce:", "HEADING", 0.3],
    ["2 cups", "NO_FOOD", 0.4],
  ])("%j: %s", (raw, code, confidence) => {
    const read = line(raw);
    expect(read.raw).toBe(raw);
    expect([read.reasons.map((reason) => reason.code), read.confidence]).toEqual([[code], confidence]);
  });

  it("flags a number that stands beside the amount", () => {
    const read = line("2 (or 3) limes");
    expect([read.amount, read.confidence]).toEqual([of("2", "piece"), 0.6]);
    expect(read.reasons).toEqual([{ code: "NUMBER_LEFT_OVER", about: "or 3" }]);
  });

  it("keeps an adverb that belongs to the name", () => {
    expect(line("1 tsp freshly ground pepper").food).toBe("freshly ground pepper");
    expect(line("½ tsp chili, or more to taste")).toMatchObject({ preparation: null, modifiers: ["TO_TASTE"] });
  });

  it("keeps a second amount behind a pack whose size is known as an alternate", () => {
    const read = line("1 can (15 oz) chickpeas (about 1½ cups), drained");
    expect([read.pack?.size, read.alternates, read.preparation]).toEqual([
      of("15", "oz"),
      [of("3/2", "us-cup")],
      "drained",
    ]);
  });

  it("keeps remarks in brackets", () => {
    const read = line("2 onions (the sweet kind), diced");
    expect([read.food, read.notes, read.preparation]).toEqual(["onions", ["the sweet kind"], "diced"]);
  });

  it("has an amount exactly when it has no reason for having none", () => {
    for (const raw of ["2 cups oats", "salt", "1 pint honey", "-1 g", "a pinch of salt", "For:", "x".repeat(2000)]) {
      const read = line(raw);
      expect(read.amount === null, raw).toBe(read.noAmount !== null);
    }
  });
});

describe("hostile text", () => {
  /** Milliseconds of processor time, the best of three: other programs do not count. */
  const timed = (work: () => void): number => {
    const once = (): number => {
      const start = process.cpuUsage().user;
      work();
      return (process.cpuUsage().user - start) / 1000;
    };
    return Math.min(once(), once(), once());
  };

  it("refuses a line of a megabyte unread", () => {
    const raw = "1 ".repeat(524_288);
    const elapsed = timed(() => {
      const read = line(raw);
      expect(read.reasons).toEqual([{ code: "TOO_LONG", about: String(raw.length) }]);
      expect([read.amount, read.confidence, read.raw]).toEqual([null, 0, raw]);
    });
    expect(elapsed).toBeLessThan(50);
  });

  it.each([
    " ",
    ",",
    ", ",
    "(",
    "()",
    "(1 g",
    "1/",
    "1.",
    "1,",
    "½",
    "1 g + ",
    "1 g to ",
    "1 g / ",
    "(1 g) ",
    "-",
    "- ",
    "plus ",
    "large ",
    "chopped ",
    "\u00a0",
    "\u202f1",
    "x ",
    "1 x ",
    "a ",
    "of ",
    "...",
    "juice of ",
    "\u0000",
    "\ud800",
  ])("reads a longest line of %j in bounded time", (piece) => {
    const raw = `1 g ${piece.repeat(LINE_MAX)}`.slice(0, LINE_MAX);
    const inside = `${piece.repeat(LINE_MAX)}`.slice(0, LINE_MAX);
    expect(timed(() => line(raw))).toBeLessThan(100);
    expect(timed(() => line(inside))).toBeLessThan(100);
  });

  it("reads a line of exactly the limit, and refuses one more", () => {
    const codes = (length: number) => line(`1 g ${"x".repeat(length - 4)}`).reasons.map(({ code }) => code);
    expect(codes(LINE_MAX)).toEqual([]);
    expect(codes(LINE_MAX + 1)).toEqual(["TOO_LONG"]);
  });

  it("reads ten thousand lines, and refuses one more before reading any", () => {
    const options = { locale: "en", measures: "US_CUSTOMARY" } as const;
    const read = parseLines("2 cups oats\r\n".repeat(LINES_MAX - 1) + "\n", options, ["text"]);
    expect(read.ok && read.value.length).toBe(LINES_MAX - 1);
    expect(parseLines("1 g x\n".repeat(LINES_MAX), options, ["text"]).ok).toBe(true);
    expect(parseLines("1 g x\n".repeat(LINES_MAX + 1), options, ["text"])).toEqual({
      ok: false,
      problems: [{ code: "TOO_LARGE", path: ["text"], what: "lines", size: LINES_MAX + 1, limit: LINES_MAX }],
    });
  });

  it("reads a text of the largest size, and refuses a character more", () => {
    const options = { locale: "en", measures: "US_CUSTOMARY" } as const;
    const text = `${"1 g x\n".repeat(9000)}${"1 g x (1 g) \n".repeat(200)}`.padEnd(TEXT_MAX, " ");
    expect(parseLines(text, options, []).ok).toBe(true);
    expect(parseLines(`${text} `, options, [])).toEqual({
      ok: false,
      problems: [{ code: "TOO_LARGE", path: [], what: "text", size: TEXT_MAX + 1, limit: TEXT_MAX }],
    });
  });
});
