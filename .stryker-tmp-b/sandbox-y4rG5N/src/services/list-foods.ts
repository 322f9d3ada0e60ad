// @ts-nocheck
import type { Food } from "../domain/model/food.js";
import { failed, type Result } from "../domain/problem.js";
import { badCursor } from "./bad-cursor.js";
import type { Deps, FoodFilter, Page } from "./deps.js";
import { readPageRequest, type WantedPage } from "./page-request.js";
import { readSearch } from "./search-text.js";

/** A page of foods as known today. Fails on a bad size, cursor or search text. */
export async function listFoods(
  deps: Deps,
  input: { readonly filter: FoodFilter; readonly page: WantedPage },
): Promise<Result<Page<Food>>> {
  const problems = readSearch({ ...input.filter });
  if (problems.length > 0) return failed(problems);
  const request = readPageRequest(input.page);
  if (!request.ok) return request;
  return badCursor(request.value, () => deps.data.foods.page(input.filter, request.value));
}
