import { createHmac, randomBytes } from "node:crypto";
import type { ClaimedDelivery, WebhookKind } from "../../persistence/data.js";

const prefix = "whsec_";

/** Standard Webhooks asks for 24 to 64 random bytes. */
export const newWebhookSecret = (): string => prefix + randomBytes(32).toString("base64");

const types: Readonly<Record<WebhookKind, string>> = {
  PLAN_PUBLISHED: "plan.published",
  PLAN_CORRECTED: "plan.corrected",
  PLAN_WITHDRAWN: "plan.withdrawn",
  PLAN_ANSWER_CHANGED: "plan.answer-changed",
  PLAN_LESS_SAFE: "plan.less-safe",
  IMPORT_ENDED: "import.ended",
  PLAN_KEPT_BACK: "plan.kept-back",
};

export interface WebhookMessage {
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string;
}

/**
 * What is sent, by the Standard Webhooks specification: the same id and body at every try, and a signature by each secret
 * that is good at `now`. The body names what changed and carries nothing of it; of an import that
 * ended it counts what became of its rows.
 */
export function webhookMessage(delivery: ClaimedDelivery, now: Date): WebhookMessage {
  const { id, url, at, tells } = delivery;
  const body = JSON.stringify({ type: types[tells.kind], timestamp: at.toISOString(), data: dataOf(delivery) });
  return { url, headers: signedHeaders({ id, body, at: now, secrets: secretsOf(delivery, now) }), body };
}

/** The headers of the Standard Webhooks specification, with a signature by each secret. */
export function signedHeaders({ id, body, at, secrets }: Signed): WebhookMessage["headers"] {
  const timestamp = String(Math.floor(at.getTime() / 1000));
  const sign = (secret: string): string =>
    `v1,${createHmac("sha256", Buffer.from(secret.slice(prefix.length), "base64"))
      .update(`${id}.${timestamp}.${body}`)
      .digest("base64")}`;
  return {
    "content-type": "application/json",
    "user-agent": "prepwright-webhooks",
    "webhook-id": id,
    "webhook-timestamp": timestamp,
    "webhook-signature": secrets.map(sign).join(" "),
  };
}

interface Signed {
  readonly id: string;
  readonly body: string;
  readonly at: Date;
  readonly secrets: readonly string[];
}

function dataOf({ publisher, tells }: ClaimedDelivery): object {
  if (tells.kind === "PLAN_KEPT_BACK") {
    const { scheduledId, plan, scheduled, problems } = tells;
    return { scheduled: scheduledId, publisher, plan, kind: scheduled, problems };
  }
  if (tells.kind !== "IMPORT_ENDED") {
    const { changeId, plan, revision } = tells;
    return { change: changeId, publisher, plan, revision };
  }
  const { runId, feed, runKind, state, counts } = tells;
  const { read, created, changed, unchanged, quarantined, repeated } = counts;
  return {
    ...{ run: runId, publisher, feed, kind: runKind, state },
    counts: { read, created, changed, unchanged, quarantined, repeated },
    report: `/v1/publishers/${publisher}/feeds/${feed}/runs/${runId}/report`,
  };
}

function secretsOf({ secret, oldSecret, oldSecretUntil }: ClaimedDelivery, now: Date): readonly string[] {
  return oldSecret !== null && oldSecretUntil !== null && oldSecretUntil > now ? [secret, oldSecret] : [secret];
}
