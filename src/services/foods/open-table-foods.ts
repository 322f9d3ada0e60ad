import { memoize } from "../../domain/memoize.js";
import type { CatalogueRow } from "../../domain/model/catalogue-row.js";
import { openTableNumber } from "../../domain/model/open-table-slug.js";
import type { Food } from "../../domain/model/food.js";
import { foodOfRow } from "../../imports/usda/food-of-row.js";
import type { Data } from "../deps.js";
import { findCatalogueFoods } from "./find-catalogue-foods.js";

/** The same food each time, because much is known of a food as long as it lives. */
const ofRow = memoize((row: CatalogueRow): Food => foodOfRow(row));

/** Foods with a row of the open table in place of each that nobody describes and whose slug is a number there: `usda-11233`. */
export async function withOpenTable(
  data: Pick<Data, "catalogue">,
  slugs: readonly string[],
  foods: readonly (Food | null)[],
): Promise<readonly (Food | null)[]> {
  const numbers = slugs.map((slug, at) => (foods[at] ? null : openTableNumber(slug)));
  const wanted = [...new Set(numbers.filter((ndbNo) => ndbNo !== null))];
  if (wanted.length === 0) return foods;
  const rows = await findCatalogueFoods({ data }, wanted);
  const found = new Map(rows.flatMap((entry) => (entry === null ? [] : [[entry.row.ndbNo, ofRow(entry.row)]])));
  return foods.map((food, at) => food ?? found.get(numbers[at] ?? "") ?? null);
}
