import { createHash } from "node:crypto";
import type { FastifyReply, FastifyRequest } from "fastify";

/** Nothing but our own style sheet and, where a page keeps ticks, our own script. */
const policy = (scripts: boolean): string =>
  [
    "default-src 'none'",
    "style-src 'self'",
    ...(scripts ? ["script-src 'self'"] : []),
    "form-action 'self'",
    "base-uri 'none'",
    "frame-ancestors 'none'",
  ].join("; ");

const headers = {
  // Prices and rules of today are in it, so it is asked for again each time; unchanged, it is not sent again.
  "cache-control": "no-cache",
} as const;

export interface Page {
  readonly html: string;
  readonly status?: number;
  /** It loads the script that keeps ticks. */
  readonly scripts?: boolean;
}

/** Sends a page of a route that is marked as one, or 304 where the reader has it already. */
export function sendPage(request: FastifyRequest, reply: FastifyReply, page: Page): FastifyReply {
  reply.headers({ ...headers, "content-security-policy": policy(page.scripts ?? false) });
  return sendTagged(request, reply, page.status ?? 200, "text/html; charset=utf-8", page.html);
}

/** The same for what other people's pages fetch. */
export function sendJson(request: FastifyRequest, reply: FastifyReply, status: number, value: object): FastifyReply {
  reply.header("cache-control", status === 200 ? "public, max-age=60, stale-while-revalidate=3600" : "no-store");
  return sendTagged(request, reply, status, "application/json; charset=utf-8", JSON.stringify(value));
}

export function sendTagged(
  request: FastifyRequest,
  reply: FastifyReply,
  status: number,
  type: string,
  body: string,
): FastifyReply {
  const tag = `W/"${createHash("sha256").update(body).digest("base64url").slice(0, 22)}"`;
  const known = (request.headers["if-none-match"] ?? "").split(",").map((each) => each.trim());
  if (status === 200) reply.header("etag", tag);
  if (status === 200 && (known.includes(tag) || known.includes("*"))) return reply.code(304).send();
  return reply.code(status).type(type).send(body);
}
