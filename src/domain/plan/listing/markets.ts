import type { Food } from "../../model/food.js";
import { elsewhere, ownRegion } from "./fact-regions.js";

/** Where and in what money a plan can be priced. `region`: `OWN` for where the plan is for, else where a reader shops. */
interface Market {
  readonly region: string;
  readonly currency: string;
}

const mostRegions = 8;
const mostCurrencies = 4;

/** Every region and currency that the packs of some foods name, the commonest first, with where the plan is for and everywhere else. */
export function marketsOf(foods: readonly Food[]): readonly Market[] {
  const packs = foods.flatMap((food) => food.packs).filter(({ price }) => price !== null);
  const currencies = commonest(packs.flatMap(({ price }) => price?.currency ?? [])).slice(0, mostCurrencies);
  const regions = commonest(packs.flatMap(({ region }) => region ?? [])).slice(0, mostRegions);
  return [ownRegion, ...regions, elsewhere].flatMap((region) => currencies.map((currency) => ({ region, currency })));
}

function commonest(all: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const each of all) counts.set(each, (counts.get(each) ?? 0) + 1);
  return [...counts].toSorted(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([each]) => each);
}
