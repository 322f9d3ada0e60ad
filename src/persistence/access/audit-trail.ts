import { z } from "zod";
import { authorOf, programOf, tokenOf } from "./access-tokens.js";
import type { AuditRecord, Data } from "../data.js";
import { Prisma } from "../generated/client.js";
import { publisherId } from "./publishers.js";
import { readPage } from "../sql/read-page.js";
import type { Session } from "../database/session.js";
import { storable } from "../sql/storable-text.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";

interface AuditRow extends Omit<AuditRecord, "author" | "id"> {
  readonly id: bigint;
  readonly tokenId: string | null;
  readonly program: string | null;
}

/** A whole number that a bigint column holds. */
const keys = z.tuple([z.string().regex(/^[1-9][0-9]{0,17}$/)]);

export function auditTrailData({ db }: Session): Data["auditTrail"] {
  return {
    add: async (record) => {
      const { at, author, publisher, action, subjectKind, subject, before, after, requestId } = storable(record);
      await db.auditEntry.create({
        data: {
          at,
          tokenId: tokenOf(author),
          program: programOf(author),
          publisherId: publisher === null ? null : await publisherId(db, publisher),
          action,
          subjectKind,
          subject,
          before,
          after,
          requestId,
        },
        select: { id: true },
      });
    },
    page: async (publisher, request) => {
      const page = await readPage<AuditRow, readonly [string]>(
        db,
        {
          order: [{ column: Prisma.sql`a.id`, type: Prisma.sql`bigint`, descending: true }],
          keys,
          from: Prisma.sql`audit_entries a`,
          where: publisher === null ? Prisma.sql`TRUE` : Prisma.sql`a.publisher_id = ${idOfPublisher(publisher)}`,
          columns: Prisma.sql`a.id, a.at, a.token_id AS "tokenId", t.name AS "tokenName", o.slug AS "tokenPublisher",
            a.program, b.slug AS publisher, a.action, a.subject_kind AS "subjectKind", a.subject, a.before, a.after,
            a.request_id AS "requestId"`,
          join: Prisma.sql`JOIN audit_entries a ON a.id = k.k0 LEFT JOIN publishers b ON b.id = a.publisher_id
            LEFT JOIN access_tokens t ON t.id = a.token_id LEFT JOIN publishers o ON o.id = t.publisher_id`,
          keysOf: ({ id }) => [String(id)],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: recordOf(item) })) };
    },
  };
}

const recordOf = ({ id, tokenId, program, ...row }: AuditRow): AuditRecord => ({
  id: String(id),
  author: authorOf(tokenId, program),
  at: row.at,
  tokenName: row.tokenName,
  tokenPublisher: row.tokenPublisher,
  publisher: row.publisher,
  action: row.action,
  subjectKind: row.subjectKind,
  subject: row.subject,
  before: row.before,
  after: row.after,
  requestId: row.requestId,
});
