// @ts-nocheck
import type { FastifyRequest } from "fastify";

/** A body that cannot be read; `statusCode` is what HTTP calls it. */
class UnreadableBody extends Error {
  override readonly name = "UnreadableBody";
  constructor(
    readonly statusCode: 400 | 415,
    message: string,
  ) {
    super(message);
  }
}

/** Reads UTF-8 JSON and nothing else. JSON has one encoding; other charsets are refused instead of misread. */
export function readJsonBody(
  request: FastifyRequest,
  body: Buffer,
  done: (error: Error | null, body?: unknown) => void,
): void {
  const charset = /charset\s*=\s*"?([^\s;"]+)/i.exec(request.headers["content-type"] ?? "")?.[1];
  if (charset !== undefined && charset.toLowerCase() !== "utf-8") {
    done(new UnreadableBody(415, "Send the body as UTF-8."));
    return;
  }
  try {
    done(null, JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(body)));
  } catch {
    done(new UnreadableBody(400, "The body is not JSON."));
  }
}
