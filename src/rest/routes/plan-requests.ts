import { planRequestsPageSchema } from "../../exports/json/plan-requests.js";
import type { PlanRequests } from "../../services/deps.js";
import { planRequests } from "../../services/usage/read-usage.js";
import { asJson, endpoint } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inPath, inQuery, one } from "../parameter.js";

export const planRequestsEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/publishers/{publisher}/plan-requests",
    operationId: "listPlanRequests",
    tag: "publishers",
    summary: "How often readers asked for the plans",
    description:
      "A row for each plan and day (UTC) with requests, the newest day first. Counted are answers to requests that name one plan, in their address or as " +
      "`plan` in GraphQL, without a token or with one for `READ` alone; nothing is kept of who asked. Some seconds late; days are kept for 400 days.",
    parameters: [
      inPath("publisher", "Slug of the publisher."),
      inQuery("slug", "Slug of a plan. Default: all of the publisher."),
      ...pageParameters,
    ],
    scope: "READ_DRAFTS",
    refusals: [],
    caching: "NEVER",
    links: "The next and the previous page",
  },
  (question) => {
    const { publisher = "" } = question.path;
    const plan = one(question.query, "slug") ?? null;
    return pageOf<PlanRequests>(question, (page) =>
      planRequests(question.deps, question.caller.actor, { publisher, plan, page }),
    );
  },
  [
    asJson(planRequestsPageSchema, "The page.", ({ items, next, previous }: LinkedPage<PlanRequests>) => ({
      ...{ next, previous },
      items: items.map(({ day, plan, requests }) => ({ day, slug: plan, requests })),
    })),
  ],
);
