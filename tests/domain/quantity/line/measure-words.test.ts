import { describe, expect, it } from "vitest";
import type { OwnMeasure } from "../../../../src/domain/model/food.js";
import { ownMeasureOf } from "../../../../src/domain/quantity/line/measure-words.js";

const measure = (name: string, grams: number): OwnMeasure => ({
  ...{ name, one: name, many: `${name}s`, grams, millilitres: null, pieces: null },
  source: { kind: "COMMON_PRACTICE", title: "common practice", section: null },
});

describe("a word for a measure of a food", () => {
  // A stalk of celery, medium: 40 g, USDA SR 26, weights of row 11143.
  const stalks = [measure("stalk", 40), measure("stick", 40), measure("head", 400)];

  it.each(["stange", "branche", "rama", "łodyga", "rib"])("is one of several that are as much: %s", (word) => {
    expect(ownMeasureOf(word, stalks)?.name).toBe("stalk");
  });

  it("is the one that is written so, and a question where those that it may be differ", () => {
    expect(ownMeasureOf("stick", stalks)?.name).toBe("stick");
    expect(ownMeasureOf("stange", [measure("stalk", 40), measure("stick", 30)])).toBeNull();
    expect(ownMeasureOf("zehe", stalks)).toBeNull();
  });
});
