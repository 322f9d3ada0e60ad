import type { Step } from "../../model/component.js";
import { isCooking, isPreheating } from "../heating.js";

/** Minutes of a step as written, for one batch: coming to the boil, then the rest. */
export const writtenMinutes = ({ minutes, heatUpMinutes }: Pick<Step, "minutes" | "heatUpMinutes">): number =>
  minutes + (heatUpMinutes ?? 0);

/**
 * How the length of a step grows. What its writer says stands; where nobody said: work with the hands grows with the
 * amount, what an appliance does alone is per load, and an empty oven, resting and soaking stay as they are. What has a
 * time of its own to get hot is per load too, since only that time grows.
 */
export function growthOf(step: Step): Step["grows"] {
  const { attention, appliance, growthStated, heatUpMinutes } = step;
  if (isPreheating(step)) return "FIXED";
  if (step.grows === "FIXED" && growthStated === true) return "FIXED";
  if (heatUpMinutes !== undefined && isCooking(step)) return "PER_LOAD";
  if (step.grows === "PER_LOAD") return "PER_LOAD";
  if (attention === "HANDS_ON") return "PER_BATCH";
  return appliance === null ? "FIXED" : "PER_LOAD";
}
