import { describe, expect, it } from "vitest";
import type { Food } from "../../../../src/domain/model/food.js";
import { checkFood, checkMeasureFacts } from "../../../../src/domain/plan/check/check-facts.js";
import { checkSteps } from "../../../../src/domain/plan/check/check-steps.js";
import { density, edible, food, measured, own, pack, part, step } from "../../../kit/builders.js";

const many = <T>(of: (at: number) => T, count = 1_001): T[] => Array.from({ length: count }, (_, at) => of(at));
const tooLarge = (what: string, size: number, limit: number, ...path: readonly (string | number)[]) => ({
  code: "TOO_LARGE",
  path,
  what,
  size,
  limit,
});
const name = { language: "en", region: null, one: "oat", many: "oats", also: [] };

describe("how much may be said of one food", () => {
  const lists: readonly (readonly [what: string, key: string, facts: (count: number) => Partial<Food>])[] = [
    ["names", "names", (count) => ({ names: many(() => name, count) })],
    ["parts", "parts", (count) => ({ parts: many((at) => part(`p${at}`, "1 g"), count) })],
    ["edible portions", "edible", (count) => ({ edible: many(() => edible(0.5), count) })],
    [
      "yields",
      "yields",
      (count) => ({ yields: many(() => ({ food: "x", gramsPerGram: 2, source: edible(1).source }), count) }),
    ],
    ["packs", "packs", (count) => ({ packs: many((at) => pack("1 g", "1.00", { id: `p${at}` }), count) })],
    ["densities", "densities", (count) => ({ densities: many((at) => density(1, `f${at}`), count) })],
    ["measures", "measures", (count) => ({ measures: many((at) => own(`m${at}`, { grams: 1 }), count) })],
  ];
  it.each(lists)("stops at a thousand %s", (what, key, facts) => {
    expect(checkFood(food("oats", facts(1_000)))).toEqual([]);
    expect(checkFood(food("oats", facts(1_001)))).toEqual([tooLarge(what, 1_001, 1_000, "foods", "oats", key)]);
  });

  it("does not look into lists that are too long", () => {
    const packs = many(() => pack("0 g", "1.00", { id: "same" }));
    expect(checkFood(food("oats", { packs }))).toHaveLength(1);
  });
});

describe("texts of a food", () => {
  const nothing = (what: string, ...path: readonly (string | number)[]) => ({
    code: "BAD_SHAPE",
    path,
    expected: `${what} of at least one character`,
    got: "nothing",
  });
  const long = "x".repeat(2_001);

  it("are there, and not longer than anybody reads", () => {
    expect(checkFood(food(""))).toContainEqual(nothing("a slug", "foods", ""));
    expect(checkFood(food("oats", { aisle: "" }))).toEqual([nothing("an aisle", "foods", "oats", "aisle")]);
    expect(checkFood(food("oats", { names: [name, { ...name, one: "" }] }))).toEqual([
      nothing("a name", "foods", "oats", "names", 1),
    ]);
    expect(checkFood(food("oats", { names: [{ ...name, many: "" }] }))).toEqual([
      nothing("a name", "foods", "oats", "names", 0),
    ]);
    expect(checkFood(food("oats", { names: [{ ...name, many: long }] }))).toEqual([
      tooLarge("characters of a name", 2_001, 2_000, "foods", "oats", "names", 0),
    ]);
    expect(checkFood(food("oats", { aisle: long }))).toEqual([
      tooLarge("characters of an aisle", 2_001, 2_000, "foods", "oats", "aisle"),
    ]);
  });
});

describe("facts", () => {
  it("may be as small and as large as anything eaten", () => {
    const facts = {
      densities: [density(1e-6), density(1e6, "x")],
      measures: [own("sack", { grams: 1e9 }), own("grain", { pieces: 1e-6 })],
    };
    expect(checkMeasureFacts(facts, [])).toEqual([]);
  });

  it("of parts may lean on each other", () => {
    expect(checkFood(food("lemon", { parts: [part("zest", "6 g"), part("juice", "48 g", ["zest"])] }))).toEqual([]);
  });
});

describe("texts of a step", () => {
  it("are there, and not longer than anybody reads", () => {
    const path = ["meals", "m"];
    expect(checkSteps([step("boil", 5)], path)).toEqual([]);
    expect(checkSteps([step("", 5)], path)).toEqual([
      { code: "BAD_SHAPE", path: [...path, "steps", ""], expected: "an id of at least one character", got: "nothing" },
    ]);
    expect(checkSteps([step("boil", 5, { text: "x".repeat(2_001) })], path)).toEqual([
      tooLarge("characters of a step", 2_001, 2_000, ...path, "steps", "boil"),
    ]);
  });
});

describe("what is sold loose", () => {
  const checked = (content: string, step: string | null) =>
    checkFood(
      food("nuts", {
        packs: [pack(content, "1.00", { id: "bin", loose: { step: step === null ? null : measured(step) } })],
      }),
    );

  it.each([
    ["1 kg", null],
    ["100 g", "25 g"],
    ["1 lb", "1/4 lb"],
    ["1 lb", "50 g"],
    ["1 l", "50 ml"],
    ["100 g", "500 g"],
  ])("is weighed or poured: %s by %s", (content, step) => {
    expect(checked(content, step)).toEqual([]);
  });

  it.each([
    ["1 piece", null, "1 piece"],
    ["1-2 kg", null, "1 to 2 kg"],
    ["1 kg", "0 g", "0 g"],
    ["1 kg", "10-20 g", "10 to 20 g"],
    ["1 kg", "5 ml", "5 ml"],
    ["1 kg", "1 piece", "1 piece"],
    ["1 kg", "1 own:scoop", "1 own:scoop"],
    ["1 kg", "20 kg", "20 kg"],
    ["1 kg", "1 mg", "1 mg"],
  ])("is refused else: %s by %s", (content, step, written) => {
    expect(checked(content, step)).toContainEqual({
      code: "BAD_AMOUNT",
      path: ["foods", "nuts", "packs", "bin"],
      written,
      why: "NOT_WEIGHABLE",
    });
  });
});
