import type { ScaledPlan } from "../../domain/plan/scaled.js";
import type { Problem } from "../../domain/problem.js";
import { problemText } from "./problem-text.js";
import { codeName } from "../words/rule-words.js";
import type { Words } from "../words/words.js";

/** Why there is no session, with steps in the words of the plan, where problems name them by slug and id. */
export function namedProblem(
  problem: Problem,
  { meals, components }: Pick<ScaledPlan, "meals" | "components">,
): Problem {
  if (
    problem.code !== "WAITS_CANNOT_BE_KEPT" &&
    problem.code !== "STEPS_IN_A_CIRCLE" &&
    problem.code !== "KITCHEN_WITHOUT"
  )
    return { ...problem, path: [] };
  const named = (id: string): string => {
    // `slug/step`, and `slug/step/2` for the second load.
    const [slug, step] = id.split("/");
    const made = components.find(({ component }) => component.slug === slug);
    const eaten = meals.find(({ meal }) => meal.slug === slug);
    const title = made?.component.title ?? eaten?.meal.title ?? slug ?? id;
    const steps = made?.route?.steps ?? made?.component.steps ?? eaten?.meal.steps ?? [];
    const text = steps.find((each) => each.id === step)?.text;
    return text === undefined ? title : `${title} (“${text}”)`;
  };
  return { ...problem, path: [], steps: [...new Set(problem.steps.map(named))] };
}

/** Why there is no session, for readers. */
export function sessionProblemText(
  problem: Problem,
  scaled: Pick<ScaledPlan, "meals" | "components">,
  words: Words,
): string {
  const say = words.noSession;
  const named = namedProblem(problem, scaled);
  switch (named.code) {
    case "TOO_LARGE":
      return say.TOO_LARGE({ size: String(named.size), what: named.what });
    case "STEPS_IN_A_CIRCLE":
      return say.STEPS_IN_A_CIRCLE({ steps: named.steps.join(", ") });
    case "WAITS_CANNOT_BE_KEPT":
      return say.WAITS_CANNOT_BE_KEPT({ steps: named.steps.join(", ") });
    case "KITCHEN_WITHOUT":
      return say.KITCHEN_WITHOUT({
        appliance: codeName("appliances", named.appliance, words),
        steps: named.steps.join(", "),
      });
    default:
      return problemText(named);
  }
}
