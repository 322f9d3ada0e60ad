import type { Plan } from "../../../domain/model/plan.js";
import { checkPublishedPlan } from "../../../services/drafts/check/check-plan.js";
import { aboutWhat, findingText } from "../../../exports/sentences/finding-text.js";
import { readLocale } from "../../../services/answers/read-household.js";
import { listRevisions } from "../../../services/plans/list-revisions.js";
import { shownTitle, translationFor } from "../../../services/plans/titles-in-language.js";
import { languagesOfPlan } from "../../../domain/plan/translate/texts-of.js";
import { servingsTableInSlices } from "../../../domain/plan/servings-table.js";
import { runInSlices } from "../../../services/time-slices.js";
import type { Context } from "../../context.js";
import { valueOf } from "../../errors.js";
import type { FindingResolvers, PlanResolvers, PlanTextsResolvers } from "../../generated/resolver-types.js";
import { globalId } from "../../global-id.js";
import { readersPayload } from "../../payload.js";
import type { FindingParent, PlanParent, PlanTextsParent } from "../../parent-types.js";
import { imageParent } from "../image.js";
import { placeResolvers } from "../problem.js";
import { connection } from "../connection.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { componentParent, foodOfPlan, mealParent } from "../make-parents.js";
import { anybodysSide, readersSide } from "./readers-side.js";
import { firstOf, planIdOf, updatedAtOf } from "./plan-over-time.js";
import { scaleFrozen } from "./scale-frozen.js";
import { textResolvers } from "./words.js";

/** What the document of a revision says of its plan. */
const inDocument =
  <Said>(said: (plan: Plan, revision: PlanParent) => Said) =>
  async (revision: PlanParent, _: unknown, { loaders }: Context): Promise<Said> =>
    said((await loaders.frozen(revision)).bundle.plan, revision);

export const planResolvers: FieldsToResolve<Omit<PlanResolvers, "id">, PlanParent> & Pick<PlanResolvers, "id"> = {
  id: (plan) => globalId({ kind: "Plan", revision: plan.id }),
  publisher: ({ publisher }, _, { loaders }) => loaders.publisherOf(publisher),
  planId: (plan, _, { loaders }) => planIdOf(plan, loaders),
  firstPublishedAt: async (plan, _, { loaders }) => (await firstOf(plan, loaders)).publishedAt,
  updatedAt: (plan, _, { loaders }) => updatedAtOf(plan, loaders),
  newest: ({ publisher, slug }, _, { loaders }) => loaders.plans.load({ publisher, slug, revision: null }),
  supersededBy: async ({ publisher, slug, revision }, _, { loaders }) => {
    const newest = await loaders.plans.load({ publisher, slug, revision: null });
    return newest !== null && newest.revision > revision ? newest : null;
  },
  revisions: async ({ publisher, slug }, page, { deps }) =>
    connection(valueOf(await listRevisions(deps, { plan: { publisher, slug }, page })), (revision) => revision),
  summary: inDocument(({ summary }) => summary),
  texts: async (plan, { locale }, { loaders }) => {
    const into = translationFor(plan, valueOf(readLocale(locale, ["locale"])));
    return { plan, into, ...shownTitle(plan, into, into === null ? null : await loaders.titleIn(plan, into)) };
  },
  measures: inDocument(({ measures }) => measures),
  promisedMinutes: inDocument(({ promisedMinutes }) => promisedMinutes),
  region: inDocument(({ region }) => region ?? null),
  currency: inDocument(({ currency }) => currency ?? null),
  languages: async (plan, _, { loaders }) => [...languagesOfPlan((await loaders.frozen(plan)).bundle)],
  introduction: inDocument(textResolvers.introduction),
  notes: inDocument(textResolvers.notes),
  tips: inDocument(textResolvers.tips),
  equipment: inDocument(({ equipment = [] }) => equipment),
  credits: inDocument(({ credits = [] }) => credits),
  licence: inDocument(({ licence }) => licence ?? null),
  tags: inDocument(({ tags = [] }) => tags),
  claims: inDocument(({ claims }) => claims),
  image: inDocument(({ image }, { publisher }) => imageParent(publisher, image)),
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
    return frozen.bundle.foods.map(({ slug }) => foodOfPlan(frozen, slug));
  },
  scaled: async (plan, { servings, household }, { deps, loaders }) =>
    valueOf(await scaleFrozen(deps, loaders, await loaders.frozen(plan), servings, household ?? {})),
  scaling: async (plan, { servings, household }, { deps, loaders }) =>
    readersPayload(
      "scaled",
      await scaleFrozen(deps, loaders, await loaders.frozen(plan), servings, household ?? {}),
      household,
    ),
  servingsTable: async (plan, { from, to, household: given }, { deps, loaders }) => {
    const { bundle } = await loaders.frozen(plan);
    const side = await readersSide(deps, loaders, [{ bundle, servings: null }], given ?? {});
    const { household, today } = valueOf(side);
    return valueOf(await runInSlices(deps, (work) => servingsTableInSlices(bundle, from, to, household, today, work)));
  },
  checkedAgainst: async ({ ruleSet }, _, { loaders }) => (ruleSet === null ? null : loaders.ruleSets.load(ruleSet)),
  check: async (plan, _, { deps, loaders }) => {
    const { bundle } = await loaders.frozen(plan);
    const { household, rules } = await anybodysSide(loaders, [bundle]);
    return valueOf(await checkPublishedPlan(bundle, household, rules, deps, loaders.readRules));
  },
};

export const planTextsResolvers: FieldsToResolve<PlanTextsResolvers, PlanTextsParent> = {
  summary: async ({ plan, summary }, _, { loaders }) => summary ?? (await loaders.frozen(plan)).bundle.plan.summary,
  summaryLanguage: ({ plan, summary, into }) => (summary === null ? plan.locale : (into ?? plan.locale)),
};

export const findingResolvers: FieldsToResolve<FindingResolvers, FindingParent> = {
  message: (finding) => findingText(finding),
  about: (finding) => aboutWhat(finding),
  caution: (finding) => ("caution" in finding ? finding.caution : null),
  ...placeResolvers,
};
