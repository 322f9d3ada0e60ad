import type { InSlices, Work } from "../../../domain/counted-work.js";
import type { Household } from "../../../domain/model/household.js";
import type { FoodsToday } from "../../../domain/plan/review/foods-today.js";
import { ownRegion } from "../../../domain/plan/listing/fact-regions.js";
import type { ListedCost } from "../../../domain/plan/listing/listed-facts.js";
import { marketsOf } from "../../../domain/plan/listing/markets.js";
import { shopInSlices } from "../../../domain/plan/shop.js";
import type { ScaledPlan } from "../../../domain/plan/scaled.js";
import { readerIn } from "./listed-contents.js";

/** What a serving costs, wherever and in whatever money its foods are priced. A sum that some food is missing from is no cost. */
export function* listedCosts(
  scaled: ScaledPlan,
  own: Household,
  today: FoodsToday,
  work: Work,
): InSlices<readonly ListedCost[]> {
  const costs: ListedCost[] = [];
  for (const { region, currency } of marketsOf([...scaled.bundle.foods, ...today.bySlug.values()])) {
    const household = { ...(region === ownRegion ? own : readerIn(region)), currency };
    const { perServing, unpriced } = (yield* shopInSlices([scaled], household, today, work)).cost;
    const amount = unpriced.length === 0 ? (perServing?.amount ?? null) : null;
    costs.push({ market: region, currency, amount });
  }
  return costs;
}
