import { isOven } from "../model/appliances.js";
import type { Step } from "../model/component.js";

/** Words in appliance codes that mean heat. */
const hotWords =
  /(^|-)(oven|hob|stove|cooktop|ring|burner|grill|broiler|griddle|cooker|steamer|fryer|microwave|kettle|toaster)(-|$)/;
/** Hotter than this is cooked; colder only kept warm or lukewarm (USDA FSIS, Danger Zone: 140 F, 60 C). */
const leastCookingC = 60;

/** On or in something hot, watched or not. */
export const heats = ({ appliance, temperatureC }: Pick<Step, "appliance" | "temperatureC">): boolean =>
  temperatureC === null ? appliance !== null && hotWords.test(appliance) : temperatureC >= leastCookingC;

/** Heating an oven with nothing in it. */
export const isPreheating = (step: Step): boolean =>
  isOven(step.appliance) && step.lines.length === 0 && step.attention === "UNATTENDED" && step.after.length === 0;

/** Food gets hot in it. */
export const isCooking = (step: Step): boolean => heats(step) && !isPreheating(step);

/** The steps that come before one, directly or through others. */
export function stepsBefore<Each extends Step>(step: Step, steps: readonly Each[]): ReadonlySet<Each> {
  const byId = new Map(steps.map((each) => [each.id, each]));
  const found = new Set<Each>();
  const open = [...step.after];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const earlier = byId.get(id);
    if (earlier === undefined || found.has(earlier)) continue;
    found.add(earlier);
    open.push(...earlier.after);
  }
  return found;
}
