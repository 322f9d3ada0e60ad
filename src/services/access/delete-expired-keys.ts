import type { Deps } from "../deps.js";

/** How long the answer to a keyed write is kept at the least, in milliseconds. */
const keyLifetime = 24 * 60 * 60 * 1000;

/** Forgets the idempotency keys that are older than they need be. */
export async function deleteExpiredKeys({ data, clock }: Deps): Promise<{ readonly forgotten: number }> {
  return { forgotten: await data.idempotencyKeys.sweep(new Date(clock().getTime() - keyLifetime)) };
}
