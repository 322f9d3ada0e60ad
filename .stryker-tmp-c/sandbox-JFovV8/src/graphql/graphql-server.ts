// @ts-nocheck
import { ApolloServer, type ApolloServerPlugin } from "@apollo/server";
import { ApolloServerPluginLandingPageDisabled } from "@apollo/server/plugin/disabled";
import type { Log } from "../services/deps.js";
import type { Context } from "./context.js";
import { documentLimits, documentLimitsRule } from "./document-limits.js";
import { faultCode, formatError, notAllowed } from "./errors.js";
import { createSchema } from "./schema.js";

/** The engine behind the route: schema, limits and masking. Not started; `start()` it before the first request. */
export const createGraphqlServer = (log: Log): ApolloServer<Context> =>
  new ApolloServer<Context>({
    schema: createSchema(),
    // Nothing here rests on cookies, and the route takes bodies as JSON only, so a page elsewhere can abuse nothing.
    csrfPrevention: false,
    introspection: true,
    includeStacktraceInErrorResponses: false,
    allowBatchedHttpRequests: false,
    persistedQueries: false,
    stopOnTerminationSignals: false,
    parseOptions: { maxTokens: documentLimits.tokens },
    executionOptions: { maxCoercionErrors: 20 },
    validationRules: [documentLimitsRule],
    formatError: formatError,
    plugins: [ApolloServerPluginLandingPageDisabled(), logFaults(log)],
    logger: {
      debug: () => undefined,
      info: () => undefined,
      warn: (message: unknown) => log.warn({ from: "graphql" }, String(message)),
      error: (message: unknown) => log.error({ from: "graphql" }, String(message)),
    },
  });

/** Every fault goes to the log with the request id, and the id into the answer. */
const logFaults = (log: Log): ApolloServerPlugin<Context> => ({
  requestDidStart: () =>
    Promise.resolve({
      didEncounterErrors: (request) => {
        const { requestId } = request.contextValue;
        for (const error of request.errors ?? []) {
          const isFault =
            error.extensions["code"] === undefined && error.originalError !== undefined && notAllowed(error) === null;
          if (isFault) log.error({ requestId, err: error.originalError, path: error.path }, "a resolver failed");
        }
        return Promise.resolve();
      },
      willSendResponse: (request) => {
        const { body } = request.response;
        if (body.kind !== "single" || !body.singleResult.errors) return Promise.resolve();
        body.singleResult.errors = body.singleResult.errors.map((error) =>
          error.extensions?.["code"] === faultCode
            ? { ...error, extensions: { ...error.extensions, requestId: request.contextValue.requestId } }
            : error,
        );
        return Promise.resolve();
      },
    }),
});
