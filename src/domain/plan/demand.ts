import { batchesBegun, batchesFor } from "../component/batch.js";
import { restOf } from "../engine-limits.js";
import { takeFromStock, type Stock } from "../shopping/on-hand.js";
import type { CompiledLine, CompiledPlan } from "./compile/compiled-plan.js";

/** Per component, by its index in the compiled plan, in base units of its yield. */
export interface Demand {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** What the household has of it and need not make, <= high. */
  readonly onHand: Float64Array;
  /** The same for each stock given, in its order. */
  readonly taken: ReadonlyMap<number, readonly number[]>;
  readonly batches: Float64Array;
  readonly loads: Float64Array;
}

/** How much a line of a meal grows from factor 1; the factor is servings / meal.serves. */
export function mealGrowth({ line }: Pick<CompiledLine, "line">, factor: number): number {
  switch (line.rule) {
    case "PROPORTIONAL":
      return factor;
    case "PER_BATCH":
      return factor > 0 ? 1 : 0;
    case "POWER":
      return factor > 0 ? factor ** (line.exponent ?? 1) : 0;
    case "TO_TASTE":
      return 0;
  }
}

/** How much a line of a component grows from one batch. */
export function batchGrowth({ line }: Pick<CompiledLine, "line">, batches: number): number {
  switch (line.rule) {
    case "PROPORTIONAL":
      return batches;
    case "PER_BATCH":
      return batchesBegun(batches);
    case "POWER":
      return batches > 0 ? batches ** (line.exponent ?? 1) : 0;
    case "TO_TASTE":
      return 0;
  }
}

/** What meals after a day take of a component directly; what goes into other components is used at the session. */
function takenAfter(plan: CompiledPlan, servings: number, component: number, day: number): number {
  let sum = 0;
  for (const { meal, takes } of plan.meals) {
    if (meal.day <= day) continue;
    for (const line of takes) {
      if (line.component === component) sum += line.high * mealGrowth(line, servings / meal.serves);
    }
  }
  return sum;
}

/**
 * Steps 1 and 2 of the computation: servings to demand on components, and demand to batches, users before what they
 * use. Everything is made for the upper end of a range.
 *
 * @param servings > 0, may be a fraction
 * @param stocks what there is already, by component index
 */
export function demandFor(plan: CompiledPlan, servings: number, stocks: ReadonlyMap<number, readonly Stock[]>): Demand {
  const size = plan.components.length;
  const low = new Float64Array(size);
  const high = new Float64Array(size);
  const onHand = new Float64Array(size);
  const batches = new Float64Array(size);
  const loads = new Float64Array(size);
  const taken = new Map<number, readonly number[]>();
  for (const { meal, takes } of plan.meals) {
    const factor = servings / meal.serves;
    for (const line of takes) {
      const growth = mealGrowth(line, factor);
      low[line.component]! += line.low * growth;
      high[line.component]! += line.high * growth;
    }
  }
  for (let at = plan.makeOrder.length - 1; at >= 0; at--) {
    const index = plan.makeOrder[at]!;
    const { sizes, takes, yield: perBatch } = plan.components[index]!;
    const demand = high[index]!;
    const stock = stocks.get(index);
    if (stock !== undefined) {
      const until = (day: number): number => demand - takenAfter(plan, servings, index, day);
      const shares = takeFromStock(demand, stock, until);
      taken.set(index, shares);
      onHand[index] = Math.min(
        demand,
        shares.reduce((sum, each) => sum + each, 0),
      );
    }
    const made = batchesFor(restOf(demand, onHand[index]!) / perBatch.low, sizes);
    batches[index] = made.made;
    loads[index] = made.loads;
    for (const line of takes) {
      const growth = batchGrowth(line, made.made);
      low[line.component]! += line.low * growth;
      high[line.component]! += line.high * growth;
    }
  }
  return { low, high, onHand, taken, batches, loads };
}
