import { foodsIn, linesOfComponent } from "../domain/plan/bundle-of.js";
import { namedInDocuments } from "../imports/documents/named-in-documents.js";
import type { AnyDocument } from "../imports/documents/document-kinds.js";
import type { KnownThings } from "../imports/documents/resolve-documents.js";
import type { Data } from "../persistence/data.js";
import { gatherComponents } from "./gather-components.js";
import { readInheritance } from "./inherit-facts.js";

/** What documents lead to beside themselves: the publisher's component drafts, and the foods as known today, with what they inherit. */
export async function gatherKnown(
  data: Data,
  publisher: string,
  documents: readonly AnyDocument[],
): Promise<KnownThings> {
  const named = namedInDocuments(documents);
  const written = new Set(documents.flatMap(({ kind, slug }) => (kind === "component" ? [slug] : [])));
  const components = (await gatherComponents(data, publisher, named.components, written)).map(({ value }) => value);
  const foods = [...new Set([...named.foods, ...foodsIn(components.flatMap(linesOfComponent))])];
  const read = foods.length === 0 ? [] : await data.foods.bySlugs(foods);
  const found = read.filter((food) => food !== null);
  const inherit = await readInheritance({ data }, [
    ...found.map(({ ndbNo }) => ndbNo),
    ...documents.flatMap((document) => (document.kind === "food" ? [document.usda] : [])),
  ]);
  return { foods: found.map(inherit), components, inherit };
}
