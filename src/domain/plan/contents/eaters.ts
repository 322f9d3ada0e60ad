import type { Household } from "../../model/household.js";
import { toNumber } from "../../quantity/rational.js";

/** Servings in amounts of food: two adults and a child who eats half are three people and 2.5 servings. */
export function effectiveServings(servings: number, { eaters }: Household): number {
  if (eaters === null) return servings;
  return eaters.reduce((sum, { count, portion }) => sum + count * toNumber(portion), 0);
}
