import type { Step } from "../../model/component.js";
import type { KeepingClass } from "../../model/keeping.js";
import { chillingSteps, lastCooking } from "../../prep-session/cooling.js";
import { isCooking, stepsBefore } from "../../prep-session/heating.js";
import { classesAround } from "../../storage/keeping-classes.js";
import { coldRuleOf } from "./cold-rule.js";
import type { Finding } from "./finding.js";
import type { ScaledComponent, ScaledLine, ScaledPlan } from "../scaled.js";

/** Words of cooling, in the languages of the fixed words; without them, or `chills`, the writer is asked to look. */
const cooling =
  /(?<!\p{L})(fridge|refrigerat\p{L}*|freez\p{L}*|chill\p{L}*|cool\p{L}*|cold|ice|iced|kühl\p{L}*|gekühlt|abkühl\p{L}*|abgekühlt|auskühl\p{L}*|kalt\p{L}*|einfrieren|gefrier\p{L}*|eis\p{L}*|frigo|réfrigér\p{L}*|refroid\p{L}*|frais|froide?s?|congel\p{L}*|congél\p{L}*|glacée?|nevera|frigorífic\p{L}*|enfr[ií]\p{L}*|frí[oa]s?|frigorifer\p{L}*|raffredd\p{L}*|fredd[oaie]|geladeira|esfri\p{L}*|arrefec\p{L}*|koelkast|afkoel\p{L}*|koel\p{L}*|koud|vries\p{L}*|lodów\p{L}*|schł[oa]dz\p{L}*|ostud\p{L}*|stud\p{L}*|zamra\p{L}*|zimn\p{L}*)(?!\p{L})/iu;

/** Code of the class that all cooked food lies in. */
const cookedFood = "leftovers";

const stepsOf = ({ component, route }: ScaledComponent): readonly Step[] => route?.steps ?? component.steps;

/** Whether it comes out of its steps hot: heated, or of a class of cooked food, and nothing after that cools it. */
function comesHot(made: ScaledComponent, classes: readonly KeepingClass[]): boolean {
  const { component, route } = made;
  const steps = stepsOf(made);
  const cold = chillingSteps(steps, coldRuleOf(component, route, classes));
  const cools = (step: Step): boolean => !isCooking(step) && (cold.includes(step) || cooling.test(step.text));
  const hot = lastCooking(steps);
  if (hot.length > 0)
    return hot.some((cooked) => !steps.some((step) => cools(step) && stepsBefore(step, steps).has(cooked)));
  const keepsAs = route?.keepsAs ?? component.keepsAs;
  const around = keepsAs === null || route?.kind === "BUY" ? [] : classesAround(keepsAs, classes);
  const isCooked = around.some(({ code, throughAnalogy }) => code === cookedFood && !throughAnalogy);
  return isCooked && steps.length > 0 && !steps.some(cools);
}

const takes = (lines: readonly ScaledLine[], slug: string): boolean =>
  lines.some(({ item }) => item.kind === "COMPONENT" && item.component === slug);

/** Cooked food that is kept for a later day, while no step puts it into the cold: found where it is kept. */
export function checkChilling(
  { components, meals }: Pick<ScaledPlan, "components" | "meals">,
  classes: readonly KeepingClass[],
): readonly Finding[] {
  // Each comes after those it is made from.
  const hot = new Set<string>();
  return components.flatMap((made): readonly Finding[] => {
    const { component, route, lines } = made;
    const { slug } = component;
    const cold = coldRuleOf(component, route, classes);
    const chilled = stepsOf(made).some((step) => cooling.test(step.text) || step.chills === true);
    const takesHot = [...hot].some((each) => takes(lines, each));
    if (!comesHot(made, classes) && !(takesHot && !chilled)) return [];
    hot.add(slug);
    const later = meals.filter(({ meal, lines: eaten }) => meal.day > 0 && takes(eaten, slug)).map(({ meal }) => meal);
    const [first] = later.toSorted((a, b) => a.day - b.day);
    if (cold === null || first === undefined) return [];
    const path = ["components", slug];
    return [
      {
        code: "NEVER_CHILLED",
        severity: "LOOK",
        path,
        subject: slug,
        meal: first.slug,
        day: first.day,
        within: cold.within,
      },
    ];
  });
}
