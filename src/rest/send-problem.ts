import type { FastifyReply, FastifyRequest } from "fastify";
import { firstProblems } from "../domain/first-problems.js";
import { AnswerTooLarge } from "../http/answer-size.js";
import { TooManyStreams } from "../http/event-stream.js";
import { NotAllowed } from "../services/access/actor.js";
import {
  unavailableHeaders,
  unavailableMessage,
  DatabaseUnavailable,
  logUnavailable,
} from "../services/database-unavailable.js";
import { QuotaExceeded } from "../services/access/rate-limit.js";
import { problemAnswer } from "../exports/json/problem.js";
import { wordsFor } from "../exports/words/words-for.js";
import type { Words } from "../exports/words/words.js";
import type { Problem } from "../domain/problem.js";
import { one, readQuery } from "./parameter.js";
import { problemKinds, problemType, type ProblemKind } from "./problem-kinds.js";
import { refusal, type Refusal } from "./refusal.js";

/** Answers with an RFC 9457 problem document. It is not kept by caches. */
export function sendRefusal(
  { kind, detail, problems, headers, more, locale }: Refusal,
  request: FastifyRequest,
  reply: FastifyReply,
): FastifyReply {
  const { status, title } = problemKinds[kind];
  return reply
    .code(status)
    .headers({ ...headers, "cache-control": "no-store" })
    .type("application/problem+json")
    .send({
      type: problemType(kind),
      title,
      status,
      detail,
      instance: pathOf(request.originalUrl),
      requestId: request.id,
      problems: problemsJson(problems, wordsFor(one(readQuery(request.originalUrl), "locale") ?? locale ?? "en")),
      ...more,
    });
}

/** As many as an answer has room for. */
const problemsJson = (problems: readonly Problem[], words: Words) =>
  firstProblems(problems).map((problem) => problemAnswer(problem, words));

/** Of the address only the path: what was asked may be private, and is the caller's own to remember. */
const pathOf = (url: string): string => url.split("?")[0] ?? url;

interface Failure {
  readonly statusCode?: number | undefined;
  readonly message?: string;
}

const kindOf: Readonly<Record<number, ProblemKind>> = {
  401: "unauthenticated",
  403: "forbidden",
  404: "not-found",
  405: "method-not-allowed",
  408: "too-slow",
  413: "too-large",
  414: "address-too-long",
  431: "head-too-large",
  415: "unsupported-media-type",
  429: "quota-exceeded",
  504: "timed-out",
};

const statusOf = { UNAUTHENTICATED: 401, FORBIDDEN: 403 } as const;

const sentences: Partial<Record<ProblemKind, string>> = {
  "not-found": "There is nothing at this address.",
  "too-large": "The body is too large. Bodies are read up to one megabyte.",
  "unsupported-media-type": "Send the body as application/json in UTF-8.",
  fault: "An internal error occurred. Quote the request id when you report it.",
};

/**
 * What was thrown, as a problem document. The caller's faults keep their status and say what is wrong; ours are logged, and
 * the caller only gets the request id.
 */
export function sendFailure(error: Failure, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (error instanceof QuotaExceeded) {
    const { headers, message, policy } = error;
    const more = { "violated-policies": [policy] };
    return sendRefusal(refusal("quota-exceeded", message, { headers, more }), request, reply);
  }
  if (error instanceof TooManyStreams) {
    const { ofCaller, message, headers } = error;
    return sendRefusal(refusal(ofCaller ? "too-many-streams" : "overloaded", message, { headers }), request, reply);
  }
  if (error instanceof DatabaseUnavailable) {
    logUnavailable(request.log, request.id, error);
    return sendRefusal(refusal("unavailable", unavailableMessage, { headers: unavailableHeaders }), request, reply);
  }
  if (error instanceof AnswerTooLarge) return sendRefusal(refusal("answer-too-large", error.message), request, reply);
  const given = error instanceof NotAllowed ? statusOf[error.code] : (error.statusCode ?? 500);
  const kind = kindOf[given] ?? (given >= 400 && given < 500 ? "bad-request" : "fault");
  if (kind === "fault") request.log.error({ err: error }, "a request failed");
  return sendRefusal(refusal(kind, sentences[kind] ?? error.message ?? ""), request, reply);
}
