import { describe, expect, it } from "vitest";
import { bundleOf } from "../../../../src/domain/plan/compile/plan-bundle.js";
import { checkBundle } from "../../../../src/domain/plan/check/check-bundle.js";
import { locateProblem } from "../../../../src/imports/documents/yaml/locate-problem.js";
import { readDocuments } from "../../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../../src/imports/documents/resolve-documents.js";

const text = `kind: food
slug: lemon
names: { en: lemon }
aisle: fruit
shopped-by: count
parts: [{ name: zest, per-piece: 6 g, source: writer }]
---
kind: component
slug: sauce
title: Sauce
yield: { amount: 200 g }
lines:
  - { food: lemon, part: zest, amount: 1 piece }
  - { food: lemon, part: peel, amount: 1 piece }
---
kind: plan
publisher: gate
slug: week
title: Week
locale: en
measured-in: metric
serves: 2
meals:
  - slug: soup
    title: Soup
    day: 0
    lines:
      - { component: sauce, amount: 50 g }
      - { food: lemon, part: pith, amount: 1 piece }
      - { component: sauce, amount: 2 pieces }
`;

const located = () => {
  const resolved = resolveDocuments(readDocuments(text, "week.yaml").documents, { foods: [], components: [] });
  const values = <T>(list: readonly { readonly value: T }[]): T[] => list.map(({ value }) => value);
  return resolved.plans.flatMap(({ value, read }) =>
    checkBundle(bundleOf(value, values(resolved.components), values(resolved.foods))).map((problem) =>
      locateProblem(problem, resolved, read),
    ),
  );
};

describe("a problem of a whole plan", () => {
  it("is shown at the line of the document that it comes from", () => {
    const places = located().map(({ file, line, path, problem }) => ({ file, line, path, code: problem.code }));
    expect(places).toEqual(
      expect.arrayContaining([
        { file: "week.yaml", line: 14, path: ["lines", 1], code: "UNKNOWN_PART" },
        { file: "week.yaml", line: 29, path: ["meals", 0, "lines", 1], code: "UNKNOWN_PART" },
        { file: "week.yaml", line: 30, path: ["meals", 0, "lines", 2], code: "NOT_CONVERTIBLE" },
      ]),
    );
    expect(places).toHaveLength(3);
  });

  it("is shown at the head of the plan when it belongs to nothing that was handed in", () => {
    const resolved = resolveDocuments(readDocuments(text, "week.yaml").documents, { foods: [], components: [] });
    const [plan] = resolved.plans;
    if (plan === undefined) throw new Error("the text has a plan");
    const problem = { code: "UNKNOWN_FOOD", path: ["components", "gone", "lines", "x"], food: "x" } as const;
    expect(locateProblem(problem, resolved, plan.read)).toMatchObject({
      file: "week.yaml",
      line: 16,
      path: [],
      problem,
    });
  });
});
