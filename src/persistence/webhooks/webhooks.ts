import { z } from "zod";
import type { Data, Webhook } from "../data.js";
import { Prisma } from "../generated/client.js";
import { isId } from "../sql/keys.js";
import { publisherId } from "../access/publishers.js";
import { instantKey, readPage } from "../sql/read-page.js";
import type { Session } from "../database/session.js";
import { isStorable, storable } from "../sql/storable-text.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";

const columns = Prisma.sql`w.id, b.slug AS publisher, w.url, w.kinds, w.created_at AS "createdAt",
  w.disabled_at AS "disabledAt", w.disabled_because AS "disabledBecause"`;

const keys = z.tuple([instantKey, z.string().refine(isId)]);

/** Newest first. */
export const newestFirst = (createdAt: Prisma.Sql, id: Prisma.Sql) => [
  { column: createdAt, type: Prisma.sql`timestamptz`, descending: true },
  { column: id, type: Prisma.sql`uuid`, descending: false },
];

export function webhookData({ db }: Session): Data["webhooks"] {
  return {
    create: async ({ publisher, url, kinds, secret, createdAt }) => {
      const owner = await publisherId(db, publisher);
      const data = { publisherId: owner, url: storable(url), kinds: [...kinds], secret, createdAt };
      const { id } = await db.webhook.create({ data, select: { id: true } });
      return id;
    },
    find: async (id) => {
      if (!isId(id)) return null;
      const [row] = await db.$queryRaw<Webhook[]>`
        SELECT ${columns} FROM webhooks w JOIN publishers b ON b.id = w.publisher_id WHERE w.id = ${id}::uuid`;
      return row === undefined ? null : webhookOf(row);
    },
    count: (publisher) => db.webhook.count({ where: { publisher: { slug: publisher } } }),
    page: async (publisher, request) => {
      const page = await readPage<Webhook, readonly [string, string]>(
        db,
        {
          order: newestFirst(Prisma.sql`w.created_at`, Prisma.sql`w.id`),
          keys,
          from: Prisma.sql`webhooks w`,
          where:
            publisher === null || !isStorable(publisher)
              ? Prisma.sql`${publisher === null}`
              : Prisma.sql`w.publisher_id = ${idOfPublisher(publisher)}`,
          columns,
          join: Prisma.sql`JOIN webhooks w ON w.id = k.k1 JOIN publishers b ON b.id = w.publisher_id`,
          keysOf: ({ createdAt, id }) => [createdAt.toISOString(), id],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: webhookOf(item) })) };
    },
    rotate: async (id, secret, oldUntil) => {
      await db.$executeRaw`UPDATE webhooks SET old_secret = secret, old_secret_until = ${oldUntil.toISOString()}::timestamptz,
        secret = ${secret} WHERE id = ${id}::uuid`;
    },
    enable: async (id) => {
      await db.webhook.updateMany({ where: { id }, data: { disabledAt: null, disabledBecause: null } });
    },
    disable: async (id, at, because) => {
      await db.webhook.updateMany({
        where: { id, disabledAt: null },
        data: { disabledAt: at, disabledBecause: because },
      });
    },
    remove: async (id) => {
      await db.webhook.deleteMany({ where: { id } });
    },
  };
}

const webhookOf = (row: Webhook): Webhook => ({
  id: row.id,
  publisher: row.publisher,
  url: row.url,
  kinds: row.kinds,
  createdAt: row.createdAt,
  disabledAt: row.disabledAt,
  disabledBecause: row.disabledBecause,
});
