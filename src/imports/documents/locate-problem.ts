import type { Path, Problem } from "../../domain/problem.js";
import type { DocumentsResolved, Resolved } from "./resolve-documents.js";
import type { DocumentProblem } from "./read-documents.js";

const roots = { foods: "foods", components: "components", plans: "plans", meals: "plans" } as const;

/**
 * A problem of the model (`["components", "dal", "lines", "salt", "amount"]`) at its place in the documents.
 * Slugs, ids and names are turned back into the position of the thing so called; what cannot be followed further
 * points at the nearest thing above it. null where no document is meant.
 */
export function locateProblem(problem: Problem, resolved: DocumentsResolved, plan: string): DocumentProblem | null {
  const [root, ...rest] = problem.path;
  const kind = Object.entries(roots).find(([name]) => name === root)?.[1] ?? "plans";
  const slug = root === "meals" || !(root !== undefined && root in roots) ? plan : rest[0];
  const found = (resolved[kind] as readonly Resolved<{ readonly slug: string }>[]).find(
    ({ value }) => value.slug === slug,
  );
  if (found === undefined) return null;
  const inside = kind === "plans" && root !== "plans" ? problem.path : rest.slice(1);
  const path = documentPath(found.value, inside);
  const { file, place } = found.read;
  return { file, ...place(path, "VALUE"), path, problem };
}

/** Follows a model path through a value, writing down positions instead of names. Lists have the same order in both. */
function documentPath(root: unknown, path: Path): Path {
  const steps: (string | number)[] = [];
  let value: unknown = root;
  for (const segment of path) {
    if (Array.isArray(value)) {
      const items: readonly unknown[] = value;
      const index = typeof segment === "number" ? segment : items.findIndex((item) => isCalled(item, segment));
      if (index < 0) return steps;
      steps.push(index);
      value = items[index];
    } else if (typeof value === "object" && value !== null && typeof segment === "string") {
      steps.push(segment.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`));
      value = Object.hasOwn(value, segment) ? (value as Record<string, unknown>)[segment] : undefined;
    } else return steps;
  }
  return steps;
}

const isCalled = (item: unknown, name: string): boolean =>
  typeof item === "object" &&
  item !== null &&
  Object.entries(item).some(([key, value]) => ["id", "slug", "name", "code"].includes(key) && value === name);
