import { restOf } from "../engine-limits.js";
import type { Household, OnHand } from "../model/household.js";
import type { Path, Warning } from "../problem.js";
import { missingText, toDimension } from "../quantity/convert.js";
import { toNumber } from "../quantity/rational.js";
import type { Stock } from "../shopping/on-hand.js";
import type { CompiledComponent, CompiledPlan } from "./compile/compiled-plan.js";
import type { Demand } from "./demand.js";
import { daysUntil } from "./session/session-date.js";

/** Some of a component the household has, in base units of its yield. */
interface ComponentStock extends Stock {
  /** Place in `household.onHand`. */
  readonly entry: number;
}

export interface ComponentsOnHand {
  /** By index of the component. */
  readonly stocks: ReadonlyMap<number, readonly ComponentStock[]>;
  readonly warnings: readonly Warning[];
}

/** In base units of the component's yield, or the fact that is missing. */
function inYield({ amount, unit }: OnHand, { component, yield: perBatch }: CompiledComponent): number | string {
  if (unit === "batch") return toNumber(amount) * perBatch.low;
  const converted = toDimension({ low: amount, high: amount, unit }, perBatch.dimension, component, null);
  return converted.ok ? converted.amount.low : missingText(converted.missing);
}

/**
 * What the household already has of the plan's components. It goes off the demand before batches are counted. What is past
 * its date when the session begins is left out and named; so is what cannot be compared with the yield.
 *
 * @param left share of each entry of `household.onHand` that is still there
 * @param date ISO date of today, for a household without a session
 */
export function componentsOnHand(
  plan: CompiledPlan,
  household: Household,
  left: readonly number[],
  date: string | null,
): ComponentsOnHand {
  const warnings: Warning[] = [];
  const stocks = new Map<number, ComponentStock[]>();
  household.onHand.forEach((onHand, entry) => {
    if (onHand.item.kind !== "COMPONENT") return;
    const path: Path = ["household", "onHand", onHand.place ?? entry];
    const item = onHand.item.component;
    const index = plan.makeOrder.find((each) => plan.components[each]!.component.slug === item);
    if (index === undefined) {
      warnings.push({ code: "ON_HAND_NOT_NEEDED", path, item });
      return;
    }
    const { useBy } = onHand;
    const lastDay = daysUntil(useBy, household, date);
    if (lastDay !== null && lastDay < 0) {
      warnings.push({ code: "ON_HAND_TOO_OLD", path, item, useBy: useBy ?? "" });
      return;
    }
    const amount = inYield(onHand, plan.components[index]!);
    if (typeof amount === "string") warnings.push({ code: "ON_HAND_NOT_COMPARABLE", path, item, missing: amount });
    else stocks.set(index, [...(stocks.get(index) ?? []), { amount: amount * left[entry]!, lastDay, entry }]);
  });
  return { stocks, warnings };
}

/** What of the stocks was left lying although meals after its date need more of it than there is. */
export function componentsNotInTime(
  plan: CompiledPlan,
  { onHand: entries }: Household,
  { stocks }: ComponentsOnHand,
  demand: Demand,
): readonly Warning[] {
  return [...stocks].flatMap(([index, stock]) => {
    if (restOf(demand.high[index]!, demand.onHand[index]!) === 0) return [];
    const { slug } = plan.components[index]!.component;
    return stock.flatMap(({ amount, lastDay, entry }, at): Warning[] => {
      const useBy = entries[entry]?.useBy ?? null;
      if (lastDay === null || useBy === null || restOf(amount, demand.taken.get(index)![at]!) === 0) return [];
      const meals = plan.meals
        .filter(({ meal, takes }) => meal.day > lastDay && takes.some(({ component }) => component === index))
        .map(({ meal }) => meal.slug);
      const path: Path = ["household", "onHand", entries[entry]?.place ?? entry];
      return [{ code: "ON_HAND_NOT_IN_TIME", path, item: slug, useBy, meals }];
    });
  });
}
