import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { localeQuery, planPath } from "../../exports/page/page-links.js";
import { privacyPage } from "../../exports/page/privacy-page.js";
import { robots, sitemap, sitemapIndex } from "../../exports/sitemap.js";
import { callerDisconnected } from "../../http/caller-disconnected.js";
import { answerKey } from "../../services/cache/cached-answer.js";
import type { Deps } from "../../services/deps.js";
import { sitemapFiles, sitemapPlans } from "../../services/plans/list-sitemap.js";
import {
  cachedResponse,
  readyResponse,
  encodeResponse,
  sendFrom,
  sendShared,
  tagged,
  type ResponseOrRefusal,
} from "../cached-response.js";
import { pointsOfAnswer } from "../endpoint-cost.js";
import type { PageAssets } from "../page-assets.js";
import { pageAnswer } from "../page-answer.js";
import { linksOf, pageFailure } from "../page-errors.js";
import { wordsOf } from "../page-words.js";
import { readQuery } from "../parameter.js";
import { notFound } from "../refusal.js";
import { sendRefusal } from "../send-problem.js";

interface SiteOptions {
  readonly deps: Deps;
  readonly queryTime: number;
  readonly assets: PageAssets;
}

const plainText = "text/plain; charset=utf-8";
const xml = "application/xml; charset=utf-8";
const noSuchPart = {
  ok: false,
  refusal: notFound("There is no such part of the sitemap. Take addresses from /sitemap.xml."),
} as const;
/** What a walk over all plans costs: a statement for every file that an index names. */
const pointsOfIndex = 5 * pointsOfAnswer;

/** What those ask for who list pages, what readers ask about themselves, and the script that keeps lists for when there is no network. */
export function registerSiteFiles(app: FastifyInstance, { deps, queryTime, assets }: SiteOptions): void {
  void app.register((scope, _options, done) => {
    scope.setErrorHandler(pageFailure(assets));
    const cached = async (
      request: FastifyRequest,
      reply: FastifyReply,
      compute: (deps: Deps) => Promise<ResponseOrRefusal>,
    ): Promise<FastifyReply> => {
      const place = answerKey("restAnswers", `site ${request.publicOrigin} ${request.url}`);
      const gone = () => callerDisconnected(reply.raw);
      const response =
        readyResponse(deps, request, place) ??
        (await cachedResponse({ deps, request, reply, place, limit: queryTime, gone, compute }));
      return response.ok
        ? sendFrom(deps, place, response, request, reply)
        : sendRefusal(response.refusal, request, reply);
    };
    const page = { points: pointsOfAnswer, reader: "PAGE" } as const;

    scope.get("/privacy", { config: page }, (request, reply) =>
      sendShared(pageAnswer({ html: privacyPage(wordsOf(request), linksOf(request, assets)) }), request, reply),
    );
    scope.get("/robots.txt", { config: page }, (request, reply) =>
      sendShared(
        encodeResponse(robots(request.publicOrigin), "LIVE", 200, { "content-type": plainText }),
        request,
        reply,
      ),
    );
    scope.get("/sitemap.xml", { config: { ...page, points: pointsOfIndex } }, (request, reply) =>
      cached(request, reply, async (watched) => {
        const files = await sitemapFiles(watched);
        const entries = (files.ok ? files.value : []).map(({ after, changed }) => ({
          address: `${request.publicOrigin}/sitemap/plans.xml${after === null ? "" : `?after=${encodeURIComponent(after)}`}`,
          changed,
        }));
        return encodeResponse(sitemapIndex(entries), "LIVE", 200, { "content-type": xml });
      }),
    );
    scope.get("/sitemap/plans.xml", { config: page }, (request, reply) =>
      cached(request, reply, async (watched) => {
        const plans = await sitemapPlans(watched, readQuery(request.url).get("after")?.[0] ?? null);
        if (!plans.ok) return noSuchPart;
        const entries = plans.value.items.map(({ item }) => {
          const address = request.publicOrigin + planPath(item);
          const languages = item.translatedInto.length === 0 ? [] : [item.locale, ...item.translatedInto];
          return {
            address,
            changed: item.publishedAt,
            languages: languages.map((language) => ({ language, address: address + localeQuery(language) })),
          };
        });
        return encodeResponse(sitemap(entries), "LIVE", 200, { "content-type": xml });
      }),
    );
    // Its place says which pages it may answer for.
    scope.get("/p/offline.js", { config: { reader: "PAGE" } }, (request, reply) => {
      const source = assets.offline;
      if (source === null) return reply.callNotFound();
      const headers = { "cache-control": "no-cache", "content-type": "text/javascript; charset=utf-8" };
      return sendShared(
        tagged(source, 200, {
          ...headers,
          "content-security-policy": "default-src 'none'; connect-src 'self'; frame-ancestors 'none'",
        }),
        request,
        reply,
      );
    });
    done();
  });
}
