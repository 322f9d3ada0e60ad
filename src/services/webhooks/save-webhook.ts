import { failed, ok, type Result } from "../../domain/problem.js";
import type { Caller } from "../access/actor.js";
import type { AuditAction } from "../access/audit-actions.js";
import type { Deps, WebhookKind } from "../deps.js";
import { findOwner } from "../access/find-owner.js";
import { urlProblems } from "./webhook-address.js";
import { newWebhookSecret } from "./webhook-message.js";
import { write } from "../write.js";

/** The most webhooks of one publisher. */
const mostWebhooks = 20;

/** How long an old secret still signs beside the new one, in milliseconds. */
const secretOverlap = 24 * 60 * 60 * 1000;

type Key = string | null | undefined;

interface WebhookInput {
  /** Slug. */
  readonly publisher: string;
  readonly url: string;
  /** Empty: all. */
  readonly kinds: readonly WebhookKind[];
  readonly idempotencyKey?: Key;
}

interface WebhookSecret {
  readonly id: string;
  /** Shown this once. null: the answer is given again. */
  readonly secret: string | null;
}

/** Tells an address of a publisher's changes and ended imports from now on. */
export async function createWebhook(deps: Deps, caller: Caller, input: WebhookInput): Promise<Result<WebhookSecret>> {
  const { publisher, url, idempotencyKey } = input;
  const kinds = [...new Set(input.kinds)].toSorted();
  let secret: string | null = null;
  const made = await write(
    deps,
    {
      ...{ caller, publisher, idempotencyKey },
      scope: "WEBHOOKS",
      action: "CREATE_WEBHOOK",
      input: { publisher, url, kinds },
    },
    async ({ data, clock, allowPrivateWebhooks }) => {
      const problems = urlProblems(url, allowPrivateWebhooks ?? false, ["input", "url"]);
      if (problems.length > 0) return failed(problems);
      await data.publishers.lock(publisher);
      const size = (await data.webhooks.count(publisher)) + 1;
      if (size > mostWebhooks) {
        return failed([{ code: "TOO_LARGE", path: ["input"], what: "webhooks", size, limit: mostWebhooks }]);
      }
      const fresh = newWebhookSecret();
      const id = await data.webhooks.create({ publisher, url, kinds, secret: fresh, createdAt: clock() });
      secret = fresh;
      return ok({ value: id, subject: { kind: "WEBHOOK", name: id, before: null, after: null } });
    },
  );
  return made.ok ? ok({ id: made.value, secret }) : made;
}

/** Gives a webhook a new secret. The old one signs beside it for a day. */
export async function rotateWebhookSecret(
  deps: Deps,
  caller: Caller,
  input: { readonly id: string; readonly idempotencyKey?: Key },
): Promise<Result<WebhookSecret>> {
  let secret: string | null = null;
  const done = await change(deps, caller, "ROTATE_WEBHOOK_SECRET", input, {}, async ({ data, clock }) => {
    const fresh = newWebhookSecret();
    await data.webhooks.rotate(input.id, fresh, new Date(clock().getTime() + secretOverlap));
    secret = fresh;
  });
  return done.ok ? ok({ id: done.value, secret }) : done;
}

/** Stops a webhook, or lets it go on; what waits for it waits until then. */
export function updateWebhook(
  deps: Deps,
  caller: Caller,
  input: { readonly id: string; readonly enabled: boolean; readonly idempotencyKey?: Key },
): Promise<Result<string>> {
  const { id, enabled } = input;
  return change(deps, caller, "UPDATE_WEBHOOK", input, { enabled }, ({ data, clock }) =>
    enabled ? data.webhooks.enable(id) : data.webhooks.disable(id, clock(), "ASKED"),
  );
}

/** Removes a webhook and all its deliveries. */
export function deleteWebhook(
  deps: Deps,
  caller: Caller,
  input: { readonly id: string; readonly idempotencyKey?: Key },
): Promise<Result<string>> {
  return change(deps, caller, "DELETE_WEBHOOK", input, {}, ({ data }) => data.webhooks.remove(input.id));
}

async function change(
  deps: Deps,
  caller: Caller,
  action: AuditAction,
  { id, idempotencyKey }: { readonly id: string; readonly idempotencyKey?: Key },
  more: object,
  work: (deps: Deps) => Promise<void>,
): Promise<Result<string>> {
  const find = async () => (await deps.data.webhooks.find(id))?.publisher ?? null;
  const publisher = await findOwner(caller.actor, "WEBHOOKS", find);
  return write(
    deps,
    { caller, scope: "WEBHOOKS", publisher, action, idempotencyKey, input: { id, ...more } },
    async (inside) => {
      const found = await inside.data.webhooks.find(id);
      if (found === null || found.publisher !== publisher) {
        return failed([{ code: "UNKNOWN_WEBHOOK", path: ["input", "id"], webhook: id }]);
      }
      await work(inside);
      return ok({ value: id, subject: { kind: "WEBHOOK", name: id, before: null, after: null } });
    },
  );
}
