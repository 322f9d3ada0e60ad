import { z } from "zod";
import type { Change, ChangeKind, Data } from "../data.js";
import { Prisma } from "../generated/client.js";
import { encodeCursor } from "../sql/cursor.js";
import { readPage } from "../sql/read-page.js";
import type { Db, Session } from "../database/session.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";

interface ChangeRow extends Change {
  readonly position: bigint;
}

/** Positions count from 1. */
const keys = z.tuple([z.string().regex(/^(?:0|[1-9][0-9]{0,17})$/)]);

/** The position before the first change. */
export const beginningOfChanges = encodeCursor(["0"]);

export function changeData({ db }: Session): Data["changes"] {
  return {
    page: async (publisher, request) => {
      const page = await readPage<ChangeRow, readonly [string]>(
        db,
        {
          order: [{ column: Prisma.sql`c.position`, type: Prisma.sql`bigint`, descending: false }],
          keys,
          from: Prisma.sql`changes c`,
          where: ofPublisher(publisher),
          columns: Prisma.sql`c.id, c.position, b.slug AS publisher, c.kind, c.revision_id AS "revisionId", c.at`,
          join: Prisma.sql`JOIN changes c ON c.position = k.k0 JOIN publishers b ON b.id = c.publisher_id`,
          keysOf: ({ position }) => [String(position)],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: changeOf(item) })) };
    },
  };
}

/** Inside the transaction that makes the change, with what is to be sent to webhooks. It gets its place when that commits. */
export async function addChange(
  db: Db,
  { publisherId, revisionId, kind, at }: { publisherId: string; revisionId: string; kind: ChangeKind; at: Date },
): Promise<void> {
  const { id } = await db.change.create({ data: { publisherId, revisionId, kind, at }, select: { id: true } });
  await db.$executeRaw`
    INSERT INTO webhook_deliveries (publisher_id, webhook_id, change_id, due_at, created_at)
    SELECT publisher_id, id, ${id}::uuid, ${at.toISOString()}::timestamptz, ${at.toISOString()}::timestamptz
    FROM webhooks
    WHERE publisher_id = ${publisherId}::uuid AND disabled_at IS NULL AND (kinds = '{}' OR ${kind} = ANY(kinds))`;
}

function ofPublisher(publisher: string | null): Prisma.Sql {
  if (publisher === null) return Prisma.sql`c.position IS NOT NULL`;
  return Prisma.sql`c.position IS NOT NULL AND c.publisher_id = ${idOfPublisher(publisher)}`;
}

const changeOf = ({ id, publisher, kind, revisionId, at }: ChangeRow): Change => ({
  id,
  publisher,
  kind,
  revisionId,
  at,
});
