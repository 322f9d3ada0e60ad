import type { Household } from "../model/household.js";
import type { Path, Warning } from "../problem.js";
import { missingText, toDimension } from "../quantity/convert.js";
import { toNumber } from "../quantity/rational.js";
import { sessionDate } from "./session-date.js";
import type { CompiledPlan } from "./compiled-plan.js";

export interface ComponentStock {
  /** Base units of the yield by component index; null when there is none. */
  readonly amounts: Float64Array | null;
  readonly warnings: readonly Warning[];
}

/**
 * What the household already has of the plan's components. It goes off the demand before batches are counted. What is past its
 * date when the session begins is left out and named; so is what cannot be compared with the yield.
 */
export function componentsOnHand(plan: CompiledPlan, household: Household): ComponentStock {
  const warnings: Warning[] = [];
  const amounts = new Float64Array(plan.components.length);
  const today = sessionDate(household);
  household.onHand.forEach(({ item, amount, unit, useBy }, at) => {
    if (item.kind !== "COMPONENT") return;
    const path: Path = ["household", "onHand", at];
    const index = plan.components.findIndex(({ component }) => component.slug === item.component);
    const found = plan.components[index];
    if (found === undefined) {
      warnings.push({ code: "ON_HAND_NOT_NEEDED", path, item: item.component });
      return;
    }
    if (useBy !== null && today !== null && useBy < today) {
      warnings.push({ code: "ON_HAND_TOO_OLD", path, item: item.component, useBy });
      return;
    }
    const { dimension, low } = found.yield;
    if (unit === "batch") {
      amounts[index]! += toNumber(amount) * low;
      return;
    }
    const converted = toDimension({ low: amount, high: amount, unit }, dimension, found.component, null);
    if (converted.ok) amounts[index]! += converted.amount.low;
    else {
      const missing = missingText(converted.missing);
      warnings.push({ code: "ON_HAND_NOT_COMPARABLE", path, item: item.component, missing });
    }
  });
  return { amounts: amounts.some((each) => each > 0) ? amounts : null, warnings };
}
