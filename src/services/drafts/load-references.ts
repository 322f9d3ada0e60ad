import { foodsIn, linesOfComponent } from "../../domain/plan/compile/plan-bundle.js";
import { textLinesOf } from "../../imports/documents/lines/resolve-text-lines.js";
import { lineComponents } from "./line-components.js";
import { foodsForLines } from "./line-foods.js";
import { referencedSlugs } from "../../imports/documents/referenced-slugs.js";
import type { DocumentsRead } from "../../imports/documents/read-documents.js";
import type { KnownBeside } from "../../imports/documents/checks/check-documents.js";
import { codeListsOf, numbersThatAre } from "../../domain/plan/check/code-lists-of.js";
import type { CodeLists } from "../../domain/model/code-lists.js";
import { findFood } from "../../domain/quantity/food-name.js";
import type { RowsByWords } from "../../imports/documents/lines/offer-foods.js";
import { loadTranslated } from "./load-translated.js";
import { gatherComponents } from "../plans/gather-components.js";
import { findCatalogueFoods } from "../foods/find-catalogue-foods.js";
import { rulesToday, type RuleDeps } from "../rules/find-rules.js";
import { memoize } from "../../domain/memoize.js";
import type { Food } from "../../domain/model/food.js";
import type { Actor } from "../access/actor.js";
import { asOwn, findFoodsOf, isShared, sharedFoods } from "../foods/find-foods-of.js";
import { readInheritance } from "../foods/inherit-facts.js";
import type { Sliced } from "../time-slices.js";

/**
 * What documents lead to beside themselves: the publisher's component drafts, its own foods and those that all share as known
 * today, with what they inherit, and the closed lists of today.
 */
export async function loadReferences(
  deps: RuleDeps & Sliced,
  publisher: string,
  actor: Actor,
  read: Pick<DocumentsRead, "documents" | "faulty">,
): Promise<KnownBeside> {
  const { data } = deps;
  const documents = read.documents.map(({ document }) => document);
  const named = referencedSlugs(documents);
  const described = new Set(documents.flatMap(({ kind, slug }) => (kind === "component" ? [slug] : [])));
  const texts = textLinesOf(documents);
  const ofTexts = await lineComponents(deps, publisher, texts);
  const components = (await gatherComponents(data, publisher, [...named.components, ...ofTexts], described)).map(
    ({ value }) => value,
  );
  const foods = [...new Set([...named.foods, ...foodsIn(components.flatMap(linesOfComponent))])];
  const found = (await findFoodsOf(data, publisher, foods)).filter((food) => food !== null);
  const written = documents.filter((document) => document.kind === "food");
  const bases = await sharedFoods(
    data,
    written.flatMap((food) => food.extends ?? []),
  );
  const inherited = await readInheritance({ data }, [
    ...written.map(({ usda }) => usda),
    ...[...bases.values()].map(({ ndbNo }) => ndbNo),
  ]);
  // The same food each time, because much is known of a food as long as it lives.
  const inherit = memoize((food: Food): Food =>
    inherited(isShared(actor, food) ? food : (asOwn(publisher, food, bases) ?? food)),
  );
  const codes = await listsOfToday(deps, numbersIn(read));
  const translated = await loadTranslated(deps, publisher, documents, components);
  const known = { foods: found, components, inherit, bases, codes, publisher, ...translated };
  const slugs = new Set([...found, ...written].map(({ slug }) => slug));
  // What is no slug may be a name.
  const called = [...texts, ...named.foods.filter((food) => !slugs.has(food))];
  if (called.length === 0) return known;
  const forLines = await foodsForLines(deps, called, { publisher, as: "SAVED" });
  const besides = forLines.foods.filter(({ slug }) => !slugs.has(slug));
  const rows = await rowsFor(
    deps,
    named.foods.filter((food) => !slugs.has(food) && findFood(forLines.named, food, null, null).kind === "NONE"),
  );
  return { ...known, foods: [...found, ...besides], named: forLines.named, rows };
}

/** Unknown names that rows of the open table are looked up for, and rows for each. */
const mostLookedUp = 5;
const mostRows = 2;

/** Rows of the open food table with the words of names that no food has. */
async function rowsFor({ data }: Pick<RuleDeps, "data">, names: readonly string[]): Promise<RowsByWords> {
  const request = { first: mostRows, after: null, last: null, before: null };
  const found = await Promise.all(
    names.slice(0, mostLookedUp).map(async (name) => {
      const { items } = await data.catalogue.page(name, request);
      return [name, items.map(({ item: { row } }) => ({ ndbNo: row.ndbNo, description: row.description }))] as const;
    }),
  );
  return new Map(found);
}

/** The numbers of the open table that documents name, also those with another fault: a right number is no fault beside it. */
export const numbersIn = ({ documents, faulty }: Pick<DocumentsRead, "documents" | "faulty">): readonly string[] =>
  [...documents, ...faulty].flatMap(({ codes }) =>
    codes.flatMap(({ list, written }) => (list === "usda-number" && /^\d{5}$/.test(written) ? [written] : [])),
  );

/** The closed lists of today, with those of some numbers of the open table that it has. */
export async function listsOfToday(deps: RuleDeps, named: readonly string[]): Promise<CodeLists> {
  const rows = named.length === 0 ? [] : await findCatalogueFoods(deps, [...new Set(named)]);
  const known = new Set(rows.flatMap((entry) => entry?.row.ndbNo ?? []));
  return { ...codeListsOf(await rulesToday(deps)), "usda-number": numbersThatAre((ndbNo) => known.has(ndbNo)) };
}
