import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerDisconnected } from "../../http/caller-disconnected.js";
import { longDate, wordsLocale } from "../../exports/page/dates.js";
import type { PageLinks } from "../../exports/page/page-links.js";
import { findingText } from "../../exports/sentences/finding-text.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import type { Words } from "../../exports/words/words.js";
import type { PlacedFinding } from "../../domain/plan/check/finding.js";
import type { Problem, TextPlace } from "../../domain/problem.js";
import type { Deps } from "../../services/deps.js";
import { openPreview, type OpenedPreview } from "../../services/previews/open-preview.js";
import { previewDeps } from "../../services/previews/preview-deps.js";
import { previewPath } from "../../services/previews/preview-links.js";
import { pointsOfAnswer } from "../endpoint-cost.js";
import { cachedResponse, sendResponse } from "../cached-response.js";
import { readSentForm } from "../form-body.js";
import { readQuery, type Query } from "../parameter.js";
import { pageAnswer, type Page } from "../page-answer.js";
import { notice } from "../page-errors.js";
import { wordsOf } from "../page-words.js";

/** What the address of a preview names. */
interface PreviewName {
  readonly publisher: string;
  readonly slug: string;
  readonly secret: string;
}

/** Of the pages of a published plan: the one at this ending of its address, for a plan that `deps` finds. */
interface PreviewedPage {
  /** `""`: the plan's own; `"/list"`. */
  readonly ending: string;
  show(deps: Deps, request: FastifyRequest<{ Params: PreviewName }>, query: Query, links: PageLinks): Promise<Page>;
  /** Points beyond those of every preview. */
  pointsOf(query: Query): number;
}

interface PreviewPageOptions {
  readonly deps: Deps;
  readonly queryTime: number;
  readonly linksOf: (request: FastifyRequest) => PageLinks;
  readonly pages: readonly PreviewedPage[];
}

/** The draft is gathered and checked, and then computed as for any reader. */
const config = { points: 2 * pointsOfAnswer, reader: "PAGE" } as const;

/** Whoever opens it is who has the address: what they may see, the link says. The database is asked each time, never a replica. */
const opener = { actor: { kind: "PROGRAM", name: "preview" } } as const;

/** Nothing keeps it, no search engine lists it, and where its links lead nobody learns its address. */
const privately = {
  "cache-control": "no-store",
  "referrer-policy": "no-referrer",
  "x-robots-tag": "noindex, nofollow, noarchive",
} as const;

/** Pages that show drafts to those who have the address of a link. */
export function registerPreviewPages(app: FastifyInstance, options: PreviewPageOptions): void {
  const { deps, queryTime } = options;
  for (const page of options.pages) {
    const url = `/preview/:publisher/:slug/:secret${page.ending}`;
    const respond = async (
      request: FastifyRequest<{ Params: PreviewName }>,
      reply: FastifyReply,
      query: Query,
    ): Promise<FastifyReply> => {
      // Also where it fails.
      reply.headers(privately);
      const beyond = page.pointsOf(query);
      if (beyond > 0) reply.charge(beyond);
      const answer = await cachedResponse({
        ...{ deps, reply, request: opener, place: null, limit: queryTime },
        gone: () => callerDisconnected(reply.raw),
        compute: async (own) => pageAnswer(await pageOf(own, request, query, page, options)),
      });
      const { etag: _etag, ...headers } = answer.headers;
      return sendResponse({ ...answer, headers: { ...headers, ...privately } }, request, reply);
    };
    app.get(url, { config }, (request: FastifyRequest<{ Params: PreviewName }>, reply) =>
      respond(request, reply, readQuery(request.url)),
    );
    app.post(url, { config }, (request: FastifyRequest<{ Params: PreviewName }>, reply) => {
      const { query, address } = readSentForm(request);
      return address === null ? respond(request, reply, query) : reply.headers(privately).redirect(address, 303);
    });
  }
}

async function pageOf(
  deps: Deps,
  request: FastifyRequest<{ Params: PreviewName }>,
  query: Query,
  page: PreviewedPage,
  { linksOf }: PreviewPageOptions,
): Promise<Page> {
  const { publisher, slug, secret } = request.params;
  const opened = await openPreview(deps, { publisher, slug }, secret);
  const words = wordsOf(request, undefined, query);
  if (opened.state !== "OPEN") return notice(words, linksOf(request), ...whyNothing(opened, words));
  const { link, preview } = opened;
  const { version, problems, findings, published } = preview;
  const missing = [
    ...problems.map((problem) => placed(problem.place, problemText(sentenceOnly(problem)))),
    ...findings
      .filter(({ severity }) => severity === "STOPS")
      .map((finding: PlacedFinding) => placed(finding.place, findingText(finding))),
  ];
  const path = previewPath(link, secret);
  const links = {
    ...linksOf(request),
    preview: { publisher, slug, path, notice: { version, expiresAt: link.expiresAt, missing } },
  };
  if (published === null) {
    const { notReady, notReadyWhy } = words.page.preview;
    return notice(words, links, 422, notReady, notReadyWhy);
  }
  return page.show(previewDeps(opened.deps, published), request, query, links);
}

/** Where there is a place in a text, it says more than the path. */
const sentenceOnly = (problem: Problem): Problem => (problem.place === undefined ? problem : { ...problem, path: [] });

const placed = (place: TextPlace | undefined, text: string): string =>
  place === undefined ? text : `${place.file}, line ${place.line}: ${text}`;

/** Status, title and text where nothing is shown. */
function whyNothing(
  opened: Exclude<OpenedPreview, { readonly state: "OPEN" }>,
  words: Words,
): readonly [number, string, string] {
  const { preview } = words.page;
  const day = (at: Date): { readonly when: string } => ({ when: longDate(at, wordsLocale(words)) });
  switch (opened.state) {
    case "EXPIRED":
      return [410, preview.ended, preview.endedWhy(day(opened.at))];
    case "REVOKED":
      return [410, preview.takenBack, preview.takenBackWhy(day(opened.at))];
    case "NO_DRAFT":
      return [410, preview.gone, preview.goneWhy];
    case "UNKNOWN":
      return [404, preview.unknown, preview.unknownWhy];
  }
}
