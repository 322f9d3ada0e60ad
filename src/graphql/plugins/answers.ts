import { HeaderMap, type ApolloServerPlugin, type GraphQLResponse } from "@apollo/server";
import { AnswerTooLarge, boundedBytes } from "../../http/answer-size.js";
import { boundedJsonInSlices } from "../../http/bounded-json.js";
import { WorkStopped } from "../../domain/counted-work.js";
import { runInSlices } from "../../services/time-slices.js";
import type { Deps } from "../../services/deps.js";
import type { Cache } from "../../services/cache/cache.js";
import { answerKey, cachedAnswer, type AnswerKey, type Computed } from "../../services/cache/cached-answer.js";
import { BoundedCache } from "../../domain/bounded-cache.js";
import { inStage } from "../../services/answer-stage.js";
import { isShared, type Call, type CallContext } from "../server/call.js";
import { createContext } from "../context.js";
import { mutationPatience, type EngineOptions } from "../server/engine-options.js";
import { refusal } from "../server/refusal.js";
import { refuse } from "./refuse.js";

/**
 * Answers that are known are handed over and not computed; others are computed within the time of the request, written, and kept where
 * they are everyone's.
 */
export function answersPlugin({ queryTime }: EngineOptions): ApolloServerPlugin<CallContext> {
  // The schema is the same for everybody, and for ever.
  const aboutSchema = new BoundedCache<Buffer>("introspection", keptAboutSchema);

  return {
    requestDidStart: ({ contextValue: { call } }) => {
      let finish: (computed: Computed<Buffer>) => void = () => undefined;
      let isExecuted = false;
      return Promise.resolve({
        responseForOperation: async () => {
          const { operation } = chosenOf(call);
          const ready = operation.aboutSchema === null ? undefined : aboutSchema.get(operation.aboutSchema);
          if (ready !== undefined) return handOver(call, ready);
          const { asked, asker, limit } = call;
          const isQuery = operation.kind === "query";
          const milliseconds = isQuery ? queryTime : mutationPatience * queryTime;
          const deps = limit.begin(asker.deps, milliseconds, isQuery ? asked.gone() : null);
          call.deps = deps;
          call.answerKey = placeOf(call);
          const { cache } = deps;
          if (cache === undefined || call.answerKey === null || !isShared(asker)) return null;
          const computed = new Promise<Computed<Buffer>>((resolve) => (finish = resolve));
          call.close = () => finish(nobodys);
          const found = await knownOrTools(cache, call.answerKey, deps, computed);
          if ("answer" in found) return handOver(call, found.answer);
          call.deps = found.deps;
          return null;
        },
        executionDidStart: ({ contextValue }) => {
          const { asker, deps } = call;
          if (deps === null) throw new Error("an operation is executed before its time is known");
          isExecuted = true;
          Object.assign(contextValue, createContext(deps, asker.requestId, asker.actor));
          let done = (): void => undefined;
          const executed = inStage(deps, "execute", () => new Promise<void>((resolve) => (done = resolve)));
          return Promise.resolve({
            executionDidEnd: () => {
              done();
              return executed;
            },
          });
        },
        willSendResponse: async ({ response }) => {
          if (!isExecuted) return;
          const { operation } = chosenOf(call);
          // The other plugins are done with the answer before the first pause.
          const answer = await written(call, response);
          if (answer === null) return;
          handOver(call, answer, response);
          const isWhole = !call.limit.over.aborted && !call.hasErrors;
          finish({ answer, bytes: isWhole ? answer.length : null });
          if (isWhole && operation.aboutSchema !== null)
            aboutSchema.set(operation.aboutSchema, answer, { size: answer.length });
        },
      });
    },
  };
}

/** Answers about the schema that are kept: of the standard query some ten versions go round. */
const keptAboutSchema = { max: 16, maxSize: 8_000_000, maxEntrySize: 2_000_000 };

const noBytes = Buffer.alloc(0);

/** Of no use to others who ask the same. */
const nobodys: Computed<Buffer> = { answer: noBytes, bytes: null };

function chosenOf({ chosen }: Call) {
  if (chosen === null) throw new Error("an operation is answered before it is known");
  return chosen;
}

function placeOf({ chosen, priced }: Call): AnswerKey | null {
  if (chosen === null || priced === null) return null;
  const { operation, mayBeKept } = chosen;
  return operation.kind === "query" && operation.aboutSchema === null && mayBeKept
    ? answerKey("graphqlAnswers", `${operation.id} ${JSON.stringify(priced.variables)}`)
    : null;
}

/** The answer, if it is known or others are computing it; else the tools to compute it with, and it is what `computed` comes to. */
const knownOrTools = (
  cache: Cache,
  place: AnswerKey,
  deps: Deps,
  computed: Promise<Computed<Buffer>>,
): Promise<{ readonly answer: Buffer } | { readonly deps: Deps }> =>
  new Promise((resolve, reject) => {
    const remembered = cachedAnswer(cache, place, deps, (watched) => {
      resolve({ deps: watched });
      return computed;
    });
    remembered.then((answer) => resolve({ answer }), reject);
  });

/** An answer is bytes, which are kept and sent as they are; what Apollo Server would write is left empty. */
function handOver(
  call: Call,
  answer: Buffer,
  response: GraphQLResponse = { http: { headers: new HeaderMap() }, body: { kind: "single", singleResult: {} } },
): GraphQLResponse {
  call.answer = answer;
  response.body = { kind: "single", singleResult: {} };
  return response;
}

/** In turns with other requests. null: it is no answer with data, or too large for one, and says so instead; no bytes: it was ended. */
async function written(call: Call, response: GraphQLResponse): Promise<Buffer | null> {
  const { body } = response;
  const { deps, limit } = call;
  if (limit.over.aborted) return noBytes;
  if (deps === null || body.kind !== "single" || !("data" in body.singleResult)) return null;
  const { errors, data, extensions } = body.singleResult;
  const answer = errors === undefined ? { data, extensions } : { errors, data, extensions };
  try {
    return boundedBytes(await runInSlices(deps, () => boundedJsonInSlices(answer)));
  } catch (error) {
    if (error instanceof WorkStopped) return noBytes;
    if (!(error instanceof AnswerTooLarge)) throw error;
    const refused = call.chosen?.operation.kind === "mutation" ? tooLargeAndDone : tooLarge;
    refuse(call, response, call.priced === null ? refused : { ...refused, cost: call.priced.cost });
    return null;
  }
}

/** What its message says helps; a mutation was done all the same. */
const tooLarge = refusal("ANSWER_TOO_LARGE", new AnswerTooLarge().message);
const tooLargeAndDone = refusal(
  "ANSWER_TOO_LARGE",
  "The mutation was executed, but the answer would be larger than 4 MB. Select less, or query the result in pages.",
);
