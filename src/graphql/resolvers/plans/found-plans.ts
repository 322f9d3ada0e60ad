import {
  allergensOfHit,
  costsOfHit,
  dietsOfHit,
  factsOfHit,
  nutrientsOfHit,
} from "../../../services/plans/listing/hit-facts.js";
import type { FoundPlans } from "../../../services/plans/listing/search-plans.js";
import type { PlanConnectionResolvers, PlanEdgeResolvers, PlanFactsResolvers } from "../../generated/resolver-types.js";
import type { PlanConnectionParent, PlanEdgeParent, PlanFactsParent } from "../../parent-types.js";
import { connection } from "../connection.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";

/** A list of plans that were searched for, with what is known of each. */
export function foundPlans(found: FoundPlans): PlanConnectionParent {
  const { edges, pageInfo } = connection(found.page, (hit) => hit);
  return { edges: edges.map(({ cursor, node: hit }) => ({ cursor, node: hit.summary, hit })), pageInfo, found };
}

export const planConnectionResolvers: FieldsToResolve<PlanConnectionResolvers, PlanConnectionParent> = {
  nodes: ({ edges }) => edges.map(({ node }) => node),
  totalCount: async ({ found }) => (found === undefined ? null : (await found.count()).count),
  totalCountIsExact: async ({ found }) => (found === undefined ? null : (await found.count()).isExact),
  facets: async ({ found }) => (found === undefined ? null : await found.facets()),
};

export const planEdgeResolvers: FieldsToResolve<PlanEdgeResolvers, PlanEdgeParent> = {
  facts: ({ hit }) => (hit === undefined ? null : factsOfHit(hit)),
};

export const planFactsResolvers: FieldsToResolve<PlanFactsResolvers, PlanFactsParent> = {
  foodsToBuy: ({ bought }) => bought.length,
  costs: costsOfHit,
  nutrients: nutrientsOfHit,
  diets: (facts) => [...dietsOfHit(facts)],
  allergens: allergensOfHit,
};
