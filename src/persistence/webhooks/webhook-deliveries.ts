import { z } from "zod";
import type { ClaimedDelivery, Data, WebhookDelivery } from "../data.js";
import { Prisma } from "../generated/client.js";
import { isId } from "../sql/keys.js";
import { instantKey, readPage } from "../sql/read-page.js";
import type { Db, Session } from "../database/session.js";
import { newestFirst } from "./webhooks.js";

const columns = Prisma.sql`d.id, b.slug AS publisher, d.webhook_id AS "webhookId", d.change_id AS "changeId", d.run_id AS "runId", d.scheduled_id AS "scheduledId",
  COALESCE(c.kind, CASE WHEN d.scheduled_id IS NULL THEN 'IMPORT_ENDED' ELSE 'PLAN_KEPT_BACK' END) AS kind, c.revision_id AS "revisionId", d.state, d.attempts, d.due_at AS "dueAt", d.created_at AS "createdAt",
  d.tried_at AS "triedAt", d.status, d.error`;

const joins = Prisma.sql`JOIN publishers b ON b.id = d.publisher_id
  LEFT JOIN changes c ON c.publisher_id = d.publisher_id AND c.id = d.change_id`;

const keys = z.tuple([instantKey, z.string().refine(isId)]);

export function webhookDeliveryData({ db }: Session): Data["webhookDeliveries"] {
  return {
    find: async (id) => {
      if (!isId(id)) return null;
      const [row] = await db.$queryRaw<WebhookDelivery[]>`
        SELECT ${columns} FROM webhook_deliveries d ${joins} WHERE d.id = ${id}::uuid`;
      return row === undefined ? null : deliveryOf(row);
    },
    page: async (webhook, state, request) => {
      const page = await readPage<WebhookDelivery, readonly [string, string]>(
        db,
        {
          order: newestFirst(Prisma.sql`d.created_at`, Prisma.sql`d.id`),
          keys,
          from: Prisma.sql`webhook_deliveries d`,
          where: Prisma.sql`d.webhook_id = ${webhook}::uuid
            AND d.publisher_id = (SELECT publisher_id FROM webhooks WHERE id = ${webhook}::uuid)
            AND (${state}::text IS NULL OR d.state = ${state})`,
          columns,
          join: Prisma.sql`JOIN webhook_deliveries d ON d.id = k.k1 AND d.webhook_id = ${webhook}::uuid ${joins}`,
          keysOf: ({ createdAt, id }) => [createdAt.toISOString(), id],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: deliveryOf(item) })) };
    },
    claim: (now, leaseUntil, limit) => claim(db, now, leaseUntil, limit),
    settle: async ({ id, attempts }, { state, dueAt, status, error }) => {
      // Not if the lease ran out and another worker has it now.
      await db.webhookDelivery.updateMany({
        where: { id, attempts, state: "PENDING" },
        data: { state, status, error, ...(dueAt === null ? {} : { dueAt }) },
      });
    },
    giveUp: async (webhook, error) => {
      await db.webhookDelivery.updateMany({
        where: { webhookId: webhook, state: "PENDING" },
        data: { state: "DEAD", error },
      });
    },
    replay: async (id, at) => {
      await db.webhookDelivery.updateMany({ where: { id }, data: { state: "PENDING", attempts: 0, dueAt: at } });
    },
    hasArrivedSince: async (id) => {
      const [row] = await db.$queryRaw<{ arrived: boolean }[]>`
        SELECT EXISTS (SELECT 1 FROM webhook_deliveries o
          WHERE o.publisher_id = d.publisher_id AND o.webhook_id = d.webhook_id AND o.state = 'DELIVERED'
            AND o.tried_at >= d.created_at) AS arrived
        FROM webhook_deliveries d WHERE d.id = ${id}::uuid`;
      return row?.arrived === true;
    },
    forget: async (before) => {
      const { count } = await db.webhookDelivery.deleteMany({
        where: { state: { not: "PENDING" }, createdAt: { lt: before } },
      });
      return count;
    },
  };
}

/** One statement. Rows that another worker is claiming are passed over, and a lease keeps others off while it sends. */
const claim = (db: Db, now: Date, leaseUntil: Date, limit: number): Promise<readonly ClaimedDelivery[]> =>
  db.$queryRaw<ClaimedDelivery[]>`
    WITH due AS (
      SELECT d.publisher_id, d.id FROM webhook_deliveries d
      JOIN webhooks w ON w.publisher_id = d.publisher_id AND w.id = d.webhook_id AND w.disabled_at IS NULL
      WHERE d.state = 'PENDING' AND d.due_at <= ${now.toISOString()}::timestamptz
      ORDER BY d.due_at LIMIT ${limit} FOR UPDATE OF d SKIP LOCKED
    ), claimed AS (
      UPDATE webhook_deliveries d SET attempts = d.attempts + 1, due_at = ${leaseUntil.toISOString()}::timestamptz,
        tried_at = ${now.toISOString()}::timestamptz
      FROM due WHERE d.publisher_id = due.publisher_id AND d.id = due.id RETURNING d.*
    )
    SELECT d.id, d.attempts, d.webhook_id AS "webhookId", w.url, w.secret, w.old_secret AS "oldSecret",
      w.old_secret_until AS "oldSecretUntil", b.slug AS publisher, COALESCE(c.at, i.ended_at, s.ended_at) AS at,
      CASE WHEN s.id IS NOT NULL
        THEN jsonb_build_object('kind', 'PLAN_KEPT_BACK', 'scheduledId', s.id, 'plan', s.slug, 'scheduled', s.kind,
          'problems', jsonb_path_query_array(s.problems, '$[*].code'))
      WHEN i.id IS NULL
        THEN jsonb_build_object('kind', c.kind, 'changeId', c.id, 'plan', p.slug, 'revision', r.revision)
        ELSE jsonb_build_object('kind', 'IMPORT_ENDED', 'runId', i.id, 'feed', f.slug, 'runKind', i.kind,
          'state', i.state, 'counts', jsonb_build_object('read', i.rows_read, 'created', i.created,
          'changed', i.changed, 'unchanged', i.unchanged, 'quarantined', i.quarantined, 'repeated', i.repeated))
      END AS tells
    FROM claimed d
    JOIN webhooks w ON w.publisher_id = d.publisher_id AND w.id = d.webhook_id
    JOIN publishers b ON b.id = d.publisher_id
    LEFT JOIN changes c ON c.publisher_id = d.publisher_id AND c.id = d.change_id
    LEFT JOIN revisions r ON r.publisher_id = c.publisher_id AND r.id = c.revision_id
    LEFT JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id
    LEFT JOIN scheduled_changes s ON s.publisher_id = d.publisher_id AND s.id = d.scheduled_id
    LEFT JOIN import_runs i ON i.id = d.run_id
    LEFT JOIN feeds f ON f.id = i.feed_id`;

/** Inside the transaction that ends the run: tells the webhooks of the feed's publisher. The operator's feeds have none. */
export async function tellOfEndedRun(db: Db, run: string, at: Date): Promise<void> {
  await db.$executeRaw`
    INSERT INTO webhook_deliveries (publisher_id, webhook_id, run_id, due_at, created_at)
    SELECT w.publisher_id, w.id, r.id, ${at.toISOString()}::timestamptz, ${at.toISOString()}::timestamptz
    FROM import_runs r JOIN feeds f ON f.id = r.feed_id JOIN webhooks w ON w.publisher_id = f.owner
    WHERE r.id = ${run}::uuid AND w.disabled_at IS NULL AND (w.kinds = '{}' OR 'IMPORT_ENDED' = ANY(w.kinds))`;
}

const deliveryOf = (row: WebhookDelivery): WebhookDelivery => ({
  id: row.id,
  publisher: row.publisher,
  webhookId: row.webhookId,
  kind: row.kind,
  changeId: row.changeId,
  revisionId: row.revisionId,
  runId: row.runId,
  scheduledId: row.scheduledId,
  state: row.state,
  attempts: row.attempts,
  dueAt: row.dueAt,
  createdAt: row.createdAt,
  triedAt: row.triedAt,
  status: row.status,
  error: row.error,
});
