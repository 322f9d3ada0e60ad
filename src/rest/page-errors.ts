import type { FastifyError, FastifyReply, FastifyRequest } from "fastify";
import { noticePage } from "../exports/page/notice-page.js";
import type { Content } from "../exports/page/markup.js";
import type { PageLinks } from "../exports/page/page-links.js";
import type { Words } from "../exports/words/words.js";
import { AnswerTooLarge } from "../http/answer-size.js";
import { QuotaExceeded } from "../services/access/rate-limit.js";
import { DatabaseUnavailable, logUnavailable, unavailableHeaders } from "../services/database-unavailable.js";
import { TimeLimitExceeded } from "./answer-with-time-limit.js";
import { sendResponse } from "./cached-response.js";
import { pageAnswer, type Page } from "./page-answer.js";
import type { PageAssets } from "./page-assets.js";
import { wordsOf } from "./page-words.js";
import { notFound } from "./refusal.js";
import { sendFailure, sendRefusal } from "./send-problem.js";

export const linksOf = (request: Pick<FastifyRequest, "publicOrigin">, assets: PageAssets): PageLinks => ({
  origin: request.publicOrigin,
  style: assets.style,
  ticks: assets.ticks,
  cook: assets.cook,
});

/** A page that says why there is nothing to show, and where to go on. */
export const notice = (words: Words, links: PageLinks, status: number, title: string, text: Content): Page => ({
  html: noticePage({ title, text }, words, links),
  status,
});

/** What goes wrong with a page, as a page. */
export const pageFailure =
  (assets: PageAssets) =>
  (error: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply => {
    const spoken = wordsOf(request);
    const { page: words } = spoken;
    const send = (status: number, title: string, text: string): FastifyReply =>
      sendResponse(pageAnswer(notice(spoken, linksOf(request, assets), status, title, text)), request, reply);
    if (error instanceof DatabaseUnavailable) {
      logUnavailable(request.log, request.id, error);
      reply.headers(unavailableHeaders);
      return send(503, words.unavailable, words.unavailableWhy);
    }
    if (error instanceof TimeLimitExceeded) return send(error.statusCode, words.tooSlow, words.tooSlowWhy);
    if (error instanceof AnswerTooLarge) return send(error.statusCode, words.tooLong, words.tooLongWhy);
    if (error instanceof QuotaExceeded) {
      reply.headers(error.headers);
      return send(error.statusCode, words.tooOften, words.tooOftenWhy({ seconds: error.retryAfter }));
    }
    if (error.statusCode === 413) return send(413, words.tooLong, words.tooLongWhy);
    if (error.statusCode === 415) return send(415, words.notAForm, words.notAFormWhy);
    return sendFailure(error, request, reply);
  };

/** Whether a browser asks for a page: programs name what they read, or nothing. */
const wantsPage = ({ headers, method }: FastifyRequest): boolean =>
  (method === "GET" || method === "HEAD") && /(^|,)\s*text\/html\b/i.test(headers.accept ?? "");

/** The same address without the slashes at its end; null where it has none, or where it could lead elsewhere. */
export function withoutTrailingSlash(url: string): string | null {
  const at = url.indexOf("?");
  const [path, query] = at < 0 ? [url, ""] : [url.slice(0, at), url.slice(at)];
  const shorter = path.replace(/\/+$/, "");
  return shorter !== path && /^\/[^/\\]/.test(shorter) ? shorter + query : null;
}

/** Where there is nothing: without a slash at the end there may be something; else a page for browsers, a problem document for programs. */
export const answerMissing =
  (assets: PageAssets) =>
  (request: FastifyRequest, reply: FastifyReply): FastifyReply => {
    const shorter = withoutTrailingSlash(request.originalUrl);
    if (shorter !== null && (request.method === "GET" || request.method === "HEAD"))
      return reply.header("cache-control", "no-cache").redirect(shorter, 308);
    if (!wantsPage(request)) return sendRefusal(notFound("There is nothing at this address."), request, reply);
    const words = wordsOf(request);
    const { notFoundPage, notFoundPageWhy } = words.page;
    const page = notice(words, linksOf(request, assets), 404, notFoundPage, notFoundPageWhy);
    const { headers, ...answer } = pageAnswer(page);
    return sendResponse({ ...answer, headers: { ...headers, vary: "Accept, Accept-Language" } }, request, reply);
  };
