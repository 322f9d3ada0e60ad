import type { DeliveryOutcome } from "./delivery-outcome.js";
import type { ClaimedDelivery, Deps } from "../deps.js";
import { retryAfterOf } from "../access/retry-after.js";
import { webhookMessage, type WebhookMessage } from "./webhook-message.js";

/** Seconds to wait after the first, second … try that failed. The example of the Standard Webhooks specification. */
export const waits = [5, 300, 1800, 7200, 18_000, 36_000, 50_400, 72_000, 86_400] as const;

/** Deliveries sent at a time. */
const batch = 20;

/** How long a worker that took a delivery has it to itself, in milliseconds; well above the longest a try may take. */
const lease = 60_000;

/** The most that an address may put a try off, in milliseconds. */
const longestWait = 24 * 60 * 60 * 1000;

/** How the outside is reached, and the dice for the waits (0 up to 1). */
export interface Outside {
  send(message: WebhookMessage): Promise<DeliveryOutcome>;
  dice(): number;
}

/**
 * Sends what is due, and writes down what came of it. Several workers may do so at once; none gets what another has. A worker
 * that dies leaves its deliveries to others after the lease, so each is sent at least once. Counts what was tried.
 */
export async function deliverWebhooks(deps: Deps, outside: Outside): Promise<number> {
  const now = deps.clock();
  const claimed = await deps.data.webhookDeliveries.claim(now, new Date(now.getTime() + lease), batch);
  await Promise.all(claimed.map((delivery) => deliver(deps, outside, delivery)));
  return claimed.length;
}

async function deliver(deps: Deps, outside: Outside, delivery: ClaimedDelivery): Promise<void> {
  const { data, clock, log } = deps;
  const sent = await outside.send(webhookMessage(delivery, clock()));
  const now = clock();
  const facts = { delivery: delivery.id, webhook: delivery.webhookId, attempt: delivery.attempts, ...sent };
  const status = sent.answered ? sent.status : null;
  if (status !== null && status >= 200 && status < 300) {
    await data.webhookDeliveries.settle(delivery, { state: "DELIVERED", dueAt: null, status, error: null });
    return;
  }
  const error = sent.answered ? `the answer was ${sent.status}` : sent.error;
  if (status === 410) {
    await data.transaction(async (inside) => {
      await inside.webhookDeliveries.settle(delivery, { state: "DEAD", dueAt: null, status, error });
      await inside.webhooks.disable(delivery.webhookId, now, "GONE");
      await inside.webhookDeliveries.giveUp(delivery.webhookId, "the webhook is gone");
    });
    log.warn(facts, "a webhook answered 410 and was disabled");
    return;
  }
  const wait = waits[delivery.attempts - 1];
  if (wait === undefined) {
    await data.webhookDeliveries.settle(delivery, { state: "DEAD", dueAt: null, status, error });
    if (await data.webhookDeliveries.hasArrivedSince(delivery.id)) {
      log.warn(facts, "a webhook could not be delivered");
      return;
    }
    // Three days without a single answer: nobody is there, and each change would be tried ten times more.
    await data.webhooks.disable(delivery.webhookId, now, "FAILING");
    log.warn(facts, "a webhook was disabled: nothing has arrived there for three days");
    return;
  }
  const after = wait * 1000 * (1 + outside.dice() / 10);
  const asked = sent.answered ? retryAfterOf(sent.retryAfter, now) : 0;
  const dueAt = new Date(now.getTime() + Math.min(longestWait * 1.1, Math.max(after, asked)));
  await data.webhookDeliveries.settle(delivery, { state: "PENDING", dueAt, status, error });
}
