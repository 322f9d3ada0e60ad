import type { ScaledPlan } from "../domain/plan/scaled.js";
import type { Problem } from "../domain/problem.js";
import { problemText } from "./problem-text.js";

/** Why there is no session, for readers: steps in the words of the plan, where problems name them by slug and id. */
export function sessionProblemText(problem: Problem, { meals, components }: ScaledPlan): string {
  if (problem.code !== "WAITS_CANNOT_BE_KEPT" && problem.code !== "STEPS_IN_A_CIRCLE")
    return problemText({ ...problem, path: [] });
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
  return problemText({ ...problem, path: [], steps: [...new Set(problem.steps.map(named))] });
}
