import { setTimeout as wait } from "node:timers/promises";
import { deliverWebhooks } from "../../services/webhooks/deliver-webhooks.js";
import type { Deps } from "../../services/deps.js";
import { sendWebhook } from "./send-webhook.js";

/** Milliseconds between two looks at what is due, where nothing was. */
const pause = 1_000;

interface WebhookSender {
  /** Lets what is being sent finish, then stops. */
  close(): Promise<void>;
}

/** Sends webhooks until it is closed. The table of deliveries is the queue, so any number of processes may do so. */
export function startWebhookSender(deps: Deps): WebhookSender {
  const stop = new AbortController();
  const allowPrivate = deps.allowPrivateWebhooks ?? false;
  const outside = {
    send: (message: Parameters<typeof sendWebhook>[0]) => sendWebhook(message, { allowPrivate }),
    dice: Math.random,
  };
  const run = async (): Promise<void> => {
    while (!stop.signal.aborted) {
      const tried = await deliverWebhooks(deps, outside).catch((error: unknown) => {
        deps.log.error({ err: error }, "webhooks could not be sent; they are tried again");
        return 0;
      });
      if (tried === 0) await wait(pause, null, { signal: stop.signal }).catch(() => null);
    }
  };
  const running = run();
  return {
    close: () => {
      stop.abort();
      return running;
    },
  };
}
