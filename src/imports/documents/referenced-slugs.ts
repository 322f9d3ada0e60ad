import type { AnyDocument } from "./document-kinds.js";
import type { LineDocument } from "./schemas/line-schema.js";

interface NamedThings {
  readonly foods: readonly string[];
  readonly components: readonly string[];
}

/** Slugs that the lines, swaps, routes, packs and translations of some documents name, each once. */
export function referencedSlugs(documents: readonly AnyDocument[]): NamedThings {
  const lines = documents.flatMap(linesOf);
  const foods = lines.flatMap(({ food, swaps }) => [
    ...(food === undefined ? [] : [food]),
    ...swaps.map((swap) => swap.food),
  ]);
  const packed = documents.flatMap(({ kind, slug }) => (kind === "packs" ? [slug] : []));
  const translated = documents.flatMap((each) =>
    each.kind === "translation" && each.of.kind === "COMPONENT" ? [each.of.slug] : [],
  );
  const components = [...lines.flatMap(({ component }) => (component === undefined ? [] : [component])), ...translated];
  return { foods: [...new Set([...foods, ...packed])], components: [...new Set(components)] };
}

function linesOf(document: AnyDocument): readonly LineDocument[] {
  switch (document.kind) {
    case "food":
    case "packs":
    case "publisher":
    case "translation":
      return [];
    case "component":
      return [...document.lines, ...document.routes.flatMap(({ lines }) => lines)];
    case "plan":
      return document.meals.flatMap(({ lines }) => lines);
  }
}
