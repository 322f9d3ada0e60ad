import { list } from "../../exports/json/named-schema.js";
import { pageSchema } from "../../exports/json/page-schema.js";
import { planSummaryJson, planSummarySchema } from "../../exports/json/plan-parts.js";
import type { RevisionSummary } from "../../services/deps.js";
import { listPlans } from "../../services/plans/list-plans.js";
import { planAddress } from "../../exports/addresses.js";
import { asJson, endpoint } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inQuery, one } from "../parameter.js";

const schema = pageSchema(
  "PlanPage",
  "A page of plans, newest first.",
  list(planSummarySchema, "In the order of the list."),
);

export const plansEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/plans",
    operationId: "listPlans",
    tag: "plans",
    summary: "Published plans, newest first",
    description: "Each in its newest revision that is in force.",
    parameters: [
      inQuery("publisher", "Slug of a publisher."),
      inQuery("search", "Words of the title, in any case."),
      inQuery("uses-food", "Slug of a food that the plan uses."),
      inQuery("uses-component", "Slug of a component that the plan uses."),
      ...pageParameters,
    ],
    refusals: [],
    caching: "LIVE",
    links: "The next and the previous page",
  },
  (question) => {
    const { deps, query } = question;
    const filter = {
      publisher: one(query, "publisher"),
      search: one(query, "search"),
      usesFood: one(query, "uses-food"),
      usesComponent: one(query, "uses-component"),
    };
    return pageOf<RevisionSummary>(question, (page) => listPlans(deps, { filter, page }));
  },
  [
    asJson(schema, "The page.", ({ items, next, previous }: LinkedPage<RevisionSummary>) => ({
      items: items.map((plan) => planSummaryJson(plan, planAddress(plan))),
      next,
      previous,
    })),
  ],
);
