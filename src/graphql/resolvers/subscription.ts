import { followImport } from "../../services/imports/follow-import.js";
import { followPlan } from "../../services/plans/follow-plan.js";
import { subscribed, type Context } from "../context.js";
import { valueOf } from "../errors.js";
import type { SubscriptionResolvers } from "../generated/resolver-types.js";

export const subscriptionResolvers: SubscriptionResolvers = {
  planChanged: {
    subscribe: async (_, { publisher, slug, after = null }, context: Context) => {
      const changes = valueOf(await followPlan(context.deps, { publisher, slug, after, over: subscribed(context) }));
      return (async function* () {
        for await (const { cursor, change } of changes) yield { planChanged: { cursor, node: change } };
      })();
    },
  },
  importProgress: {
    subscribe: async (_, { id }, context: Context) => {
      const { deps, actor } = context;
      const runs = valueOf(await followImport(deps, { actor, id, over: subscribed(context) }));
      return (async function* () {
        for await (const run of runs) yield { importProgress: run };
      })();
    },
  },
};
