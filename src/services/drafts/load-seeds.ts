import type { Food } from "../../domain/model/food.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { Deps } from "../deps.js";
import { publishPlan } from "../plans/publish-plan.js";

interface SeedsInput {
  readonly publisher: { readonly slug: string; readonly name: string };
  readonly foods: readonly Food[];
  readonly bundles: readonly PlanBundle[];
}

/** How much really changed; all zero the second time. */
export interface SeedsLoaded {
  readonly foods: number;
  readonly plans: number;
}

/** Puts demo data in, all of it or nothing, through the checks that every writer's plan goes through. */
export async function loadSeeds(deps: Deps, seeds: SeedsInput): Promise<Result<SeedsLoaded>> {
  const problems: Problem[] = [];
  const loaded = await deps.data
    .transaction(async (data): Promise<SeedsLoaded> => {
      const inside: Deps = { ...deps, data };
      await data.publishers.save(seeds.publisher);
      const foods = await data.foods.save(seeds.foods);
      let plans = 0;
      for (const [index, bundle] of seeds.bundles.entries()) {
        // A millisecond apart, so that "newest first" is the same order in every installation.
        const clock = (): Date => new Date(deps.clock().getTime() + index);
        const published = await publishPlan({ ...inside, clock }, bundle);
        if (!published.ok) problems.push(...published.problems);
        else if (published.value.created) plans += 1;
      }
      if (problems.length > 0) throw new SeedsRefused();
      return { foods: foods.changed, plans };
    })
    .catch((error: unknown) => {
      if (error instanceof SeedsRefused) return null;
      throw error;
    });
  return loaded === null ? failed(problems) : ok(loaded);
}

/** Only there to roll the transaction back; the problems are the answer. */
class SeedsRefused extends Error {
  override readonly name = "SeedsRefused";
}
