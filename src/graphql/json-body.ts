import type { FastifyRequest } from "fastify";
import { isUtf8, readJson } from "../http/json.js";
import { refusal } from "./refusal.js";
import { readBody, type ReadRequest } from "./read-request.js";

/** A body in another charset; `statusCode` is what HTTP calls it. */
class WrongCharset extends Error {
  override readonly name = "WrongCharset";
  readonly statusCode = 415;
}

type Done = (error: Error | null, body?: Buffer) => void;

/** Takes the bytes of a body in UTF-8. */
export function takeBytes(request: FastifyRequest, body: Buffer, done: Done): void {
  done(isUtf8(request.headers["content-type"]) ? null : new WrongCharset("Send the body as UTF-8."), body);
}

/** Reads the JSON of a body. */
export function readJsonBody(bytes: Buffer): ReadRequest {
  const body = readJson(bytes);
  return body.ok ? readBody(body.value) : { ok: false, refusal: refusal("BAD_REQUEST", "The body is not JSON.") };
}
