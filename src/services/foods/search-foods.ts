import { z } from "zod";
import type { Food } from "../../domain/model/food.js";
import { searchFoodsInSlices } from "../../domain/quantity/naming/search-foods.js";
import { decodeCursor, encodeCursor } from "../../persistence/sql/cursor.js";
import type { PageRequest } from "../../persistence/sql/page.js";
import type { Deps, FoodFilter, Page } from "../deps.js";
import { runInSlices } from "../time-slices.js";
import { namesFor, type NamesSeen } from "./names-for.js";

/** A place in a list, and the food there: of a list that has changed the food counts. */
const cursorKeys = z.tuple([z.string().regex(/^\d{1,7}$/), z.string().max(200)]);

/**
 * A page of the foods that somebody may name: for a search the best first, else by slug, a publisher's own in place of those of their slugs.
 * @throws BadCursor
 */
export async function findFoodPage(
  deps: Pick<Deps, "data" | "work">,
  { search, aisle }: FoodFilter & { readonly search: string | null },
  seen: NamesSeen | null,
  request: PageRequest,
): Promise<Page<Food>> {
  const { names, lists, readFoods } = await namesFor(deps, seen);
  const all = (): readonly string[] => [...new Set(lists.flatMap((list) => list.map(({ slug }) => slug)))].toSorted();
  const called = search === null ? all() : await runInSlices(deps, (work) => searchFoodsInSlices(names, search, work));
  const slugs = called.filter((slug) => aisle === null || names.foods.get(slug)?.aisle === aisle);
  const cut = cutPage(slugs, request);
  const foods = await readFoods(cut.items.map(({ item }) => item));
  // A food that was taken away between the two reads is left out.
  const items = cut.items.flatMap(({ cursor }, at) => {
    const item = foods[at] ?? null;
    return item === null ? [] : [{ cursor, item }];
  });
  return { ...cut, items };
}

/** A page by Relay's rules of a list that is at hand. */
function cutPage(slugs: readonly string[], { first, after, last, before }: PageRequest): Page<string> {
  const placeOf = (cursor: string): number => {
    const [place, slug] = decodeCursor(cursor, cursorKeys);
    const at = Number(place);
    const now = slugs[at] === slug ? at : slugs.indexOf(slug);
    return now < 0 ? Math.min(at, slugs.length) : now;
  };
  const from = after === null ? 0 : placeOf(after) + 1;
  const to = before === null ? slugs.length : placeOf(before);
  const start = first === null ? Math.max(from, to - (last ?? 0)) : from;
  const end = first === null ? to : Math.min(to, from + first);
  const items = slugs.slice(start, Math.max(start, end)).map((item, at) => ({
    cursor: encodeCursor([String(start + at), item]),
    item,
  }));
  return { items, hasNext: end < slugs.length, hasPrevious: start > 0 };
}
