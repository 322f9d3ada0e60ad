import { describe, expect, it } from "vitest";
import type { Warning } from "../../../src/domain/problem.js";
import { warningLines } from "../../../src/exports/sentences/warning-lines.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

const names = { thing: (slug: string) => `the ${slug}`, meal: (slug: string) => `meal ${slug}` };
const words = wordsFor("en");
const path = ["components", "boiled-barley"];

describe("what a reader should mind", () => {
  it("is one line a kind, by the names of things", () => {
    const warnings: readonly Warning[] = [
      { code: "PRICE_UNKNOWN", path, food: "pepper" },
      { code: "LEFT_OVER", path, component: "barley", servingsMore: 3 },
      { code: "PRICE_UNKNOWN", path, food: "salt" },
      { code: "LEFT_OVER", path, component: "roots", servingsMore: null },
      { code: "PRICE_UNKNOWN", path: ["foods", "salt"], food: "salt" },
      { code: "KEEPING_UNKNOWN", path, item: "sauce" },
    ];
    expect(warningLines(warnings, names, words)).toEqual([
      "Not in the total: the pepper, the salt.",
      "Left over: the barley (enough for 3 servings more), the roots.",
      "Nobody says how long this keeps: the sauce. Follow local food-safety advice.",
    ]);
  });

  it("keeps apart what has another reason, another diet or another day", () => {
    const warnings: readonly Warning[] = [
      { code: "NOT_COMBINED", path, food: "flour", missing: "DENSITY" },
      { code: "NOT_COMBINED", path, food: "egg", missing: "GRAMS_OF_ONE_PIECE" },
      { code: "DIET_NOT_MET", path, diet: "vegan", item: "egg", known: true },
      { code: "DIET_NOT_MET", path, diet: "vegan", item: "bread", known: false },
      { code: "BUY_LATER", path, food: "kale", meals: ["soup"], notBefore: 2, days: 3 },
      { code: "BUY_LATER", path, food: "chard", meals: ["soup", "stew"], notBefore: 2, days: 1 },
      { code: "BUY_LATER", path, food: "dill", meals: ["stew"], notBefore: 4, days: 2 },
    ];
    expect(warningLines(warnings, names, words)).toEqual([
      "On lines of their own, because the weight of a millilitre is not known: the flour.",
      "On lines of their own, because the weight of one piece is not known: the egg.",
      "Not vegan, and no swap is offered: the egg.",
      "Not known to be vegan: the bread. Check the labels.",
      'Buy later, not before day 2: the kale for "meal soup" (it keeps 3 days),' +
        ' the chard for "meal soup" and "meal stew" (it keeps 1 day).',
      'Buy later, not before day 4: the dill for "meal stew" (it keeps 2 days).',
    ]);
  });

  it("gathers foods with an allergen by how sure that is, and says of what is not known that it is not", () => {
    const milk = { code: "ALLERGEN_NOT_AVOIDED", path, allergen: "milk" } as const;
    const warnings: readonly Warning[] = [
      { ...milk, item: "butter", presence: "CONTAINS" },
      { ...milk, item: "feta", presence: "CONTAINS" },
      { ...milk, item: "oats", presence: "MAY_CONTAIN" },
      { ...milk, item: "stock", presence: "UNKNOWN" },
      { ...milk, allergen: "tree-nut", item: "pesto", presence: "CONTAINS", offered: ["herbs"] },
      { code: "DISLIKE_NOT_AVOIDED", path, item: "kale", meals: ["soup", "stew"] },
    ];
    expect(warningLines(warnings, names, words)).toEqual([
      "Contains milk, and no swap is offered: the butter, the feta.",
      "May contain traces (milk): the oats.",
      "Not known whether it contains this (milk): the stock. Check the labels.",
      "Contains tree nut, and no swap that is offered was taken: the pesto.",
      '"the kale" stays in "meal soup", "meal stew": no swap that suits you is offered.',
    ]);
  });

  it("never says a path or a code", () => {
    const warnings: readonly Warning[] = [
      { code: "REGION_NOT_GIVEN", path, used: "GB" },
      { code: "SWAP_NOT_CONVERTIBLE", path, from: "milk", to: "oat-drink", missing: "DENSITY" },
      { code: "PART_NOT_COUNTED", path, food: "lemon", part: "zest", missing: "OWN_MEASURE:sprig" },
    ];
    for (const line of warningLines(warnings, names, words)) expect(line).not.toMatch(/ > |[A-Z]{3}_|boiled-barley/);
  });
});
