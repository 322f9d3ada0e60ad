import { list } from "../../exports/json/named-schema.js";
import { pageSchema } from "../../exports/json/page-schema.js";
import { planSummaryJson, planSummarySchema } from "../../exports/json/plan-parts.js";
import type { RevisionSummary } from "../../services/deps.js";
import { listPlans } from "../../services/plans/list-plans.js";
import { titledPage, type ShownTitle } from "../../services/plans/titles-in-language.js";
import { planAddress } from "../../exports/addresses.js";
import { asJson, endpoint } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inQuery, one, titleLocale } from "../parameter.js";

const schema = pageSchema(
  "PlanPage",
  "A page of plans, newest first.",
  list(planSummarySchema, "In the order of the list."),
);

type TitledPlan = RevisionSummary & { readonly shown: ShownTitle };

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
      titleLocale,
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
    return pageOf<TitledPlan>(question, async (page) =>
      titledPage(deps, await listPlans(deps, { filter, page }), (plan) => plan, one(query, "locale")),
    );
  },
  [
    asJson(schema, "The page.", ({ items, next, previous }: LinkedPage<TitledPlan>) => ({
      items: items.map((plan) => planSummaryJson(plan, planAddress(plan))),
      next,
      previous,
    })),
  ],
);
