import type { Step } from "../../model/component.js";
import type { Path } from "../../problem.js";
import { isOven } from "../../model/appliances.js";
import { isPreheating, stepsBefore } from "../../prep-session/heating.js";
import type { Finding } from "./finding.js";

/**
 * Baking needs a temperature, and an oven that was lit in time: a step before it in the same oven that uses no line of
 * food. One component's preheating serves every other that bakes at the same temperature.
 *
 * @param preheated temperatures that some other component's steps preheat to
 */
export function checkOvens(
  steps: readonly Step[],
  component: string,
  path: Path,
  preheated: ReadonlySet<number>,
): readonly Finding[] {
  return steps.flatMap((step): Finding[] => {
    if (!isOven(step.appliance) || isPreheating(step)) return [];
    const at = [...path, "steps", step.id];
    if (step.temperatureC === null) {
      return [{ code: "OVEN_WITHOUT_TEMPERATURE", severity: "LOOK", path: at, component, step: step.id }];
    }
    const { temperatureC } = step;
    const lit = [...stepsBefore(step, steps)].some((each) => isPreheating(each) && each.temperatureC === temperatureC);
    if (lit || preheated.has(temperatureC)) return [];
    return [{ code: "OVEN_NOT_PREHEATED", severity: "LOOK", path: at, component, step: step.id, temperatureC }];
  });
}
