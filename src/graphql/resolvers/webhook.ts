import { listWebhooks } from "../../services/access/admin-lists.js";
import {
  createWebhook,
  deleteWebhook,
  rotateWebhookSecret,
  updateWebhook,
} from "../../services/webhooks/save-webhook.js";
import {
  findDelivery,
  findWebhook,
  listDeliveries,
  replayDelivery,
} from "../../services/webhooks/webhook-deliveries.js";
import { valueOf } from "../errors.js";
import type {
  MutationResolvers,
  QueryResolvers,
  WebhookDeliveryResolvers,
  WebhookResolvers,
} from "../generated/resolver-types.js";
import type { WebhookDeliveryParent, WebhookParent } from "../parent-types.js";
import { payload } from "../payload.js";
import { connection } from "./connection.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

export const webhookQueries: Pick<QueryResolvers, "webhooks" | "webhookDeliveries"> = {
  webhooks: async (_, { publisher, ...page }, { deps, actor }) =>
    connection(valueOf(await listWebhooks(deps, actor, { publisher: publisher ?? null, page })), (webhook) => webhook),

  webhookDeliveries: async (_, { webhook, state, ...page }, { deps, actor }) =>
    connection(
      valueOf(await listDeliveries(deps, actor, { webhook, state: state ?? null, page })),
      (delivery) => delivery,
    ),
};

type WebhookMutation =
  "createWebhook" | "rotateWebhookSecret" | "updateWebhook" | "deleteWebhook" | "replayWebhookDelivery";

export const webhookMutations: Pick<MutationResolvers, WebhookMutation> = {
  createWebhook: async (_, { input }, context) => {
    const made = await createWebhook(context.deps, context, { ...input, kinds: input.kinds ?? [] });
    const answer = await payload("webhook", made, ({ id }) => findWebhook(context.deps, id));
    return { ...answer, secret: made.ok ? made.value.secret : null };
  },
  rotateWebhookSecret: async (_, { input }, context) => {
    const made = await rotateWebhookSecret(context.deps, context, input);
    const answer = await payload("webhook", made, ({ id }) => findWebhook(context.deps, id));
    return { ...answer, secret: made.ok ? made.value.secret : null };
  },
  updateWebhook: async (_, { input }, context) =>
    payload("webhook", await updateWebhook(context.deps, context, input), (id) => findWebhook(context.deps, id)),
  deleteWebhook: async (_, { input }, context) =>
    payload("deleted", await deleteWebhook(context.deps, context, input), (id) => id),
  replayWebhookDelivery: async (_, { input }, context) =>
    payload("delivery", await replayDelivery(context.deps, context, input), (id) => findDelivery(context.deps, id)),
};

export const webhookResolvers: FieldsToResolve<WebhookResolvers, WebhookParent> = {
  publisher: ({ publisher }, _, { loaders }) => loaders.publisherOf(publisher),
};

export const webhookDeliveryResolvers: FieldsToResolve<WebhookDeliveryResolvers, WebhookDeliveryParent> = {
  change: ({ changeId }) => changeId,
  run: ({ runId }) => runId,
  scheduled: ({ scheduledId }) => scheduledId,
  plan: ({ revisionId }, _, { loaders }) => (revisionId === null ? null : loaders.revisionOf(revisionId)),
  nextAt: ({ state, dueAt }) => (state === "PENDING" ? dueAt : null),
};
