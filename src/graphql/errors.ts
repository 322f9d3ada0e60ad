import { GraphQLError, type GraphQLFormattedError } from "graphql";
import { firstProblems } from "../domain/first-problems.js";
import type { Problem, Result } from "../domain/problem.js";
import { NotAllowed } from "../services/access/actor.js";
import { unavailableMessage, DatabaseUnavailable } from "../services/database-unavailable.js";
import type { Log } from "../services/deps.js";
import { problemAnswer } from "../exports/json/problem.js";
import { problemText } from "../exports/sentences/problem-text.js";
import { wordsFor } from "../exports/words/words-for.js";
import type { ErrorCodeName } from "./error-codes.js";

/**
 * The caller's problems as one error: `extensions.code` is the first problem's, `extensions.at` the place in the
 * arguments, and `extensions.problems` all of them with their facts.
 */
export function problemsError(all: readonly Problem[]): GraphQLError {
  const problems = firstProblems(all);
  const [first] = problems;
  if (first === undefined) throw new Error("an error without a problem");
  return new GraphQLError(problems.map(problemText).join(" "), {
    extensions: {
      code: first.code,
      at: first.path,
      // Facts of a problem stand beside what all ways of asking say of it, under the names that they always had.
      problems: problems.map((problem) => ({ ...problemAnswer(problem, wordsFor("en")), ...problem })),
    },
  });
}

/** The value, or the caller's problems thrown as one error. */
export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw problemsError(result.problems);
  return result.value;
}

/** What a caller sees of a fault. The rest is in the log under the request id. */
const faultMessage = "An internal error occurred. Quote the request id when you report it.";

/** A fault of ours, as the caller sees it. */
export const shownFault = (requestId: string): GraphQLFormattedError => ({
  message: faultMessage,
  extensions: { code: "INTERNAL_SERVER_ERROR" satisfies ErrorCodeName, requestId },
});

/** The same error with a code, for errors of GraphQL itself. */
export const coded = (error: GraphQLError, code: ErrorCodeName): GraphQLFormattedError => ({
  ...error.toJSON(),
  extensions: { ...error.extensions, code },
});

/** The same for callers who may not ask about the schema: without the names that graphql-js suggests. */
export function codedWithoutSuggestion(error: GraphQLError, code: ErrorCodeName): GraphQLFormattedError {
  const shown = coded(error, code);
  return { ...shown, message: shown.message.replace(/ ?Did you mean [^]*\?/, "") };
}

/** An error of a field, as the caller sees it. What has no code is a fault of ours: it is logged, and masked. */
export function shownFieldError(error: GraphQLError, requestId: string, log: Log): GraphQLFormattedError {
  const { originalError } = error;
  if (originalError instanceof NotAllowed) return { ...error.toJSON(), extensions: { code: originalError.code } };
  if (error.extensions["code"] !== undefined) return error.toJSON();
  if (originalError instanceof DatabaseUnavailable) {
    return {
      ...error.toJSON(),
      message: unavailableMessage,
      extensions: { code: "UNAVAILABLE" satisfies ErrorCodeName },
    };
  }
  log.error({ requestId, err: originalError ?? error, path: error.path }, "a resolver failed");
  return { ...error.toJSON(), ...shownFault(requestId) };
}
