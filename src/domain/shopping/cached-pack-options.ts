import type { Dimension } from "../model/amount.js";
import type { Food } from "../model/food.js";
import { ruledRegion } from "../model/region.js";
import { memoize } from "../memoize.js";
import { BoundedCache } from "../bounded-cache.js";
import { packShelf, type PackShelf, type Shop } from "./pack-options.js";

/** Shops remembered for one food; readers come from many places, foods live long. */
export const cachedPerFood = 16;
const shelves = memoize((_: Food) => new BoundedCache<PackShelf>("pack-shelves", { max: cachedPerFood }));

const regionsSoldIn = memoize(({ packs }: Food) => new Set(packs.flatMap((pack) => pack.region ?? [])));

/** A part of a country is that country for a food that nobody sells in that part alone. */
const regionOnShelf = (food: Food, { region }: Shop): string | null =>
  region === null ? null : ruledRegion(region, regionsSoldIn(food));

/** `packShelf`, remembered as long as the food lives: a list asks for the same few shelves at every number of servings. */
export function cachedPackOptions(food: Food, dimension: Dimension, shop: Shop): PackShelf {
  const kept = shelves(food);
  const region = regionOnShelf(food, shop);
  const key = `${dimension} ${region ?? ""} ${shop.currency ?? ""} ${String(shop.anywhereElse ?? false)}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const shelf = packShelf(food, dimension, { ...shop, region });
  kept.set(key, shelf);
  return shelf;
}
