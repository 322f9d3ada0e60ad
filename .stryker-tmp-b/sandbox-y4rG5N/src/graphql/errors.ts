// @ts-nocheck
import { GraphQLError, type GraphQLFormattedError } from "graphql";
import type { Problem, Result } from "../domain/problem.js";
import { NotAllowed } from "../services/actor.js";
import { problemText } from "../services/explain.js";

/**
 * The caller's problems as one error: `extensions.code` is the first problem's, `extensions.at` the place in the
 * arguments, and `extensions.problems` all of them with their facts.
 */
export function problemsError(problems: readonly Problem[]): GraphQLError {
  const [first] = problems;
  if (first === undefined) throw new Error("an error without a problem");
  return new GraphQLError(problems.map(problemText).join(" "), {
    extensions: {
      code: first.code,
      at: first.path,
      problems: problems.map((problem) => ({ ...problem, message: problemText(problem) })),
    },
  });
}

/** The value, or the caller's problems thrown as one error. */
export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw problemsError(result.problems);
  return result.value;
}

/** The code that Apollo gives to whatever is not a GraphQLError: a fault of ours. */
export const faultCode = "INTERNAL_SERVER_ERROR";

/** What a caller sees of a fault. The rest is in the log under the request id. */
export const faultMessage = "Something went wrong on our side. Quote the request id when you report it.";

/** What a resolver threw because the actor may not; null: it threw something else. */
export function notAllowed(error: unknown): NotAllowed | null {
  const thrown = error instanceof GraphQLError ? error.originalError : error;
  return thrown instanceof NotAllowed ? thrown : null;
}

/** Masks faults, drops stack traces, and names a refused document by its own code. */
export function formatError(formatted: GraphQLFormattedError, error: unknown): GraphQLFormattedError {
  const refused = notAllowed(error);
  if (refused !== null) return { ...formatted, extensions: { code: refused.code } };
  const { stacktrace: _stacktrace, ...extensions } = formatted.extensions ?? {};
  if (extensions["code"] === faultCode) return { ...formatted, message: faultMessage, extensions: { code: faultCode } };
  // Apollo calls every broken rule GRAPHQL_VALIDATION_FAILED; a limit is worth a code of its own.
  const code = "limit" in extensions ? "TOO_LARGE" : extensions["code"];
  return { ...formatted, extensions: { ...extensions, code } };
}
