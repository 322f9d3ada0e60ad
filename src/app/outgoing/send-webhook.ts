import { lookup as resolve, type LookupAddress } from "node:dns";
import { request as plainRequest } from "node:http";
import { request as secureRequest } from "node:https";
import type { LookupFunction } from "node:net";
import type { DeliveryOutcome } from "../../services/webhooks/delivery-outcome.js";
import { isPublicAddress, literalAddress } from "../../services/webhooks/webhook-address.js";
import type { WebhookMessage } from "../../services/webhooks/webhook-message.js";

/** Milliseconds until a try is given up, from looking the host up to the head of the answer. */
const patience = 15_000;

interface SendOptions {
  /** Also to http: and to addresses of private networks. */
  readonly allowPrivate: boolean;
  /** Milliseconds; `patience` unless told. */
  readonly timeout?: number;
}

/** A name that leads into a private network. */
export class PrivateAddress extends Error {
  override readonly name = "PrivateAddress";

  constructor() {
    super("the host leads to an address of a private network");
  }
}

/**
 * Posts a message. Never follows a redirect, reads nothing of the answer but its head, and never rejects. The address that
 * is connected to is the one that was checked: the name is looked up once, by the connection itself.
 */
export function sendWebhook(
  message: WebhookMessage,
  { allowPrivate, timeout = patience }: SendOptions,
): Promise<DeliveryOutcome> {
  const url = new URL(message.url);
  const literal = literalAddress(url);
  if (!allowPrivate && (url.protocol !== "https:" || (literal !== null && !isPublicAddress(literal)))) {
    return Promise.resolve({ answered: false, error: "only https: to a public address is allowed" });
  }
  const send = url.protocol === "https:" ? secureRequest : plainRequest;
  return new Promise((settled) => {
    const sending = send(
      url,
      {
        method: "POST",
        agent: false,
        headers: { ...message.headers, "content-length": Buffer.byteLength(message.body) },
        signal: AbortSignal.timeout(timeout),
        ...(allowPrivate ? {} : { lookup: publicLookup }),
      },
      (answer) => {
        settled({ answered: true, status: answer.statusCode ?? 0, retryAfter: answer.headers["retry-after"] ?? null });
        answer.destroy();
      },
    );
    sending.on("error", (error: NodeJS.ErrnoException) =>
      settled({
        answered: false,
        error: error.name === "AbortError" ? `no answer within ${timeout} ms` : error.message,
      }),
    );
    sending.end(message.body);
  });
}

/** Looks a name up, and refuses it if any of its addresses is a private one. */
export const publicLookup: LookupFunction = (hostname, options, callback) => {
  resolve(hostname, { ...options, all: true }, (error, addresses: LookupAddress[]) => {
    if (error !== null) return callback(error, []);
    if (!addresses.every(({ address }) => isPublicAddress(address))) return callback(new PrivateAddress(), []);
    const [first] = addresses;
    if (options.all === true || first === undefined) return callback(null, addresses);
    callback(null, first.address, first.family);
  });
};
