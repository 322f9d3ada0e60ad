import type { Path, Problem } from "../../domain/problem.js";
import type { DocumentProblem, ReadDocument } from "./read-documents.js";
import type { DocumentsResolved } from "./resolve-documents.js";
import type { Place } from "./yaml-text.js";

/** Documents with the values they were resolved to. */
export type ResolvedValues = Omit<DocumentsResolved, "problems" | "publishers">;

/** A problem that `checkBundle` found in a plan, at its place in the documents. */
export const locateProblem = (problem: Problem, resolved: ResolvedValues, plan: ReadDocument): DocumentProblem => ({
  ...locatePath(problem.path, resolved, plan),
  problem,
});

/**
 * A path through a plan with all it refers to, at its place in the documents: `["components", "dal", "lines", "salt"]`
 * and `["meals", "soup"]` are followed to the line or key of that name, and no further than they lead. What belongs to
 * no document given is shown at the head of the plan's own.
 */
export function locatePath(
  given: Path,
  resolved: ResolvedValues,
  plan: ReadDocument,
): Place & { readonly file: string; readonly path: Path } {
  const [root, slug, ...rest] = given;
  const things = root === "components" ? resolved.components : root === "foods" ? resolved.foods : [];
  const named = things.find(({ value }) => value.slug === slug);
  const own = resolved.plans.find(({ read }) => read === plan);
  const [read, value, inside] =
    named !== undefined ? [named.read, named.value, rest] : [plan, own?.value, root === "plans" ? rest : given];
  const path = documentPath(value, inside);
  return { file: read.file, ...read.place(path, "VALUE"), path };
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
    } else if (typeof value === "object" && value !== null && Object.hasOwn(value, segment)) {
      steps.push(String(segment).replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`));
      value = (value as Record<string, unknown>)[segment];
    } else return steps;
  }
  return steps;
}

const isCalled = (item: unknown, name: string): boolean =>
  typeof item === "object" &&
  item !== null &&
  Object.entries(item).some(([key, value]) => ["id", "slug", "name", "code"].includes(key) && value === name);
