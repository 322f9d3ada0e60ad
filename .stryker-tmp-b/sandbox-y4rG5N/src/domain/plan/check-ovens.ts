// @ts-nocheck
import type { Step } from "../model/component.js";
import type { Path } from "../problem.js";
import type { Finding } from "./finding.js";

/** Appliance codes that have to be hot before something goes in. */
const ovens: ReadonlySet<string> = new Set(["oven", "oven-shelf"]);

/** Steps that come before one, directly or through others. */
function before(step: Step, steps: readonly Step[]): readonly Step[] {
  const byId = new Map(steps.map((each) => [each.id, each]));
  const found = new Set<Step>();
  const open = [...step.after];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const earlier = byId.get(id);
    if (earlier === undefined || found.has(earlier)) continue;
    found.add(earlier);
    open.push(...earlier.after);
  }
  return [...found];
}

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
    if (step.appliance === null || !ovens.has(step.appliance) || isPreheating(step)) return [];
    const at = [...path, "steps", step.id];
    if (step.temperatureC === null) {
      return [{ code: "OVEN_WITHOUT_TEMPERATURE", severity: "LOOK", path: at, component, step: step.id }];
    }
    const { temperatureC } = step;
    const lit = before(step, steps).some((each) => isPreheating(each) && each.temperatureC === temperatureC);
    if (lit || preheated.has(temperatureC)) return [];
    return [{ code: "OVEN_NOT_PREHEATED", severity: "LOOK", path: at, component, step: step.id, temperatureC }];
  });
}

/** Heating an oven with nothing in it. */
export const isPreheating = (step: Step): boolean =>
  step.appliance !== null &&
  ovens.has(step.appliance) &&
  step.lines.length === 0 &&
  step.attention === "UNATTENDED" &&
  step.after.length === 0;
