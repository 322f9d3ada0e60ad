import type { ScaledPlan } from "../domain/plan/scaled.js";
import type { Problem } from "../domain/problem.js";
import { namedProblem, sessionProblemText } from "../exports/sentences/session-problem-text.js";
import { refusal, type Refusal } from "./refusal.js";
import { wordsFor } from "../exports/words/words-for.js";

/** The work of a plan fits no order, in one session or several. */
export const noSession = (problems: readonly Problem[], scaled: ScaledPlan): Refusal =>
  refusal("no-session", problems.map((problem) => sessionProblemText(problem, scaled, wordsFor("en"))).join(" "), {
    problems: problems.map((problem) => namedProblem(problem, scaled)),
  });
