import type { TypedDocumentString } from "./generated/operations.js";
import { CommandFailed, exitCodes, type ExitCode } from "./outcome.js";

/** A service that is asked by GraphQL: over HTTP, or this machine's database through the same schema. */
export interface Service {
  ask<Answer, Variables>(operation: TypedDocumentString<Answer, Variables>, variables: Variables): Promise<Answer>;
  close(): Promise<void>;
}

interface AskedError {
  readonly message: string;
  readonly extensions?: { readonly code?: unknown; readonly requestId?: unknown } | undefined;
}

/** A failure for the errors of a GraphQL answer: broken requests and refusals, not the problems that a payload lists. */
export function failureOf(errors: readonly AskedError[]): CommandFailed {
  const [first] = errors;
  const code = typeof first?.extensions?.code === "string" ? first.extensions.code : "SERVICE_FAULT";
  const request = first?.extensions?.requestId;
  const suffix = typeof request === "string" ? ` (request ${request})` : "";
  const messages = errors.map(({ message }) => message);
  if (code === "GRAPHQL_VALIDATION_FAILED" || code === "BAD_USER_INPUT") {
    return new CommandFailed(exitCodes.unreachable, "OTHER_VERSION", [
      `The service does not understand this command; it may be of another version. It says: ${messages.join(" ")}`,
    ]);
  }
  return new CommandFailed(exitOf(code), code, [`${messages.join(" ")}${suffix}`]);
}

function exitOf(code: string): ExitCode {
  if (code === "UNAUTHENTICATED" || code === "FORBIDDEN") return exitCodes.notAllowed;
  const fault = code === "INTERNAL_SERVER_ERROR" || code === "SERVICE_FAULT";
  return fault ? exitCodes.unreachable : exitCodes.problems;
}
