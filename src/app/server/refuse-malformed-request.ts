import type { Socket } from "node:net";
import { sentProblem, type ProblemKind } from "../../rest/problem-kinds.js";

const kindOf: Readonly<Record<string, ProblemKind>> = {
  ERR_HTTP_REQUEST_TIMEOUT: "too-slow",
  HPE_HEADER_OVERFLOW: "head-too-large",
};

/** Answers bytes that are no request, so that no route has them: a problem document (RFC 9457), and the end of the connection. */
export function refuseMalformedRequest(error: NodeJS.ErrnoException, socket: Socket): void {
  if (error.code === "ECONNRESET" || socket.destroyed) return;
  const { status, title, body } = sentProblem(kindOf[error.code ?? ""] ?? "bad-request");
  const head = [
    `HTTP/1.1 ${status} ${title}`,
    "content-type: application/problem+json",
    `content-length: ${Buffer.byteLength(body)}`,
    "cache-control: no-store",
    "connection: close",
  ];
  if (socket.writable) socket.end(`${head.join("\r\n")}\r\n\r\n${body}`, () => socket.destroy());
  else socket.destroy();
}
