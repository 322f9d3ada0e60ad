import { batchesBegun, batchesFor } from "../component/batch.js";
import type { CompiledLine, CompiledPlan } from "./compiled-plan.js";

/** Per component, by its index in the compiled plan, in base units of its yield. */
export interface Demand {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** What is taken off for what the household has already, <= high. */
  readonly onHand: Float64Array;
  readonly batches: Float64Array;
  readonly loads: Float64Array;
}

/** How much a line of a meal grows from factor 1; the factor is servings / meal.serves. */
export function mealGrowth({ line }: CompiledLine, factor: number): number {
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
export function batchGrowth({ line }: CompiledLine, batches: number): number {
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

/**
 * Steps 1 and 2 of the computation: servings to demand on components, and demand to batches, users before what they
 * use. Everything is made for the upper end of a range.
 *
 * @param servings > 0, may be a fraction
 * @param onHand base units by component index, or null for nothing
 */
export function demandFor(plan: CompiledPlan, servings: number, onHand: Float64Array | null): Demand {
  const size = plan.components.length;
  const low = new Float64Array(size);
  const high = new Float64Array(size);
  const taken = new Float64Array(size);
  const batches = new Float64Array(size);
  const loads = new Float64Array(size);
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
    taken[index] = onHand === null ? 0 : Math.min(onHand[index]!, demand);
    const made = batchesFor((demand - taken[index]!) / perBatch.low, sizes);
    batches[index] = made.made;
    loads[index] = made.loads;
    for (const line of takes) {
      const growth = batchGrowth(line, made.made);
      low[line.component]! += line.low * growth;
      high[line.component]! += line.high * growth;
    }
  }
  return { low, high, onHand: taken, batches, loads };
}
