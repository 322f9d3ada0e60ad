import { z } from "zod";
import type { AccessToken, Author, Data } from "../data.js";
import { Prisma } from "../generated/client.js";
import { publisherId } from "./publishers.js";
import { instantKey, readPage } from "../sql/read-page.js";
import type { Session } from "../database/session.js";
import { isStorable, storable } from "../sql/storable-text.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";

const columns = Prisma.sql`t.id, b.slug AS publisher, t.name, t.scopes, t.created_at AS "createdAt",
  t.created_by_token AS "createdByToken", t.created_by_program AS "createdByProgram", t.expires_at AS "expiresAt",
  t.last_used_at AS "lastUsedAt", t.revoked_at AS "revokedAt", t.import_publishes AS "importPublishes",
  t.points_per_minute AS "pointsPerMinute",
  t.secret_hash AS "secretHash"`;

const joinPublisher = Prisma.sql`LEFT JOIN publishers b ON b.id = t.publisher_id`;

interface TokenRow extends Omit<AccessToken, "createdBy"> {
  readonly createdByToken: string | null;
  readonly createdByProgram: string | null;
  readonly secretHash: string;
}

const keys = z.tuple([instantKey, z.string().regex(/^[0-9A-Za-z]{1,40}$/)]);

export function accessTokenData({ db }: Session): Data["accessTokens"] {
  return {
    create: async (token) => {
      const {
        id,
        publisher,
        name,
        scopes,
        secretHash,
        createdAt,
        createdBy,
        expiresAt,
        pointsPerMinute = null,
      } = storable(token);
      const owner = publisher === null ? null : await publisherId(db, publisher);
      await db.accessToken.create({
        data: {
          id,
          publisherId: owner,
          name,
          scopes: [...scopes],
          secretHash,
          createdAt,
          createdByToken: tokenOf(createdBy),
          createdByProgram: programOf(createdBy),
          expiresAt,
          pointsPerMinute,
        },
        select: { id: true },
      });
    },
    find: async (id) => {
      if (!isStorable(id)) return null;
      const [row] = await db.$queryRaw<TokenRow[]>`
        SELECT ${columns} FROM access_tokens t ${joinPublisher} WHERE t.id = ${id}`;
      return row === undefined ? null : { token: tokenOfRow(row), secretHash: row.secretHash };
    },
    noteUse: async (id, at, unlessSince) => {
      await db.accessToken.updateMany({
        where: { id, OR: [{ lastUsedAt: null }, { lastUsedAt: { lt: unlessSince } }] },
        data: { lastUsedAt: at },
      });
    },
    revoke: async (id, at) => {
      const { count } = await db.accessToken.updateMany({ where: { id, revokedAt: null }, data: { revokedAt: at } });
      return count > 0;
    },
    importOnly: async (publisher, at) => {
      const rows = await db.$queryRaw<TokenRow[]>`
        SELECT ${columns} FROM access_tokens t ${joinPublisher}
        WHERE t.import_publishes AND t.revoked_at IS NULL
          AND (t.expires_at IS NULL OR t.expires_at > ${at.toISOString()}::timestamptz)
          AND 'IMPORT' = ANY(t.scopes) AND NOT 'PUBLISH' = ANY(t.scopes)
          AND (${publisher}::text IS NULL OR b.slug = ${publisher}::text)
        ORDER BY t.created_at, t.id`;
      return rows.map(tokenOfRow);
    },
    page: async (publisher, request) => {
      const page = await readPage<TokenRow, readonly [string, string]>(
        db,
        {
          order: [
            { column: Prisma.sql`t.created_at`, type: Prisma.sql`timestamptz`, descending: true },
            { column: Prisma.sql`t.id`, type: Prisma.sql`text`, descending: false },
          ],
          keys,
          from: Prisma.sql`access_tokens t`,
          where: publisher === null ? Prisma.sql`TRUE` : Prisma.sql`t.publisher_id = ${idOfPublisher(publisher)}`,
          columns,
          join: Prisma.sql`JOIN access_tokens t ON t.id = k.k1 ${joinPublisher}`,
          keysOf: ({ createdAt, id }) => [createdAt.toISOString(), id],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: tokenOfRow(item) })) };
    },
  };
}

export const tokenOf = (author: Author): string | null => (author.kind === "TOKEN" ? author.token : null);

export const programOf = (author: Author): string | null => (author.kind === "PROGRAM" ? author.name : null);

/** The reverse; the database holds that exactly one of the two is there. */
export const authorOf = (token: string | null, program: string | null): Author =>
  token === null ? { kind: "PROGRAM", name: program ?? "" } : { kind: "TOKEN", token };

const tokenOfRow = (row: TokenRow): AccessToken => ({
  id: row.id,
  publisher: row.publisher,
  name: row.name,
  scopes: row.scopes,
  createdAt: row.createdAt,
  createdBy: authorOf(row.createdByToken, row.createdByProgram),
  expiresAt: row.expiresAt,
  lastUsedAt: row.lastUsedAt,
  revokedAt: row.revokedAt,
  importPublishes: row.importPublishes,
  pointsPerMinute: row.pointsPerMinute,
});
