import { changePan } from "../../services/answers/change-pan.js";
import { listCatalogueFoods } from "../../services/foods/find-catalogue-foods.js";
import { findOwnFood } from "../../services/foods/find-own-food.js";
import { listFoods } from "../../services/foods/list-foods.js";
import { listRuleSets } from "../../services/rules/find-rule-sets.js";
import { listVocabulary } from "../../services/answers/list-vocabulary.js";
import { listPublishers } from "../../services/access/list-publishers.js";
import { searchPlans } from "../../services/plans/listing/search-plans.js";
import { missingPlan } from "../../services/plans/missing-plan.js";
import { problemsError, valueOf } from "../errors.js";
import type { QueryResolvers } from "../generated/resolver-types.js";
import { changeQueries } from "./plans/change.js";
import { readGlobalId } from "../global-id.js";
import { readersPayload } from "../payload.js";
import { foundPlans } from "./plans/found-plans.js";
import { shopForPlans } from "./plans/shop-for-plans.js";
import { connection } from "./connection.js";
import { draftQueries } from "./drafts/draft.js";
import { loadNode } from "./node.js";
import { componentParent, foodParent } from "./make-parents.js";
import { tokenQueries } from "./token.js";
import { imageQueries } from "./image.js";
import { scheduleQueries } from "./drafts/schedule.js";
import { previewQueries } from "./drafts/preview.js";
import { importQueries } from "./import.js";
import { webhookQueries } from "./webhook.js";

export const queryResolvers: QueryResolvers = {
  ...tokenQueries,
  ...changeQueries,
  ...draftQueries,
  ...imageQueries,
  ...importQueries,
  ...previewQueries,
  ...scheduleQueries,
  ...webhookQueries,

  plan: async (_, { publisher, slug, revision }, { deps, loaders }) => {
    const ref = { publisher, slug, revision: revision ?? null };
    const plan = await loaders.plans.load(ref);
    if (plan !== null) return plan;
    const missing = await missingPlan(deps, ref, ["slug"]);
    if (missing.code === "WITHDRAWN") throw problemsError([missing]);
    return null;
  },

  plans: async (_, { filter: given, orderBy, ...page }, { deps }) => {
    const { publishedAfter, ...filter } = given ?? {};
    const after = publishedAfter ? new Date(publishedAfter) : null;
    return foundPlans(
      valueOf(await searchPlans(deps, { filter: { ...filter, publishedAfter: after }, orderBy, page })),
    );
  },

  plansBySlug: (_, { plans: named }, { loaders }) => {
    refuseCount(named.length, "plans");
    return Promise.all(
      named.map(({ publisher, slug, revision }) => loaders.plans.load({ publisher, slug, revision: revision ?? null })),
    );
  },

  publisher: (_, { slug }, { loaders }) => loaders.publishers.load(slug),

  publishers: async (_, page, { deps }) =>
    connection(valueOf(await listPublishers(deps, page)), (publisher) => publisher),

  component: async (_, { publisher, slug }, { loaders }) => {
    const home = await loaders.componentHomes.load({ publisher, slug });
    if (home === null) return null;
    const frozen = await loaders.frozen(home);
    const component = frozen.components.get(slug);
    return component ? componentParent(frozen, component) : null;
  },

  food: async (_, { slug, publisher }, { deps, actor, loaders }) => {
    const food = publisher ? await findOwnFood(deps, actor, { publisher, slug }) : await loaders.foods.load(slug);
    return food && foodParent(food, null, null);
  },

  foods: async (_, { filter, ...page }, { deps, actor }) => {
    const { search = null, aisle = null, publisher = null } = filter ?? {};
    const found = await listFoods(deps, actor, { filter: { search, aisle, publisher }, page });
    const shown = connection(valueOf(found), (food) => foodParent(food, null, null));
    return { ...shown, search };
  },

  catalogueFood: (_, { ndbNo }, { loaders }) => loaders.catalogueFoods.load(ndbNo),

  catalogueFoods: async (_, { search, ...page }, { deps }) =>
    connection(valueOf(await listCatalogueFoods(deps, { search: search ?? null, page })), (food) => food),

  shoppingList: async (_, { plans, household }, { deps, loaders }) =>
    valueOf(await shopForPlans(deps, loaders, plans, household ?? {})),

  shopping: async (_, { plans, household }, { deps, loaders }) =>
    readersPayload("list", await shopForPlans(deps, loaders, plans, household ?? {}), household),

  vocabulary: async (_, { locale }, { deps }) => valueOf(await listVocabulary(deps, locale ?? null, ["locale"])),

  ruleSets: (_, __, { deps }) => listRuleSets(deps),

  panFactor: (_, { from, to }) => valueOf(changePan(from, to)),

  node: (_, { id }, context) => loadNode(id, context),

  nodes: (_, { ids }, context) => {
    refuseCount(ids.length, "ids");
    return Promise.all(ids.map((id) => (readGlobalId(id) === null ? null : loadNode(id, context))));
  },
};

/** The most things that are asked for by name at once. */
const mostNamed = 100;

function refuseCount(count: number, name: string): void {
  if (count === 0)
    throw problemsError([{ code: "BAD_SHAPE", path: [name], expected: "at least one entry", got: "none" }]);
  if (count > mostNamed)
    throw problemsError([{ code: "TOO_LARGE", path: [name], what: "entries", size: count, limit: mostNamed }]);
}
