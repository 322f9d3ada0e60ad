import { describe, expect, it } from "vitest";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../src/imports/documents/resolve-documents.js";
import { referencedSlugs } from "../../../src/imports/documents/referenced-slugs.js";
import { resolveComponentLines } from "../../../src/imports/documents/lines/resolve-text-lines.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { lineFoods } from "../../kit/line-fixtures.js";

const foods = lineFoods();

const pot = (lines: string, head = "locale: en\nmeasured-in: us customary"): string => `kind: component
slug: sunday-pot
title: Boiled barley
${head}
measures: [{ name: ladle, one: ladle, many: ladles, grams: 120, source: writer }]
lines:
${lines}
yield: { amount: 1 kg }
`;

const resolve = (text: string) => {
  const read = readDocuments(text, "pot.yaml");
  const resolved = resolveDocuments(read.documents, { foods, components: [] });
  return { ...resolved, problems: [...read.problems, ...resolved.problems] };
};

const linesOf = (lines: string, head?: string) => {
  const { components, problems } = resolve(pot(lines, head));
  expect(problems).toEqual([]);
  return components[0]?.value.lines ?? [];
};

const short = (lines: string, head?: string) =>
  linesOf(lines, head).map(({ item, amount, preparation, rule }) =>
    [
      item.kind === "FOOD" ? [item.food, item.part].filter(Boolean).join(".") : `component ${item.component}`,
      amount === null
        ? rule
        : `${amount.low === amount.high ? amount.low : `${amount.low}..${amount.high}`} ${amount.unit}`,
      preparation ?? "",
    ].join(" | "),
  );

describe("a step", () => {
  const withSteps = (lines: string, uses: string, head?: string): string =>
    `${pot(lines, head)}steps:\n  - { do: Stir., time: 1 min, uses: [${uses}] }\n`;
  const usesOf = (text: string) => {
    const { components, problems } = resolve(text);
    return { uses: components[0]?.value.steps[0]?.lines, problems };
  };

  it.each([
    ["as a structured line does", "  - { food: Garlic, amount: 5 g }", "Garlic", "locale: en\nmeasured-in: metric"],
    ["as a text line does", "  - 3 cloves garlic, chopped", "garlic", "locale: en\nmeasured-in: metric"],
    ["in the language of the plan", "  - 3 Zehen Knoblauch", "Knoblauch", "locale: de\nmeasured-in: metric"],
    [
      "in another form than the line",
      "  - { food: garlic, amount: 5 g }",
      "Knoblauch",
      "locale: de\nmeasured-in: metric",
    ],
  ])("uses a food by its name, %s", (_, lines, name, head) => {
    expect(usesOf(withSteps(lines, name, head))).toEqual({ uses: ["garlic"], problems: [] });
  });

  it("is refused where it uses what no line names, with what is near, a hundred times at most", () => {
    const lines = "  - { food: salt, amount: 5 g }\n  - 3 cloves garlic";
    expect(usesOf(withSteps(lines, "sallt, pearl-barley")).problems.map(({ problem }) => problemText(problem))).toEqual(
      [expect.stringMatching(/salt.*sallt/), expect.stringMatching(/pearl-barley/)],
    );
    const many = Array.from({ length: 290 }, (_, at) => `nothing-${String(at)}`).join(", ");
    expect(usesOf(withSteps(lines, many)).problems).toHaveLength(100);
  });
});

describe("a line written as text", () => {
  it("stands for what it says, in the measures of the document, among structured lines", () => {
    expect(
      short(`  - 2 cups pearl barley, rinsed
  - { food: salt, amount: 5 g }
  - salt, to taste
  - 3 cloves garlic, chopped`),
    ).toEqual([
      "pearl-barley | 2 us-cup | rinsed",
      "salt | 5 g | ",
      "salt | TO_TASTE | ",
      "garlic | 3 own:clove | chopped",
    ]);
    expect(short("  - 2 cups pearl barley", "locale: en-AU\nmeasured-in: australian")).toEqual([
      "pearl-barley | 2 metric-cup | ",
    ]);
  });

  it("is the same as the structured line that says so", () => {
    const [text] = linesOf("  - 2 cups pearl barley, rinsed");
    const [structured] = linesOf(
      "  - { food: pearl-barley, amount: 2 cups, preparation: rinsed, written: '2 cups pearl barley, rinsed' }",
    );
    expect(text).toEqual(structured);
    expect(text?.id).toBe("pearl-barley");
  });

  it.each([
    ["en", "juice and zest of 2 lemons", ["juice", "zest"]],
    ["en", "2 lemons, zest and juice", ["zest", "juice"]],
    ["de", "Saft und abgeriebene Schale von 2 Zitronen", ["juice", "zest"]],
    ["fr", "le jus et le zeste de 2 citrons", ["juice", "zest"]],
    ["es", "ralladura y zumo de 2 limones", ["zest", "juice"]],
    ["pl", "sok i skórka z 2 cytryn", ["juice", "zest"]],
  ])("takes both parts of the same pieces: %s %s", (locale, written, parts) => {
    const lines = linesOf(`  - ${written}`, `locale: ${locale}\nmeasured-in: metric`);
    expect(lines.map(({ item, amount }) => [item, amount])).toEqual(
      parts.map((part) => [
        { kind: "FOOD", food: "lemon", part },
        { low: "2", high: "2", unit: "piece" },
      ]),
    );
    expect(lines.map(({ written: words }) => words)).toEqual([written, written]);
  });

  it.each([
    ["de", "250 g Perlgraupen, gewaschen", "pearl-barley | 250 g | gewaschen"],
    ["de", "1,5 EL Olivenöl", "olive-oil | 3/2 metric-tbsp | "],
    ["fr", "2 gousses d'ail, hachées", "garlic | 2 own:clove | hachées"],
    ["es", "2 dientes de ajo, picados", "garlic | 2 own:clove | picados"],
    ["pl", "2 ząbki czosnku, posiekane", "garlic | 2 own:clove | posiekane"],
  ])("is read in the language of its document: %s %s", (locale, written, meant) => {
    const [line] = short(`  - "${written}"`, `locale: ${locale}\nmeasured-in: metric`);
    expect(line).toBe(meant);
  });

  it("names components by their titles, in their measures and in batches", () => {
    const text = `${pot("  - 1 kg pearl barley")}---
kind: component
slug: soup
title: Soup
locale: en
lines:
  - 2 ladles boiled barley
  - 1 1/2 batches of boiled barley
  - 400 g sunday pot
yield: { amount: 1 kg }
`;
    const { components, problems } = resolve(text);
    expect(problems).toEqual([]);
    expect(components[1]?.value.lines.map(({ item, amount }) => [item, amount])).toEqual([
      [
        { kind: "COMPONENT", component: "sunday-pot" },
        { low: "2", high: "2", unit: "own:ladle" },
      ],
      [
        { kind: "COMPONENT", component: "sunday-pot" },
        { low: "3/2", high: "3/2", unit: "batch" },
      ],
      [
        { kind: "COMPONENT", component: "sunday-pot" },
        { low: "400", high: "400", unit: "g" },
      ],
    ]);
  });

  it("lets steps use it by what it names", () => {
    const text = `${pot("  - 2 cups pearl barley\n  - juice and zest of 2 lemons")}steps:
  - { do: Boil., time: 5 min, uses: [pearl-barley, lemon-juice, lemon-zest] }
`;
    expect(resolve(text).problems).toEqual([]);
  });
});

describe("components that text lines name", () => {
  it("are found by title and slug without the foods, for drafts that are fetched back", () => {
    const { documents } = readDocuments(
      pot("  - 400 g Sunday grain, warmed\n  - 2 batches of bean-pot\n  - 2 cups pearl barley"),
      "pot.yaml",
    );
    const components = [
      { slug: "grain", title: "Sunday grain" },
      { slug: "bean-pot", title: "Beans" },
      { slug: "other", title: "Pearls" },
    ];
    const settled = resolveComponentLines(documents, components).map(({ document }) => document);
    expect(referencedSlugs(settled).components).toEqual(["grain", "bean-pot"]);
  });
});

describe("a line that is not clear", () => {
  const openOf = (lines: string, head?: string) =>
    resolve(pot(lines, head)).problems.map(({ line, column, path, problem }) => ({ line, column, path, problem }));

  it("is a problem at its place, with what it may mean", () => {
    const text = `${pot("  - 2 cups pearl barley\n  - 100 g garlic")}---
kind: component
slug: crushed-garlic
title: Garlic
lines: []
yield: { amount: 100 g }
`;
    const [open, ...more] = resolve(text).problems;
    expect(more).toEqual([]);
    expect(open).toMatchObject({ line: 9, column: 5, path: ["lines", 1] });
    expect(open?.problem).toMatchObject({
      code: "LINE_OPEN",
      written: "100 g garlic",
      named: ["crushed-garlic", "garlic"],
    });
  });

  it("offers the nearest name for a slip of the finger, and takes none of them", () => {
    const [open] = openOf("  - 100 g perl barley");
    expect(open?.problem).toMatchObject({ code: "LINE_OPEN", named: ["pearl-barley"] });
    expect(open === undefined ? "" : problemText(open.problem)).toContain("pearl-barley");
  });

  it("offers a name of another language, and does not take it", () => {
    const [open] = openOf("  - 100 g Perlgraupen");
    expect(open?.problem).toMatchObject({ code: "LINE_OPEN", named: ["pearl-barley"] });
  });

  it("offers the cups there are where the measures have none", () => {
    const [open] = openOf("  - 1 cup pearl barley", "locale: en\nmeasured-in: metric");
    const amounts = open?.problem.code === "LINE_OPEN" ? open.problem.amounts : [];
    expect(amounts).toContain("1 us-cup");
    expect(amounts.length).toBeGreaterThan(1);
  });

  it("is the only fault, though a step uses what it was meant to name", () => {
    const text = `${pot("  - 2 cups perl barley")}steps:
  - { do: Boil., time: 5 min, uses: [pearl-barley] }
`;
    expect(resolve(text).problems.map(({ problem }) => problem.code)).toEqual(["LINE_OPEN"]);
  });

  it("does not hide the faults of other lines, which are shown where they are written", () => {
    const found = openOf("  - juice and zest of 2 lemons\n  - { food: salt, amount: 5 gg }\n  - nothing anybody knows");
    expect(found.map(({ problem, line }) => [problem.code, line])).toEqual([
      ["UNKNOWN_UNIT", 9],
      ["LINE_OPEN", 10],
    ]);
    expect(found[0]?.path).toEqual(["lines", 1, "amount"]);
  });

  it("is refused beyond its length, and a bad structured line is still told what it lacks", () => {
    expect(openOf(`  - ${"x".repeat(501)}`)[0]?.problem).toMatchObject({ code: "TOO_LARGE", limit: 500 });
    expect(openOf("  - { food: [salt], amount: 5 g }")[0]).toMatchObject({ path: ["lines", 0, "food"] });
    expect(openOf("  - { food: salt }")[0]?.problem).toMatchObject({ expected: "an amount, or the rule to taste" });
  });
});
