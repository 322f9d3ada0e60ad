import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { publisherPath, type PageLinks } from "../../exports/page/page-links.js";
import { withdrawnMarkup } from "../../exports/page/withdrawn-text.js";
import { publisherPage } from "../../exports/page/publisher-page.js";
import { startPage } from "../../exports/page/start-page.js";
import type { PlanList } from "../../exports/page/parts/plan-list.js";
import { callerDisconnected } from "../../http/caller-disconnected.js";
import type { Words } from "../../exports/words/words.js";
import type { Deps, RevisionRef } from "../../services/deps.js";
import { findPublishers } from "../../services/access/find-publishers.js";
import { mostPortions } from "../../services/answers/check-portion-count.js";
import { answerKey } from "../../services/cache/cached-answer.js";
import { householdCost } from "../../services/answers/household-cost.js";
import { showKitchenPage, type KitchenPage } from "../../services/answers/show-kitchen-page.js";
import { showListPage, type OtherPlan } from "../../services/answers/show-list-page.js";
import { showPlanCard } from "../../services/answers/show-plan-card.js";
import { mostWeighedRoutes } from "../../services/answers/weigh-routes.js";
import { showPlanPage, type AskedForm, type ShownPage } from "../../services/answers/show-plan-page.js";
import { listPlans } from "../../services/plans/list-plans.js";
import { missingPlans } from "../../services/plans/missing-plan.js";
import { assetsPath, icon, iconPaths, type PageAssets } from "../page-assets.js";
import { one, readQuery, type Query } from "../parameter.js";
import { pointsBeyond, pointsOfAnswer, pointsOfPlan, pointsOfPlanPage } from "../endpoint-cost.js";
import { readSentForm } from "../form-body.js";
import { jsonAnswer, pageAnswer, privateAnswer, type Page, type PageScripts } from "../page-answer.js";
import { linksOf, notice, pageFailure, withoutTrailingSlash } from "../page-errors.js";
import { preferredOf, wordsOf } from "../page-words.js";
import {
  cachedResponse,
  readyResponse,
  sendFrom,
  sendShared,
  type EncodedResponse,
  type ResponseOrRefusal,
} from "../cached-response.js";
import { inAddress } from "../household-query.js";
import { noSuchPlan } from "../plan-request.js";
import { badParameters, type Refusal } from "../refusal.js";
import { sendRefusal } from "../send-problem.js";
import { readPlanForm } from "../read-plan-form.js";
import { titlesInLanguage } from "../../services/plans/titles-in-language.js";
import { registerImageFiles } from "./image-files.js";
import { registerPreviewPages } from "./preview-pages.js";
import { registerSiteFiles } from "./site-files.js";

interface PageRouteOptions {
  readonly deps: Deps;
  /** Milliseconds that a page may take to compute. */
  readonly queryTime: number;
  readonly assets: PageAssets;
}

const forPeople = { config: { points: pointsOfAnswer, reader: "PAGE" } } as const;

/** Plans on one page of a shelf. */
const shelfSize = 24;
/** Bytes of a form: names and amounts of a few hundred things. */
const longestForm = 64 * 1024;

/** Pages for people, what they load, and what other people's pages load. */
export function registerPages(app: FastifyInstance, options: PageRouteOptions): void {
  void app.register((scope, _options, done) => {
    registerPlanPages(scope, options);
    done();
  });
  const { assets } = options;
  registerSiteFiles(app, options);

  app.get(
    `${assetsPath}/:name`,
    { config: { reader: "PAGE" } },
    (request: FastifyRequest<{ Params: { name: string } }>, reply) => assets.send(request.params.name, request, reply),
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
        if (card?.ok === true) return jsonAnswer(200, card.value);
        const refused = async (): Promise<Refusal> => {
          if (card !== null) return badParameters(card.problems.map(inAddress));
          return noSuchPlan(deps, { ...request.params, revision: form.revision });
        };
        return { ok: false, refusal: await refused() };
      });
    },
  );

  registerImageFiles(app, options.deps);
  app.get("/embed.js", (request, reply) => assets.sendEmbed(request, reply));
  for (const path of iconPaths) app.get(path, (request, reply) => sendShared(icon, request, reply));
}

/** From memory where it is known. Nothing but the address, its origin and the language say what is asked; what came in a body is kept nowhere. */
async function answer(
  { deps, queryTime }: PageRouteOptions,
  request: FastifyRequest,
  reply: FastifyReply,
  compute: (deps: Deps) => Promise<ResponseOrRefusal>,
): Promise<FastifyReply> {
  const place =
    request.method === "POST"
      ? null
      : answerKey("restAnswers", `page ${preferredOf(request) ?? ""} ${request.publicOrigin} ${request.url}`);
  const gone = () => callerDisconnected(reply.raw);
  const response =
    (place === null ? undefined : readyResponse(deps, request, place)) ??
    (await cachedResponse({ deps, request, reply, place, limit: queryTime, gone, compute }));
  return response.ok ? sendFrom(deps, place, response, request, reply) : sendRefusal(response.refusal, request, reply);
}

interface PlanName {
  readonly publisher: string;
  readonly slug: string;
}

/** Shows a page for the household of a query. null: one of its plans, those of `refs`, is not in print. */
interface AskedPage {
  /** `""`: the plan's own; `"/list"`. */
  readonly ending: string;
  /** Plans that are computed for it, beside those that its query names. */
  readonly plans: number;
  readonly scripts: PageScripts;
  show(named: PlanName, deps: Deps, form: AskedForm, query: Query, links: PageLinks): Promise<ShownPage | null>;
  refs(named: PlanName, query: Query): readonly RevisionRef[];
}

const ownRef = (named: PlanName, query: Query): RevisionRef => ({
  publisher: named.publisher,
  slug: named.slug,
  revision: readPlanForm(query).revision,
});

const kitchenPage = (kind: KitchenPage, scripts: PageScripts): AskedPage => ({
  ending: `/${kind}`,
  plans: 1,
  scripts,
  show: (named, deps, form, _query, links) => showKitchenPage(deps, kind, named, form, links),
  refs: (named, query) => [ownRef(named, query)],
});

const askedPages: readonly AskedPage[] = [
  {
    ending: "",
    plans: 1 + mostWeighedRoutes,
    scripts: "NONE",
    show: (named, deps, form, _query, links) => showPlanPage(deps, named, form, links),
    refs: (named, query) => [ownRef(named, query)],
  },
  {
    ending: "/list",
    plans: 1,
    scripts: "OFFLINE",
    show: async (named, deps, form, query, links) => {
      const others = otherPlans(query.get("plan") ?? []);
      return others === null ? null : showListPage(deps, named, form, others, links);
    },
    refs: (named, query) => [
      ownRef(named, query),
      ...(otherPlans(query.get("plan") ?? []) ?? [])
        .slice(0, mostPortions)
        .map(({ publisher, slug }) => ({ publisher, slug, revision: null })),
    ],
  },
  kitchenPage("cook", "OFFLINE"),
  kitchenPage("fridge-door", "NONE"),
  kitchenPage("labels", "NONE"),
];

/** They work without scripts and load nothing from elsewhere. */
function registerPlanPages(app: FastifyInstance, options: PageRouteOptions): void {
  const { assets } = options;
  app.removeAllContentTypeParsers();
  app.addContentTypeParser(
    "application/x-www-form-urlencoded",
    { parseAs: "string", bodyLimit: longestForm },
    (_request, body, done) => done(null, body),
  );
  app.setErrorHandler(pageFailure(assets));
  app.addHook("onRequest", (request, reply, done) => {
    const shorter = request.method === "GET" ? withoutTrailingSlash(request.originalUrl) : null;
    if (shorter === null) done();
    else reply.header("cache-control", "no-cache").redirect(shorter, 308);
  });
  const nothing = (request: FastifyRequest, words: Words, text: string): Page =>
    notice(words, linksOf(request, assets), 404, words.page.notFound, text);
  /** Of several plans: the first that was withdrawn, else that one of them is not there. */
  const missing = async (
    request: FastifyRequest,
    deps: Deps,
    query: Query,
    refs: readonly RevisionRef[],
  ): Promise<Page> => {
    const problems = await missingPlans(
      deps,
      refs.map((ref) => ({ ref, path: [] })),
    );
    const withdrawn = problems.find(({ code }) => code === "WITHDRAWN");
    const isWithdrawn = withdrawn?.code === "WITHDRAWN";
    const words = wordsOf(request, isWithdrawn ? withdrawn.locale : undefined, query);
    if (!isWithdrawn) return nothing(request, words, refs.length > 1 ? words.page.noSuchPlans : words.page.noSuchPlan);
    const text = withdrawnMarkup(withdrawn, words);
    return notice(words, linksOf(request, assets), 410, words.page.planWithdrawn, text);
  };
  const show = <Params>(
    path: string,
    pageOf: (request: FastifyRequest<{ Params: Params }>, deps: Deps) => Promise<Page>,
  ): void => {
    app.get(path, forPeople, (request: FastifyRequest<{ Params: Params }>, reply) =>
      answer(options, request, reply, async (deps) => pageAnswer(await pageOf(request, deps))),
    );
  };
  const pageOf = async (
    page: AskedPage,
    request: FastifyRequest<{ Params: PlanName }>,
    deps: Deps,
    query: Query,
    links: PageLinks,
  ): Promise<Page> => {
    const form = { ...readPlanForm(query), preferred: preferredOf(request) };
    const shown = await page.show(request.params, deps, form, query, links);
    if (shown === null) return missing(request, deps, query, page.refs(request.params, query));
    const { html, faulty, languages } = shown;
    return { html, status: faulty ? 422 : 200, scripts: page.scripts, ...(languages && { languages }) };
  };
  const respond = (
    page: AskedPage,
    request: FastifyRequest<{ Params: PlanName }>,
    reply: FastifyReply,
    query: Query,
    write: (page: Page) => EncodedResponse,
  ): Promise<FastifyReply> => {
    const beyond = pointsOfAsked(page, query);
    if (beyond > 0) reply.charge(beyond);
    const links = linksOf(request, assets);
    return answer(options, request, reply, async (deps) => write(await pageOf(page, request, deps, query, links)));
  };
  for (const page of askedPages) {
    const path = `/p/:publisher/:slug${page.ending}`;
    const priced = { config: { ...forPeople.config, points: page.ending === "" ? pointsOfPlanPage : pointsOfAnswer } };
    app.get(path, priced, (request: FastifyRequest<{ Params: PlanName }>, reply) =>
      respond(page, request, reply, readQuery(request.url), pageAnswer),
    );
    app.post(path, priced, (request: FastifyRequest<{ Params: PlanName }>, reply) => {
      const sent = readSentForm(request);
      if (sent.address !== null) return reply.header("cache-control", "no-store").redirect(sent.address, 303);
      return respond(page, request, reply, sent.query, privateAnswer);
    });
  }
  registerPreviewPages(app, {
    ...{ deps: options.deps, queryTime: options.queryTime },
    linksOf: (request) => linksOf(request, assets),
    pages: askedPages.map((page) => ({
      ending: page.ending,
      show: (deps, request, query, links) => pageOf(page, request, deps, query, links),
      pointsOf: (query) => pointsOfAsked(page, query),
    })),
  });

  show("/", async (request, deps) => {
    const shelf = await shelfOf(deps, null, "/", request);
    const words = wordsOf(request);
    if (shelf === null) return nothing(request, words, words.page.noSuchShelf);
    const slugs = [...new Set(shelf.plans.map(({ publisher }) => publisher))];
    const names = new Map(
      (await findPublishers(deps, slugs)).flatMap((each) => (each ? [[each.slug, each.name]] : [])),
    );
    return {
      html: startPage(shelf, (slug) => names.get(slug) ?? slug, words, linksOf(request, assets)),
    };
  });

  show<{ publisher: string }>("/p/:publisher", async (request, deps) => {
    const [publisher] = await findPublishers(deps, [request.params.publisher]);
    const path = publisherPath(request.params.publisher);
    const shelf = publisher ? await shelfOf(deps, publisher.slug, path, request) : null;
    const words = wordsOf(request);
    if (!publisher || shelf === null) return nothing(request, words, words.page.noSuchPublisher);
    return { html: publisherPage(publisher, shelf, words, linksOf(request, assets)) };
  });
}

const pointsOfAsked = ({ plans }: AskedPage, query: Query): number =>
  pointsOfForm(plans + Math.min(query.get("plan")?.length ?? 0, mostPortions), query);

/** What so many plans cost beyond a page, for the household of a form. */
const pointsOfForm = (plans: number, query: Query): number =>
  pointsBeyond(plans, pointsOfPlan + householdCost(readPlanForm(query).asked.household));

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
async function shelfOf(
  deps: Deps,
  publisher: string | null,
  path: string,
  request: FastifyRequest,
): Promise<PlanList | null> {
  const query = readQuery(request.url);
  const [after, asked] = [one(query, "after"), one(query, "locale")];
  const page = await listPlans(deps, {
    filter: { publisher, search: null, usesFood: null, usesComponent: null },
    page: { first: shelfSize, after },
  });
  if (!page.ok) return null;
  const last = page.value.items.at(-1);
  const plans = page.value.items.map(({ item }) => item);
  const titles = await titlesInLanguage(deps, plans, asked ?? preferredOf(request));
  const onward = new URLSearchParams({ ...(asked !== null && { locale: asked }), after: last?.cursor ?? "" });
  return {
    plans: plans.flatMap((plan, at) => (titles[at] ? [{ ...plan, shown: titles[at] }] : [])),
    next: page.value.hasNext && last ? `${path}?${onward.toString()}` : null,
    locale: asked,
  };
}
