import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";

declare module "fastify" {
  interface FastifyContextConfig {
    /** Left out: an answer for programs. PAGE: a page of ours for people, or what only such pages load. */
    reader?: "PAGE";
  }
}

/**
 * What every answer says unless its route says otherwise (sources: OWASP Secure Headers Project, OWASP REST Security Cheat
 * Sheet). Anybody's page may read what anybody may ask for: nothing rests on cookies, and a token is shown on purpose or not at
 * all. What is sent is no page of ours, so a browser runs and frames nothing of it, and nothing is kept that does not say that
 * it may be.
 */
const everyAnswer = {
  "access-control-allow-origin": "*",
  "access-control-expose-headers":
    "allow, etag, link, location, ratelimit, ratelimit-policy, retry-after, www-authenticate, x-request-id",
  "cache-control": "no-store",
  "content-security-policy": "default-src 'none'; frame-ancestors 'none'; sandbox",
  "cross-origin-resource-policy": "cross-origin",
  "referrer-policy": "no-referrer",
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
} as const;

/** Nobody may frame a page of ours, load it into one of theirs, or take hold of its window. Each page adds what it may load. */
const everyPage = {
  ...everyAnswer,
  "cross-origin-embedder-policy": "require-corp",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": "camera=(), geolocation=(), microphone=()",
  "x-permitted-cross-domain-policies": "none",
} as const;

/** RFC 6797: a year. Whether it holds for other hosts below this one is not ours to say. */
const onlyByHttps = "max-age=31536000";

/** To a page elsewhere that asks whether it may send what browsers do not send unasked: it may, for a day. */
const toPreflight = {
  "access-control-allow-methods": "GET, HEAD, POST",
  "access-control-allow-headers": [
    ...["accept", "authorization", "content-type", "idempotency-key", "if-none-match", "last-event-id", "x-request-id"],
    // Of W3C Trace Context, and the names that GraphQL clients give themselves.
    ...["traceparent", "tracestate", "baggage", "graphql-client-name", "graphql-client-version"],
    ...["apollographql-client-name", "apollographql-client-version", "apollo-require-preflight"],
  ].join(", "),
  "access-control-max-age": "86400",
} as const;

/**
 * Sets them on every answer, also on those that refuse a request before its route is reached, and answers preflight requests
 * (Fetch standard, 3.2.2). To be called first.
 */
export function setAnswerHeaders(app: FastifyInstance): void {
  app.addHook("onRequest", (request, reply, done) => {
    answerHeaders(request, reply);
    const isPreflight = request.method === "OPTIONS" && "access-control-request-method" in request.headers;
    if (isPreflight) reply.code(204).headers(toPreflight).send();
    else done();
  });
}

export function answerHeaders(request: FastifyRequest, reply: FastifyReply): void {
  const { reader } = request.routeOptions.config ?? {};
  reply.headers(reader === "PAGE" ? everyPage : everyAnswer).header("x-request-id", request.id);
  // Only a connection of our own or a trusted proxy can say so: see PREPWRIGHT_TRUST_PROXY.
  if (request.protocol === "https") reply.header("strict-transport-security", onlyByHttps);
}
