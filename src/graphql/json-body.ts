import type { FastifyRequest } from "fastify";
import { refusal } from "./refusal.js";
import { readBody, type ReadRequest } from "./read-request.js";

/** A body in another charset; `statusCode` is what HTTP calls it. */
class WrongCharset extends Error {
  override readonly name = "WrongCharset";
  readonly statusCode = 415;
}

type Done = (error: Error | null, body?: Buffer) => void;

/** Takes the bytes of a body in UTF-8. JSON has one encoding; other charsets are refused instead of misread. */
export function takeBytes(request: FastifyRequest, body: Buffer, done: Done): void {
  const charset = /charset\s*=\s*"?([^\s;"]+)/i.exec(request.headers["content-type"] ?? "")?.[1];
  const isWrong = charset !== undefined && charset.toLowerCase() !== "utf-8";
  done(isWrong ? new WrongCharset("Send the body as UTF-8.") : null, body);
}

const utf8 = new TextDecoder("utf-8", { fatal: true });

/** Reads UTF-8 JSON and nothing else. */
export function readJsonBody(bytes: Buffer): ReadRequest {
  let body: unknown;
  try {
    body = JSON.parse(utf8.decode(bytes));
  } catch {
    return { ok: false, refusal: refusal("BAD_REQUEST", "The body is not JSON.") };
  }
  return readBody(body);
}
