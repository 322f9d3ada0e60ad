// @ts-nocheck
import { describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { mergeNeeds, needOf, notShared, partsOver, type Contribution } from "../../../src/domain/shopping/merge.js";
import { food, part } from "../../kit/builders.js";

const oats = food("oats");
const egg = food("egg", { shoppedBy: "COUNT", parts: [part("white", "1 piece"), part("yolk", "1 piece")] });

const use = (of: Food, low: number | null, facts: Partial<Contribution<string>> = {}): Contribution<string> => ({
  food: of,
  part: null,
  dimension: low === null ? null : of.shoppedBy,
  low: low ?? 0,
  high: low ?? 0,
  day: 0,
  keeps: null,
  open: low === null,
  source: "",
  ...facts,
});

describe("a need", () => {
  it("is the sum of the uses of the whole food, at both ends", () => {
    expect(needOf([use(oats, 100), use(oats, 50, { high: 80 })])).toEqual({ low: 150, high: 180 });
    expect(needOf([])).toEqual({ low: 0, high: 0 });
  });

  it("O-17: is the whole pieces and the largest of the parts, each end by itself", () => {
    const [white, yolk] = [{ part: "white" }, { part: "yolk" }];
    expect(needOf([use(egg, 4, white), use(egg, 3, yolk), use(egg, 2)])).toEqual({ low: 6, high: 6 });
    expect(needOf([use(egg, 1, { ...white, high: 5 }), use(egg, 2, yolk)])).toEqual({ low: 2, high: 5 });
    expect(needOf([use(egg, 1, white), use(egg, 2, white), use(egg, 2, yolk)])).toEqual({ low: 3, high: 3 });
  });

  it("does not count what has no amount", () => {
    expect(needOf([use(oats, 100), use(oats, null, { low: 7, high: 7 })])).toEqual({ low: 100, high: 100 });
  });
});

describe("pieces that are shared", () => {
  it("O-16: serve a part as long as it keeps after they are cut, by the least that any plan says", () => {
    const two = use(egg, 2, { part: "white" });
    const three = (day: number, keeps: number | null) => use(egg, 3, { part: "yolk", day, keeps });
    expect(needOf([two, three(2, 2)]).high).toBe(3);
    expect(needOf([two, three(3, 2)]).high).toBe(5);
    expect(needOf([two, three(3, null)]).high).toBe(3);
    expect(needOf([two, three(3, null), use(egg, 1, { part: "yolk", keeps: 2 })]).high).toBe(5);
    // How long the part taken first keeps does not matter.
    expect(needOf([{ ...two, keeps: 0 }, three(2, 2)]).high).toBe(3);
    expect(
      needOf([
        { ...two, low: 1 },
        { ...three(3, 2), low: 0 },
      ]),
    ).toEqual({ low: 1, high: 5 });
  });

  it("tell when parts need pieces of their own", () => {
    const uses = [use(egg, 2, { part: "white" }), use(egg, 3, { part: "yolk", day: 3, keeps: 2 }), use(egg, 7)];
    expect(notShared(uses)).toBe(true);
    expect(notShared(uses.slice(1))).toBe(false);
    expect(notShared([])).toBe(false);
  });
});

describe("the parts that are over", () => {
  it("O-17: are the pieces of each part that the most wanted one leaves", () => {
    const uses = [use(egg, 4, { part: "white" }), use(egg, 3, { part: "yolk" }), use(egg, 2)];
    const pieces = (count: number) => ({ dimension: "COUNT", low: count, high: count });
    expect(partsOver(egg, uses)).toEqual([{ part: "yolk", pieces: 1, amount: pieces(1) }]);
    expect(partsOver(egg, [use(egg, 4, { part: "white" })])).toEqual([{ part: "yolk", pieces: 4, amount: pieces(4) }]);
  });

  it("are as much as one piece gives, at both ends, or unknown where its unit says nothing", () => {
    const lemon = food("lemon", { shoppedBy: "COUNT", parts: [part("zest", "4-6 g"), part("juice", "2 own:squeeze")] });
    expect(partsOver(lemon, [use(lemon, 2, { part: "juice" })])).toEqual([
      { part: "zest", pieces: 2, amount: { dimension: "MASS", low: 8, high: 12 } },
    ]);
    expect(partsOver(lemon, [use(lemon, 2, { part: "zest" })])).toEqual([{ part: "juice", pieces: 2, amount: null }]);
  });

  it("O-16: are more where a part did not keep for its use", () => {
    const uses = [use(egg, 2, { part: "white" }), use(egg, 3, { part: "yolk", day: 5, keeps: 2 })];
    expect(needOf(uses)).toEqual({ low: 5, high: 5 });
    expect(partsOver(egg, uses).map((over) => [over.part, over.pieces])).toEqual([
      ["white", 3],
      ["yolk", 2],
    ]);
  });

  it("are none where whole pieces are eaten, where parts come out even, or where nobody can say", () => {
    expect(partsOver(egg, [use(egg, 4)])).toEqual([]);
    expect(partsOver(egg, [use(egg, 4, { part: "white" }), use(egg, 4, { part: "yolk" })])).toEqual([]);
    expect(partsOver(egg, [use(egg, 4, { part: "white" }), use(egg, null, { part: "yolk" })])).toEqual([]);
  });
});

describe("merging", () => {
  it("puts all uses of a food on one line and keeps them", () => {
    const [a, b] = [use(oats, 100, { source: "a" }), use(oats, 50, { source: "b", open: true })];
    expect(mergeNeeds([a, b])).toEqual([
      { food: oats, dimension: "MASS", low: 150, high: 150, open: true, contributions: [a, b] },
    ]);
    expect(mergeNeeds([a])[0]?.open).toBe(false);
    expect(mergeNeeds([])).toEqual([]);
  });

  it("keeps apart what cannot be put into one dimension, and gives what has no amount to the first line", () => {
    const [grams, cups, pinch] = [use(oats, 100), use(oats, 200, { dimension: "VOLUME" }), use(oats, null)];
    expect(mergeNeeds([cups, pinch, grams])).toEqual([
      { food: oats, dimension: "MASS", low: 100, high: 100, open: true, contributions: [grams, pinch] },
      { food: oats, dimension: "VOLUME", low: 200, high: 200, open: false, contributions: [cups] },
    ]);
    expect(mergeNeeds([pinch])).toEqual([
      { food: oats, dimension: null, low: 0, high: 0, open: true, contributions: [pinch] },
    ]);
  });

  it("lists by aisle, then by food, then by dimension, whatever came first", () => {
    const at = (slug: string, aisle: string) => food(slug, { aisle });
    const uses = [
      use(at("kale", "vegetables"), 1),
      use(at("milk", "fridge"), 1, { dimension: "VOLUME" }),
      use(at("milk", "fridge"), 1),
      use(at("butter", "fridge"), 1),
    ];
    for (const order of [uses, uses.toReversed()]) {
      expect(mergeNeeds(order).map((line) => [line.food.slug, line.dimension])).toEqual([
        ["butter", "MASS"],
        ["milk", "MASS"],
        ["milk", "VOLUME"],
        ["kale", "MASS"],
      ]);
    }
  });
});
