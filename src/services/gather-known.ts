import { foodsIn, linesOfComponent } from "../domain/plan/bundle-of.js";
import { namedInDocuments } from "../imports/documents/named-in-documents.js";
import type { AnyDocument } from "../imports/documents/document-kinds.js";
import type { KnownThings } from "../imports/documents/resolve-documents.js";
import type { Data } from "../persistence/data.js";
import { gatherComponents } from "./gather-components.js";

/** What documents lead to beside themselves: the publisher's component drafts, and the foods as known today. */
export async function gatherKnown(
  data: Data,
  publisher: string,
  documents: readonly AnyDocument[],
): Promise<KnownThings> {
  const named = namedInDocuments(documents);
  const written = new Set(documents.flatMap(({ kind, slug }) => (kind === "component" ? [slug] : [])));
  const components = (await gatherComponents(data, publisher, named.components, written)).map(({ value }) => value);
  const foods = [...new Set([...named.foods, ...foodsIn(components.flatMap(linesOfComponent))])];
  const found = foods.length === 0 ? [] : await data.foods.bySlugs(foods);
  return { foods: found.filter((food) => food !== null), components };
}
