// @ts-nocheck
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Deps } from "../../services/deps.js";
import { findPublishers } from "../../services/find-publishers.js";
import { listPlans } from "../../services/list-plans.js";
import { showPlanPage } from "../../services/show-plan-page.js";
import { noticePage, publisherPage, startPage, type PageLinks, type Shelf } from "../../services/write-page.js";
import { assetsPath, type PageAssets } from "../page-assets.js";
import { readQuery, type Query } from "../parameter.js";
import { readPlanForm } from "../read-plan-form.js";
import { sendPage } from "../send-page.js";

export interface PageRouteOptions {
  readonly deps: Deps;
  readonly assets: PageAssets;
}

/** Plans on one page of a shelf. */
const shelfSize = 24;

const machines = [
  { path: "/graphql", text: "GraphQL: everything the service knows, with a page to write queries on" },
  { path: "/v1/openapi", text: "REST: plans in every form, described in OpenAPI" },
] as const;

/** Pages for people: they work without scripts and load nothing from elsewhere. */
export function registerPages(app: FastifyInstance, { deps, assets }: PageRouteOptions): void {
  const linksOf = (request: FastifyRequest): PageLinks => ({
    origin: `${request.protocol}://${request.host}`,
    style: assets.style,
    ticks: assets.ticks,
  });
  const nothing = (request: FastifyRequest, reply: FastifyReply, text: string): FastifyReply =>
    sendPage(request, reply, { html: noticePage("Nothing grows here", text, linksOf(request)), status: 404 });

  app.get(`${assetsPath}/:name`, (request: FastifyRequest<{ Params: { name: string } }>, reply) =>
    assets.send(request.params.name, reply),
  );

  app.get("/", async (request: FastifyRequest, reply) => {
    const shelf = await shelfOf(deps, null, "/", readQuery(request.url));
    if (shelf === null) return nothing(request, reply, "This page of the shelf does not exist. Begin at the front.");
    const slugs = [...new Set(shelf.plans.map(({ publisher }) => publisher))];
    const names = new Map(
      (await findPublishers(deps, slugs)).flatMap((each) => (each ? [[each.slug, each.name]] : [])),
    );
    const html = startPage(shelf, (slug) => names.get(slug) ?? slug, machines, linksOf(request));
    return sendPage(request, reply, { html });
  });

  app.get("/p/:publisher", async (request: FastifyRequest<{ Params: { publisher: string } }>, reply) => {
    const [publisher] = await findPublishers(deps, [request.params.publisher]);
    const path = `/p/${encodeURIComponent(request.params.publisher)}`;
    const shelf = publisher ? await shelfOf(deps, publisher.slug, path, readQuery(request.url)) : null;
    if (!publisher || shelf === null) return nothing(request, reply, "No publisher goes by this name here.");
    return sendPage(request, reply, { html: publisherPage(publisher, shelf, linksOf(request)) });
  });

  app.get(
    "/p/:publisher/:slug",
    async (request: FastifyRequest<{ Params: { publisher: string; slug: string } }>, reply) => {
      const page = await showPlanPage(deps, request.params, readPlanForm(readQuery(request.url)), linksOf(request));
      if (page === null)
        return nothing(request, reply, "No plan of this name, or no such revision of it, is in print.");
      return sendPage(request, reply, { html: page.html, status: page.faulty ? 422 : 200 });
    },
  );
}

/** null: the cursor leads nowhere. */
async function shelfOf(deps: Deps, publisher: string | null, path: string, query: Query): Promise<Shelf | null> {
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
