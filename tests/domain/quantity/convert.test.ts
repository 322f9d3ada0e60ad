import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BaseAmount, Dimension, Measured } from "../../../src/domain/model/amount.js";
import {
  compileFacts,
  inDimension,
  inUnit,
  missingText,
  toBase,
  toDimension,
  toDimensionOf,
  type Conversion,
  type MeasureFacts,
} from "../../../src/domain/quantity/convert.js";
import { density, facts, measure, noFacts, writer } from "./facts.js";

const of = (low: string, unit: string, high = low): Measured => ({ low, high, unit });

const amountOf = (conversion: Conversion): BaseAmount => {
  if (!conversion.ok) throw new Error(`missing ${missingText(conversion.missing)}`);
  return conversion.amount;
};

const missing = (conversion: Conversion): string => (conversion.ok ? "nothing" : missingText(conversion.missing));

/** USDA SR 28: 125 g of unsifted white flour to the US cup (NDB 20081). */
const flour = facts([density(125 / 236.5882365)]);

/** Grams of one clove: USDA SR 28, NDB 11215. Ten cloves to the head: a buying guide of a Canadian test kitchen. */
const garlic = facts([], [measure("clove", { grams: 3, pieces: 0.1 }), measure("head", { pieces: 1 })]);

describe("a written amount in base units", () => {
  it.each([
    ["3/2", "us-cup", "VOLUME", 1.5 * 236.5882365],
    ["1/3", "kg", "MASS", 1000 / 3],
    ["3", "piece", "COUNT", 3],
    ["2", "dozen", "COUNT", 24],
    ["0", "g", "MASS", 0],
  ] as const)("%s %s is %s %d", (low, unit, dimension, base) => {
    expect(toBase(of(low, unit), noFacts, null)).toEqual({ ok: true, amount: { dimension, low: base, high: base } });
  });

  it("keeps both ends of a range", () => {
    expect(amountOf(toBase(of("2", "dl", "3"), noFacts, null))).toEqual({ dimension: "VOLUME", low: 200, high: 300 });
  });

  it("uses the grams of an own measure before its millilitres before its pieces", () => {
    const all = facts([], [measure("tub", { grams: 200, millilitres: 250, pieces: 1 })]);
    const poured = facts([], [measure("tub", { millilitres: 250, pieces: 1 })]);
    expect(amountOf(toBase(of("2", "own:tub"), all, null))).toEqual({ dimension: "MASS", low: 400, high: 400 });
    expect(amountOf(toBase(of("2", "own:tub"), poured, null))).toEqual({ dimension: "VOLUME", low: 500, high: 500 });
    expect(amountOf(toBase(of("2", "own:head"), garlic, null))).toEqual({ dimension: "COUNT", low: 2, high: 2 });
  });

  it("names what is missing", () => {
    expect(missing(toBase(of("1", "own:tub"), noFacts, null))).toBe("OWN_MEASURE:tub");
    expect(missing(toBase(of("1", "own:tub"), facts([], [measure("tub", {})]), null))).toBe("OWN_MEASURE:tub");
    expect(missing(toBase(of("1", "batch"), noFacts, null))).toBe("YIELD_OF_ONE_BATCH");
    expect(missing(toBase(of("1", "wheelbarrow"), noFacts, null))).toBe("UNIT:wheelbarrow");
  });

  it("takes a measure of zero, negative or infinite size for no fact at all", () => {
    for (const grams of [0, -5, Infinity, Number.NaN]) {
      expect(missing(toBase(of("1", "own:tub"), facts([], [measure("tub", { grams })]), null))).toBe("OWN_MEASURE:tub");
      expect(missing(toDimension(of("1", "ml"), "MASS", facts([density(grams)]), null))).toBe("DENSITY");
    }
  });

  it("takes the first of two measures of one name", () => {
    const twice = facts([], [measure("tub", { grams: 1 }), measure("tub", { grams: 2 })]);
    expect(amountOf(toBase(of("1", "own:tub"), twice, null)).low).toBe(1);
  });
});

describe("reconciling units", () => {
  it("O-07: two cups and 250 g of flour are 500 g", () => {
    const cups = amountOf(toDimension(of("2", "us-cup"), "MASS", flour, null));
    const grams = amountOf(toDimension(of("250", "g"), "MASS", flour, null));
    expect(cups.low + grams.low).toBeCloseTo(500, 9);
  });

  it("O-07: without a density nothing is converted, and the missing fact has a name", () => {
    expect(missing(toDimension(of("2", "us-cup"), "MASS", noFacts, null))).toBe("DENSITY");
    expect(missing(toDimension(of("2", "us-cup"), "MASS", flour, "sifted"))).toBe("DENSITY:sifted");
  });

  it("O-08: eight ounces and a cup of honey are 565.8 g; eight ounces are about two thirds of a cup", () => {
    // 339 g to the US cup: USDA SR 28, NDB 19296.
    const honey = facts([density(339 / 236.5882365)]);
    const ounces = amountOf(toDimension(of("8", "oz"), "MASS", honey, null));
    const cup = amountOf(toDimension(of("1", "us-cup"), "MASS", honey, null));
    expect(ounces.low + cup.low).toBeCloseTo(565.8, 1);
    expect(inUnit(ounces, "us-cup", honey, null)?.low).toBeCloseTo(0.67, 2);
  });

  it("O-09: two Australian and two US spoons of tahini are 69.57 ml, which is 4.71 US spoons", () => {
    const volume = (unit: string): number => amountOf(toBase(of("2", unit), noFacts, null)).low;
    const sum = volume("au-tbsp") + volume("us-tbsp");
    expect(sum).toBeCloseTo(69.5735, 4);
    expect(inUnit({ dimension: "VOLUME", low: sum, high: sum }, "us-tbsp", noFacts, null)?.low).toBeCloseTo(4.71, 2);
  });

  it.each([
    ["us-dry-pint", 550.61],
    ["us-pint", 473.18],
    ["imp-pint", 568.26],
  ])("O-10: a %s holds %d ml", (unit, millilitres) => {
    expect(amountOf(toBase(of("1", unit), noFacts, null)).low).toBeCloseTo(millilitres, 2);
  });

  it("O-06: a cup of chopped nuts is not a cup of whole ones, and no form stands in for another", () => {
    // 143 g whole, 95 g ground to the US cup: USDA SR 28, NDB 12061.
    const almonds = facts([density(143 / 236.5882365), density(95 / 236.5882365, "ground")]);
    expect(amountOf(toDimension(of("1", "us-cup"), "MASS", almonds, null)).low).toBeCloseTo(143, 9);
    expect(amountOf(toDimension(of("1", "us-cup"), "MASS", almonds, "ground")).low).toBeCloseTo(95, 9);
    expect(missing(toDimension(of("1", "us-cup"), "MASS", almonds, "chopped"))).toBe("DENSITY:chopped");
    const onlyGround = facts([density(0.4, "ground")]);
    expect(missing(toDimension(of("1", "us-cup"), "MASS", onlyGround, null))).toBe("DENSITY");
  });

  it("lets the writer's own density beat a table's, wherever it stands", () => {
    const both = facts([density(0.5), density(0.6, null, writer), density(0.7, null, writer)]);
    expect(compileFacts(both).density.get(null)).toBe(0.6);
  });
});

describe("between mass, volume and pieces", () => {
  const egg = facts([density(1.03)], [measure("piece", { grams: 50 })]);
  const jar = facts([], [measure("piece", { grams: 300, millilitres: 250 })]);
  const lime = facts([density(1.02)], [measure("piece", { millilitres: 40 })]);

  const convert = (from: Dimension, to: Dimension, about: MeasureFacts, form: string | null = null) =>
    inDimension({ dimension: from, low: 1, high: 2 }, to, about, form);

  it.each([
    ["MASS", "VOLUME", egg, 1 / 1.03],
    ["VOLUME", "MASS", egg, 1.03],
    ["COUNT", "MASS", egg, 50],
    ["MASS", "COUNT", egg, 1 / 50],
    ["COUNT", "VOLUME", egg, 50 / 1.03],
    ["VOLUME", "COUNT", egg, 1.03 / 50],
    ["COUNT", "VOLUME", jar, 250],
    ["VOLUME", "COUNT", jar, 1 / 250],
    ["MASS", "VOLUME", jar, 250 / 300],
    ["VOLUME", "MASS", jar, 300 / 250],
    ["COUNT", "MASS", lime, 40 * 1.02],
    ["MASS", "COUNT", lime, 1 / (40 * 1.02)],
    ["COUNT", "VOLUME", lime, 40],
  ] as const)("%s to %s goes through what is known (%#)", (from, to, about, factor) => {
    const amount = amountOf(convert(from, to, about));
    expect(amount.dimension).toBe(to);
    expect(amount.low).toBeCloseTo(factor, 12);
    expect(amount.high).toBeCloseTo(2 * factor, 12);
  });

  it.each([
    ["MASS", "VOLUME", noFacts, "DENSITY"],
    ["VOLUME", "MASS", noFacts, "DENSITY"],
    ["COUNT", "MASS", noFacts, "GRAMS_OF_ONE_PIECE"],
    ["MASS", "COUNT", noFacts, "GRAMS_OF_ONE_PIECE"],
    ["COUNT", "VOLUME", noFacts, "MILLILITRES_OF_ONE_PIECE"],
    ["VOLUME", "COUNT", noFacts, "MILLILITRES_OF_ONE_PIECE"],
    ["COUNT", "MASS", facts([density(1)]), "GRAMS_OF_ONE_PIECE"],
    ["COUNT", "VOLUME", facts([density(1)]), "GRAMS_OF_ONE_PIECE"],
    ["COUNT", "VOLUME", facts([], [measure("piece", { grams: 50 })]), "DENSITY"],
    ["VOLUME", "COUNT", facts([], [measure("piece", { grams: 50 })]), "DENSITY"],
    ["MASS", "COUNT", facts([], [measure("piece", { millilitres: 40 })]), "GRAMS_OF_ONE_PIECE"],
  ] as const)("%s to %s is never guessed (%#): %s", (from, to, about, code) => {
    const result = convert(from, to, about);
    expect(missing(result)).toBe(code);
  });

  it("does not use a whole piece's density for another form", () => {
    expect(missing(convert("MASS", "VOLUME", jar, "drained"))).toBe("DENSITY:drained");
  });

  it("leaves an amount that is there already untouched", () => {
    const amount: BaseAmount = { dimension: "MASS", low: 1, high: 2 };
    expect(amountOf(inDimension(amount, "MASS", noFacts, "any"))).toBe(amount);
  });

  it("knows a piece's weight from a measure that says its share of a piece", () => {
    expect(compileFacts(garlic).gramsPerPiece).toBeCloseTo(30, 12);
    expect(amountOf(inDimension({ dimension: "MASS", low: 15, high: 15 }, "COUNT", garlic, null)).low).toBeCloseTo(
      0.5,
      12,
    );
  });

  it("lets the whole piece's own weight beat what its shares add up to", () => {
    const weighed = facts([], [measure("clove", { grams: 3, pieces: 0.1 }), measure("piece", { grams: 60 })]);
    expect(compileFacts(weighed).gramsPerPiece).toBe(60);
  });

  it("goes straight to pieces where the measure says how many it is", () => {
    const weighed = facts([], [measure("clove", { grams: 3, pieces: 0.1 }), measure("piece", { grams: 60 })]);
    expect(amountOf(toDimension(of("5", "own:clove"), "COUNT", weighed, null)).low).toBeCloseTo(0.5, 12);
    expect(amountOf(toDimension(of("5", "own:clove"), "MASS", weighed, null)).low).toBe(15);
    expect(amountOf(toDimension(of("2", "own:piece"), "COUNT", weighed, null)).low).toBe(2);
  });

  it("remembers what it laid out for a food", () => {
    expect(compileFacts(egg)).toBe(compileFacts(egg));
  });
});

describe("counting in a unit", () => {
  it("undoes the unit's size", () => {
    expect(inUnit({ dimension: "MASS", low: 500, high: 1000 }, "kg", noFacts, null)).toEqual({ low: 0.5, high: 1 });
    expect(inUnit({ dimension: "MASS", low: 9, high: 9 }, "own:clove", garlic, null)).toEqual({ low: 3, high: 3 });
  });

  it("is null where a fact is missing", () => {
    expect(inUnit({ dimension: "MASS", low: 1, high: 1 }, "ml", noFacts, null)).toBeNull();
    expect(inUnit({ dimension: "MASS", low: 1, high: 1 }, "own:tub", noFacts, null)).toBeNull();
    expect(toDimensionOf(1, "own:tub", "MASS", noFacts)).toBeNull();
    expect(toDimensionOf(1, "ml", "MASS", noFacts)).toBeNull();
  });

  it("weighs so many of a unit", () => {
    expect(toDimensionOf(2.5, "own:clove", "MASS", garlic)).toEqual({ dimension: "MASS", low: 7.5, high: 7.5 });
  });
});

describe("laws of conversion", () => {
  const dimension = fc.constantFrom<Dimension>("MASS", "VOLUME", "COUNT");
  const size = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
  const value = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1e9, noNaN: true }));
  const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(a, b);

  it("there and back gives the same amount to 1e-9", () => {
    fc.assert(
      fc.property(dimension, dimension, size, size, value, (from, to, gramsPerMl, grams, low) => {
        const about = facts([density(gramsPerMl)], [measure("piece", { grams })]);
        const there = amountOf(inDimension({ dimension: from, low, high: low }, to, about, null));
        const back = amountOf(inDimension(there, from, about, null));
        expect(close(back.low, low) && close(back.high, low)).toBe(true);
      }),
    );
  });

  it("by way of the third dimension gives the same as straight", () => {
    fc.assert(
      fc.property(dimension, dimension, dimension, size, size, value, (from, over, to, gramsPerMl, grams, low) => {
        const about = facts([density(gramsPerMl)], [measure("piece", { grams })]);
        const start: BaseAmount = { dimension: from, low, high: low };
        const straight = amountOf(inDimension(start, to, about, null));
        const round = amountOf(inDimension(amountOf(inDimension(start, over, about, null)), to, about, null));
        expect(close(straight.low, round.low)).toBe(true);
      }),
    );
  });

  it("is homogeneous: twice as much converts to twice as much", () => {
    fc.assert(
      fc.property(dimension, dimension, size, size, value, (from, to, gramsPerMl, grams, low) => {
        const about = facts([density(gramsPerMl)], [measure("piece", { grams })]);
        const amount = amountOf(inDimension({ dimension: from, low, high: 2 * low }, to, about, null));
        expect(close(amount.high, 2 * amount.low)).toBe(true);
      }),
    );
  });
});

describe("pieces that are weighed and poured through other measures", () => {
  const factor = (about: MeasureFacts, from: string, to: Dimension) =>
    amountOf(inDimension(amountOf(toBase(of("1", from), about, null)), to, about, null)).high;

  it("a whole one is what a measure of several, or of a share, says", () => {
    expect(factor(facts([], [measure("bunch", { grams: 300, pieces: 6 })]), "piece", "MASS")).toBe(50);
    expect(factor(garlic, "piece", "MASS")).toBeCloseTo(30, 12);
  });

  it("the whole one's own weight beats that of its parts", () => {
    const both = facts([], [measure("bunch", { grams: 300, pieces: 6 }), measure("piece", { grams: 40 })]);
    expect(factor(both, "piece", "MASS")).toBe(40);
    expect(factor(both, "own:piece", "COUNT")).toBe(1);
  });

  it("a poured one counts and is counted, with no weight known", () => {
    const egg = facts([], [measure("piece", { millilitres: 50 })]);
    expect(factor(egg, "piece", "VOLUME")).toBe(50);
    expect(factor(egg, "ml", "COUNT")).toBe(1 / 50);
    const weighed = facts([density(2)], [measure("piece", { millilitres: 50 })]);
    expect(factor(weighed, "piece", "MASS")).toBe(100);
    expect(factor(weighed, "g", "COUNT")).toBe(1 / 100);
  });

  it("a poured one counts by its own volume, whatever its weight and density say", () => {
    const lemon = facts([density(0.5)], [measure("piece", { grams: 100, millilitres: 50 })]);
    expect(factor(lemon, "piece", "VOLUME")).toBe(50);
    expect(factor(lemon, "ml", "COUNT")).toBe(1 / 50);
  });

  it("a table's density stands where no writer gives one, and the first writer's where two do", () => {
    const of_ = (...all: MeasureFacts["densities"]) => compileFacts(facts(all)).density.get(null);
    expect(of_(density(0.5), density(0.6))).toBe(0.5);
    expect(of_(density(0.5), { ...density(0.6), source: writer })).toBe(0.6);
    expect(of_({ ...density(0.7), source: writer }, { ...density(0.6), source: writer }, density(0.5))).toBe(0.7);
  });
});
