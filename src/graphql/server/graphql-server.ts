import { ApolloServer, HeaderMap } from "@apollo/server";
import {
  ApolloServerPluginCacheControlDisabled,
  ApolloServerPluginInlineTraceDisabled,
  ApolloServerPluginLandingPageDisabled,
  ApolloServerPluginSchemaReportingDisabled,
  ApolloServerPluginUsageReportingDisabled,
} from "@apollo/server/plugin/disabled";
import type { Log } from "../../services/deps.js";
import { findCachedAnswer, type AnswerKey } from "../../services/cache/cached-answer.js";
import { tooMuchAtOnce } from "../../http/answer-size.js";
import { openTimeLimit } from "../../services/time-limit.js";
import { isShared, type Asked, type Asker, type Call, type CallContext, type ReportedOperation } from "./call.js";
import { keptDocuments } from "./compiled-operations.js";
import type { EngineOptions } from "./engine-options.js";
import type { MediaType } from "./media-type.js";
import { answersPlugin } from "../plugins/answers.js";
import { costPlugin } from "../plugins/cost.js";
import { documentsPlugin } from "../plugins/documents.js";
import { errorsPlugin } from "../plugins/errors.js";
import type { ReadRequest } from "./read-request.js";
import { recentBytes } from "./recent-bytes.js";
import { openOperations, type Operations } from "./operations.js";
import { openSubscriptions, type Subscription } from "./subscriptions.js";
import { refusal, refusalStatus, type Refusal } from "./refusal.js";
import type { GraphQLSchema } from "graphql";
import { createSchema } from "../schema.js";

/** A request as it came. */
export interface RawRequest {
  readonly method: "GET" | "POST";
  /** All of it that says what is asked: the same bytes, by the same method, are the same request for ever. */
  readonly bytes: Buffer;
  /** The form of the answer. */
  readonly type: MediaType;
  read(): ReadRequest | Refusal;
}

/** An answer as it goes out, but for the headers that every answer has. */
export interface HttpAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
  readonly hasErrors: boolean;
  /** It was asked for by the hash of its document, so its address means the same for ever. */
  readonly isNamed: boolean;
  /** It tells of what is new. */
  readonly asksForChanges: boolean;
  /** A query's, without errors, to anyone: everybody who asks the same is answered the same. */
  readonly isShared: boolean;
  /** Where it may be cached; null: nowhere. */
  readonly place: AnswerKey | null;
}

/** An answer that was given before, to the same bytes, and is still right. */
interface ReadyAnswer {
  readonly told: ReportedOperation;
  readonly isNamed: boolean;
  readonly asksForChanges: boolean;
  readonly place: AnswerKey;
  readonly body: Buffer;
}

export interface GraphqlServer {
  /** null: it is shown to nobody. */
  readonly shownSchema: GraphQLSchema | null;
  /** Looked at before anything is made for a request: most have one. undefined: it has to be computed. */
  ready(method: RawRequest["method"], bytes: Buffer, asker: Pick<Asker, "actor" | "deps">): ReadyAnswer | undefined;
  answer(request: RawRequest, asked: Asked, asker: Asker): Promise<HttpAnswer>;
  /** Begins a subscription, or says why not. */
  subscribe(request: Omit<RawRequest, "type">, asked: Asked, asker: Asker): Promise<Subscription | Refusal>;
  stop(): Promise<void>;
}

/** A request that was answered before: all that can be known of it whoever asks. */
interface KnownRequest {
  readonly told: ReportedOperation;
  readonly isNamed: boolean;
  readonly asksForChanges: boolean;
  readonly place: AnswerKey;
}

/** Apollo Server with our plugins, and in front of it the answers to requests that came before, byte by byte. */
export async function openGraphqlServer(options: EngineOptions, log: Log): Promise<GraphqlServer> {
  const schema = createSchema();
  const documents = openOperations(schema, options);
  const apollo = openApollo({ schema, documents }, options, log);
  await apollo.start();
  // The same bytes in an address and in a body may mean something else.
  const known = {
    GET: recentBytes<KnownRequest>("graphql-addresses", keptDocuments),
    POST: recentBytes<KnownRequest>("graphql-bodies", keptDocuments),
  };

  /** Without Apollo Server, which would read the request again and write the answer again. */
  const ready: GraphqlServer["ready"] = (method, bytes, { actor, deps }) => {
    const request = deps.cache && isShared({ actor }) ? known[method].get(bytes) : undefined;
    const answer = deps.cache && request && findCachedAnswer(deps.cache, request.place, deps);
    if (request === undefined || answer === undefined) return undefined;
    return { ...request, body: answer as Buffer };
  };

  const answer: GraphqlServer["answer"] = async (request, asked, asker) => {
    const { method, bytes, type } = request;
    const read = request.read();
    if ("code" in read) {
      asked.chargeOwed(stepsOfRefusal(request));
      return refusedAnswer(read, type);
    }
    const { search, body, documentId } = read;
    const call: Call = {
      ...{ asked, asker, type, documentId, limit: openTimeLimit() },
      ...{ chosen: null, priced: null, deps: null, answerKey: null, answer: null, hasErrors: false, fault: null },
      close: () => undefined,
    };
    const httpGraphQLRequest = { method, headers: noHeaders, search, body };
    const answered = await call.limit.hold(async () => {
      try {
        return await apollo.executeHTTPGraphQLRequest({ httpGraphQLRequest, context: () => Promise.resolve({ call }) });
      } finally {
        call.close();
      }
    });
    if (call.chosen !== null && call.priced !== null && call.answerKey !== null) {
      const { isNamed, operation } = call.chosen;
      const { asksForChanges } = operation;
      known[method].keep(bytes, { told: call.priced.reported, isNamed, asksForChanges, place: call.answerKey });
    }
    if (answered === "ENDED" || answered === "TOO_MUCH") {
      const isMutation = call.chosen?.operation.kind === "mutation";
      const refused = answered === "ENDED" ? timedOut : isMutation ? tooMuchAndWritten : tooMuch;
      return refusedAnswer(call.priced === null ? refused : { ...refused, cost: call.priced.cost }, type);
    }
    if (call.fault !== null) throw call.fault;
    const status = answered.status ?? 200;
    // One that there are no points for is not refused for what it says, and costs nothing.
    if (call.priced === null && status !== rateLimited) asked.chargeOwed(stepsOfRefusal(request));
    const hasErrors = call.hasErrors || status >= 400;
    return {
      status,
      headers: Object.fromEntries(answered.headers),
      body: call.answer ?? bytesOf(answered.body),
      hasErrors,
      isNamed: call.chosen?.isNamed === true,
      asksForChanges: call.chosen?.operation.asksForChanges === true,
      isShared: isShared(asker) && call.chosen?.operation.kind === "query" && !hasErrors,
      place: call.answerKey,
    };
  };

  const subscribe = openSubscriptions({ schema, documents }, options);
  return {
    ...{ shownSchema: options.introspection ? schema : null, ready, answer },
    subscribe: (request, asked, asker) => {
      const refuse = (refused: Refusal): Refusal => {
        if (refused.cost === undefined) asked.chargeOwed(stepsOfRefusal(request));
        return refused;
      };
      const read = request.read();
      if ("code" in read) return Promise.resolve(refuse(read));
      return subscribe(read, asked, asker).then((found) => ("code" in found ? refuse(found) : found));
    },
    stop: () => apollo.stop(),
  };
}

const rateLimited = 429;

/** Bytes of a document that are read, checked and priced: the words and marks that one may have are seldom longer. */
const bytesOfDocument = 10_000;
/** Of what is beyond those, variables and long texts, that are read in one step. */
const bytesInStep = 100;

/** Steps that it took to find out that a request is refused. Nobody is refused for them, but the next request finds less. */
const stepsOfRefusal = ({ bytes }: Pick<RawRequest, "bytes">): number =>
  Math.min(bytes.length, bytesOfDocument) + bytes.length / bytesInStep;

/** Everything that would look at the environment, write to others or answer in its own way is off. */
function openApollo(
  { schema, documents }: { readonly schema: GraphQLSchema; readonly documents: Operations },
  options: EngineOptions,
  log: Log,
): ApolloServer<CallContext> {
  const told = (level: "info" | "warn" | "error") => (message?: unknown) =>
    log[level]({ part: "apollo" }, String(message));
  return new ApolloServer<CallContext>({
    schema,
    plugins: [
      // In this order, which is also that of their looking at the answer.
      documentsPlugin(documents),
      costPlugin(options, documents),
      errorsPlugin(),
      answersPlugin(options),
      ApolloServerPluginCacheControlDisabled(),
      ApolloServerPluginInlineTraceDisabled(),
      ApolloServerPluginLandingPageDisabled(),
      ApolloServerPluginSchemaReportingDisabled(),
      ApolloServerPluginUsageReportingDisabled(),
    ],
    // Without these words it would look for APOLLO_* and NODE_ENV. They are shown to nobody, since nothing is reported.
    apollo: { key: "none", graphRef: "none", graphId: "", graphVariant: "" },
    nodeEnv: "production",
    includeStacktraceInErrorResponses: false,
    logger: { debug: () => undefined, info: told("info"), warn: told("warn"), error: told("error") },
    // `documents` reads, checks and keeps documents, in its own order.
    introspection: true,
    dangerouslyDisableValidation: true,
    documentStore: null,
    persistedQueries: false,
    // A body is only taken as application/json, which a foreign page cannot send unasked.
    csrfPrevention: false,
    stopOnTerminationSignals: false,
    stringifyResult: (result) => JSON.stringify(result),
  });
}

/** The route has looked at those that say anything. */
const noHeaders = new HeaderMap();

function bytesOf(body: { readonly kind: "complete"; readonly string: string } | { readonly kind: "chunked" }): Buffer {
  if (body.kind === "chunked") throw new Error("an answer comes in parts, which nothing here asks for");
  return Buffer.from(body.string);
}

/** A refusal that Apollo Server has nothing to do with. */
export const refusedAnswer = (refused: Refusal, type: MediaType): HttpAnswer => ({
  status: refusalStatus(refused, type.older),
  headers: { ...refused.headers, "content-type": type.contentType },
  body: Buffer.from(
    JSON.stringify({
      errors: refused.errors,
      ...(refused.cost === undefined ? {} : { extensions: { cost: refused.cost } }),
    }),
  ),
  hasErrors: true,
  isNamed: false,
  asksForChanges: false,
  isShared: false,
  place: null,
});

const tooMuch = refusal("ANSWER_TOO_LARGE", tooMuchAtOnce);
const tooMuchAndWritten = refusal("ANSWER_TOO_LARGE", `${tooMuchAtOnce} What the mutation had written before is kept.`);
const timedOut = refusal("TIMED_OUT", "This took too long and was stopped. Request less, or try again later.");
