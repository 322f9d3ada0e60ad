import type { DeliveryOutcome } from "../../webhooks/delivery-outcome.js";
import type { WebhookMessage } from "../../webhooks/webhook-message.js";

/** Where the operator is told of imports, each morning. */
export interface OperatorAddress {
  readonly url: string;
  /** `whsec_` and base64. */
  readonly secret: string;
  send(message: WebhookMessage): Promise<DeliveryOutcome>;
}
