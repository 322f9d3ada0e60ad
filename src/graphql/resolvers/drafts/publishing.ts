import { firstProblems } from "../../../domain/first-problems.js";
import type { Result } from "../../../domain/problem.js";
import { correctPlan } from "../../../services/plans/correct-plan.js";
import { publishDraft, type PublishedDraft } from "../../../services/plans/publish-draft.js";
import { saveFoods } from "../../../services/foods/save-foods.js";
import { unpublishPlan, withdrawPlan } from "../../../services/plans/withdraw-plan.js";
import type { Context } from "../../context.js";
import type { MutationResolvers } from "../../generated/resolver-types.js";
import type { PlanParent } from "../../parent-types.js";
import { payload } from "../../payload.js";
import { freshFoods } from "./draft.js";

export const publishingMutations: Pick<
  MutationResolvers,
  "publishPlan" | "correctPlan" | "withdrawPlan" | "unpublishPlan" | "saveFoods"
> = {
  publishPlan: async (_, { input }, context) => published(context, await publishDraft(context.deps, context, input)),
  correctPlan: async (_, { input }, context) => published(context, await correctPlan(context.deps, context, input)),
  withdrawPlan: async (_, { input }, context) =>
    payload("plan", await withdrawPlan(context.deps, context, input), (withdrawn) => freshPlan(context, withdrawn)),
  unpublishPlan: async (_, { input }, context) =>
    payload("plan", await unpublishPlan(context.deps, context, input), (withdrawn) => freshPlan(context, withdrawn)),
  saveFoods: async (_, { input }, context) => {
    const saved = await saveFoods(context.deps, context, input);
    if (!saved.ok) return { foods: null, changed: null, problems: firstProblems(saved.problems) };
    const { foods, changed } = saved.value;
    return { foods: await freshFoods(context, foods), changed, problems: [] };
  },
};

async function published(context: Context, result: Result<PublishedDraft>) {
  const answer = await payload("plan", result, (made) => freshPlan(context, made));
  return { ...answer, created: result.ok ? result.value.created : null };
}

/** A revision and what its address leads to, read anew: an operation before this one may have read them as they were. */
async function freshPlan({ loaders }: Context, { publisher, slug, revision }: RevisionName): Promise<PlanParent> {
  loaders.plans.clear({ publisher, slug, revision: null });
  const ref = { publisher, slug, revision };
  const plan = await loaders.plans.clear(ref).load(ref);
  if (plan === null) throw new Error(`revision ${revision} of ${publisher}/${slug} is gone`);
  return plan;
}

interface RevisionName {
  readonly publisher: string;
  readonly slug: string;
  readonly revision: number;
}
