import type { Data } from "../data.js";
import type { Session } from "../database/session.js";
import { storable } from "../sql/storable-text.js";

export function idempotencyKeyData({ db }: Session): Data["idempotencyKeys"] {
  return {
    claim: async (owner, key) => {
      storable({ owner, key });
      const [lock] = await db.$queryRaw<{ mine: boolean }[]>`
        SELECT pg_try_advisory_xact_lock(hashtextextended(${JSON.stringify(["idempotency key", owner, key])}, 0)) AS mine`;
      if (lock?.mine !== true) return { state: "RUNNING" };
      const found = await db.idempotencyKey.findUnique({
        where: { owner_key: { owner, key } },
        select: { fingerprint: true, answer: true },
      });
      return found === null ? { state: "FREE" } : { state: "ANSWERED", ...found };
    },
    store: async ({ owner, key, fingerprint, answer, at }) => {
      await db.$executeRaw`
        INSERT INTO idempotency_keys (owner, key, fingerprint, answer, created_at)
        VALUES (${owner}, ${key}, ${fingerprint}, ${JSON.stringify(answer)}::jsonb, ${at.toISOString()}::timestamptz)`;
    },
    sweep: async (before) => {
      const { count } = await db.idempotencyKey.deleteMany({ where: { createdAt: { lt: before } } });
      return count;
    },
  };
}
