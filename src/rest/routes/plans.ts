import { list } from "../../exports/json/named-schema.js";
import { pageSchema } from "../../exports/json/page-schema.js";
import { planSummaryJson } from "../../exports/json/plan-parts.js";
import { listedPlanSchema, planCountSchema } from "../../exports/json/listed-plan.js";
import type { Problem } from "../../domain/problem.js";
import { ok } from "../../domain/problem.js";
import {
  allergensOfHit,
  costsOfHit,
  dietsOfHit,
  factsOfHit,
  nutrientsOfHit,
  type HitFacts,
} from "../../services/plans/listing/hit-facts.js";
import {
  searchPlans,
  type FoundPlans,
  type PlanCount,
  type PlanFacet,
  type PlanHit,
} from "../../services/plans/listing/search-plans.js";
import { titledPage, type ShownTitle } from "../../services/plans/titles-in-language.js";
import { planAddress } from "../../exports/addresses.js";
import { asJson, endpoint, found, refused, type Found } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { one, titleLocale } from "../parameter.js";
import { planListQuery, planSearchParameters, pointsOfPlanList, releasedParameters } from "../plan-search-query.js";
import { badParameters } from "../refusal.js";

const schema = pageSchema(
  "PlanPage",
  "A page of plans.",
  list(listedPlanSchema, "In the order of the list."),
  planCountSchema,
);

type TitledHit = PlanHit & { readonly shown: ShownTitle };

interface PlanList extends LinkedPage<TitledHit> {
  readonly withFacts: boolean;
  readonly count: PlanCount | null;
  readonly facets: readonly PlanFacet[] | null;
}

export const plansEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/plans",
    operationId: "listPlans",
    tag: "plans",
    summary: "Published plans, newest first, or as they are searched for",
    description:
      "Each in its newest revision that is in force. Before a page is answered its plans are held against the rules and foods of today; one that is no longer what was asked for is left out, so that a page may be shorter than was asked for.",
    // What was released comes first: lists of parameters are compared by their places.
    parameters: [...releasedParameters, ...pageParameters, ...planSearchParameters, titleLocale],
    refusals: [],
    caching: "LIVE",
    links: "The next and the previous page",
    points: ({ query }) => pointsOfPlanList(query),
  },
  async (question): Promise<Found<PlanList>> => {
    const problems: Problem[] = [];
    const { filter, orderBy, include } = planListQuery(question.query, problems);
    if (problems.length > 0) return refused(badParameters(problems));
    let plans: FoundPlans | null = null;
    const page = await pageOf<TitledHit>(question, async (wanted) => {
      const searched = await searchPlans(question.deps, { filter, orderBy, page: wanted });
      if (!searched.ok) return searched;
      plans = searched.value;
      const locale = one(question.query, "locale");
      return titledPage(question.deps, ok(searched.value.page), ({ summary }) => summary, locale);
    });
    if (!page.ok) return page;
    const asked = plans as FoundPlans | null;
    return found(
      {
        ...page.value,
        withFacts: include.has("facts"),
        count: include.has("count") && asked !== null ? await asked.count() : null,
        facets: include.has("facets") && asked !== null ? await asked.facets() : null,
      },
      page.headers,
    );
  },
  [
    asJson(schema, "The page.", ({ items, next, previous, withFacts, count, facets }: PlanList) => ({
      items: items.map((hit) => ({
        ...planSummaryJson({ ...hit.summary, shown: hit.shown }, planAddress(hit.summary)),
        ...(withFacts && { facts: factsJson(factsOfHit(hit)) }),
      })),
      next,
      previous,
      ...(count !== null && { totalCount: count.count, totalCountIsExact: count.isExact }),
      ...(facets !== null && { facets }),
    })),
  ],
);

const factsJson = (facts: HitFacts | null) =>
  facts && {
    workedOutAt: facts.workedOutAt.toISOString(),
    sessionMinutes: facts.sessionMinutes,
    handsOnMinutes: facts.handsOnMinutes,
    days: facts.days,
    servings: facts.servings,
    foodsToBuy: facts.bought.length,
    foodsAtHand: facts.foodsAtHand,
    costs: costsOfHit(facts),
    nutrients: nutrientsOfHit(facts),
    diets: dietsOfHit(facts),
    allergens: allergensOfHit(facts) as { allergen: "milk"; presence: "UNKNOWN"; traces: "UNKNOWN" }[],
  };
