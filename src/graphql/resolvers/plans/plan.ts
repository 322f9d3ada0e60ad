import { checkPublishedPlan } from "../../../services/drafts/check/check-plan.js";
import { aboutWhat, findingText } from "../../../exports/sentences/finding-text.js";
import { listRevisions } from "../../../services/plans/list-revisions.js";
import { servingsTableInSlices } from "../../../domain/plan/servings-table.js";
import { readReadersHousehold } from "../../../services/answers/read-readers-household.js";
import { noHousehold, resolveRegion } from "../../../services/answers/resolve-region.js";
import { runInSlices } from "../../../services/time-slices.js";
import { valueOf } from "../../errors.js";
import type { FindingResolvers, PlanResolvers } from "../../generated/resolver-types.js";
import { globalId } from "../../global-id.js";
import type { FindingParent, PlanParent } from "../../parent-types.js";
import { imageParent } from "../image.js";
import { connection } from "../connection.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { componentParent, foodParent, mealParent } from "../make-parents.js";
import { scaleFrozen } from "./scale-frozen.js";

export const planResolvers: FieldsToResolve<Omit<PlanResolvers, "id">, PlanParent> & Pick<PlanResolvers, "id"> = {
  id: (plan) => globalId({ kind: "Plan", revision: plan.id }),
  publisher: async (plan, _, { loaders }) => {
    const publisher = await loaders.publishers.load(plan.publisher);
    if (publisher === null) throw new Error(`revision ${plan.id} has no publisher`);
    return publisher;
  },
  newest: ({ publisher, slug }, _, { loaders }) => loaders.plans.load({ publisher, slug, revision: null }),
  supersededBy: async ({ publisher, slug, revision }, _, { loaders }) => {
    const newest = await loaders.plans.load({ publisher, slug, revision: null });
    return newest !== null && newest.revision > revision ? newest : null;
  },
  revisions: async ({ publisher, slug }, page, { deps }) =>
    connection(valueOf(await listRevisions(deps, { plan: { publisher, slug }, page })), (revision) => revision),
  summary: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.summary,
  measures: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.measures,
  promisedMinutes: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.promisedMinutes,
  region: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.region ?? null,
  currency: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.currency ?? null,
  introduction: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.introduction ?? null,
  notes: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.notes ?? null,
  tips: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.tips ?? null,
  equipment: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.equipment ?? [],
  credits: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.credits ?? [],
  licence: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.licence ?? null,
  tags: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.tags ?? [],
  claims: async (plan, _, { loaders }) => (await loaders.frozen(plan)).bundle.plan.claims,
  image: async (plan, _, { loaders }) => imageParent(plan.publisher, (await loaders.frozen(plan)).bundle.plan.image),
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
  scaled: async (plan, { servings, household }, { deps, loaders }) =>
    scaleFrozen(deps, loaders, await loaders.frozen(plan), servings, household ?? {}),
  servingsTable: async (plan, { from, to, household: given }, { deps, loaders }) => {
    const { bundle } = await loaders.frozen(plan);
    const rules = await loaders.rulesToday();
    const read = valueOf(
      await readReadersHousehold(given ?? {}, [bundle], rules.allergens.diets, loaders.readFoods, deps),
    );
    const household = await resolveRegion(read, [bundle], rules, loaders.readPublishers);
    const today = await loaders.today([bundle], household);
    return valueOf(await runInSlices(deps, (work) => servingsTableInSlices(bundle, from, to, household, today, work)));
  },
  checkedAgainst: async ({ ruleSet }, _, { loaders }) => (ruleSet === null ? null : loaders.ruleSets.load(ruleSet)),
  check: async (plan, _, { deps, loaders }) => {
    const { bundle } = await loaders.frozen(plan);
    const rules = await loaders.rulesToday();
    const household = await resolveRegion(noHousehold, [bundle], rules, loaders.readPublishers);
    return valueOf(await checkPublishedPlan(bundle, household, rules, deps, loaders.readRules));
  },
};

export const findingResolvers: FieldsToResolve<FindingResolvers, FindingParent> = {
  message: (finding) => findingText(finding),
  about: (finding) => aboutWhat(finding),
  caution: (finding) => ("caution" in finding ? finding.caution : null),
  path: ({ path }) => path.map(String),
  file: ({ place }) => place?.file ?? null,
  line: ({ place }) => place?.line ?? null,
  column: ({ place }) => place?.column ?? null,
};
