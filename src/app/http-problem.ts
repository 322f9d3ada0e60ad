import { STATUS_CODES } from "node:http";
import type { FastifyReply, FastifyRequest } from "fastify";

interface Failure {
  readonly statusCode?: number | undefined;
  readonly message?: string;
}

/**
 * Answers with an RFC 9457 problem document. The caller's faults keep their status and say what is wrong; ours are
 * logged, and the caller only gets the request id.
 */
export function sendProblem(error: Failure, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const given = error.statusCode ?? 500;
  const status = given >= 400 && given < 500 ? given : 500;
  if (status === 500) request.log.error({ err: error }, "a request failed");
  const detail =
    status === 500
      ? "Something went wrong on our side. Quote the request id when you report it."
      : status === 404
        ? "There is nothing at this address."
        : error.message;
  return reply
    .code(status)
    .type("application/problem+json")
    .send({ type: "about:blank", title: STATUS_CODES[status], status, detail, requestId: request.id });
}
