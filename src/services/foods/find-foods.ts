import type { Food } from "../../domain/model/food.js";
import type { Deps } from "../deps.js";
import { inheritFacts } from "./inherit-facts.js";
import { readStorable } from "../storable-text.js";

/** Foods as known today, with what they inherit, in the order asked for; null where there is none. */
export async function findFoods(deps: Deps, slugs: readonly string[]): Promise<readonly (Food | null)[]> {
  return inheritFacts(deps, await readStorable(slugs, (slug) => [slug], deps.data.foods.bySlugs));
}
