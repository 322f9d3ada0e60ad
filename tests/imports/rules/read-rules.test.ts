import { describe, expect, it } from "vitest";
import { allergenCodes } from "../../../src/domain/nutrition/allergen-codes.js";
import { classesAround } from "../../../src/domain/storage/keeping-classes.js";
import { firstKeepingClasses } from "../../../src/domain/storage/first-keeping-classes.js";
import { readRules } from "../../../src/imports/rules/read-rules.js";
import { firstRuleFiles, publishedRules, ruleFiles } from "./published-rules.js";

const { safety, allergens } = publishedRules;

/** The rule files with one text in one of them replaced. */
const changed = (name: string, from: string, to: string) => {
  const files = ruleFiles.map((file) => (file.name === name ? { name, text: file.text.replace(from, to) } : file));
  expect(files).not.toEqual(ruleFiles);
  return readRules(files);
};

describe("the rules that come with the program", () => {
  it("are read whole, with an id, a version and a date", () => {
    expect(readRules(ruleFiles)).toMatchObject({ problems: [], count: 5 });
    expect(safety).toMatchObject({ id: "food-safety", version: "2", date: "2026-11-29" });
    expect(allergens).toMatchObject({ id: expect.any(String), date: expect.stringMatching(/^2026-11-/) });
  });

  it("give every figure a publisher, a title and a region", () => {
    for (const rule of [...safety.keeping, ...safety.handling]) {
      expect(rule.publisher, rule.id).not.toBe("");
      expect(rule.source.title, rule.id).not.toBe("");
      expect(rule.region, rule.id).toMatch(/^([A-Z]{2}(-[A-Z]+)?|ANZ|INT)$/);
    }
  });

  it("give every ceiling a length, and mark what was superseded", () => {
    for (const { id, days, daysFrom, printed } of safety.keeping) {
      expect(days, id).toBeGreaterThanOrEqual(daysFrom ?? 0);
      expect(printed, id).toMatch(/\d/);
    }
    expect(safety.keeping.filter(({ inForceTo }) => inForceTo !== null).map(({ id }) => id)).toEqual([
      "garlic-oil-7-old",
    ]);
    expect(allergens.lists.filter(({ inForceTo }) => inForceTo !== null).map(({ id }) => id)).toEqual(["us-2023"]);
  });

  it("have a ceiling, their own or a borrowed one, for every class that needs the cold", () => {
    const safe = new Set(safety.keeping.filter(({ purpose }) => purpose === "SAFETY").map(({ keepsAs }) => keepsAs));
    for (const { code, perishable } of safety.classes) {
      if (!perishable || code === "thawed") continue;
      const around = classesAround(code, safety.classes).map((each) => each.code);
      expect(
        around.some((one) => safe.has(one)),
        code,
      ).toBe(true);
    }
  });

  it("name no allergen that foods cannot have, and leave out none that they can", () => {
    const named = new Set(allergens.lists.flatMap(({ entries }) => entries.flatMap(({ includes }) => includes)));
    expect([...named].sort()).toEqual([...allergenCodes].sort());
  });
});

describe("a rule file with a fault", () => {
  it("names file, line and column, and no rule is used", () => {
    const read = changed("food-safety.yaml", "keeps-as: cooked-legume", "keeps-as: cooked-legumes");
    expect(read.rules).toBeNull();
    const [problem] = read.problems;
    const lines = ruleFiles[0]?.text.split("\n") ?? [];
    const line = lines.findIndex((text) => text.includes("keeps-as: cooked-legume")) + 1;
    expect(problem).toMatchObject({
      file: "food-safety.yaml",
      line,
      problem: { code: "BAD_SHAPE", got: "cooked-legumes" },
    });
    expect(problem?.column).toBe((lines[line - 1]?.indexOf("cooked-legume") ?? 0) + 1);
    expect(problem?.problem).toMatchObject({ expected: expect.stringContaining("cooked-legume") });
  });

  it.each([
    ["two lengths", "food-safety.yaml", "hours: 2\n", "hours: 2\n    days: 1\n", "BAD_SHAPE"],
    ["no unit", "food-safety.yaml", "    unit: hour\n", "", "BAD_SHAPE"],
    ["a length that is no number", "food-safety.yaml", "hours: 2\n", "hours: two\n", "BAD_SHAPE"],
    ["a negative length", "food-safety.yaml", "hours: 2\n", "hours: -2\n", "BAD_SHAPE"],
    ["an id used twice", "food-safety.yaml", "id: cold-out-uk", "id: room-2h", "DUPLICATE"],
    ["an unknown source", "food-safety.yaml", "source: danger-zone\n", "source: hearsay\n", "BAD_SHAPE"],
    ["a place that is none", "food-safety.yaml", "place: room", "place: cellar", "BAD_SHAPE"],
    ["a region that is none", "food-safety.yaml", "region: GB", "region: Britain", "BAD_SHAPE"],
    ["a date that is none", "food-safety.yaml", "2015-02-16", "2015-02-31", "BAD_SHAPE"],
    ["a misspelt key", "food-safety.yaml", "audience: household", "audiences: household", "BAD_SHAPE"],
    ["broken YAML", "food-safety.yaml", "keeping:", "keeping: [", "BAD_SHAPE"],
    ["a caution resting on no rule", "cautions.yaml", "rules: [fc-cool-1", "rules: [fc-cool-9", "BAD_SHAPE"],
    ["a caution used twice", "cautions.yaml", "code: keep-cold", "code: local-rules", "DUPLICATE"],
    ["a caution for an unknown class", "cautions.yaml", "keeps-as: [cooked-rice]", "keeps-as: [rice]", "BAD_SHAPE"],
    ["an unknown allergen", "allergens.yaml", "includes: [milk]", "includes: [milks]", "BAD_SHAPE"],
    ["a claim for an unknown diet", "allergens.yaml", "diet: gluten-free", "diet: glutenfree", "BAD_SHAPE"],
    ["a set without a day", "rule-set.yaml", `in-force-from: ${publishedRules.inForceFrom}`, "", "BAD_SHAPE"],
    ["a set without a code", "rule-set.yaml", `code: "${publishedRules.code}"`, 'code: ""', "BAD_SHAPE"],
    [
      "a caution that gives way to none",
      "cautions.yaml",
      "gives-way-to: [raw-egg]",
      "gives-way-to: [raw-eggs]",
      "BAD_SHAPE",
    ],
    [
      "a region's caution resting on no rule",
      "cautions.yaml",
      "rules: [uk-cool, cperf]",
      "rules: [uk-cool, c]",
      "BAD_SHAPE",
    ],
    ["a class used twice", "keeping-classes.yaml", "code: cooked-rice", "code: cooked-quinoa", "DUPLICATE"],
    ["a class within none", "keeping-classes.yaml", "within: plant-leftovers", "within: plant", "BAD_SHAPE"],
    [
      "classes within each other",
      "keeping-classes.yaml",
      "within: chilled-ready-to-eat",
      "within: cooked-rice",
      "BAD_SHAPE",
    ],
    ["a list used twice", "allergens.yaml", "id: us-2025", "id: us-2023", "DUPLICATE"],
    ["a kind that is none", "allergens.yaml", "kind: allergens", "kind: allergies", "BAD_SHAPE"],
  ])("%s", (_, file, from, to, code) => {
    const read = changed(file, from, to);
    expect(read.rules).toBeNull();
    expect(read.problems.length).toBeGreaterThan(0);
    for (const each of read.problems) {
      expect(each.line).toBeGreaterThanOrEqual(1);
      expect(each.column).toBeGreaterThanOrEqual(1);
    }
    expect(read.problems.map(({ problem }) => problem.code)).toContain(code);
    expect(read.problems.find(({ problem }) => problem.code === code)?.file).toBe(file);
  });

  it("without classes is one of release 0.1.0, and read with the classes of that day", () => {
    const { rules, problems } = readRules(firstRuleFiles);
    expect(problems).toEqual([]);
    expect(rules?.code).toBe("2026-11");
    expect(rules?.safety.classes).toEqual(firstKeepingClasses);
    expect(firstKeepingClasses.map(({ code }) => code)).toContain("cooked-vegetable");
  });

  it("that is missing, or there twice, is said", () => {
    const missing = readRules(ruleFiles.filter(({ name }) => name !== "allergens.yaml"));
    expect(missing.problems[0]?.problem).toMatchObject({ expected: "one document with kind: allergens", got: "none" });
    const [first] = ruleFiles;
    if (first === undefined) throw new Error("no rule files");
    const twice = readRules([...ruleFiles, first]);
    expect(twice.problems[0]?.problem).toMatchObject({
      expected: "one document with kind: food-safety",
      got: "several",
    });
    expect(readRules([])).toMatchObject({ rules: null, count: 0 });
  });
});
