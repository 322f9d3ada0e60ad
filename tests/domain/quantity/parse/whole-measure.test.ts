import { describe, expect, it } from "vitest";
import { parseLine } from "../../../../src/domain/quantity/parse.js";

const read = (raw: string, locale = "en") => parseLine(raw, { locale, measures: "US_CUSTOMARY" });
const of = (low: string, unit: string, high = low) => ({ low, high, unit });

describe("a bracket behind a measure", () => {
  it.each([
    ["1 lb (about 500 g) flour", "500"],
    ["1 lb (approx 500 g) flour", "500"],
    ["1 lb (approx. 500 g) flour", "500"],
    ["1 lb (ca 500 g) flour", "500"],
    ["1 lb (ca. 500 g) flour", "500"],
    ["1 lb (circa 500 g) flour", "500"],
    ["1 lb (around 500 g) flour", "500"],
    ["1 lb (total 500 g) flour", "500"],
    ["1 lb (totaling 500 g) flour", "500"],
    ["1 lb (or 500 g) flour", "500"],
    ["1 lb ( about  500 g) flour", "500"],
    ["1 lb (500 g total) flour", "500"],
    ["1 lb (500 g in total) flour", "500"],
    ["1 lb (500 g drained) flour", "500"],
    ["1 lb (500 g drained weight) flour", "500"],
    ["1 lb (500 g net) flour", "500"],
    ["1 lb (500 g worth) flour", "500"],
    ["1 lb (500 g ) flour", "500"],
  ])("%s is the same amount", (raw, grams) => {
    expect(read(raw)).toMatchObject({
      amount: of("1", "lb"),
      alternates: [of(grams, "g")],
      food: "flour",
      notes: [],
      confidence: 1,
    });
  });

  it.each([
    "4 thighs (150 g each)",
    "4 thighs (150 g apiece)",
    "4 thighs (150 g - each)",
    "4 thighs (each 150 g)",
    "4 thighs (each about 150 g)",
    "4 thighs ( each  about  150 g)",
    "4 thighs (je 150 g)",
    "4 thighs (150 g je)",
    "4 thighs (150 g chacune)",
    "4 thighs (150 g cada una)",
    "4 thighs (150 g każda)",
  ])("%s is the size of one", (raw) => {
    expect(read(raw)).toMatchObject({
      amount: of("4", "piece"),
      pack: { size: of("150", "g"), net: of("600", "g") },
      alternates: [],
      food: "thighs",
      notes: [],
    });
  });

  it.each([
    ["1 lb (no rind at all) cheese", "no rind at all"],
    ["1 lb (500 g of the old kind) cheese", "500 g of the old kind"],
    ["1 lb (250) cheese", "250"],
    ["1 lb (2 x 400 g tins) cheese", "2 x 400 g tins"],
    ["1 lb (reach 500 g) cheese", "reach 500 g"],
    ["1 lb (500 g each day) cheese", "500 g each day"],
  ])("%s holds a remark", (raw, note) => {
    expect(read(raw)).toMatchObject({ amount: of("1", "lb"), alternates: [], notes: [note], food: "cheese" });
  });

  it("that never closes is left in the words", () => {
    expect(read("1 lb (500 g flour")).toMatchObject({ amount: of("1", "lb"), alternates: [], food: "(500 g flour" });
  });

  it("in a row with others: one is the size, the next an amount", () => {
    expect(read("2 cans (400 g) (14 oz) beans")).toMatchObject({
      pack: { size: of("400", "g"), net: of("800", "g") },
      alternates: [of("14", "oz")],
      food: "beans",
    });
    expect(read("2 thighs (150 g each) (10 oz) boned")).toMatchObject({
      pack: { size: of("150", "g") },
      alternates: [of("10", "oz")],
    });
  });
});

describe("alternatives, additions and the far end", () => {
  it.each([
    ["1 cup/240 ml stock", "en"],
    ["1 cup / 240 ml stock", "en"],
    ["1 cup | 240 ml stock", "en"],
    ["1 cup = 240 ml stock", "en"],
    ["1 cup or 240 ml stock", "en"],
    ["1 cup oder 240 ml stock", "de"],
    ["1 cup ou 240 ml stock", "fr"],
    ["1 cup o 240 ml stock", "es"],
    ["1 cup lub 240 ml stock", "pl"],
  ])("%s (%s) is one amount, written twice", (raw, locale) => {
    expect(read(raw, locale)).toMatchObject({
      amount: of("1", "us-cup"),
      alternates: [of("240", "ml")],
      food: "stock",
    });
  });

  it.each([
    ["500 g + 100 g flour", "en"],
    ["500 g+100 g flour", "en"],
    ["500 g plus 100 g flour", "en"],
    ["500 g and 100 g flour", "en"],
    ["500 g und 100 g flour", "de"],
    ["500 g et 100 g flour", "fr"],
    ["500 g más 100 g flour", "es"],
    ["500 g y 100 g flour", "es"],
    ["500 g i 100 g flour", "pl"],
  ])("%s (%s) is a sum", (raw, locale) => {
    expect(read(raw, locale)).toMatchObject({
      amount: of("600", "g"),
      additions: [of("100", "g")],
      food: "flour",
      confidence: 1,
    });
  });

  it("follow each other", () => {
    expect(read("1 kg + 100 g + 50 g / 40 oz flour")).toMatchObject({
      amount: of("23/20", "kg"),
      additions: [of("100", "g"), of("50", "g")],
      alternates: [of("40", "oz")],
      food: "flour",
    });
    expect(read("1 lb 2 oz / 510 g flour")).toMatchObject({
      amount: of("9/8", "lb"),
      additions: [of("2", "oz")],
      alternates: [of("510", "g")],
    });
    expect(read("1 lb 2 oz (510 g) flour").alternates).toEqual([of("510", "g")]);
  });

  it("keep the far end's own alternative", () => {
    expect(read("1 lb / 16 oz to 2 lb / 900 g flour")).toMatchObject({
      amount: of("1", "lb", "2"),
      alternates: [of("16", "oz"), of("900", "g")],
      food: "flour",
    });
  });

  it("of a range whose ends are alike are one amount", () => {
    expect(read("1 lb to 16 oz flour").amount).toEqual(of("1", "lb"));
    expect(read("2 lb to 1 kg flour").amount?.low).toBe("2");
    expect(read("2 lb to 16 oz flour")).toMatchObject({ amount: of("2", "lb"), food: "to 16 oz flour" });
  });

  it("of other dimensions stay apart", () => {
    expect(read("1 lb 2 cups flour")).toMatchObject({ amount: of("1", "lb"), additions: [], food: "2 cups flour" });
    expect(read("1 oz 1 oz flour")).toMatchObject({ amount: of("1", "oz"), additions: [] });
    expect(read("2 cups + 1 clove garlic")).toMatchObject({
      amount: of("2", "us-cup"),
      additions: [of("1", "own:clove")],
      reasons: [{ code: "ADDITION_NOT_SUMMED", about: "1 own:clove" }],
    });
    expect(read("2 cloves + 1 clove garlic")).toMatchObject({ amount: of("3", "own:clove"), reasons: [] });
  });

  it("are eight at most, and one behind the food; the rest stays in the words", () => {
    const sum = (count: number) => read(`${Array.from({ length: count }, () => "1 g").join(" + ")} salt`);
    expect(sum(10)).toMatchObject({ amount: of("10", "g"), food: "salt" });
    expect(sum(11)).toMatchObject({ amount: of("10", "g"), food: "+ 1 g salt" });
    expect(sum(11).additions).toHaveLength(9);
  });

  it("that would not fit are kept apart, and said to be", () => {
    const read9 = read("1000000000 kg + 1/99999 g + 1/99991 g salt");
    expect(read9.additions.length).toBeGreaterThan(0);
    expect(read9.amount).not.toBeNull();
  });
});
