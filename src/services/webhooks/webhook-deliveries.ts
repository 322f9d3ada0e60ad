import { failed, ok, type Result } from "../../domain/problem.js";
import type { Actor, Caller } from "../access/actor.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { DeliveryState, Deps, Page, Webhook, WebhookDelivery } from "../deps.js";
import { findOwner } from "../access/find-owner.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import { write } from "../write.js";

/** How long deliveries that are done with are kept, in milliseconds. */
const deliveriesKept = 30 * 24 * 60 * 60 * 1000;

/** A webhook that the caller has just made or changed. */
export async function findWebhook({ data }: Deps, id: string): Promise<Webhook> {
  const found = await data.webhooks.find(id);
  if (found === null) throw new Error(`the webhook ${id} is gone`);
  return found;
}

/** The same of a delivery. */
export async function findDelivery({ data }: Deps, id: string): Promise<WebhookDelivery> {
  const found = await data.webhookDeliveries.find(id);
  if (found === null) throw new Error(`the delivery ${id} is gone`);
  return found;
}

/** A page of what was and is to be sent to one webhook, newest first. @throws NotAllowed */
export async function listDeliveries(
  deps: Deps,
  actor: Actor,
  { webhook, state, page }: { webhook: string; state: DeliveryState | null; page: WantedPage },
): Promise<Result<Page<WebhookDelivery>>> {
  const find = async () => (await deps.data.webhooks.find(webhook))?.publisher ?? null;
  const publisher = await findOwner(actor, "WEBHOOKS", find);
  const request = readPageRequest(page);
  if (!request.ok) return request;
  const found = await deps.data.webhooks.find(webhook);
  if (found === null || found.publisher !== publisher) {
    return failed([{ code: "UNKNOWN_WEBHOOK", path: ["webhook"], webhook }]);
  }
  return refuseBadCursor(request.value, () => deps.data.webhookDeliveries.page(webhook, state, request.value));
}

/** Sends something again from the first try on: what was given up, or what got lost behind an answer of 2xx. */
export async function replayDelivery(
  deps: Deps,
  caller: Caller,
  { id, idempotencyKey }: { readonly id: string; readonly idempotencyKey?: string | null | undefined },
): Promise<Result<string>> {
  const find = async () => (await deps.data.webhookDeliveries.find(id))?.publisher ?? null;
  const publisher = await findOwner(caller.actor, "WEBHOOKS", find);
  return write(
    deps,
    { caller, scope: "WEBHOOKS", publisher, action: "REPLAY_DELIVERY", idempotencyKey, input: { id } },
    async ({ data, clock }) => {
      const found = await data.webhookDeliveries.find(id);
      if (found === null || found.publisher !== publisher) {
        return failed([{ code: "UNKNOWN_DELIVERY", path: ["input", "id"], delivery: id }]);
      }
      await data.webhookDeliveries.replay(id, clock());
      // Whoever sends again says that the address answers again.
      const webhook = await data.webhooks.find(found.webhookId);
      if (webhook?.disabledBecause === "FAILING") await data.webhooks.enable(webhook.id);
      return ok({ value: id, subject: { kind: "DELIVERY", name: id, before: null, after: null } });
    },
  );
}

/** Forgets deliveries that were made or given up long ago. */
export async function forgetDeliveries({ data, clock }: Deps): Promise<{ readonly forgotten: number }> {
  return { forgotten: await data.webhookDeliveries.forget(new Date(clock().getTime() - deliveriesKept)) };
}
