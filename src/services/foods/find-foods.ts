import type { Food } from "../../domain/model/food.js";
import type { Deps } from "../deps.js";
import { inheritFacts } from "./inherit-facts.js";
import { withOpenTable } from "./open-table-foods.js";
import { readStorable } from "../storable-text.js";

/** Foods as known today, with what they inherit, in the order asked for; null where there is none. Last, `usda-11233` is a row of the open table. */
export async function findFoods(deps: Pick<Deps, "data">, slugs: readonly string[]): Promise<readonly (Food | null)[]> {
  const foods = await readStorable(slugs, (slug) => [slug], deps.data.foods.bySlugs);
  return inheritFacts(deps, await withOpenTable(deps.data, slugs, foods));
}
