import type { FastifyReply, FastifyRequest } from "fastify";
import type { Deps } from "../services/deps.js";
import { depsForActor } from "../services/deps-for-actor.js";
import { isKnownTag, tagOf } from "../http/entity-tag.js";
import { changesCaching, liveCaching } from "../http/caching.js";
import { boundedBytes } from "../http/answer-size.js";
import { sendShared as sendSharedBytes } from "../http/send-shared.js";
import {
  addToCachedAnswer,
  cachedAnswer,
  findCachedAnswer,
  type AnswerKey,
  type Computed,
} from "../services/cache/cached-answer.js";
import type { Caching } from "./endpoint.js";
import { answerWithTimeLimit, TimeLimitExceeded } from "./answer-with-time-limit.js";
import type { Refusal } from "./refusal.js";

/** An answer with the bytes and headers that are sent. */
export interface EncodedResponse {
  readonly ok: true;
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
  /** What it costs whoever is given it, beyond what every answer costs; left out: nothing. */
  readonly beyond?: number;
}

export type ResponseOrRefusal = EncodedResponse | { readonly ok: false; readonly refusal: Refusal };

const cacheControl: Readonly<Record<Caching, string>> = {
  LIVE: liveCaching,
  CHANGES: changesCaching,
  // A day, so that a removal is seen by then.
  FROZEN: "public, max-age=86400",
  NEVER: "no-store",
};

export const cacheControlOf = (caching: Caching): string => cacheControl[caching];

/** @param headers `content-type` among them */
export function encodeResponse(
  text: string,
  caching: Caching,
  status: number,
  headers: Readonly<Record<string, string>>,
): EncodedResponse {
  const shared = { ...headers, "cache-control": cacheControl[caching] };
  return caching === "NEVER" ? untagged(text, status, shared) : tagged(text, status, shared);
}

/** @throws AnswerTooLarge */
export const untagged = (text: string, status: number, headers: Readonly<Record<string, string>>): EncodedResponse => ({
  ok: true,
  status,
  headers,
  body: boundedBytes(text),
});

/** With an ETag of the text itself, so that whatever went into it is in the tag. @throws AnswerTooLarge */
export function tagged(text: string, status: number, headers: Readonly<Record<string, string>>): EncodedResponse {
  const answer = untagged(text, status, headers);
  return { ...answer, headers: { ...headers, etag: tagOf(answer.body) } };
}

interface CachedResponseOptions<Answer extends ResponseOrRefusal> {
  readonly deps: Deps;
  readonly request: Pick<FastifyRequest, "actor">;
  /** Told of the steps that computing took, whatever came of it. */
  readonly reply: Pick<FastifyReply, "chargeOwed">;
  /** Of all that was asked, the origin that stands in links included; null: it is computed each time. */
  readonly place: AnswerKey | null;
  /** Milliseconds that computing it may take. */
  readonly limit: number;
  /** Tells when whoever asked has gone, so that it need not be computed; null: it is finished all the same. */
  gone(): AbortSignal | null;
  compute(deps: Deps): Promise<Answer>;
}

/** An answer that lies ready for anybody. To be looked for before anything is made for a request: most have one. */
export function readyResponse(
  deps: Deps,
  { actor }: Pick<FastifyRequest, "actor">,
  place: AnswerKey,
): EncodedResponse | undefined {
  if (deps.cache === undefined || actor.kind !== "ANYONE") return undefined;
  return findCachedAnswer(deps.cache, place, deps) as EncodedResponse | undefined;
}

/**
 * An answer that is computed, and kept for others. Requests with a token are computed each time.
 *
 * @throws TimeLimitExceeded
 * @throws AnswerTooLarge
 */
export async function cachedResponse<Answer extends ResponseOrRefusal>(
  asked: CachedResponseOptions<Answer>,
): Promise<Answer> {
  const { deps, request, place, limit, gone } = asked;
  const { cache } = deps;
  const compute = async (hurried: Deps): Promise<Answer> => {
    try {
      return await asked.compute(hurried);
    } finally {
      asked.reply.chargeOwed(hurried.work?.steps ?? 0);
    }
  };
  if (place === null || cache === undefined || request.actor.kind !== "ANYONE") {
    return answerWithTimeLimit(deps, limit, gone(), (hurried) => compute(depsForActor(hurried, request.actor)));
  }
  const computed = await answerWithTimeLimit(deps, limit, gone(), (hurried, over) =>
    cachedAnswer(cache, place, hurried, async (watched): Promise<Computed<Answer | null>> => {
      try {
        const answer = await compute(watched);
        return { answer, bytes: answer.ok && answer.status === 200 ? answer.body.length : null };
      } catch (error) {
        // Others who wait for the same have time left, and compute it themselves.
        if (over.aborted) return { answer: null, bytes: null };
        throw error;
      }
    }),
  );
  if (computed === null) throw new TimeLimitExceeded();
  return computed;
}

/** Sends it, or 304 to who has it already. */
export function sendResponse(
  { status, headers, body }: EncodedResponse,
  request: FastifyRequest,
  reply: FastifyReply,
): FastifyReply {
  reply.code(status).headers(headers);
  const { etag } = headers;
  if (etag !== undefined && isKnownTag(request.headers["if-none-match"], etag)) return reply.code(304).send();
  return reply.send(body);
}

/** Sends what is the same for everybody, compressed for who takes it so. */
export function sendShared(
  response: EncodedResponse,
  request: FastifyRequest,
  reply: FastifyReply,
  onCompressed: (bytes: number) => void = () => undefined,
): FastifyReply | Promise<FastifyReply> {
  const { status, headers, body } = response;
  const { etag, "content-type": type } = headers;
  if (etag === undefined || type === undefined) return sendResponse(response, request, reply);
  reply.code(status).headers(headers);
  const vary = reply.getHeader("vary");
  const answer = { body, type, etag, vary: typeof vary === "string" ? vary : null, onCompressed };
  return sendSharedBytes(answer, request, reply);
}

/** The same of an answer that may be kept in a place of the cache; null: it is nobody else's. */
export function sendFrom(
  { cache }: Deps,
  place: AnswerKey | null,
  response: EncodedResponse,
  request: FastifyRequest,
  reply: FastifyReply,
): FastifyReply | Promise<FastifyReply> {
  if (place === null) return sendResponse(response, request, reply);
  return sendShared(response, request, reply, (bytes) => {
    if (cache !== undefined) addToCachedAnswer(cache, place, response, bytes);
  });
}
