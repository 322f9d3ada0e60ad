import { foodsIn, linesOfComponent } from "../domain/plan/bundle-of.js";
import { namedInDocuments } from "../imports/documents/named-in-documents.js";
import type { AnyDocument } from "../imports/documents/document-kinds.js";
import type { KnownBeside } from "../imports/documents/check-documents.js";
import { codeListsOf, numbersThatAre } from "../domain/plan/code-lists-of.js";
import type { CodeLists } from "../domain/model/code-lists.js";
import { gatherComponents } from "./gather-components.js";
import { findCatalogueFoods } from "./find-catalogue-foods.js";
import { rulesToday, type RuleDeps } from "./find-rules.js";
import { readInheritance } from "./inherit-facts.js";

/**
 * What documents lead to beside themselves: the publisher's component drafts, and the foods as known today, with what they
 * inherit, and the closed lists of today.
 */
export async function gatherKnown(
  deps: RuleDeps,
  publisher: string,
  documents: readonly AnyDocument[],
): Promise<KnownBeside> {
  const { data } = deps;
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
  return { foods: found.map(inherit), components, inherit, codes: await listsOfToday(deps, numbersIn(documents)) };
}

/** The numbers of the open table that documents name. */
export const numbersIn = (documents: readonly AnyDocument[]): readonly string[] =>
  documents.flatMap((document) => (document.kind === "food" ? (document.usda ?? []) : []));

/** The closed lists of today, with those of some numbers of the open table that it has. */
export async function listsOfToday(deps: RuleDeps, named: readonly string[]): Promise<CodeLists> {
  const rows = named.length === 0 ? [] : await findCatalogueFoods(deps, [...new Set(named)]);
  const known = new Set(rows.flatMap((entry) => entry?.row.ndbNo ?? []));
  return { ...codeListsOf(await rulesToday(deps)), "usda-number": numbersThatAre((ndbNo) => known.has(ndbNo)) };
}
