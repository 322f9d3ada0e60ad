import type { InSlices } from "../../domain/counted-work.js";
import type { Path } from "../../domain/problem.js";

/** A node of JSON-LD that says it is a recipe, and the way to it. */
export interface RecipeNode {
  readonly node: Readonly<Record<string, unknown>>;
  readonly path: Path;
}

/** The deepest place in a file that is looked at. */
const deepestNode = 40;
/** The most values of one file that are looked at. */
const mostNodes = 200_000;
const nodesInTurn = 5_000;

const typesOf = (type: unknown): readonly string[] =>
  (Array.isArray(type) ? type : [type]).filter((each): each is string => typeof each === "string");

const isRecipeType = (type: string): boolean => /^(?:https?:\/\/schema\.org\/|schema:)?Recipe$/.test(type);

/**
 * Every recipe in a JSON-LD value, wherever it stands: at the top, in a list, in a `@graph`, or as part of a page. One
 * recipe named twice by the same `@id` is found once. Walks with a list of its own, so depth costs no stack.
 */
export function* findRecipeNodes(
  value: unknown,
): InSlices<{ readonly found: readonly RecipeNode[]; readonly tooLarge: boolean }> {
  const found: RecipeNode[] = [];
  const ids = new Set<string>();
  const waiting: { readonly value: unknown; readonly path: Path }[] = [{ value, path: [] }];
  let seen = 0;
  let tooLarge = false;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value: here, path } = next;
    if (typeof here !== "object" || here === null) continue;
    seen += 1;
    if (seen % nodesInTurn === 0) yield;
    if (path.length > deepestNode || seen > mostNodes) {
      tooLarge = true;
      continue;
    }
    if (Array.isArray(here)) {
      for (let at = here.length - 1; at >= 0; at -= 1)
        waiting.push({ value: here[at] as unknown, path: [...path, at] });
      continue;
    }
    const node = here as Readonly<Record<string, unknown>>;
    if (typesOf(node["@type"]).some(isRecipeType)) {
      const id = node["@id"];
      const isKnown = typeof id === "string" && ids.has(id);
      if (typeof id === "string") ids.add(id);
      if (!isKnown) found.push({ node, path });
      continue;
    }
    for (const [key, inside] of Object.entries(node).toReversed())
      waiting.push({ value: inside, path: [...path, key] });
  }
  return { found, tooLarge };
}
