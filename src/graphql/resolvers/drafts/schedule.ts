import { scheduledNotice } from "../../../exports/sentences/scheduled-notice.js";
import { cancelScheduled, changeScheduled, listScheduled } from "../../../services/schedule/change-scheduled.js";
import { schedulePublication, scheduleWithdrawal } from "../../../services/schedule/schedule-plan.js";
import { valueOf } from "../../errors.js";
import type { MutationResolvers, QueryResolvers, ScheduledChangeResolvers } from "../../generated/resolver-types.js";
import type { ScheduledChangeParent } from "../../parent-types.js";
import { payload } from "../../payload.js";
import { connection } from "../connection.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";

const asItIs = (change: ScheduledChangeParent): ScheduledChangeParent => change;

export const scheduleQueries: Pick<QueryResolvers, "scheduled"> = {
  scheduled: async (_, { publisher, states, ...page }, { deps, actor }) =>
    connection(valueOf(await listScheduled(deps, actor, { publisher, states: states ?? [], page })), asItIs),
};

export const scheduleMutations: Pick<
  MutationResolvers,
  "schedulePublication" | "scheduleWithdrawal" | "changeScheduled" | "cancelScheduled"
> = {
  schedulePublication: async (_, { input }, context) =>
    payload("scheduled", await schedulePublication(context.deps, context, input), asItIs),
  scheduleWithdrawal: async (_, { input }, context) =>
    payload("scheduled", await scheduleWithdrawal(context.deps, context, input), asItIs),
  changeScheduled: async (_, { input }, context) =>
    payload("scheduled", await changeScheduled(context.deps, context, input), asItIs),
  cancelScheduled: async (_, { input }, context) =>
    payload("scheduled", await cancelScheduled(context.deps, context, input), asItIs),
};

export const scheduledChangeResolvers: FieldsToResolve<ScheduledChangeResolvers, ScheduledChangeParent> = {
  publisher: ({ publisher }, _, { loaders }) => loaders.publisherOf(publisher),
  problems: ({ problems }) => [...problems],
  notice: (change) => scheduledNotice(change),
};
