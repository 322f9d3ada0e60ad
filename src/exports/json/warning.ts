import { z } from "zod";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import type { Problem, Warning } from "../../domain/problem.js";
import { problemText } from "../sentences/problem-text.js";
import { warningText } from "../sentences/warning-text.js";
import type { Words } from "../words/words.js";
import { sessionProblemText } from "../sentences/session-problem-text.js";
import { named, text, texts, type Json } from "./named-schema.js";

export const warningSchema = named(
  "Warning",
  "Something a reader should know beside an answer that still stands.",
  z.object({
    code: text("The kind.", 60),
    message: text("A sentence that says where, and what to do.", 20_000),
    path: texts("Where: slugs and codes from the plan downwards, or names of parameters."),
  }),
);
type WarningJson = Json<typeof warningSchema>;

export const warningJson = (warning: Warning, words: Words): WarningJson => ({
  code: warning.code,
  message: warningText(warning, words),
  path: warning.path.map(String),
});

/** Why there is no session, in the same shape: its code, a sentence for readers, and the place. */
export const sessionProblemJson = (problem: Problem, scaled: ScaledPlan, words: Words): WarningJson => ({
  code: problem.code,
  message: sessionProblemText(problem, scaled, words),
  path: problem.path.map(String),
});

/** A problem in the same shape: its code, a sentence, and the place. */
export const problemJson = (problem: Problem): WarningJson => ({
  code: problem.code,
  message: problemText(problem),
  path: problem.path.map(String),
});
