import type { Problem } from "../../domain/problem.js";
import { shopInSlices } from "../../domain/plan/shop.js";
import { checkPortionCount } from "../../services/answers/check-portion-count.js";
import { scalePlansInSlices } from "../../domain/plan/scale-plan.js";
import { changePan } from "../../services/answers/change-pan.js";
import { listCatalogueFoods } from "../../services/foods/find-catalogue-foods.js";
import { findOwnFood } from "../../services/foods/find-own-food.js";
import { listFoods } from "../../services/foods/list-foods.js";
import { listRuleSets } from "../../services/rules/find-rule-sets.js";
import { listVocabulary } from "../../services/answers/list-vocabulary.js";
import type { Deps } from "../../services/deps.js";
import { listPlans } from "../../services/plans/list-plans.js";
import { missingPlan, missingPlans } from "../../services/plans/missing-plan.js";
import { runInSlices } from "../../services/time-slices.js";
import { frozenInLanguage } from "../frozen-plan.js";
import { inStage } from "../../services/answer-stage.js";
import { showFor } from "../../exports/words/shown-amount.js";
import { problemsError, valueOf } from "../errors.js";
import type { PlanPortionInput, QueryResolvers } from "../generated/resolver-types.js";
import { changeQueries } from "./plans/change.js";
import { readersSide } from "./plans/readers-side.js";
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

  plans: async (_, { filter, ...page }, { deps }) => {
    const wanted = {
      publisher: filter?.publisher ?? null,
      search: filter?.search ?? null,
      usesFood: filter?.usesFood ?? null,
      usesComponent: filter?.usesComponent ?? null,
    };
    return connection(valueOf(await listPlans(deps, { filter: wanted, page })), (plan) => plan);
  },

  component: async (_, { publisher, slug }, { loaders }) => {
    const home = await loaders.componentHomes.load({ publisher, slug });
    if (home === null) return null;
    const frozen = await loaders.frozen(home);
    const component = frozen.components.get(slug);
    return component ? componentParent(frozen, component) : null;
  },

  food: async (_, { slug, publisher }, { deps, actor, loaders }) => {
    const food = publisher ? await findOwnFood(deps, actor, { publisher, slug }) : await loaders.foods.load(slug);
    return food && foodParent(food, null);
  },

  foods: async (_, { filter, ...page }, { deps, actor }) => {
    const { search = null, aisle = null, publisher = null } = filter ?? {};
    const found = await listFoods(deps, actor, { filter: { search, aisle, publisher }, page });
    const shown = connection(valueOf(found), (food) => foodParent(food, null));
    return { ...shown, search };
  },

  catalogueFood: (_, { ndbNo }, { loaders }) => loaders.catalogueFoods.load(ndbNo),

  catalogueFoods: async (_, { search, ...page }, { deps }) =>
    connection(valueOf(await listCatalogueFoods(deps, { search: search ?? null, page })), (food) => food),

  shoppingList: async (_, { plans, household: given }, { deps, loaders }) => {
    const tooMany = checkPortionCount(plans.length);
    if (tooMany.length > 0) throw problemsError(tooMany);
    const portions = await Promise.all(
      plans.map(async ({ publisher, slug, revision, servings }, index) => {
        const published = await loaders.plans.load({ publisher, slug, revision: revision ?? null });
        return published ? { frozen: await loaders.frozen(published), servings } : index;
      }),
    );
    const found = portions.filter((portion) => typeof portion !== "number");
    const unknown = portions.filter((portion) => typeof portion === "number");
    if (unknown.length > 0) throw problemsError(await missingPortions(deps, plans, unknown));
    const first = found[0]?.frozen;
    if (first === undefined) throw new Error("a list without a plan");
    const bundles = found.map(({ frozen }) => frozen.bundle);
    const { household, today } = await readersSide(deps, loaders, bundles, given ?? {});
    const wanted = found.map(({ frozen, servings }) => ({ bundle: frozen.bundle, servings }));
    const scaled = valueOf(
      await inStage(deps, "scale", () =>
        runInSlices(deps, (work) => scalePlansInSlices(wanted, household, today, work)),
      ),
    );
    const list = await inStage(deps, "shop", () =>
      runInSlices(deps, (work) => shopInSlices(scaled, household, today, work)),
    );
    const shown = found.map(({ frozen }) => frozenInLanguage(frozen, household.locale));
    return { list, plans: shown, show: showFor(household, first.bundle.plan) };
  },

  vocabulary: async (_, { locale }, { deps }) => valueOf(await listVocabulary(deps, locale ?? null, ["locale"])),

  ruleSets: (_, __, { deps }) => listRuleSets(deps),

  panFactor: (_, { from, to }) => valueOf(changePan(from, to)),

  node: (_, { id }, context) => loadNode(id, context),
};

const missingPortions = (
  deps: Deps,
  plans: readonly PlanPortionInput[],
  missing: readonly number[],
): Promise<readonly Problem[]> =>
  missingPlans(
    deps,
    plans.flatMap(({ publisher, slug, revision }, index) =>
      missing.includes(index) ? [{ ref: { publisher, slug, revision: revision ?? null }, path: ["plans", index] }] : [],
    ),
  );
