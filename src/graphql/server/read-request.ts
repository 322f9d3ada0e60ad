import type { FastifyRequest } from "fastify";
import { isUtf8, readJson } from "../../http/json.js";
import { excessText } from "../../http/json-size.js";
import { refusal, type Refusal } from "./refusal.js";

/** What Apollo Server reads of a request, and `documentId`, of which it knows nothing. */
export interface ReadRequest {
  /** Of a GET: the address from its question mark on. */
  readonly search: string;
  /** Of a POST: what its JSON says. */
  readonly body: unknown;
  readonly documentId: unknown;
}

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

/** The JSON of a body. What it must say is looked at by Apollo Server. */
export function readBody(bytes: Buffer): ReadRequest | Refusal {
  const read = readJson(bytes);
  if (!read.ok) {
    const { excess } = read;
    if (excess === null) return refusal("BAD_REQUEST", "The body is not JSON.");
    return refusal("TOO_LARGE", excessText(excess), { ...excess });
  }
  const body = read.value;
  if (Array.isArray(body))
    return refusal("BATCHING_REFUSED", "Send one operation per request. Batches are not supported.");
  const named = typeof body === "object" && body !== null && "documentId" in body ? body.documentId : undefined;
  return { search: "", body, documentId: named };
}

/** The parameters of an address. One that is left empty says nothing. */
export function readAddress(url: string): ReadRequest | Refusal {
  const [, search = ""] = /^[^?]*\?(.*)$/s.exec(url) ?? [];
  const given = [...new URLSearchParams(search)].filter(([, value]) => value !== "");
  const [documentId, second] = given.filter(([name]) => name === "documentId").map(([, value]) => value);
  if (second !== undefined) return refusal("BAD_REQUEST", "Give `documentId` once.");
  return { search: `?${new URLSearchParams(given).toString()}`, body: undefined, documentId };
}
