import { describe, expect, it } from "vitest";
import { readDocuments, readDocumentValue } from "../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../src/imports/documents/resolve-documents.js";

const barley = `kind: food
slug: barley
names: { en: barley }
aisle: dry-goods
shopped-by: mass
measures:
  - { name: scoop, many: scoops, grams: 60, source: writer }
`;

const resolve = (text: string) => {
  const read = readDocuments(text, "garden.yaml");
  const resolved = resolveDocuments(read.documents, { foods: [], components: [] });
  return { ...resolved, count: read.count, problems: [...read.problems, ...resolved.problems] };
};

const pot = (lines: string, head = ""): string => `${barley}---
kind: component
slug: pot
title: Pot
${head}lines:
${lines}
yield: { amount: 1 kg }
`;

const linesOf = (text: string) => {
  const { components, problems } = resolve(text);
  expect(problems).toEqual([]);
  return components[0]?.value.lines ?? [];
};

describe("what a shop sells", () => {
  const packsOf = (loose: string, content = "1 kg") =>
    resolve(`${barley}packs:
  - { id: bin, name: bin, content: ${content}, price: 1.80 XTS, seen: 2026-03-02, source: invented${loose} }
`);

  it("is a pack, or loose, weighed out by a step where the writer says one", () => {
    const looseOf = (written: string) => packsOf(written).foods[0]?.value.packs[0]?.loose;
    expect(looseOf("")).toBeUndefined();
    expect(looseOf(", loose: no")).toBeUndefined();
    expect(looseOf(", loose: yes")).toEqual({ step: null });
    expect(looseOf(", loose: { step: 25 g }")).toEqual({ step: { low: "25", high: "25", unit: "g" } });
  });

  it.each([
    [", lose: yes", "BAD_SHAPE"],
    [", loose: perhaps", "BAD_SHAPE"],
    [", loose: { steps: 25 g }", "BAD_SHAPE"],
    [", loose: { step: 25 gg }", "UNKNOWN_UNIT"],
  ])("is refused where it is misspelt: %s", (written, code) => {
    const { problems } = packsOf(written);
    expect(problems.map(({ problem }) => problem.code)).toContain(code);
    expect(problems[0]?.line).toBe(9);
  });
});

describe("so many of a weight in a document", () => {
  it("keep both, as their writer wrote them", () => {
    const [found] = linesOf(pot("  - { food: barley, amount: 4 pieces, each: 170 g }"));
    expect(found).toMatchObject({
      amount: { low: "4", high: "4", unit: "piece" },
      each: { low: "170", high: "170", unit: "g" },
    });
    expect(linesOf(pot("  - { food: barley, amount: 4 pieces }"))[0]).not.toHaveProperty("each");
  });

  it.each([
    ["eech: 170 g", "BAD_SHAPE"],
    ["each: 170 gg", "UNKNOWN_UNIT"],
    ["each: lots", "BAD_AMOUNT"],
  ])("are refused where they are misspelt: %s", (written, code) => {
    const { problems } = resolve(pot(`  - { food: barley, amount: 4 pieces, ${written} }`));
    expect(problems.map(({ problem }) => problem.code)).toEqual([code]);
    expect(problems[0]?.line).toBe(13);
  });
});

describe("a line of a document", () => {
  it("keeps the writer's own words beside the exact amount", () => {
    const [line] = linesOf(pot("  - { food: barley, amount: 1 1/2 lbs, preparation: rinsed }"));
    expect(line).toMatchObject({
      written: "1 1/2 lbs",
      amount: { low: "3/2", high: "3/2", unit: "lb" },
      preparation: "rinsed",
      rule: "PROPORTIONAL",
    });
  });

  it("may use a measure that only its food has, also as a range", () => {
    const [line] = linesOf(pot("  - { food: barley, amount: 2-3 scoops }"));
    expect(line?.amount).toEqual({ low: "2", high: "3", unit: "own:scoop" });
  });

  it("may count batches of another component", () => {
    const text = `${pot("  - { food: barley, amount: 1 g }")}---
kind: component
slug: salad
title: Salad
lines: [{ component: pot, amount: 1/2 batch }]
yield: { amount: 1 kg }
`;
    const salad = resolve(text).components.find(({ value }) => value.slug === "salad");
    expect(salad?.value.lines[0]?.amount).toEqual({ low: "1/2", high: "1/2", unit: "batch" });
  });

  it("reads numbers in the language of its document", () => {
    const german = "locale: de\n";
    expect(linesOf(pot("  - { food: barley, amount: '1,5 kg' }", german))[0]?.amount?.low).toBe("3/2");
    // YAML alone would make the bare scalar 1.000 the number 1.
    expect(linesOf(pot("  - { food: barley, amount: 1.000 g }", german))[0]?.amount?.low).toBe("1000");
  });

  it("grows as its rule says", () => {
    const [taste, batch, power] = linesOf(
      pot(`  - { food: barley, rule: To taste }
  - { food: barley, amount: 1 g, rule: per_batch }
  - { food: barley, amount: 1 g, rule: power 0.8 }`),
    );
    expect(taste).toMatchObject({ rule: "TO_TASTE", amount: null, written: "to taste" });
    expect(batch).toMatchObject({ rule: "PER_BATCH" });
    expect(power).toMatchObject({ rule: "POWER", exponent: 0.8 });
  });

  it("has an id that a line put in above does not change", () => {
    const ids = (lines: string): string[] => linesOf(pot(lines)).map(({ id }) => id);
    expect(ids("  - { food: barley, amount: 1 g }\n  - { food: barley, amount: 2 g }")).toEqual(["barley", "barley-2"]);
    expect(ids("  - { id: first, food: barley, amount: 3 g }\n  - { food: barley, amount: 1 g }")).toEqual([
      "first",
      "barley",
    ]);
  });

  it("gives way to ids that the writer chose", () => {
    const chosen = "  - { food: barley, amount: 1 g }\n  - { id: barley, food: barley, amount: 2 g }";
    expect(linesOf(pot(chosen)).map(({ id }) => id)).toEqual(["barley-2", "barley"]);
  });
});

describe("steps of a document", () => {
  const text = (steps: string): string => pot("  - { food: barley, amount: 1 g }") + `steps:\n${steps}`;

  it("follow one another unless they say otherwise", () => {
    const { components } = resolve(
      text(`  - { do: Rinse, time: 5 }
  - { do: Boil, time: 1 h 30 min, hands: off }
  - { do: Chop, time: 45 min, after: [] }
`),
    );
    const steps = components[0]?.value.steps ?? [];
    expect(steps.map(({ after }) => after)).toEqual([[], ["step-1"], []]);
    expect(steps.map(({ minutes }) => minutes)).toEqual([5, 90, 45]);
    expect(steps[1]?.attention).toBe("UNATTENDED");
  });

  it("may only wait for steps and use lines that are there", () => {
    const { problems } = resolve(
      text(`  - { id: rinse, do: Rinse, time: 5, uses: [barly] }
  - { do: Boil, time: 5, after: [rinze] }
`),
    );
    expect(problems.map(({ line, path, problem }) => ({ line, path, problem }))).toEqual([
      {
        line: 16,
        path: ["steps", 0, "uses", 0],
        problem: { code: "BAD_SHAPE", path: ["steps", 0, "uses", 0], expected: "barley", got: "barly" },
      },
      {
        line: 17,
        path: ["steps", 1, "after", 0],
        problem: { code: "BAD_SHAPE", path: ["steps", 1, "after", 0], expected: "rinse", got: "rinze" },
      },
    ]);
  });
});

describe("a fault in a document", () => {
  it("is shown at its line and column, with the nearest unit", () => {
    const { problems } = resolve(pot("  - { food: barley, amount: 2 scops }"));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: "garden.yaml", line: 13, column: 29, path: ["lines", 0, "amount"] });
    expect(problems[0]?.problem).toMatchObject({ code: "UNKNOWN_UNIT", unit: "scops" });
    expect(problems[0]?.problem).toHaveProperty("nearest", expect.arrayContaining(["own:scoop"]));
  });

  it("names the key that an unknown key may have meant", () => {
    const { problems } = resolve(pot("  - { food: barley, amout: 2 g, rule: to taste }"));
    expect(problems).toMatchObject([
      { line: 13, column: 21, problem: { code: "BAD_SHAPE", expected: "amount", got: "amout" } },
    ]);
  });

  it("says that a comma cut a text in two, by showing the piece as an unknown key", () => {
    const { problems } = resolve(pot("  - { food: barley, amount: 2 g, preparation: rinsed, dried }"));
    expect(problems).toMatchObject([{ line: 13, column: 55, problem: { code: "BAD_SHAPE", got: "dried" } }]);
  });

  it("does not hide the next one", () => {
    const { problems } = resolve(
      pot(`  - { food: barly, amount: 2 g }
  - { component: pott, amount: 2 g }
  - { food: barley, amount: two g }
  - { food: barley, amount: 1 cup }`),
    );
    expect(problems.map(({ line, problem }) => [line, problem.code])).toEqual([
      [13, "UNKNOWN_FOOD"],
      [14, "UNKNOWN_COMPONENT"],
      [15, "BAD_AMOUNT"],
      [16, "AMBIGUOUS_UNIT"],
    ]);
  });

  it.each([
    ["neither a food nor a component", "{ amount: 2 g }"],
    ["both a food and a component", "{ food: barley, component: pot, amount: 2 g }"],
    ["a part of a component", "{ component: pot, part: zest, amount: 2 g }"],
    ["no amount", "{ food: barley }"],
    ["an amount to taste", "{ food: barley, amount: 2 g, rule: to taste }"],
    ["an exponent above one", "{ food: barley, amount: 2 g, rule: power 1.5 }"],
    ["an exponent of nothing", "{ food: barley, amount: 2 g, rule: power 0.0 }"],
    ["a food without a name", "{ food: ' ', amount: 2 g }"],
    ["a list for a text", "{ food: [barley], amount: 2 g }"],
  ])("is found in a line with %s", (_, line) => {
    const { problems } = resolve(pot(`  - ${line}`));
    expect(problems.map(({ line: at, problem }) => [at, problem.code])).toEqual([[13, "BAD_SHAPE"]]);
  });

  it("is found in a density that no volume goes with", () => {
    const { problems } = resolve(
      barley.replace("measures:", "densities: [{ grams: 5, per: 3 g, source: writer }]\nmeasures:"),
    );
    expect(problems).toMatchObject([{ line: 6, problem: { code: "BAD_SHAPE", got: "3 g" } }]);
  });

  it("is found in a source that the document does not name", () => {
    const { problems } = resolve(barley.replace("source: writer", "source: wirter / on our scales"));
    expect(problems).toMatchObject([{ problem: { expected: "writer | common practice | invented", got: "wirter" } }]);
  });

  it("is found in a slug that is taken", () => {
    expect(resolve(`${barley}---\n${barley}`).problems).toMatchObject([
      { line: 10, column: 7, problem: { code: "DUPLICATE", value: "barley" } },
    ]);
  });

  it("leaves the other documents of the text standing", () => {
    const { foods, count, problems } = resolve(`${barley}---\nkind: fod\n---\nkind: plan\n`);
    expect(foods).toHaveLength(1);
    expect(count).toBe(3);
    expect(problems[0]?.problem).toMatchObject({ path: ["kind"], expected: "food", got: "fod" });
  });
});

describe("a text that is no document", () => {
  it.each([
    ["prose", "Boil the barley."],
    ["a broken list", "kind: [food\nslug: x"],
    ["a key written twice", "kind: food\nkind: plan"],
    ["an unknown tag", "kind: !!js/function food"],
    ["an alias of nothing", "kind: *food"],
    ["a tab for indentation", "kind: food\nnames:\n\ten: x"],
  ])("such as %s is refused with a place", (_, text) => {
    const { problems, documents } = readDocuments(text, "x.yaml");
    expect(documents).toEqual([]);
    expect(problems.length).toBeGreaterThan(0);
    for (const { line, column } of problems) expect(Math.min(line, column)).toBeGreaterThan(0);
  });

  it("holds nothing when it is empty", () => {
    expect(readDocuments("", "x.yaml")).toEqual({ documents: [], faulty: [], problems: [], count: 0 });
    expect(readDocuments("# only a remark\n---\n", "x.yaml").count).toBe(0);
  });
});

describe("a text made to exhaust the reader", () => {
  const refusal = (text: string): unknown => readDocuments(text, "bomb.yaml").problems[0]?.problem;

  it("is refused when aliases unfold without end", () => {
    const levels = Array.from({ length: 12 }, (_, i) => `l${i + 1}: &l${i + 1} [${`*l${i},`.repeat(9)}*l${i}]`);
    const bomb = `l0: &l0 [x, x]\n${levels.join("\n")}\n`;
    expect(refusal(bomb)).toMatchObject({ code: "TOO_LARGE", what: "aliases" });
  });

  it.each([
    ["lists in lists", "[".repeat(50_000)],
    ["lists of dashes", `${"- ".repeat(20_000)}x`],
    ["maps in maps", '{"a":'.repeat(50_000)],
  ])("is refused when it nests %s", (_, text) => {
    expect(refusal(text)).toMatchObject({ code: "TOO_LARGE", what: "nesting" });
  });

  it("is refused when it is too long, unread", () => {
    expect(refusal("x".repeat(2_000_001))).toMatchObject({ code: "TOO_LARGE", what: "characters", size: 2_000_001 });
  });

  it("is refused when one list is too long", () => {
    const many = pot("  - { food: barley, amount: 1 g }\n".repeat(301));
    expect(refusal(many)).toMatchObject({ code: "TOO_LARGE", what: "entries", size: 301, limit: 300 });
  });

  it("cannot reach the prototype of anything", () => {
    const text = '{"kind":"plan","__proto__":{"polluted":1},"kitchen":{"appliances":{"__proto__":{"polluted":1}}}}';
    expect(readDocuments(text, "x.json").documents).toEqual([]);
    expect({}).not.toHaveProperty("polluted");
  });
});

describe("a value that was parsed before", () => {
  it("goes through the same checks", () => {
    const value = { kind: "food", slug: "salt", names: { en: "salt" }, aisle: "house", "shopped-by": "mass" };
    expect(readDocumentValue({ ...value, "always-there": true }, "input").problems).toEqual([]);
    expect(readDocumentValue({ ...value, aisle: 3 }, "input").problems).toMatchObject([
      {
        file: "input",
        line: 1,
        column: 1,
        path: ["aisle"],
        problem: { code: "BAD_SHAPE", expected: "text", got: "3" },
      },
    ]);
  });
});
