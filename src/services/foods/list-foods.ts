import type { Food } from "../../domain/model/food.js";
import { failed, ok, type Result } from "../../domain/problem.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { Deps, FoodFilter, Page } from "../deps.js";
import { inheritFacts } from "./inherit-facts.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import { readSearch } from "./search-text.js";

/** A page of foods as known today, with what they inherit. Fails on a bad size, cursor or search text. */
export async function listFoods(
  deps: Deps,
  input: { readonly filter: FoodFilter; readonly page: WantedPage },
): Promise<Result<Page<Food>>> {
  const problems = readSearch({ ...input.filter });
  if (problems.length > 0) return failed(problems);
  const request = readPageRequest(input.page);
  if (!request.ok) return request;
  const found = await refuseBadCursor(request.value, () => deps.data.foods.page(input.filter, request.value));
  if (!found.ok) return found;
  const { items } = found.value;
  const foods = await inheritFacts(
    deps,
    items.map(({ item }) => item),
  );
  return ok({ ...found.value, items: items.map(({ cursor, item }, at) => ({ cursor, item: foods[at] ?? item })) });
}
