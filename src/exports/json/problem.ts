import { z } from "zod";
import { messageParameters, type MessageParameter } from "../../domain/message-parameters.js";
import type { Problem } from "../../domain/problem.js";
import { problemText } from "../sentences/problem-text.js";
import { problemTitle } from "../sentences/problem-title.js";
import { readerProblemText } from "../sentences/reader-problem-text.js";
import type { Words } from "../words/words.js";
import { list, named, text, texts, type Json } from "./named-schema.js";

export const parameterSchema = named(
  "MessageParameter",
  "A fact that the sentences of a problem or a warning are made of.",
  z.object({
    name: text("Its name: `value`, or `offer.nearest` for a part of one.", 200),
    values: texts("As texts: one for each entry of a list, none where it is not known."),
  }),
);

/** The one shape of a problem, whichever way was asked. */
export const problemSchema = z.object({
  code: text("What is wrong.", 60),
  path: texts("Where: the name of a parameter, or the place in the body."),
  where: text("The same place by the names of GraphQL's arguments, however it was asked: `household.diets.1`.", 20_000),
  title: text("The kind in a few words, in the reader's language where a reader can cause it.", 200),
  message: text("Where, what is wrong, and what to do.", 20_000),
  text: text("For people, in the language of `locale`: what is wrong and what to do, without the place.", 20_000),
  parameters: list(parameterSchema, "The facts that the sentences are made of."),
});

export const parametersJson = (parameters: readonly MessageParameter[]): Json<typeof parameterSchema>[] =>
  parameters.map(({ name, values }) => ({ name, values: [...values] }));

/** Where in what was asked, by the names of the API. */
export const placeAsked = ({ asked, path }: Problem): string => (asked ?? path).join(".");

export const problemAnswer = (problem: Problem, words: Words): Json<typeof problemSchema> => ({
  code: problem.code,
  path: problem.path.map(String),
  where: placeAsked(problem),
  title: problemTitle(problem.code, words),
  message: problemText(problem),
  text: readerProblemText(problem, words),
  parameters: parametersJson(messageParameters(problem)),
});
