import type { ApolloServerPlugin } from "@apollo/server";
import type { GraphQLError } from "graphql";
import {
  unavailableHeaders,
  unavailableMessage,
  DatabaseUnavailable,
  logUnavailable,
} from "../../services/database-unavailable.js";
import { QuotaExceeded } from "../../services/access/rate-limit.js";
import { Refused, type Call, type CallContext } from "../server/call.js";
import { shownFieldError } from "../errors.js";
import { refusal, type Refusal } from "../server/refusal.js";
import { refuse } from "./refuse.js";

/**
 * What callers see of errors, and the status and media type of every answer. Errors carry the id of their request, so that an answer
 * with one is nobody else's.
 */
export function errorsPlugin(): ApolloServerPlugin<CallContext> {
  return {
    unexpectedErrorProcessingRequest: ({ requestContext, error }) => {
      requestContext.contextValue.call.fault = error;
      return Promise.resolve();
    },
    requestDidStart: () =>
      Promise.resolve({
        willSendResponse: ({ errors = [], response, contextValue: { call } }) => {
          const { http, body } = response;
          http.headers.set("content-type", call.type.contentType);
          // What failed because it was ended is nobody's fault, and nobody's answer.
          if (body.kind !== "single" || call.limit.over.aborted || errors.length === 0) return Promise.resolve();
          const refused = http.status === 405 ? mutationByGet : refusalOf(errors, body.singleResult.data ?? null, call);
          if (refused !== null) refuse(call, response, refused);
          else {
            const { deps, requestId } = call.asker;
            body.singleResult.errors = errors.map((error) => shownFieldError(error, requestId, deps.log));
            call.hasErrors = true;
          }
          return Promise.resolve();
        },
      }),
  };
}

type Answered = Readonly<Record<string, unknown>> | null;

/** Why the request as a whole is refused; null: the errors are those of fields. */
function refusalOf(errors: readonly GraphQLError[], data: Answered, { asker, deps }: Call): Refusal | null {
  for (const error of errors) {
    if (error instanceof Refused) return error.refusal;
    const { originalError } = error;
    if (originalError instanceof QuotaExceeded) {
      return refusal("RATE_LIMITED", originalError.message, {}, { headers: originalError.headers });
    }
  }
  const away = errors.map(({ originalError }) => originalError).find((error) => error instanceof DatabaseUnavailable);
  if (away === undefined) return null;
  logUnavailable((deps ?? asker.deps).log, asker.requestId, away);
  // Nothing is left of the answer without the database.
  const isAll = isEmpty(data) && errors.every(({ originalError }) => originalError instanceof DatabaseUnavailable);
  return isAll ? unavailable : null;
}

const isEmpty = (data: Answered): boolean => data === null || Object.values(data).every((field) => field === null);

export const unavailable = refusal("UNAVAILABLE", unavailableMessage, {}, { headers: unavailableHeaders });

const mutationByGet = refusal("METHOD_NOT_ALLOWED", "Send mutations by POST.", {}, { headers: { allow: "POST" } });
