import { entryId } from "../../../exports/feeds/feed.js";
import type { RevisionSummary } from "../../../services/deps.js";
import type { Loaders } from "../../loaders.js";

/** The first revision of a plan, withdrawn or not; the given one where none was published yet, as of a draft that is previewed. */
export const firstOf = async (plan: RevisionSummary, { plans }: Loaders): Promise<RevisionSummary> =>
  plan.revision === 1
    ? plan
    : ((await plans.load({ publisher: plan.publisher, slug: plan.slug, revision: 1 })) ?? plan);

/** The same for all revisions of a plan: what feeds call it. */
export const planIdOf = async (plan: RevisionSummary, loaders: Loaders): Promise<string> =>
  entryId({ planId: (await firstOf(plan, loaders)).id });

/** When readers of the plan were told something new last. */
export async function updatedAtOf(plan: RevisionSummary, { plans }: Loaders): Promise<Date> {
  const newest = await plans.load({ publisher: plan.publisher, slug: plan.slug, revision: null });
  return newest?.publishedAt ?? plan.withdrawnAt ?? plan.publishedAt;
}
