import { memoize } from "../../domain/memoize.js";
import type { Result } from "../../domain/problem.js";
import { failed, ok } from "../../domain/problem.js";
import { catalogueFacts, type CatalogueFacts } from "../../imports/usda/catalogue-facts.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { Deps, KnownCatalogueRow, Page } from "../deps.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import { readSearch } from "./search-text.js";
import { readStorable } from "../storable-text.js";

/** A food of the open table, as printed and as facts. */
export interface CatalogueFood extends KnownCatalogueRow {
  readonly facts: CatalogueFacts;
}

/** Rows are kept as they were read, and so is what they say. */
const catalogueFood = memoize(({ row, edition }: KnownCatalogueRow): CatalogueFood => ({
  row,
  edition,
  facts: catalogueFacts(row, edition),
}));

/** By their numbers in the table, in the order asked for; null where there is none. */
export async function findCatalogueFoods(
  { data }: { readonly data: Pick<Deps["data"], "catalogue"> },
  numbers: readonly string[],
): Promise<readonly (CatalogueFood | null)[]> {
  const found = await readStorable(numbers, (ndbNo) => [ndbNo], data.catalogue.byNumbers);
  return found.map((known) => known && catalogueFood(known));
}

/**
 * A page of the open table, the shortest descriptions first. Fails on a bad size, cursor or search text.
 *
 * @param search words, or beginnings of words, in any order; null: all
 */
export async function listCatalogueFoods(
  { data }: Deps,
  { search, page }: { readonly search: string | null; readonly page: WantedPage },
): Promise<Result<Page<CatalogueFood>>> {
  const problems = readSearch({ search }, []);
  if (problems.length > 0) return failed(problems);
  const request = readPageRequest(page);
  if (!request.ok) return request;
  const found = await refuseBadCursor(request.value, () => data.catalogue.page(search, request.value));
  if (!found.ok) return found;
  const items = found.value.items.map(({ cursor, item }) => ({ cursor, item: catalogueFood(item) }));
  return ok({ ...found.value, items });
}
