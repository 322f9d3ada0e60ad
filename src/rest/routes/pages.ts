import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Problem } from "../../domain/problem.js";
import { longDate } from "../../exports/page/dates.js";
import type { Deps, RevisionRef } from "../../services/deps.js";
import { missingPlan, missingPlans } from "../../services/plans/missing-plan.js";
import { AnswerTooLarge } from "../../http/answer-size.js";
import { callerDisconnected } from "../../http/caller-disconnected.js";
import { unavailableHeaders, DatabaseUnavailable, logUnavailable } from "../../services/database-unavailable.js";
import { QuotaExceeded } from "../../services/access/rate-limit.js";
import { findPublishers } from "../../services/access/find-publishers.js";
import { householdCost } from "../../services/answers/household-cost.js";
import { answerKey } from "../../services/cache/cached-answer.js";
import { listPlans } from "../../services/plans/list-plans.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import { mostPortions } from "../../services/answers/check-portion-count.js";
import { showListPage, type OtherPlan } from "../../services/answers/show-list-page.js";
import { showPlanCard } from "../../services/answers/show-plan-card.js";
import { showPlanPage } from "../../services/answers/show-plan-page.js";
import { noticePage } from "../../exports/page/notice-page.js";
import { publisherPage } from "../../exports/page/publisher-page.js";
import { startPage } from "../../exports/page/start-page.js";
import type { PageLinks } from "../../exports/page/page-links.js";
import type { PlanList } from "../../exports/page/parts/plan-list.js";
import { assetsPath, icon, iconPaths, type PageAssets } from "../page-assets.js";
import { readQuery, type Query } from "../parameter.js";
import { pointsBeyond, pointsOfAnswer, pointsOfPlan } from "../endpoint-cost.js";
import { TimeLimitExceeded } from "../answer-with-time-limit.js";
import { jsonAnswer, pageAnswer, type Page } from "../page-answer.js";
import { cachedResponse, readyResponse, sendResponse, type EncodedResponse } from "../cached-response.js";
import { registerImageFiles } from "./image-files.js";
import { readPlanForm } from "../read-plan-form.js";
import { sendFailure } from "../send-problem.js";
import { registerPreviewPages } from "./preview-pages.js";
import { amountLanguages, type AmountLanguage } from "../../domain/quantity/reader-locale.js";
import { preferredLanguage } from "../../http/preferred-language.js";

interface PageRouteOptions {
  readonly deps: Deps;
  /** Milliseconds that a page may take to compute. */
  readonly queryTime: number;
  readonly assets: PageAssets;
}

const forPeople = { config: { points: pointsOfAnswer, reader: "PAGE" } } as const;

/** Plans on one page of a shelf. */
const shelfSize = 24;

const machines = [
  { path: "/graphql", text: "GraphQL: everything the service knows, with a page to write queries on" },
  { path: "/v1/openapi", text: "REST: plans in every form, described in OpenAPI" },
] as const;

/** Pages for people, what they load, and what other people's pages load. */
export function registerPages(app: FastifyInstance, options: PageRouteOptions): void {
  void app.register((scope, _options, done) => {
    registerPlanPages(scope, options);
    done();
  });
  const { assets } = options;

  app.get(
    `${assetsPath}/:name`,
    { config: { reader: "PAGE" } },
    (request: FastifyRequest<{ Params: { name: string } }>, reply) => assets.send(request.params.name, reply),
  );

  app.get(
    "/p/:publisher/:slug/card",
    { config: { points: pointsOfAnswer } },
    (request: FastifyRequest<{ Params: PlanName }>, reply: FastifyReply) => {
      const beyond = pointsOfForm(1, readQuery(request.url));
      if (beyond > 0) reply.charge(beyond);
      return answer(options, request, reply, async (deps) => {
        const form = readPlanForm(readQuery(request.url));
        const card = await showPlanCard(deps, request.params, form, request.publicOrigin);
        if (card === null) {
          const missing = await missingPlan(deps, { ...request.params, revision: form.revision });
          return missing.code === "WITHDRAWN"
            ? jsonAnswer(410, { problems: [withdrawnText(missing)] })
            : jsonAnswer(404, { problems: ["No plan of this name is in print."] });
        }
        if (card.ok) return jsonAnswer(200, card.value);
        return jsonAnswer(422, {
          problems: card.problems.map((problem) => problemText({ ...problem, path: [] })),
        });
      });
    },
  );

  registerImageFiles(app, options.deps);
  app.get("/embed.js", (request, reply) => assets.sendEmbed(request, reply));
  for (const path of iconPaths) app.get(path, (request, reply) => sendResponse(icon, request, reply));
}

/** One of the languages there are words in, or null: what is kept grows with their number alone. */
const preferredOf = ({ headers }: FastifyRequest): AmountLanguage | null =>
  preferredLanguage(headers["accept-language"], amountLanguages);

/** From memory where it is known. Nothing but the address, its origin and the language say what is asked. */
async function answer(
  { deps, queryTime }: PageRouteOptions,
  request: FastifyRequest,
  reply: FastifyReply,
  compute: (deps: Deps) => Promise<EncodedResponse>,
): Promise<FastifyReply> {
  const place = answerKey("restAnswers", `page ${preferredOf(request) ?? ""} ${request.publicOrigin} ${request.url}`);
  const gone = () => callerDisconnected(reply.raw);
  const response =
    readyResponse(deps, request, place) ??
    (await cachedResponse({ deps, request, reply, place, limit: queryTime, gone, compute }));
  return sendResponse(response, request, reply);
}

/** They work without scripts and load nothing from elsewhere. */
function registerPlanPages(app: FastifyInstance, options: PageRouteOptions): void {
  const { assets } = options;
  const linksOf = (request: FastifyRequest): PageLinks => ({
    origin: request.publicOrigin,
    style: assets.style,
    ticks: assets.ticks,
  });
  const notice = (
    request: FastifyRequest,
    status: number,
    title: string,
    text: string,
    links = linksOf(request),
  ): Page => ({ html: noticePage(title, text, links), status });
  const nothing = (request: FastifyRequest, text: string): Page => notice(request, 404, "Nothing grows here", text);
  /** Of several plans: the first that was withdrawn, else what is said where there is none of them. */
  const missing = async (
    request: FastifyRequest,
    deps: Deps,
    refs: readonly RevisionRef[],
    text: string,
  ): Promise<Page> => {
    const problems = await missingPlans(
      deps,
      refs.map((ref) => ({ ref, path: [] })),
    );
    const withdrawn = problems.find(({ code }) => code === "WITHDRAWN");
    return withdrawn?.code === "WITHDRAWN"
      ? notice(request, 410, "This plan was withdrawn", withdrawnText(withdrawn))
      : nothing(request, text);
  };
  const show = <Params>(
    path: string,
    pageOf: (request: FastifyRequest<{ Params: Params }>, deps: Deps) => Promise<Page>,
    pointsOf: (query: Query) => number = () => 0,
  ): void => {
    app.get(path, forPeople, (request: FastifyRequest<{ Params: Params }>, reply) => {
      const beyond = pointsOf(readQuery(request.url));
      if (beyond > 0) reply.charge(beyond);
      return answer(options, request, reply, async (deps) => pageAnswer(await pageOf(request, deps)));
    });
  };

  const send = (page: Page, request: FastifyRequest, reply: FastifyReply): FastifyReply =>
    sendResponse(pageAnswer(page), request, reply);

  app.setErrorHandler((error: FastifyError, request, reply) => {
    if (error instanceof DatabaseUnavailable) {
      logUnavailable(request.log, request.id, error);
      const text = "The plans are out of reach at the moment. Try again in a few seconds.";
      return send(notice(request, 503, "The larder door is stuck", text), request, reply.headers(unavailableHeaders));
    }
    if (error instanceof TimeLimitExceeded) {
      const text = "This page took too long to work out. Ask for less, or try again later.";
      return send(notice(request, error.statusCode, "This pot does not boil", text), request, reply);
    }
    if (error instanceof AnswerTooLarge) {
      const text =
        "This page would be longer than anybody reads. Ask for less: fewer plans, or fewer things on hand and swaps.";
      return send(notice(request, error.statusCode, "This pot runs over", text), request, reply);
    }
    if (!(error instanceof QuotaExceeded)) return sendFailure(error, request, reply);
    const text = "More was asked for in one minute than this service gives to one address.";
    const again = `${text} Try again in ${error.retryAfter} seconds.`;
    const page = notice(request, error.statusCode, "The kitchen needs a minute", again);
    return send(page, request, reply.headers(error.headers));
  });

  show("/", async (request, deps) => {
    const shelf = await shelfOf(deps, null, "/", readQuery(request.url));
    if (shelf === null) return nothing(request, "This page of the shelf does not exist. Begin at the front.");
    const slugs = [...new Set(shelf.plans.map(({ publisher }) => publisher))];
    const names = new Map(
      (await findPublishers(deps, slugs)).flatMap((each) => (each ? [[each.slug, each.name]] : [])),
    );
    return { html: startPage(shelf, (slug) => names.get(slug) ?? slug, machines, linksOf(request)) };
  });

  show<{ publisher: string }>("/p/:publisher", async (request, deps) => {
    const [publisher] = await findPublishers(deps, [request.params.publisher]);
    const path = `/p/${encodeURIComponent(request.params.publisher)}`;
    const shelf = publisher ? await shelfOf(deps, publisher.slug, path, readQuery(request.url)) : null;
    if (!publisher || shelf === null) return nothing(request, "No publisher goes by this name here.");
    return { html: publisherPage(publisher, shelf, linksOf(request)) };
  });

  show<PlanName>(
    "/p/:publisher/:slug",
    (request, deps) => planPageOf(deps, request, linksOf(request)),
    (query) => pointsOfForm(1, query),
  );

  show<PlanName>(
    "/p/:publisher/:slug/list",
    (request, deps) => listPageOf(deps, request, linksOf(request)),
    pointsOfList,
  );

  registerPreviewPages(app, {
    ...{ deps: options.deps, queryTime: options.queryTime, linksOf, notice },
    pages: [
      { ending: "", show: planPageOf, pointsOf: ({ url }) => pointsOfForm(1, readQuery(url)) },
      { ending: "/list", show: listPageOf, pointsOf: ({ url }) => pointsOfList(readQuery(url)) },
    ],
  });

  async function planPageOf(
    deps: Deps,
    request: FastifyRequest<{ Params: PlanName }>,
    links: PageLinks,
  ): Promise<Page> {
    const form = { ...readPlanForm(readQuery(request.url)), preferred: preferredOf(request) };
    const page = await showPlanPage(deps, request.params, form, links);
    if (page === null) {
      const ref = { ...request.params, revision: form.revision };
      return missing(request, deps, [ref], "No plan of this name, or no such revision of it, is in print.");
    }
    return { html: page.html, status: page.faulty ? 422 : 200 };
  }

  async function listPageOf(
    deps: Deps,
    request: FastifyRequest<{ Params: PlanName }>,
    links: PageLinks,
  ): Promise<Page> {
    const query = readQuery(request.url);
    const others = otherPlans(query.get("plan") ?? []);
    const form = { ...readPlanForm(query), preferred: preferredOf(request) };
    const page = others === null ? null : await showListPage(deps, request.params, form, others, links);
    if (page === null) {
      const refs = [
        { ...request.params, revision: form.revision },
        ...(others ?? []).slice(0, mostPortions).map(({ publisher, slug }) => ({ publisher, slug, revision: null })),
      ];
      return missing(request, deps, refs, "One of the plans of this list is not in print.");
    }
    return { html: page.html, status: page.faulty ? 422 : 200, scripts: true };
  }
}

const pointsOfList = (query: Query): number =>
  pointsOfForm(1 + Math.min(query.get("plan")?.length ?? 0, mostPortions), query);

/** What so many plans cost beyond a page, for the household of a form. */
const pointsOfForm = (plans: number, query: Query): number =>
  pointsBeyond(plans, pointsOfPlan + householdCost(readPlanForm(query).asked.household));

/** What readers are told of a plan that its publisher took back. */
const withdrawnText = ({ title, at, because }: Extract<Problem, { readonly code: "WITHDRAWN" }>): string =>
  `The writer withdrew “${title}” on ${longDate(new Date(at))}.${because === null ? "" : ` The reason given: ${because}`}`;

interface PlanName {
  readonly publisher: string;
  readonly slug: string;
}

/** `publisher/slug` or `publisher/slug:8`, each; null: one of them is neither. */
function otherPlans(texts: readonly string[]): readonly OtherPlan[] | null {
  const read = texts.map((text): OtherPlan | null => {
    const [, publisher, slug, servings] = /^([^/:]+)\/([^/:]+)(?::(\d{1,9}))?$/.exec(text) ?? [];
    if (publisher === undefined || slug === undefined) return null;
    return { publisher, slug, servings: servings === undefined ? null : Number(servings) };
  });
  return read.every((each) => each !== null) ? read : null;
}

/** null: the cursor leads nowhere. */
async function shelfOf(deps: Deps, publisher: string | null, path: string, query: Query): Promise<PlanList | null> {
  const after = query.get("after")?.[0] ?? null;
  const page = await listPlans(deps, {
    filter: { publisher, search: null, usesFood: null, usesComponent: null },
    page: { first: shelfSize, after },
  });
  if (!page.ok) return null;
  const last = page.value.items.at(-1);
  return {
    plans: page.value.items.map(({ item }) => item),
    next: page.value.hasNext && last ? `${path}?after=${encodeURIComponent(last.cursor)}` : null,
  };
}
