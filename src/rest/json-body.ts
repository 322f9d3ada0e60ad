import type { FastifyRequest } from "fastify";
import { isUtf8, readJson } from "../http/json.js";
import { excessText } from "../http/json-size.js";

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

/** Reads a body of JSON. */
export function readJsonBody(
  request: FastifyRequest,
  body: Buffer,
  done: (error: Error | null, body?: unknown) => void,
): void {
  if (!isUtf8(request.headers["content-type"])) {
    done(new UnreadableBody(415, "Send the body as UTF-8."));
    return;
  }
  const read = readJson(body);
  if (read.ok) done(null, read.value);
  else done(new UnreadableBody(400, read.excess === null ? "The body is not JSON." : excessText(read.excess)));
}
