import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerDisconnected } from "../../http/caller-disconnected.js";
import { changesCaching, liveCaching } from "../../http/caching.js";
import { TooManyStreams } from "../../http/event-stream.js";
import { tagOf } from "../../http/entity-tag.js";
import { sendShared } from "../../http/send-shared.js";
import { addToCachedAnswer } from "../../services/cache/cached-answer.js";
import { DatabaseUnavailable, logUnavailable } from "../../services/database-unavailable.js";
import type { Deps } from "../../services/deps.js";
import { QuotaExceeded } from "../../services/access/rate-limit.js";
import { shownFault } from "../errors.js";
import type { Explorer } from "../explorer.js";
import { refusedAnswer, type GraphqlServer, type HttpAnswer, type RawRequest } from "./graphql-server.js";
import { chooseMediaType, prefersPage, type MediaType } from "./media-type.js";
import { unavailable } from "../plugins/errors.js";
import { readAddress, readBody, takeBytes } from "./read-request.js";
import { registerGraphqlStream } from "./stream-route.js";
import { refusal, type Refusal } from "./refusal.js";
import { registerSchemaText } from "./schema-route.js";

const graphqlPath = "/graphql";

interface GraphqlRouteOptions {
  readonly deps: Deps;
  readonly server: GraphqlServer;
  /** The page for browsers; null where it was not built. */
  readonly explorer: Explorer | null;
}

/** The endpoint, and for browsers a page to explore it. Every answer but that page is JSON, errors included. */
export function registerGraphql(app: FastifyInstance, { deps, server, explorer }: GraphqlRouteOptions): void {
  void app.register((scope, _options, done) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser("application/json", { parseAs: "buffer" }, takeBytes);
    scope.setErrorHandler((error: FastifyError, request, reply) => refuse(error, request, reply));
    if (server.shownSchema !== null) registerSchemaText(scope, server.shownSchema);
    const ask = (
      method: RawRequest["method"],
      bytes: Buffer,
      request: FastifyRequest,
      reply: FastifyReply,
    ): FastifyReply | Promise<FastifyReply> => {
      const type = chooseMediaType(request.headers);
      // Before anything is run: an answer that nobody can read must not have changed anything.
      if (type === null) return send(refusedAnswer(notAcceptable, anyType), anyType, reply);
      const { actor } = request;
      const ready = server.ready(method, bytes, { actor, deps });
      if (ready === undefined) return compute({ method, bytes, type }, request, reply);
      request.operation = ready.told;
      reply.charge(ready.told.cost);
      return sendData({ ...ready, isCacheable: method === "GET" && ready.isNamed }, type, deps, request, reply);
    };
    const compute = async (
      raw: Omit<RawRequest, "read">,
      request: FastifyRequest,
      reply: FastifyReply,
    ): Promise<FastifyReply> => {
      const { method, bytes, type } = raw;
      const answer = await server.answer(
        { ...raw, read: () => (method === "GET" ? readAddress(request.raw.url ?? "") : readBody(bytes)) },
        {
          charge: (cost) => reply.charge(cost),
          chargeOwed: (steps) => reply.chargeOwed(steps),
          report: (operation) => {
            request.operation = operation;
          },
          gone: () => callerDisconnected(reply.raw),
        },
        { deps, requestId: request.id, actor: request.actor },
      );
      const { hasErrors, isNamed, isShared } = answer;
      if (hasErrors) request.operation = { ...(request.operation ?? notKnown), hasErrors };
      const isCacheable = method === "GET" && isNamed && !hasErrors;
      return isCacheable || isShared
        ? sendData({ ...answer, isCacheable }, type, deps, request, reply)
        : send(answer, type, reply);
    };
    scope.get(graphqlPath, (request: FastifyRequest<{ Querystring: Record<string, unknown> }>, reply) => {
      const { query, raw, headers } = request;
      if (explorer !== null && asksNothing(query) && prefersPage(headers)) return explorer.sendPage(reply);
      return ask("GET", Buffer.from(raw.url ?? ""), request, reply);
    });
    scope.post(graphqlPath, (request: FastifyRequest<{ Body?: Buffer }>, reply) => {
      return ask("POST", request.body ?? noBytes, request, reply);
    });
    scope.route({
      method: ["PUT", "PATCH", "DELETE"],
      url: graphqlPath,
      handler: (request, reply) => {
        const type = chooseMediaType(request.headers) ?? anyType;
        return send(refusedAnswer(wrongMethod, type), type, reply);
      },
    });
    registerGraphqlStream(scope, { deps, server, refuse: answerWith });
    if (explorer !== null) {
      scope.get(
        `${graphqlPath}/explorer/:name`,
        { config: { reader: "PAGE" } },
        (request: FastifyRequest<{ Params: { name: string } }>, reply) =>
          explorer.sendAsset(request.params.name, request, reply),
      );
    }
    done();
  });
}

const noBytes = Buffer.alloc(0);

/** What is told of a request whose operation was not found out. */
const notKnown = { kind: "refused", operation: null, isRegistered: false, cost: null } as const;

const asksNothing = (parameters: Readonly<Record<string, unknown>>): boolean =>
  ["query", "documentId", "extensions"].every((name) => parameters[name] === undefined);

/** For answers to requests that accept nothing, or whose `Accept` was not looked at. */
const anyType: MediaType = { contentType: "application/json; charset=utf-8", older: false };

const notAcceptable = refusal(
  "NOT_ACCEPTABLE",
  "Answers are application/graphql-response+json or application/json, in UTF-8. Accept one of them.",
);

const wrongMethod = refusal(
  "METHOD_NOT_ALLOWED",
  "Send an operation by POST, or a query by GET.",
  {},
  { headers: { allow: "GET, HEAD, POST" } },
);

const send = ({ status, headers, body }: HttpAnswer, type: MediaType, reply: FastifyReply): FastifyReply =>
  sendBytes(body, type, reply.code(status).headers(headers));

const sendBytes = (body: Buffer, { contentType }: MediaType, reply: FastifyReply): FastifyReply =>
  reply.header("cache-control", "no-store").header("vary", "accept").header("content-type", contentType).send(body);

type Sent = FastifyReply | Promise<FastifyReply>;

/** An answer with data, known before or computed now. */
interface DataAnswer extends Pick<HttpAnswer, "body" | "place" | "asksForChanges"> {
  /**
   * Its address names its document by a hash: caches may keep it as long as REST's computed answers, those of others only what anyone may
   * see.
   */
  readonly isCacheable: boolean;
}

function sendData(
  { body, place, isCacheable, asksForChanges }: DataAnswer,
  { contentType: type }: MediaType,
  { cache }: Deps,
  request: FastifyRequest,
  reply: FastifyReply,
): Sent {
  const isPublic = request.actor.kind === "ANYONE";
  const caching = asksForChanges ? changesCaching : liveCaching;
  reply.header("cache-control", !isCacheable ? "no-store" : isPublic ? caching : "private, no-cache");
  const [etag, vary] = isCacheable ? [tagOf(body), "accept, authorization"] : [null, "accept"];
  const onCompressed = (bytes: number): void => {
    if (cache !== undefined && place !== null) addToCachedAnswer(cache, place, body, bytes);
  };
  return sendShared({ body, type, etag, vary, onCompressed }, request, reply.code(200));
}

/** What was thrown before the server was asked, or by it. The caller's faults say what is wrong; ours are logged and masked. */
function refuse(error: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (request.operation !== null) request.operation = { ...request.operation, hasErrors: true };
  return answerWith(refusalFor(error, request), request, reply);
}

function answerWith(refused: Refusal, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const type = chooseMediaType(request.headers) ?? anyType;
  return send(refusedAnswer(refused, type), type, reply);
}

function refusalFor(error: FastifyError, { log, id }: FastifyRequest): Refusal {
  const status = error.statusCode ?? 500;
  if (error instanceof QuotaExceeded) return refusal("RATE_LIMITED", error.message, {}, { headers: error.headers });
  if (error instanceof TooManyStreams) {
    const { ofCaller, message, headers } = error;
    return refusal(ofCaller ? "TOO_MANY_STREAMS" : "OVERLOADED", message, {}, { headers });
  }
  if (error instanceof DatabaseUnavailable) {
    logUnavailable(log, id, error);
    return unavailable;
  }
  if (status < 500) return callersFault(status, error.message);
  log.error({ err: error }, "a GraphQL request failed");
  return { code: "INTERNAL_SERVER_ERROR", errors: [shownFault(id)], headers: {} };
}

function callersFault(status: number, message: string): Refusal {
  if (status === 401) return refusal("UNAUTHENTICATED", message);
  if (status === 413) return refusal("TOO_LARGE", "The body is too large.", {}, { status });
  if (status === 415) return refusal("UNSUPPORTED_MEDIA_TYPE", "Send the body as application/json in UTF-8.");
  return refusal("BAD_REQUEST", message, {}, { status });
}
