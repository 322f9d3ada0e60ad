import { minutesOf } from "../../prep-session/task.js";
import type { Score } from "../choose-routes.js";
import type { ScaledPlan } from "../scaled.js";
import { resolvedSteps } from "./resolved-steps.js";

/** Minutes of work with the hands, then minutes in all, over everything that is made, as a session would count them. */
export function workOf({ components }: Pick<ScaledPlan, "components">): Score {
  let [handsOn, all] = [0, 0];
  for (const made of components) {
    const { batches, loads } = made;
    if (batches === 0) continue;
    for (const step of resolvedSteps(made)) {
      const minutes = minutesOf(step, { batches, loads });
      all += minutes;
      if (step.attention === "HANDS_ON") handsOn += minutes;
    }
  }
  return [handsOn, all];
}
