import type { Component } from "../../../domain/model/component.js";
import type { Food } from "../../../domain/model/food.js";
import { translationSlug } from "../../../domain/model/translation.js";
import type { Path, Problem } from "../../../domain/problem.js";
import type { DocumentProblem, ReadDocument } from "../read-documents.js";
import type { DocumentsResolved, Resolved } from "../resolve-documents.js";
import type { Place } from "./yaml-text.js";

/** Documents with the values they were resolved to. */
export type ResolvedValues = Omit<DocumentsResolved, "problems" | "publishers" | "documents" | "packs">;

/** A translation has the paths of its document. */
const translationOf = (resolved: ResolvedValues, slug: unknown): ReadDocument | null =>
  resolved.translations.find(({ value }) => translationSlug(value) === slug)?.read ?? null;

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
  const translation = root === "translations" ? translationOf(resolved, slug) : null;
  if (translation !== null) return { file: translation.file, ...translation.place(rest, "VALUE"), path: rest };
  const named = typeof slug === "string" ? namesOf(resolved).get(`${root} ${slug}`) : undefined;
  const own = resolved.plans.find(({ read }) => read === plan);
  const [read, value, inside] =
    named !== undefined ? [named.read, named.value, rest] : [plan, own?.value, root === "plans" ? rest : given];
  const led = documentPath(value, inside);
  const path = read.writtenAt?.(led) ?? led;
  return { file: read.file, ...read.place(path, "VALUE"), path };
}

/** Follows a model path through a value, writing down positions instead of names. Lists have the same order in both. */
function documentPath(root: unknown, path: Path): Path {
  const steps: (string | number)[] = [];
  let value: unknown = root;
  for (const segment of path) {
    if (Array.isArray(value)) {
      const items: readonly unknown[] = value;
      const index = typeof segment === "number" ? segment : placesOf(items).get(segment);
      if (index === undefined) return steps;
      steps.push(index);
      value = items[index];
    } else if (typeof value === "object" && value !== null && Object.hasOwn(value, segment)) {
      steps.push(String(segment).replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`));
      value = (value as Record<string, unknown>)[segment];
    } else return steps;
  }
  return steps;
}

// Each list is gone through once, however many problems lead into it; what was found goes with it.
const namesKnown = new WeakMap<ResolvedValues, ReadonlyMap<string, Resolved<Component | Food>>>();
const placesKnown = new WeakMap<readonly unknown[], ReadonlyMap<string, number>>();

/** Components and foods by kind and slug; of two the first. */
function namesOf(resolved: ResolvedValues): ReadonlyMap<string, Resolved<Component | Food>> {
  const known = namesKnown.get(resolved);
  if (known !== undefined) return known;
  const named = (root: string, things: readonly Resolved<Component | Food>[]) =>
    things.map((each): [string, Resolved<Component | Food>] => [`${root} ${each.value.slug}`, each]);
  const found = new Map([...named("components", resolved.components), ...named("foods", resolved.foods)].toReversed());
  namesKnown.set(resolved, found);
  return found;
}

/** Positions of a list's entries by whatever names them; of two the first. */
function placesOf(items: readonly unknown[]): ReadonlyMap<string, number> {
  const known = placesKnown.get(items);
  if (known !== undefined) return known;
  const found = new Map<string, number>();
  for (const [index, item] of items.entries()) {
    if (typeof item !== "object" || item === null) continue;
    for (const [key, value] of Object.entries(item))
      if (naming.has(key) && typeof value === "string" && !found.has(value)) found.set(value, index);
  }
  placesKnown.set(items, found);
  return found;
}

const naming: ReadonlySet<string> = new Set(["id", "slug", "name", "code"]);
