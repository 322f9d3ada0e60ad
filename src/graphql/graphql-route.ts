import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerGone } from "../http/caller-gone.js";
import { isKnownTag, tagOf } from "../http/entity-tag.js";
import { awayHeaders, awayMessage, DatabaseAway, noteAway } from "../services/database-away.js";
import type { Deps } from "../services/deps.js";
import { QuotaExceeded } from "../services/rate-limit.js";
import type { Engine, Outcome } from "./engine.js";
import { shownFault } from "./errors.js";
import type { Explorer } from "./explorer.js";
import { readJsonBody, takeBytes } from "./json-body.js";
import { chooseMediaType, prefersPage, type MediaType } from "./media-type.js";
import type { RawRequest } from "./prepared-requests.js";
import { readParameters } from "./read-request.js";
import { refusal, refusalStatus, type Refusal } from "./refusal.js";

export const graphqlPath = "/graphql";

export interface GraphqlRouteOptions {
  readonly deps: Deps;
  readonly engine: Engine;
  /** The page for browsers; null where it was not built. */
  readonly explorer: Explorer | null;
}

/** The endpoint, and for browsers a page to explore it. Every answer but that page is JSON, errors included. */
export function registerGraphql(app: FastifyInstance, { deps, engine, explorer }: GraphqlRouteOptions): void {
  void app.register((scope, _options, done) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser("application/json", { parseAs: "buffer" }, takeBytes);
    scope.setErrorHandler((error: FastifyError, request, reply) => refuse(error, request, reply));
    const sendOutcome = (
      outcome: Outcome,
      type: MediaType,
      request: FastifyRequest,
      reply: FastifyReply,
    ): FastifyReply => {
      const hasErrors = outcome.kind === "REFUSED" || outcome.hasErrors;
      if (hasErrors) request.told = { ...(request.told ?? notKnown), hasErrors };
      if (outcome.kind === "REFUSED") return sendRefusal(outcome.refusal, type, reply);
      return request.method !== "POST" && outcome.isNamed && !hasErrors
        ? sendCacheable(outcome.body, type, request, reply)
        : send(200, type, outcome.body, reply);
    };
    const ask = (
      raw: RawRequest,
      request: FastifyRequest,
      reply: FastifyReply,
    ): FastifyReply | Promise<FastifyReply> => {
      const type = chooseMediaType(request.headers);
      // Before anything is run: an answer that nobody can read must not have changed anything.
      if (type === null) return sendRefusal(notAcceptable, anyType, reply);
      const outcome = engine.answer(
        raw,
        {
          charge: (cost) => reply.charge(cost),
          settle: (steps) => reply.settle(steps),
          tell: (operation) => {
            request.told = operation;
          },
          gone: () => callerGone(reply.raw),
        },
        { deps, requestId: request.id, actor: request.actor },
      );
      return outcome instanceof Promise
        ? outcome.then((known) => sendOutcome(known, type, request, reply))
        : sendOutcome(outcome, type, request, reply);
    };
    scope.get(graphqlPath, (request: FastifyRequest<{ Querystring: Record<string, unknown> }>, reply) =>
      explorer !== null && asksNothing(request.query) && prefersPage(request.headers)
        ? explorer.sendPage(reply)
        : ask(
            { bytes: Buffer.from(request.raw.url ?? ""), mayWrite: false, read: () => readParameters(request.query) },
            request,
            reply,
          ),
    );
    scope.post(graphqlPath, (request: FastifyRequest<{ Body?: Buffer }>, reply) => {
      const bytes = request.body ?? noBytes;
      return ask({ bytes, mayWrite: true, read: () => readJsonBody(bytes) }, request, reply);
    });
    scope.route({
      method: ["PUT", "PATCH", "DELETE"],
      url: graphqlPath,
      handler: (request, reply) => sendRefusal(wrongMethod, chooseMediaType(request.headers) ?? anyType, reply),
    });
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

const unavailable = refusal("UNAVAILABLE", awayMessage, {}, { headers: awayHeaders });

const send = (status: number, { contentType }: MediaType, body: string | Buffer, reply: FastifyReply): FastifyReply =>
  reply
    .code(status)
    .header("cache-control", "no-store")
    .header("vary", "accept")
    .header("content-type", contentType)
    .send(body);

/**
 * An answer to an address that names its document by a hash: caches may keep it as long as REST's computed ones, those of others
 * only what anyone may see.
 */
function sendCacheable(body: Buffer, type: MediaType, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const tag = tagOf(body);
  void reply
    .header("etag", tag)
    .header("vary", "accept, authorization")
    .header("cache-control", request.actor.kind === "ANYONE" ? "public, max-age=60" : "private, no-cache");
  if (isKnownTag(request.headers["if-none-match"], tag)) return reply.code(304).send();
  return reply.code(200).header("content-type", type.contentType).send(body);
}

const sendRefusal = (refused: Refusal, type: MediaType, reply: FastifyReply): FastifyReply =>
  send(
    refusalStatus(refused, type.older),
    type,
    JSON.stringify({
      errors: refused.errors,
      ...(refused.cost === undefined ? {} : { extensions: { cost: refused.cost } }),
    }),
    reply.headers(refused.headers),
  );

/** What was thrown before the engine was asked, or by it. The caller's faults say what is wrong; ours are logged and masked. */
function refuse(error: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (request.told !== null) request.told = { ...request.told, hasErrors: true };
  const type = chooseMediaType(request.headers) ?? anyType;
  const status = error.statusCode ?? 500;
  if (error instanceof QuotaExceeded) {
    return sendRefusal(refusal("RATE_LIMITED", error.message, {}, { headers: error.headers }), type, reply);
  }
  if (error instanceof DatabaseAway) {
    noteAway(request.log, request.id, error);
    return sendRefusal(unavailable, type, reply);
  }
  if (status < 500) return sendRefusal(callersFault(status, error.message), type, reply);
  request.log.error({ err: error }, "a GraphQL request failed");
  return sendRefusal({ code: "INTERNAL_SERVER_ERROR", errors: [shownFault(request.id)], headers: {} }, type, reply);
}

function callersFault(status: number, message: string): Refusal {
  if (status === 401) return refusal("UNAUTHENTICATED", message);
  if (status === 413) return refusal("TOO_LARGE", "The body is too large.", {}, { status });
  if (status === 415) return refusal("UNSUPPORTED_MEDIA_TYPE", "Send the body as application/json in UTF-8.");
  return refusal("BAD_REQUEST", message, {}, { status });
}
