import type { ScaledPlan } from "../../domain/plan/scaled.js";
import type { Problem } from "../../domain/problem.js";
import { problemText } from "./problem-text.js";

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
export function sessionProblemText(problem: Problem, scaled: Pick<ScaledPlan, "meals" | "components">): string {
  return problem.code === "TOO_LARGE"
    ? `${problem.size} ${problem.what} are too many to put into one order. Make fewer servings at a time, or take one of the things on another day.`
    : problemText(namedProblem(problem, scaled));
}
