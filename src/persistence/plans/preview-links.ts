import { z } from "zod";
import { authorOf, programOf, tokenOf } from "../access/access-tokens.js";
import { publisherId } from "../access/publishers.js";
import type { Session } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";
import { isId } from "../sql/keys.js";
import { instantKey, readPage } from "../sql/read-page.js";
import { storable } from "../sql/storable-text.js";
import { newestFirst } from "../webhooks/webhooks.js";
import type { PreviewLink, PreviewLinkData } from "./preview-link-data.js";

const columns = Prisma.sql`l.id, b.slug AS publisher, l.slug, l.created_at AS "createdAt",
  l.created_by_token AS "createdByToken", l.created_by_program AS "createdByProgram", l.expires_at AS "expiresAt",
  l.revoked_at AS "revokedAt"`;

const joinPublisher = Prisma.sql`JOIN publishers b ON b.id = l.publisher_id`;

interface LinkRow extends Omit<PreviewLink, "createdBy"> {
  readonly createdByToken: string | null;
  readonly createdByProgram: string | null;
}

const keys = z.tuple([instantKey, z.string().refine(isId)]);

export function previewLinkData({ db }: Session): PreviewLinkData {
  return {
    create: async ({ publisher, slug, secretHash, createdAt, createdBy, expiresAt }) => {
      const owner = await publisherId(db, publisher);
      const made = await db.previewLink.create({
        data: {
          publisherId: owner,
          slug: storable(slug),
          secretHash,
          createdAt,
          createdByToken: tokenOf(createdBy),
          createdByProgram: programOf(createdBy),
          expiresAt,
        },
        select: { id: true },
      });
      return made.id;
    },
    find: async (id) => {
      if (!isId(id)) return null;
      const [row] = await db.$queryRaw<LinkRow[]>`
        SELECT ${columns} FROM preview_links l ${joinPublisher} WHERE l.id = ${id}::uuid`;
      return row === undefined ? null : linkOf(row);
    },
    bySecret: async (publisher, secretHash) => {
      const [row] = await db.$queryRaw<LinkRow[]>`
        SELECT ${columns} FROM preview_links l ${joinPublisher}
        WHERE l.publisher_id = ${idOfPublisher(publisher)} AND l.secret_hash = ${secretHash}`;
      return row === undefined ? null : linkOf(row);
    },
    countOpen: (publisher, at) =>
      db.previewLink.count({ where: { publisher: { slug: publisher }, revokedAt: null, expiresAt: { gt: at } } }),
    page: async (publisher, request) => {
      const page = await readPage<LinkRow, readonly [string, string]>(
        db,
        {
          order: newestFirst(Prisma.sql`l.created_at`, Prisma.sql`l.id`),
          keys,
          from: Prisma.sql`preview_links l`,
          where: Prisma.sql`l.publisher_id = ${idOfPublisher(publisher)}`,
          columns,
          join: Prisma.sql`JOIN preview_links l ON l.id = k.k1 ${joinPublisher}`,
          keysOf: ({ createdAt, id }) => [createdAt.toISOString(), id],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: linkOf(item) })) };
    },
    revoke: async (id, at) => {
      if (!isId(id)) return false;
      const { count } = await db.previewLink.updateMany({ where: { id, revokedAt: null }, data: { revokedAt: at } });
      return count > 0;
    },
  };
}

const linkOf = ({ createdByToken, createdByProgram, ...row }: LinkRow): PreviewLink => ({
  id: row.id,
  publisher: row.publisher,
  slug: row.slug,
  createdAt: row.createdAt,
  createdBy: authorOf(createdByToken, createdByProgram),
  expiresAt: row.expiresAt,
  revokedAt: row.revokedAt,
});
