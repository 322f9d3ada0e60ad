import { limits, sameShare } from "../limits.js";
import type { CompiledPlan } from "./compiled-plan.js";
import { demandFor } from "./demand.js";
import type { Stock } from "../shopping/on-hand.js";

/**
 * How many more servings of the plan the left-over of one component would still feed, nothing more of it being made:
 * the largest k for which servings + k needs no more batches. Found by bisection, since more servings never need
 * fewer. null where not even one more fits, or where no number of servings ever needs more.
 */
export function servingsMore(
  plan: CompiledPlan,
  servings: number,
  stocks: ReadonlyMap<number, readonly Stock[]>,
  component: number,
  batches: number,
): number | null {
  const fits = (more: number): boolean =>
    demandFor(plan, servings + more, stocks).batches[component]! <= batches * (1 + sameShare);
  if (!fits(1)) return null;
  let low = 1;
  let high = 2;
  while (fits(high)) {
    low = high;
    high *= 2;
    if (high > limits.servings) return null;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}
