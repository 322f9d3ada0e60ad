import { countSteps } from "../../../kit/count-steps.js";
import { readTexts } from "../../../../src/services/drafts/read-texts.js";
import { describe, expect, it } from "vitest";
import { firstProblems, mostProblems } from "../../../../src/domain/first-problems.js";
import { readDocuments } from "../../../../src/imports/documents/read-documents.js";

const read = (text: string) => readDocuments(text, "plan.yaml");
const keys = (count: number): string => Array.from({ length: count }, (_, at) => `k${String(at)}: 1\n`).join("");

describe("a text with too much in it is refused before anything is built of it", () => {
  it("with 90,000 keys, at the first that is too many", () => {
    const { documents, problems } = read(`kind: plan\n${keys(90_000)}`);
    expect(documents).toEqual([]);
    expect(problems).toMatchObject([
      {
        problem: { code: "TOO_LARGE", what: "entries of one document", size: 25_001, limit: 25_000 },
        ...{ file: "plan.yaml", line: 25_001 },
      },
    ]);
  });

  it("without going on to its end", () => {
    const steps = (count: number): number => countSteps(() => read(`kind: plan\n${keys(count)}`));
    expect(steps(120_000)).toBeLessThan(1.05 * steps(60_000));
  });

  it.each<[string, string, string]>([
    [
      "as JSON",
      `{${Array.from({ length: 90_000 }, (_, at) => `"k${String(at)}":1`).join(",")}}`,
      "entries of one document",
    ],
    ["of keys without values", "? a\n".repeat(60_000), "entries of one document"],
    ["of keys in many documents", `---\n${keys(1_000)}`.repeat(51), "keys"],
    ["of documents", "---\nkind: plan\n".repeat(301), "documents"],
    ["of empty documents", "---\n".repeat(250_000), "documents"],
    ["of documents that are ended", "a: 1\n...\n".repeat(301), "documents"],
    ["of entries", "- a\n".repeat(25_001), "entries of one document"],
    ["of entries on one line", `[${"a,".repeat(25_001)}]`, "entries of one document"],
    ["of entries in many documents", `---\n${"- a\n".repeat(1_000)}`.repeat(101), "entries"],
    ["of anchors", Array.from({ length: 1_001 }, (_, at) => `- &a${String(at)} b\n`).join(""), "references"],
    ["of aliases", `- &a b\n${"- *a\n".repeat(1_001)}`, "references"],
    ["of lists in lists on one line", "[".repeat(500_000), "nesting"],
    ["of words that mean nothing", '""'.repeat(250_001), "tokens"],
    ["of faults, which are looked at one by one", '""'.repeat(100_000), "faults"],
    ["of faults on a line each", `kind: plan\n${"\ta: b\n".repeat(300)}`, "faults"],
  ])("%s", (_, text, what) => {
    expect(read(text).problems[0]).toMatchObject({ problem: { code: "TOO_LARGE", what } });
  });

  it("says what the first faults are, where there are more than anybody mends", () => {
    const { problems } = read('""'.repeat(100_000));
    expect(problems[1]).toMatchObject({ problem: { code: "BAD_SHAPE", expected: "YAML or JSON" }, line: 1, column: 3 });
    expect(problems).toHaveLength(mostProblems);
    expect(countSteps(() => read('""'.repeat(100_000)))).toBeLessThan(
      2.3 * countSteps(() => read('""'.repeat(50_000))),
    );
  });

  it.each<[string, (lines: number) => string]>([
    ["a text with its line ends", (lines) => `kind: plan\nsummary: |\n${"  a\n".repeat(lines)}`],
    ["a text on one line", (lines) => `kind: plan\nsummary: >-\n${"  a\r\n".repeat(lines)}`],
    ["a text without a mark", (lines) => `kind: plan\nsummary:\n${"  a\n".repeat(lines)}`],
    ["a text in quotes", (lines) => `kind: plan\nsummary: "${"a\n  ".repeat(lines)}"\n`],
    ["a text in JSON", (lines) => `{"kind":"plan","summary":"${"a\n".repeat(lines)}"}`],
  ])("of the lines of %s, which no text is long enough for", (_, text) => {
    const found = (lines: number) => read(text(lines)).problems.map(({ problem }) => problem);
    expect(found(10_002)).toMatchObject([{ code: "TOO_LARGE", what: "lines of one value", limit: 10_000 }]);
    expect(found(1_900).filter(({ path }) => path[0] === "summary")).toEqual([]);
    expect(found(9_990)).toContainEqual(expect.objectContaining({ path: ["summary"] }));
    const steps = (lines: number): number => countSteps(() => read(text(lines)));
    expect(steps(80_000)).toBeLessThan(2.3 * steps(40_000));
  });

  it("when aliases unfold into more entries than may be written out", () => {
    const list = `[${"a,".repeat(2_000)}]`;
    const text = `kind: plan\na: &a ${list}\nb:\n${"- *a\n".repeat(99)}`;
    expect(read(text).problems).toMatchObject([{ problem: { code: "TOO_LARGE", what: "entries of one document" } }]);
  });

  it.each([
    ["24,000 entries in each of four documents", `---\n${"- a\n".repeat(24_000)}`.repeat(4), 4],
    ["300 documents", "---\nkind: plan\nslug: p\n".repeat(300), 300],
    ["300 documents that are ended", "---\nkind: plan\nslug: p\n...\n".repeat(300), 300],
    ["documents after remarks", `# first\n${"---\n# next\nkind: plan\n".repeat(299)}`, 299],
  ])("but not with %s", (_, text, count) => {
    expect(read(text).count).toBe(count);
    expect(read(text).problems.map(({ problem }) => problem.code)).not.toContain("TOO_LARGE");
  });
});

describe("of many problems", () => {
  it("the first are listed, and the last says how many more there are", () => {
    const { problems } = read(`kind: plan\n${keys(5_000)}`);
    expect(problems).toHaveLength(mostProblems);
    expect(problems.at(-1)?.problem).toEqual({ code: "MORE_PROBLEMS", path: [], count: expect.any(Number) as number });
    const more = problems.at(-1)?.problem;
    // 5,000 keys, and what every plan must have.
    expect(more?.code === "MORE_PROBLEMS" ? more.count + 99 : 0).toBeGreaterThan(5_000);
    expect(problems.slice(0, 99).every(({ line }) => line > 0)).toBe(true);
  });

  it("of many texts the first are listed, and all are counted", () => {
    const texts = Array.from({ length: 50 }, (_, at) => ({ name: `t${String(at)}`, text: `kind: plan\n${keys(60)}` }));
    const read = readTexts(texts, []);
    const all = firstProblems(read.ok ? read.value.problems.map(({ problem }) => problem) : []);
    expect(all).toHaveLength(mostProblems);
    const each = firstProblems(readDocuments(texts[0]?.text ?? "", "t").problems.map(({ problem }) => problem)).length;
    expect(all.at(-1)).toEqual({ code: "MORE_PROBLEMS", path: [], count: 50 * each - 99 });
  });

  it("all are listed where there is room", () => {
    const { problems } = read(`kind: plan\n${keys(80)}`);
    expect(problems.map(({ problem }) => problem.code)).not.toContain("MORE_PROBLEMS");
  });
});

it("stays the same for keys written twice, each at its place", () => {
  const { problems } = read("kind: plan\nslug: a\nslug: b\nmeals:\n  - { slug: c, slug: d }\n");
  expect(problems.map(({ line, column, problem }) => ({ line, column, problem }))).toEqual([
    {
      line: 3,
      column: 1,
      problem: { code: "BAD_SHAPE", path: [], expected: "YAML or JSON", got: "the same key twice" },
    },
    {
      line: 5,
      column: 16,
      problem: { code: "BAD_SHAPE", path: [], expected: "YAML or JSON", got: "the same key twice" },
    },
  ]);
});
