import { limits, sameShare } from "../engine-limits.js";
import type { Stock } from "../shopping/on-hand.js";
import type { CompiledPlan } from "./compile/compiled-plan.js";
import { demandFor, type Demand } from "./demand.js";

/**
 * For each of some components, how many more servings of the plan its left-over would still feed, nothing more of it being
 * made: the largest k for which servings + k needs no more batches. Found by bisection, since more servings never need
 * fewer, and for all of them together: one demand answers for every component. null where not even one more fits, or
 * where no number of servings ever needs more.
 *
 * @param made the demand at `servings`
 * @param components by index in the compiled plan
 */
export function extraServings(
  plan: CompiledPlan,
  servings: number,
  stocks: ReadonlyMap<number, readonly Stock[]>,
  made: Demand,
  components: readonly number[],
): ReadonlyMap<number, number | null> {
  const answers = new Map<number, number | null>(components.map((index) => [index, null]));
  const split = (more: number, open: readonly number[]): { fit: number[]; beyond: number[] } => {
    const { batches } = demandFor(plan, servings + more, stocks);
    const fit: number[] = [];
    const beyond: number[] = [];
    for (const index of open) {
      (batches[index]! <= made.batches[index]! * (1 + sameShare) ? fit : beyond).push(index);
    }
    return { fit, beyond };
  };
  /** `low` more fit for all of these, `high` more for none. */
  const narrow = (low: number, high: number, open: readonly number[]): void => {
    if (open.length === 0) return;
    if (high - low <= 1) {
      for (const index of open) answers.set(index, low);
      return;
    }
    const middle = Math.floor((low + high) / 2);
    const { fit, beyond } = split(middle, open);
    narrow(low, middle, beyond);
    narrow(middle, high, fit);
  };
  let { fit } = split(1, components);
  for (let low = 1; fit.length > 0 && 2 * low <= limits.servings; low *= 2) {
    const doubled = split(2 * low, fit);
    narrow(low, 2 * low, doubled.beyond);
    fit = doubled.fit;
  }
  return answers;
}
