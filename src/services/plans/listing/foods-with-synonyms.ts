import type { Food } from "../../../domain/model/food.js";
import type { Deps } from "../../deps.js";
import { findFoods } from "../../foods/find-foods.js";
import { findSynonyms } from "../../foods/foods-today.js";

/** A food as known today, and that which it is shopped as, where that is another. null: there is none. */
interface FoodWithSynonym {
  readonly slug: string;
  readonly food: Food | null;
  readonly other: string | null;
  readonly otherFood: Food | null;
}

/** In the order asked for. */
export async function foodsWithSynonyms(deps: Deps, slugs: readonly string[]): Promise<readonly FoodWithSynonym[]> {
  const same = await findSynonyms(deps, slugs);
  const all = [...new Set([...slugs, ...same.filter((other) => other !== null)])];
  const found = await findFoods(deps, all);
  const foods = new Map(all.map((slug, at) => [slug, found[at] ?? null]));
  return slugs.map((slug, at) => {
    const other = same[at] ?? null;
    const otherFood = other === null ? null : (foods.get(other) ?? null);
    return { slug, food: foods.get(slug) ?? null, other, otherFood };
  });
}
