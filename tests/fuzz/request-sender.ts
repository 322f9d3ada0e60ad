import { Agent, request as httpRequest } from "node:http";
import { connect } from "node:net";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import type { FuzzedRequest } from "./fuzzed-request.js";

export type FuzzedAnswer =
  | { readonly kind: "ANSWER"; readonly status: number; readonly type: string; readonly text: string }
  /** The client of Node refuses to send it. */
  | { readonly kind: "UNSENT" }
  /** The service closed the connection without an answer. */
  | { readonly kind: "CUT"; readonly why: string }
  | { readonly kind: "NO_ANSWER" };

/** Milliseconds. */
const patience = 30_000;
const headPatience = 5_000;

/** null: the bytes are not what their encoding says. */
function decoded(bytes: Buffer, encoding: string): Buffer | null {
  if (encoding === "identity" || bytes.length === 0) return bytes;
  try {
    return encoding === "br" ? brotliDecompressSync(bytes) : encoding === "gzip" ? gunzipSync(bytes) : null;
  } catch {
    return null;
  }
}

/** Sends over connections that are kept, as a proxy does. */
export class RequestSender {
  readonly #agent: Agent;
  readonly #address: URL;

  constructor(address: string, connections: number) {
    this.#address = new URL(address);
    this.#agent = new Agent({ keepAlive: true, maxSockets: connections });
  }

  async send(request: FuzzedRequest): Promise<FuzzedAnswer> {
    const answer = await this.#sendWhole(request);
    // What was answered while the body was still coming in, the client may never read.
    if (answer.kind !== "CUT" || request.body === null) return answer;
    return (await answerToHead(this.#address, request)) ?? answer;
  }

  #sendWhole({ method, path, headers, body }: FuzzedRequest): Promise<FuzzedAnswer> {
    return new Promise((settled) => {
      let sending;
      try {
        sending = httpRequest({
          ...{ method, path, agent: this.#agent, host: this.#address.hostname, port: this.#address.port },
          headers: { ...headers, ...(body === null ? {} : { "content-length": String(body.length) }) },
          signal: AbortSignal.timeout(patience),
        });
      } catch (error) {
        if (error instanceof TypeError) return settled({ kind: "UNSENT" });
        throw error;
      }
      sending.on("continue", () => undefined);
      sending.on("response", (answer) => {
        const chunks: Buffer[] = [];
        const type = answer.headers["content-type"] ?? "";
        answer.on("data", (chunk: Buffer) => {
          chunks.push(chunk);
          // A stream of events does not end: how it begins will do.
          if (!type.startsWith("text/event-stream")) return;
          settled({ kind: "ANSWER", status: answer.statusCode ?? 0, type, text: chunk.toString("utf8") });
          sending.destroy();
        });
        answer.on("error", (error) => settled({ kind: "CUT", why: error.message }));
        answer.on("end", () => {
          const { "content-encoding": encoding = "identity" } = answer.headers;
          const bytes = decoded(Buffer.concat(chunks), encoding);
          settled(
            bytes === null
              ? { kind: "CUT", why: `bytes that are no ${encoding}` }
              : { kind: "ANSWER", status: answer.statusCode ?? 0, type, text: bytes.toString("utf8") },
          );
        });
      });
      sending.on("error", (error) =>
        settled(error.name === "AbortError" ? { kind: "NO_ANSWER" } : { kind: "CUT", why: error.message }),
      );
      sending.end(body ?? undefined);
    });
  }

  close(): void {
    this.#agent.destroy();
  }
}

/**
 * What a service says that refuses a body by its length (RFC 9110, 15.5.14): 413, and that it closes the connection, before a byte of it came. null:
 * it says anything else, or waits for the body.
 */
export function answerToHead(
  address: URL,
  { method, path, headers, body }: FuzzedRequest,
): Promise<FuzzedAnswer | null> {
  const { host: _, "content-length": __, ...others } = headers;
  const fields = Object.entries({ host: address.host, ...others, "content-length": String(body?.length ?? 0) });
  const head = [`${method} ${path} HTTP/1.1`, ...fields.map(([name, value]) => `${name}: ${value}`), "", ""];
  return new Promise((settled) => {
    const chunks: Buffer[] = [];
    const socket = connect({ host: address.hostname, port: Number(address.port) });
    const end = (): void => {
      clearTimeout(timer);
      socket.destroy();
      const answer = Buffer.concat(chunks).toString("utf8");
      const at = answer.indexOf("\r\n\r\n");
      const status = Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0);
      const closes = /^connection: close\r?$/im.test(answer.slice(0, at));
      if (status !== 413 || !closes) return settled(null);
      const type = /^content-type: (.*?)\r?$/im.exec(answer.slice(0, at))?.[1] ?? "";
      settled({ kind: "ANSWER", status, type, text: answer.slice(at + 4) });
    };
    const timer = setTimeout(end, headPatience);
    socket.on("data", (chunk) => chunks.push(chunk));
    socket.on("error", end);
    socket.on("end", end);
    socket.write(head.join("\r\n"));
  });
}

/** What is wrong with an answer, whatever was asked; null: nothing. */
export function faultOf(request: FuzzedRequest, answer: FuzzedAnswer): string | null {
  if (answer.kind === "UNSENT") return null;
  if (answer.kind === "NO_ANSWER") return `no answer within ${String(patience)} ms`;
  if (answer.kind === "CUT") {
    // Of a head that is too large the method is not known, so that the refusal of a HEAD has a body, which the client cannot place.
    const isLongHead = request.method === "HEAD" && request.path.length > 12_000;
    return isLongHead ? null : `the connection was cut: ${answer.why}`;
  }
  const { status, type, text } = answer;
  // A service that is not ready says so; nothing here makes it so.
  if (status >= 500) return `${String(status)}: ${text.slice(0, 300)}`;
  if (
    /node_modules|\bat \S+ \(|\/src\/|PrismaClient|SELECT .* FROM|stacktrace/.test(text) &&
    !/^text\/(css|javascript)/.test(type)
  ) {
    return `shows an inside: ${/.{0,60}(?:node_modules|\bat \S+ \(|\/src\/|PrismaClient|SELECT .* FROM|stacktrace).{0,60}/s.exec(text)?.[0] ?? ""}`;
  }
  if (
    status >= 400 &&
    !/^\/(?:graphql|schema\.graphql)/.test(request.path) &&
    !/problem\+json|text\/html/.test(type) &&
    request.method !== "HEAD"
  ) {
    return `${String(status)} as ${type}: ${text.slice(0, 200)}`;
  }
  if (request.method === "HEAD" || status === 304 || status === 204) return null;
  if (!type.includes("json")) return null;
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return `JSON that is none: ${text.slice(0, 200)}`;
    throw error;
  }
  if (request.path.split("?")[0] !== "/graphql" || type.includes("problem")) return null;
  const isAnswer = typeof json === "object" && json !== null && ("data" in json || "errors" in json);
  if (!isAnswer) return `neither data nor errors: ${text.slice(0, 200)}`;
  return text.includes("INTERNAL_SERVER_ERROR") ? `a fault: ${text.slice(0, 300)}` : null;
}
