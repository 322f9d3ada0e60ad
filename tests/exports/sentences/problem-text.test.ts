import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { warningText } from "../../../src/exports/sentences/warning-text.js";
import type { Problem, Warning } from "../../../src/domain/problem.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

const path = ["components", "dal", "lines", "l2"];

const problems: readonly Problem[] = [
  { code: "UNKNOWN_UNIT", path, unit: "cupp", nearest: ["us-cup"] },
  { code: "AMBIGUOUS_UNIT", path, unit: "pint", candidates: ["us-pint", "us-dry-pint"] },
  { code: "UNKNOWN_FOOD", path, food: "teff" },
  { code: "UNKNOWN_COMPONENT", path, component: "dal" },
  { code: "UNKNOWN_PART", path, food: "lemon", part: "pip", known: ["juice", "zest"] },
  { code: "UNKNOWN_ROUTE", path, component: "dal", route: "jar", known: [] },
  { code: "UNKNOWN_PLAN", path, publisher: "plot", plan: "week", revision: 3 },
  { code: "UNKNOWN_PUBLISHER", path, publisher: "plot" },
  { code: "UNKNOWN_TOKEN", path, token: "aB3dE6gH" },
  { code: "UNKNOWN_WEBHOOK", path, webhook: "w" },
  { code: "UNKNOWN_DELIVERY", path, delivery: "d" },
  { code: "SLUG_TAKEN", path, slug: "plot" },
  { code: "KEY_REUSED", path },
  { code: "KEY_IN_USE", path },
  { code: "STALE_DRAFT", path, draft: "PLAN", slug: "week", expected: 2, actual: 3 },
  { code: "STALE_DRAFT", path, draft: "PLAN", slug: "week", expected: null, actual: 3 },
  { code: "STALE_DRAFT", path, draft: "COMPONENT", slug: "dal", expected: 2, actual: null },
  { code: "UNKNOWN_DRAFT", path, draft: "PLAN", slug: "week" },
  { code: "FOOD_IS_SHARED", path, food: "teff" },
  { code: "NOTHING_CHANGED", path, revision: 2 },
  { code: "ALREADY_WITHDRAWN", path, revision: 2 },
  { code: "COMPONENT_CYCLE", path, cycle: ["dal", "stock", "dal"] },
  { code: "COMPONENT_NOT_REACHED", path, component: "dal" },
  { code: "NOT_CONVERTIBLE", path, item: "kale", from: "us-cup", to: "g", missing: "DENSITY:chopped" },
  { code: "BAD_AMOUNT", path, written: "1/0", why: "DIVISION_BY_ZERO" },
  { code: "AMOUNT_OUT_OF_RANGE", path, value: "-1", min: 0, max: 1e9 },
  { code: "SERVINGS_OUT_OF_RANGE", path, value: 0, min: 1, max: 1000 },
  { code: "TOO_LARGE", path, what: "lines", size: 300, limit: 200 },
  { code: "STEPS_IN_A_CIRCLE", path, steps: ["dal/soak", "dal/boil"] },
  { code: "WAITS_CANNOT_BE_KEPT", path, steps: ["dal/boil", "dal/chill"] },
  { code: "CLAIM_BROKEN", path, claim: "vegan", foods: ["ghee", "egg"] },
  { code: "CLAIM_NOT_KNOWN", path, claim: "vegan", foods: ["stock"] },
  { code: "CLAIM_WITHOUT_RULE", path, claim: "wholesome" },
  { code: "RULE_SET_EXISTS", path, set: "2026-11" },
  { code: "DUPLICATE", path, value: "l2" },
  { code: "BAD_SHAPE", path, expected: "a number", got: "a list" },
  { code: "MORE_PROBLEMS", path, count: 4907 },
  { code: "MORE_PUT_ASIDE", path, count: 240_000, kept: 10_000 },
  { code: "BAD_HOUSEHOLD", path, what: "a language tag", value: "??" },
  { code: "BAD_HOUSEHOLD", path, what: "EATERS_ARE_NOT_THE_SERVINGS", value: "3" },
  { code: "BAD_HOUSEHOLD", path, what: "NOT_WHOLE_PEOPLE", value: "1.5" },
  { code: "BAD_HOUSEHOLD", path, what: "NOT_AN_INSTANT", value: "soon" },
  { code: "BAD_HOUSEHOLD", path, what: "NOT_A_TIME_ZONE", value: "here" },
  { code: "BAD_HOUSEHOLD", path, what: "NOT_A_DATE", value: "soon" },
  { code: "BAD_AMOUNT", path, written: "3-2", why: "RANGE_UPSIDE_DOWN" },
  { code: "BAD_AMOUNT", path, written: "1/0", why: "NOT_A_NUMBER" },
  { code: "BAD_AMOUNT", path, written: "dear", why: "NOT_A_PRICE" },
  { code: "BAD_AMOUNT", path, written: "1/9007199254740991", why: "RATIO_TOO_FINE" },
];

const warnings: readonly Warning[] = [
  { code: "NOT_COMBINED", path, food: "kale", missing: "GRAMS_OF_ONE_PIECE" },
  { code: "PART_NOT_COUNTED", path, food: "lemon", part: "juice", missing: "MILLILITRES_OF_ONE_PIECE" },
  { code: "EDIBLE_PORTION_UNKNOWN", path, food: "kale", form: null },
  { code: "PRICE_UNKNOWN", path, food: "kale" },
  { code: "PACK_NOT_COMPARABLE", path, food: "kale", pack: "bag", missing: "OWN_MEASURE:bunch" },
  { code: "ON_HAND_NOT_COMPARABLE", path, item: "kale", missing: "DENSITY" },
  { code: "ON_HAND_IN_OTHER_FORM", path, item: "tinned-beans", from: "beans", gives: 600.4, wouldTake: 400 },
  { code: "ON_HAND_NOT_NEEDED", path, item: "kale" },
  { code: "ON_HAND_TOO_OLD", path, item: "kale", useBy: "2026-03-01" },
  { code: "ON_HAND_NOT_IN_TIME", path, item: "kale", useBy: "2026-03-01", meals: ["monday", "friday"] },
  { code: "DIET_NOT_MET", path, diet: "vegan", item: "ghee", known: true },
  { code: "DIET_NOT_MET", path, diet: "vegan", item: "stock", known: false },
  { code: "ALLERGEN_NOT_AVOIDED", path, allergen: "tree-nut", item: "walnuts", presence: "CONTAINS" },
  { code: "ALLERGEN_NOT_AVOIDED", path, allergen: "milk", item: "butter", presence: "CONTAINS", offered: ["ghee"] },
  { code: "ALLERGEN_NOT_AVOIDED", path, allergen: "milk", item: "oats", presence: "MAY_CONTAIN" },
  { code: "ALLERGEN_NOT_AVOIDED", path, allergen: "milk", item: "stock", presence: "UNKNOWN" },
  { code: "DISLIKE_NOT_AVOIDED", path, item: "kale", meals: ["soup", "salad"] },
  { code: "DISLIKE_LEFT_OUT", path, item: "dill", meals: ["soup"] },
  { code: "SWAP_NOT_OFFERED", path, from: "a", to: "b" },
  { code: "SWAP_NOT_CONVERTIBLE", path, from: "a", to: "b", missing: "DENSITY" },
  { code: "MADE_IN_TWO_PLANS", path, component: "dal", plans: ["a", "b"] },
  { code: "LEFT_OVER", path, component: "dal", servingsMore: 2 },
  { code: "LEFT_OVER", path, component: "dal", servingsMore: null },
  { code: "PART_TOO_OLD", path, food: "egg", part: "yolk", meal: "custard", day: 4, cutOn: 1, days: 2 },
  { code: "PART_TOO_OLD", path, food: "egg", part: "yolk", meal: "custard", day: 4, cutOn: 0, days: 1 },
  { code: "BUY_LATER", path, food: "parsley", meals: ["soup", "salad"], notBefore: 2, days: 3 },
  { code: "BUY_LATER", path, food: "parsley", meals: ["soup"], notBefore: 4, days: 1 },
  { code: "KEEPING_UNKNOWN", path, item: "dal" },
  { code: "REGION_NOT_GIVEN", path, used: "GB" },
];

describe("the text of a problem", () => {
  it.each(problems)("of $code says where and is a whole sentence", (problem) => {
    const text = problemText(problem);
    expect(text).toMatch(/^components > dal > lines > l2: .+[.]$/);
    expect(text).not.toMatch(/undefined|null|\[object|[A-Z]{2}_[A-Z]/);
  });

  it("offers what is near", () => {
    expect(problemText(problems[0]!)).toContain("Near it: us-cup.");
  });

  it("leaves out a place that there is not", () => {
    expect(problemText({ code: "UNKNOWN_FOOD", path: [], food: "teff" })).toMatch(/^There is no food "teff"/);
  });
});

describe("the text of a warning", () => {
  it.each(warnings)("of $code says where and is a whole sentence", (warning) => {
    const text = warningText(warning, wordsFor("en"));
    expect(text).toMatch(/^components > dal > lines > l2: .+[.]$/);
    expect(text).not.toMatch(/undefined|null|\[object|[A-Z]{2}_[A-Z]/);
  });

  it("tells a diet that is broken from one that nobody knows about", () => {
    const [broken, unknown] = warnings
      .filter(({ code }) => code === "DIET_NOT_MET")
      .map((each) => warningText(each, wordsFor("en")));
    expect(broken).toContain("does not fit");
    expect(unknown).toContain("is not known");
  });
});
