// @ts-nocheck
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
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "permissions-policy": "camera=(), geolocation=(), microphone=()",
  // Prices and rules of today are in it, so it is asked for again each time; unchanged, it is not sent again.
  "cache-control": "no-cache",
} as const;

/** Sends a page with the headers of all pages, or 304 where the reader has it already. */
export function sendPage(
  request: FastifyRequest,
  reply: FastifyReply,
  { html, status = 200, scripts = false }: { html: string; status?: number; scripts?: boolean },
): FastifyReply {
  const tag = `W/"${createHash("sha256").update(html).digest("base64url").slice(0, 22)}"`;
  reply.headers({ ...headers, "content-security-policy": policy(scripts), etag: tag });
  const known = (request.headers["if-none-match"] ?? "").split(",").map((each) => each.trim());
  if (status === 200 && (known.includes(tag) || known.includes("*"))) return reply.code(304).send();
  return reply.code(status).type("text/html; charset=utf-8").send(html);
}
