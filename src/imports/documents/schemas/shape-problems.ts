import type { z } from "zod";
import { madeProblems } from "../../../domain/first-problems.js";
import type { Path, Problem } from "../../../domain/problem.js";
import { nearestWords } from "../../../domain/quantity/naming/nearest-words.js";

type Issue = z.core.$ZodIssue;

/** A problem, and whether it is the key or the value that is to be looked at. */
interface ShapeProblem {
  readonly problem: Problem;
  readonly at: "VALUE" | "KEY";
}

const pathOf = (path: readonly PropertyKey[]): Path =>
  path.map((segment) => (typeof segment === "number" ? segment : String(segment)));

/** What was written there, short enough to show. */
export function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = typeof value === "string" ? value : (JSON.stringify(value) ?? typeof value);
  return text.length > 80 ? `${text.slice(0, 79)}…` : text;
}

const valueAt = (root: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (value, segment) =>
      typeof value === "object" && value !== null && Object.hasOwn(value, segment)
        ? (value as Record<string | number, unknown>)[segment]
        : undefined,
    root,
  );

/** The problems behind a failed shape check, as many as an answer has room for. */
export const shapeProblems = (issues: readonly Issue[], root: unknown, keys: KnownKeys): readonly ShapeProblem[] =>
  madeProblems(
    issues.flatMap((issue) => problemMakers(issue, root, keys)),
    (problem) => ({ problem, at: "VALUE" }),
  );

/** Knows the keys allowed at a path, for suggestions. */
type KnownKeys = (path: Path) => readonly string[];

/** The problems behind one issue, each made when it is wanted. */
export function problemMakers(issue: Issue, root: unknown, keys: KnownKeys): readonly (() => ShapeProblem)[] {
  if (issue.code === "unrecognized_keys") {
    const path = pathOf(issue.path);
    return issue.keys.map((key) => () => unknownKey(path, key, keys(path)));
  }
  if (issue.code === "invalid_union")
    return closestBranch(issue).flatMap((inner) =>
      problemMakers({ ...inner, path: [...issue.path, ...inner.path] }, root, keys),
    );
  return [() => ofIssue(issue, root)];
}

function unknownKey(path: Path, key: string, known: readonly string[]): ShapeProblem {
  const nearest = nearestWords(key, known);
  const expected = (nearest.length > 0 ? nearest : known).join(" | ");
  return { problem: { code: "BAD_SHAPE", path: [...path, key], expected, got: shown(key) }, at: "KEY" };
}

function ofIssue(issue: Issue, root: unknown): ShapeProblem {
  const path = pathOf(issue.path);
  const bad = (expected: string, got: string): ShapeProblem => ({
    problem: { code: "BAD_SHAPE", path, expected, got },
    at: "VALUE",
  });
  const got = shown(valueAt(root, path));
  switch (issue.code) {
    case "custom": {
      const { expected, got: written } = issue.params ?? {};
      return bad(
        typeof expected === "string" ? expected : "another value",
        typeof written === "string" ? written : got,
      );
    }
    case "invalid_key":
      return bad(issue.issues.map(expectation).join(" | "), String(path.at(-1)));
    case "too_big":
    case "too_small":
      return sizeProblem(issue, valueAt(root, path), path) ?? bad(expectation(issue), got);
    default:
      return bad(expectation(issue), got);
  }
}

/** Of the shapes a value may have, the one it came nearest to: it was found wrong furthest inside. */
function closestBranch(issue: Extract<Issue, { code: "invalid_union" }>): readonly Issue[] {
  const depth = (branch: readonly Issue[]): number => Math.max(...branch.map((each) => each.path.length));
  const custom = issue.errors.filter((branch) =>
    branch.some(({ code, path }) => code !== "invalid_type" || path.length > 0),
  );
  const [best] = custom.toSorted((a, b) => depth(b) - depth(a));
  if (best !== undefined) return best;
  const expected = [...new Set(issue.errors.flat().map(expectation))].join(" | ");
  return [{ code: "custom", path: [], message: expected, params: { expected }, input: issue.input }];
}

function sizeProblem(
  issue: Extract<Issue, { code: "too_big" | "too_small" }>,
  value: unknown,
  path: Path,
): ShapeProblem | null {
  const limit = Number(issue.code === "too_big" ? issue.maximum : issue.minimum);
  if (issue.code === "too_big" && (issue.origin === "array" || issue.origin === "string")) {
    const size = Array.isArray(value) || typeof value === "string" ? value.length : limit + 1;
    const what = issue.origin === "array" ? "entries" : "characters";
    return { problem: { code: "TOO_LARGE", path, what, size, limit }, at: "VALUE" };
  }
  return null;
}

/** What a shape asks for, in plain words. */
function expectation(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return (
        { record: "a map", object: "a map", array: "a list", string: "text", number: "a number" }[
          issue.expected as string
        ] ?? issue.expected
      );
    case "invalid_value":
      return issue.values.map(String).join(" | ");
    case "too_big":
      return `at most ${issue.maximum}`;
    case "too_small":
      return issue.origin === "string" || issue.origin === "array" ? "something" : `at least ${issue.minimum}`;
    case "invalid_format":
      // A shape that says in words what it asks for is better than its pattern.
      if (!issue.message.startsWith("Invalid")) return issue.message;
      return issue.pattern === undefined ? issue.format : `text like ${issue.pattern}`;
    case "custom":
      return typeof issue.params?.["expected"] === "string" ? issue.params["expected"] : issue.message;
    case "not_multiple_of":
    case "unrecognized_keys":
    case "invalid_union":
    case "invalid_key":
    case "invalid_element":
      return issue.message;
  }
}
