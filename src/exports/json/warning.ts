import { z } from "zod";
import type { InSlices } from "../../domain/counted-work.js";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import type { Problem, Warning } from "../../domain/problem.js";
import { messageParameters } from "../../domain/message-parameters.js";
import { namedWarning, type WarningNames } from "../sentences/named-warning.js";
import { warningTitle } from "../sentences/problem-title.js";
import { warningText } from "../sentences/warning-text.js";
import type { Words } from "../words/words.js";
import { sessionProblemText } from "../sentences/session-problem-text.js";
import { wordsFor } from "../words/words-for.js";
import { list, named, text, texts, type Json } from "./named-schema.js";
import { parameterSchema, parametersJson, problemAnswer } from "./problem.js";

export const warningSchema = named(
  "Warning",
  "Something a reader should know beside an answer that still stands.",
  z.object({
    code: text("The kind.", 60),
    message: text("A sentence that says where, and what to do.", 20_000),
    path: texts("Where: slugs and codes from the plan downwards, or names of parameters."),
    title: text("The kind in a few words, in the reader's language.", 200),
    text: text("For people, in that language: with names in place of slugs, and without the place.", 20_000),
    parameters: list(parameterSchema, "The facts that the sentences are made of, with slugs."),
  }),
);
type WarningJson = Json<typeof warningSchema>;

/** Warnings for a reader of some plans, a turn for each. */
export function* warningsJsonInSlices(
  warnings: readonly Warning[],
  words: Words,
  names: WarningNames,
): InSlices<WarningJson[]> {
  const written: WarningJson[] = [];
  for (const warning of warnings) {
    yield;
    written.push(warningJson(warning, words, names));
  }
  return written;
}

const warningJson = (warning: Warning, words: Words, names: WarningNames): WarningJson => ({
  code: warning.code,
  message: warningText(warning, words),
  path: warning.path.map(String),
  title: warningTitle(warning.code, words),
  text: warningText(namedWarning(warning, names), words),
  parameters: parametersJson(messageParameters(warning)),
});

/** Why there is no session, in the same shape: its code, a sentence for readers, and the place. */
export function sessionProblemJson(problem: Problem, scaled: ScaledPlan, words: Words): WarningJson {
  const sentence = sessionProblemText(problem, scaled, words);
  return { ...inShape(problem, words), message: sentence, text: sentence };
}

/** A problem in the same shape, in English. */
export const problemJson = (problem: Problem): WarningJson => inShape(problem, wordsFor("en"));

function inShape(problem: Problem, words: Words): WarningJson {
  const { where: _, ...shown } = problemAnswer(problem, words);
  return shown;
}
