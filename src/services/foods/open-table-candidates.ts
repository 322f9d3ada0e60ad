import type { Food } from "../../domain/model/food.js";
import type { Deps } from "../deps.js";
import { findCatalogueFoods, type CatalogueFood } from "./find-catalogue-foods.js";
import { readSearch } from "./search-text.js";

/** The most rows that a search offers. */
const mostOffered = 5;

/**
 * Rows of the open table that have all words of a search, the plainest description first, without those that a food found for it has: to be
 * adopted, or named by their number. They are no foods of anybody, and say nothing of allergens.
 */
export async function openTableCandidates(
  { data }: Pick<Deps, "data">,
  search: string | null,
  found: readonly Pick<Food, "ndbNo">[],
): Promise<readonly CatalogueFood[]> {
  if (search === null || readSearch({ search }).length > 0) return [];
  const known = new Set(found.flatMap(({ ndbNo }) => ndbNo ?? []));
  const request = { first: mostOffered + known.size, after: null, last: null, before: null };
  const { items } = await data.catalogue.page(search, request);
  const numbers = items.map(({ item }) => item.row.ndbNo).filter((ndbNo) => !known.has(ndbNo));
  const rows = await findCatalogueFoods({ data }, numbers.slice(0, mostOffered));
  return rows.filter((row) => row !== null);
}
