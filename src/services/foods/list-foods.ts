import type { Food } from "../../domain/model/food.js";
import { failed, ok, type Result } from "../../domain/problem.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { Deps, FoodFilter, Page } from "../deps.js";
import { inheritFacts } from "./inherit-facts.js";
import type { Actor } from "../access/actor.js";
import { seenBy } from "./names-for.js";
import { findFoodPage } from "./search-foods.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import { readSearch } from "./search-text.js";

/** What a list of foods is narrowed by. `publisher`: slug, whose own foods go first. */
interface WantedFoods extends FoodFilter {
  /** A name, or the start of one. */
  readonly search: string | null;
  readonly publisher?: string | null;
}

/**
 * A page of foods as known today, with what they inherit. Of a publisher's own whoever may read its drafts sees those that are saved, all
 * others what was published. Fails on a bad size, cursor or search text.
 */
export async function listFoods(
  deps: Deps,
  actor: Actor,
  input: { readonly filter: WantedFoods; readonly page: WantedPage },
): Promise<Result<Page<Food>>> {
  const { search, aisle, publisher = null } = input.filter;
  const problems = readSearch({ search, aisle, publisher });
  if (problems.length > 0) return failed(problems);
  const request = readPageRequest(input.page);
  if (!request.ok) return request;
  if (search !== null || publisher !== null) {
    const seen = seenBy(actor, publisher);
    return refuseBadCursor(request.value, () => findFoodPage(deps, { search, aisle }, seen, request.value));
  }
  const found = await refuseBadCursor(request.value, () => deps.data.foods.page({ aisle }, request.value));
  if (!found.ok) return found;
  const { items } = found.value;
  const foods = await inheritFacts(
    deps,
    items.map(({ item }) => item),
  );
  return ok({ ...found.value, items: items.map(({ cursor, item }, at) => ({ cursor, item: foods[at] ?? item })) });
}
