import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/domain/problem.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { readerProblemText } from "../../../src/exports/sentences/reader-problem-text.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

const path = ["household", "onHand", 0];
/** What a reader can get wrong in a form. */
const problems: readonly Problem[] = [
  { code: "BAD_AMOUNT", path, written: "viel", why: "NO_NUMBER" },
  { code: "UNKNOWN_UNIT", path, unit: "kgs", nearest: ["kg"] },
  { code: "AMBIGUOUS_UNIT", path, unit: "cup", candidates: ["us-cup", "metric-cup"] },
  { code: "UNKNOWN_FOOD", path, food: "karote" },
  { code: "UNKNOWN_CODE", path, list: "diet", written: "vegn", nearest: ["vegan"] },
  { code: "UNKNOWN_COMPONENT", path, component: "dal" },
  { code: "UNKNOWN_ROUTE", path, component: "beans", route: "tined", known: ["tinned"] },
  { code: "AMOUNT_OUT_OF_RANGE", path, value: "-1", min: 0, max: 100 },
  { code: "SERVINGS_OUT_OF_RANGE", path, value: 0, min: 1, max: 1_000_000 },
  { code: "BAD_SHAPE", path, expected: "a whole number from 1", got: "acht" },
  { code: "BAD_HOUSEHOLD", path, what: "NOT_A_TIME_ZONE", value: "Mitteleuropa" },
  { code: "TOO_LARGE", path, what: "foods", size: 2_000, limit: 100 },
  { code: "DUPLICATE", path, value: "carrot" },
  { code: "NOT_CONVERTIBLE", path, item: "parsley", from: "piece", to: "g", missing: "GRAMS_OF_ONE_PIECE" },
  { code: "MORE_PROBLEMS", path, count: 3 },
];

describe("what is wrong with what a reader typed", () => {
  it.each(["de", "fr", "es", "pl"])("is said in %s, with what was typed", (language) => {
    const words = wordsFor(language);
    for (const problem of problems) {
      const said = readerProblemText(problem, words);
      expect(said).not.toBe(problemText({ ...problem, path: [] }));
      for (const typed of ["written", "unit", "food", "component", "route", "got", "value"] as const)
        if (typed in problem && problem.code !== "UNKNOWN_ROUTE")
          expect(said, problem.code).toContain(String((problem as Readonly<Record<string, unknown>>)[typed]));
    }
  });

  it("is the usual sentence in English, without the path that a form has no use for", () => {
    for (const problem of problems)
      expect(readerProblemText(problem, wordsFor("en"))).toBe(problemText({ ...problem, path: [] }));
  });
});
