// @ts-nocheck
import type { Food } from "../domain/model/food.js";
import type { Deps } from "./deps.js";
import { readStorable } from "./storable.js";

/** Foods as known today, in the order asked for; null where there is none. */
export function findFoods(deps: Deps, slugs: readonly string[]): Promise<readonly (Food | null)[]> {
  return readStorable(slugs, (slug) => [slug], deps.data.foods.bySlugs);
}
