import { describe, expect, it } from "vitest";
import { checkDocuments } from "../../../src/imports/documents/checks/check-documents.js";
import { foodDocumentOf } from "../../../src/imports/documents/plain-document.js";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";

const text = (facts: string): string => `kind: food
slug: thing
names: { en: { one: thing, many: things } }
aisle: shelf
shopped-by: mass
${facts}`;
const check = (facts: string) =>
  checkDocuments(readDocuments(text(facts), "thing.yaml"), { foods: [], components: [], codes: {} });
const foodOf = (facts: string) => {
  const { resolved, problems } = check(facts);
  expect(problems).toEqual([]);
  return resolved.foods[0]!.value;
};

describe("gluten without its cereal", () => {
  const alone = "allergens:\n  - { code: gluten, presence: contains, source: writer }\n";

  it("is refused, with the place and the cereals to choose from", () => {
    const { problems } = check(alone);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: "thing.yaml", line: 7, path: ["allergens", 0, "code"] });
    for (const cereal of ["wheat", "rye", "barley", "oats"])
      expect(problemText(problems[0]!.problem)).toContain(cereal);
  });

  it.each(["wheat", "rye", "barley", "oats", "triticale"])("is taken beside %s", (cereal) => {
    expect(check(`${alone}  - { code: ${cereal}, presence: contains, source: writer }\n`).problems).toEqual([]);
    const [problem] = check(`${alone}  - { code: ${cereal}, presence: may contain, source: writer }\n`).problems;
    expect(problem?.problem.code).toBe("BAD_SHAPE");
  });

  it.each(["may contain", "does not contain", "unknown"])("may be said of a label: %s", (presence) => {
    expect(check(alone.replace("presence: contains", `presence: ${presence}`)).problems).toEqual([]);
  });
});

describe("a single ingredient", () => {
  const egg = "allergens:\n  - { code: egg, presence: contains, source: writer }\n";

  it("knows what it is itself, and who says so", () => {
    expect(foodOf(`${egg}single-ingredient: yes\n`).singleIngredient).toMatchObject({
      is: ["egg"],
      source: { kind: "WRITER" },
    });
    const sourced = foodOf("single-ingredient: { source: common practice }\n");
    expect(sourced.singleIngredient).toMatchObject({ is: [], source: { kind: "COMMON_PRACTICE" } });
  });

  it("is never what a food is that does not say so", () => {
    for (const facts of ["", "single-ingredient: no\n", egg])
      expect(foodOf(facts)).not.toHaveProperty("singleIngredient");
  });

  it("is refused in other words, and from a source that nobody gave", () => {
    expect(check("single-ingredient: maybe\n").problems).toHaveLength(1);
    expect(check("single-ingredient: { source: hearsay }\n").problems).toHaveLength(1);
  });

  it("and traces read back as they were written", () => {
    const read = foodOf(
      "allergens:\n  - { code: milk, presence: does not contain, traces: may contain, source: writer }\nsingle-ingredient: yes\n",
    );
    const again = checkDocuments(readDocuments(JSON.stringify(foodDocumentOf(read)), "again.yaml"), {
      foods: [],
      components: [],
      codes: {},
    });
    expect(again.problems).toEqual([]);
    expect(again.resolved.foods[0]?.value).toEqual(read);
  });
});
