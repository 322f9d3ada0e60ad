import type { StorageAnswer } from "../../domain/storage/guidance.js";
import { guideStorage } from "../../services/guide-storage.js";
import { readHousehold } from "../../services/read-household.js";
import { scalePublishedPlan } from "../../services/scale-published-plan.js";
import { showFor } from "../../services/show-amount.js";
import { valueOf } from "../errors.js";
import type { PlanResolvers } from "../generated/resolver-types.js";
import { globalId } from "../global-id.js";
import type { PlanParent } from "../parents.js";
import type { FieldsBeyond } from "./fields-beyond.js";
import { componentParent, foodParent, mealParent } from "./parents-of.js";

export const planResolvers: FieldsBeyond<Omit<PlanResolvers, "id">, PlanParent> & Pick<PlanResolvers, "id"> = {
  id: (plan) => globalId({ kind: "Plan", revision: plan.id }),
  publisher: async (plan, _, { loaders }) => {
    const publisher = await loaders.publishers.load(plan.publisher);
    if (publisher === null) throw new Error(`revision ${plan.id} has no publisher`);
    return publisher;
  },
  summary: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.summary,
  measures: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.measures,
  promisedMinutes: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.promisedMinutes,
  claims: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.claims,
  meals: async (plan, _, { loaders }) => {
    const frozen = await loaders.frozen(plan);
    return frozen.bundle.plan.meals.toSorted((a, b) => a.day - b.day).map((meal) => mealParent(frozen, meal));
  },
  components: async (plan, _, { loaders }) => {
    const frozen = await loaders.frozen(plan);
    return frozen.bundle.components.map((component) => componentParent(frozen, component));
  },
  foods: async (plan, _, { loaders }) => {
    const frozen = await loaders.frozen(plan);
    return frozen.bundle.foods.map((food) => foodParent(food, plan));
  },
  scaled: async (plan, { servings, household: given }, { deps, loaders }) => {
    const frozen = await loaders.frozen(plan);
    const household = valueOf(readHousehold(given ?? {}, [frozen.bundle]));
    const scaled = valueOf(scalePublishedPlan(frozen.bundle, servings, household));
    let keeping: Promise<StorageAnswer> | undefined;
    return {
      keeping: () => (keeping ??= guideStorage(scaled, household, deps.clock, loaders.readRules)),
      scaled,
      household,
      frozen,
      show: showFor(household, frozen.bundle.plan),
    };
  },
};
