import { createSourceEventStream, execute, type ExecutionResult, type GraphQLSchema } from "graphql";
import { AnswerTooLarge } from "../../http/answer-size.js";
import { boundedJson } from "../../http/bounded-json.js";
import { openTimeLimit } from "../../services/time-limit.js";
import type { Deps } from "../../services/deps.js";
import { createContext } from "../context.js";
import { shownFieldError } from "../errors.js";
import type { Asked, Asker } from "./call.js";
import type { EngineOptions } from "./engine-options.js";
import { unresolved, type Operations } from "./operations.js";
import type { ReadRequest } from "./read-request.js";
import { refusal, tooDear, type Refusal } from "./refusal.js";
import { readOperationRequest } from "./subscription-request.js";

/** A subscription that has begun. */
export interface Subscription {
  /** Points of each result. */
  readonly cost: number;
  /** Results as they happen, as JSON. They end when there is nothing more to come, or when it is over. */
  readonly results: AsyncIterable<string>;
  /** Tells it that nobody reads any longer. */
  end(): void;
}

type Subscribe = (request: ReadRequest, asked: Asked, asker: Asker) => Promise<Subscription | Refusal>;

/** Subscriptions, by the same documents, costs and masks as all other operations. Each result is executed within the time of a query. */
export function openSubscriptions(
  { schema, documents }: { readonly schema: GraphQLSchema; readonly documents: Operations },
  { costLimit, queryTime }: EngineOptions,
): Subscribe {
  return async (read, asked, asker) => {
    const request = readOperationRequest(read);
    if ("code" in request) return request;
    const found = documents.find(request);
    if (!("source" in found)) return found;
    const compiled = documents.compile(found.source);
    if (!compiled.ok) return documents.faultsOf(compiled);
    const { operationName } = request;
    const { operations } = compiled;
    const named =
      operationName === undefined
        ? operations.length === 1
          ? operations[0]
          : undefined
        : operations.find(({ name }) => name === operationName);
    if (named === undefined) return unresolved(operations.length, operationName);
    if (named.kind !== "subscription") return onlySubscriptions;
    const coerced = named.coerce(request.variables);
    if (!coerced.ok) return documents.wrongVariables(coerced.errors);
    const cost = named.cost(coerced.variables);
    asked.report({
      ...{ kind: "subscription", operation: named.name, isRegistered: found.isRegistered },
      ...{ cost, hasErrors: false, plans: [] },
    });
    if (cost > costLimit) return tooDear({ asked: cost, limit: costLimit });
    asked.charge(cost);
    found.keep();

    const over = new AbortController();
    const { actor, requestId } = asker;
    // What was heard of a moment ago a replica may lack.
    const { publicData: _, ...deps } = asker.deps;
    const args = {
      ...{ schema, document: compiled.document, variableValues: request.variables },
      ...(operationName === undefined ? {} : { operationName }),
    };
    const shown = ({ data, errors }: ExecutionResult, of: Deps): string =>
      boundedJson({
        ...(errors === undefined ? {} : { errors: errors.map((error) => shownFieldError(error, requestId, of.log)) }),
        ...(data === undefined ? {} : { data }),
        extensions: { cost: { asked: cost, limit: costLimit } },
      });
    const resultOf = async (rootValue: unknown): Promise<string> => {
      const limit = openTimeLimit();
      const own = limit.begin(deps, queryTime, over.signal);
      const contextValue = createContext(own, requestId, actor);
      const executed = await limit.hold(async () => execute({ ...args, rootValue, contextValue }));
      asked.chargeOwed(own.work?.steps ?? 0);
      if (executed === "ENDED") return JSON.stringify({ errors: timedOut.errors });
      if (executed === "TOO_MUCH") return JSON.stringify({ errors: tooLarge.errors });
      try {
        return shown(executed, own);
      } catch (error) {
        if (!(error instanceof AnswerTooLarge)) throw error;
        return JSON.stringify({ errors: tooLarge.errors });
      }
    };
    const begun = await createSourceEventStream({
      ...args,
      contextValue: { ...createContext(deps, requestId, actor), over: over.signal },
    });
    async function* results(): AsyncGenerator<string, void, undefined> {
      if (!(Symbol.asyncIterator in begun)) return yield shown(begun, deps);
      for await (const event of begun) yield await resultOf(event);
    }
    return { cost, results: results(), end: () => over.abort() };
  };
}

const onlySubscriptions = refusal(
  "BAD_REQUEST",
  "Send queries and mutations to /graphql. Subscriptions alone run here.",
);
const timedOut = refusal("TIMED_OUT", "This took too long and was stopped. Request less, or try again later.");
const tooLarge = refusal("ANSWER_TOO_LARGE", new AnswerTooLarge().message);
