import { z } from "zod";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { Problem } from "../../domain/problem.js";
import { authorOf, programOf, tokenOf } from "../access/access-tokens.js";
import { publisherId } from "../access/publishers.js";
import type { Db, Session } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";
import { fromJson, toJson } from "../sql/json-column.js";
import { isId } from "../sql/keys.js";
import { instantKey, readPage } from "../sql/read-page.js";
import { isStorable, legible, storable } from "../sql/storable-text.js";
import { documentOf } from "./frozen-document.js";
import type { ScheduledChange, ScheduledChangeData, ScheduledEnd } from "./scheduled-change-data.js";

const columns = Prisma.sql`s.id, b.slug AS publisher, s.slug, s.kind, s.state, s.due_at AS "dueAt", s.local_time AS "localTime",
  s.zone, s.version, s.change_note AS "changeNote", s.reason, s.in_force AS "inForce", s.revision, s.problems,
  s.cancelled_because AS "cancelledBecause", s.created_at AS "createdAt", s.created_by_token AS "createdByToken",
  s.created_by_program AS "createdByProgram", s.ended_at AS "endedAt"`;

const joinPublisher = Prisma.sql`JOIN publishers b ON b.id = s.publisher_id`;

/** What is due at the same time is published before it is withdrawn. */
const inOrder = Prisma.sql`ORDER BY s.due_at, s.kind, s.id`;

interface ChangeRow extends Omit<ScheduledChange, "createdBy"> {
  readonly createdByToken: string | null;
  readonly createdByProgram: string | null;
}

const keys = z.tuple([instantKey, z.string().refine(isId)]);

export function scheduledChangeData({ db }: Session): ScheduledChangeData {
  const read = async (where: Prisma.Sql, more = Prisma.empty): Promise<readonly ScheduledChange[]> =>
    (
      await db.$queryRaw<ChangeRow[]>`
        SELECT ${columns} FROM scheduled_changes s ${joinPublisher} WHERE ${where} ${more}`
    ).map(changeOf);
  return {
    add: (change) => add(db, change),
    find: async (id) => (isId(id) ? ((await read(Prisma.sql`s.id = ${id}::uuid`))[0] ?? null) : null),
    bundle: async (id) => {
      const [row] = await db.$queryRaw<{ document: Prisma.JsonValue }[]>`
        SELECT document FROM scheduled_changes WHERE id = ${id}::uuid AND document IS NOT NULL`;
      return row === undefined ? null : fromJson<PlanBundle>(row.document);
    },
    waiting: async (publisher, slug) =>
      isStorable(slug)
        ? read(
            Prisma.sql`s.publisher_id = ${idOfPublisher(publisher)} AND s.slug = ${slug} AND s.state = 'WAITING'`,
            inOrder,
          )
        : [],
    countWaiting: (publisher) =>
      db.scheduledChange.count({ where: { publisher: { slug: publisher }, state: "WAITING" } }),
    page: async (publisher, states, request) => {
      const ofThese = states.length === 0 ? Prisma.sql`TRUE` : Prisma.sql`s.state = ANY(${[...states]}::text[])`;
      const page = await readPage<ChangeRow, readonly [string, string]>(
        db,
        {
          order: [
            { column: Prisma.sql`s.due_at`, type: Prisma.sql`timestamptz`, descending: false },
            { column: Prisma.sql`s.id`, type: Prisma.sql`uuid`, descending: false },
          ],
          keys,
          from: Prisma.sql`scheduled_changes s`,
          where: Prisma.sql`s.publisher_id = ${idOfPublisher(publisher)} AND ${ofThese}`,
          columns,
          join: Prisma.sql`JOIN scheduled_changes s ON s.id = k.k1 ${joinPublisher}`,
          keysOf: ({ dueAt, id }) => [dueAt.toISOString(), id],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: changeOf(item) })) };
    },
    due: (now, limit) =>
      read(
        Prisma.sql`s.state = 'WAITING' AND s.due_at <= ${now.toISOString()}::timestamptz`,
        Prisma.sql`${inOrder} LIMIT ${limit}`,
      ),
    claim: async (id) =>
      (await read(Prisma.sql`s.id = ${id}::uuid AND s.state = 'WAITING'`, Prisma.sql`FOR UPDATE OF s`))[0] ?? null,
    end: (id, at, end) => endChange(db, id, at, end),
    move: async (id, { dueAt, localTime, zone }) => {
      const { count } = await db.scheduledChange.updateMany({
        where: { id, state: "WAITING" },
        data: { dueAt, localTime, zone },
      });
      return count > 0;
    },
    cancelOfToken: async (token, at) => {
      const { count } = await db.scheduledChange.updateMany({
        where: { createdByToken: token, state: "WAITING" },
        data: { state: "CANCELLED", cancelledBecause: "TOKEN_REVOKED", endedAt: at },
      });
      return count;
    },
    keptBackSince: (from, publisher, limit) =>
      read(
        Prisma.sql`s.state = 'KEPT_BACK' AND s.ended_at >= ${from.toISOString()}::timestamptz
          AND (${publisher}::text IS NULL OR b.slug = ${publisher}::text)`,
        Prisma.sql`ORDER BY s.ended_at DESC, s.id LIMIT ${limit}`,
      ),
  };
}

async function add(db: Db, change: Parameters<ScheduledChangeData["add"]>[0]): Promise<string> {
  const { publisher, slug, kind, dueAt, localTime, zone, version, changeNote, reason, inForce, bundle } = change;
  const { createdAt, createdBy } = change;
  const owner = await publisherId(db, publisher);
  const made = await db.scheduledChange.create({
    data: {
      ...{ publisherId: owner, slug, kind, dueAt, localTime, zone, version, inForce, createdAt },
      changeNote: storable(changeNote),
      reason: storable(reason),
      ...(bundle === null ? {} : { document: toJson(storable(documentOf(bundle))) }),
      createdByToken: tokenOf(createdBy),
      createdByProgram: programOf(createdBy),
    },
    select: { id: true },
  });
  return made.id;
}

async function endChange(db: Db, id: string, at: Date, end: ScheduledEnd): Promise<boolean> {
  const { count } = await db.scheduledChange.updateMany({
    where: { id, state: "WAITING" },
    data: {
      state: end.state,
      endedAt: at,
      ...(end.state === "DONE" ? { revision: end.revision } : {}),
      ...(end.state === "KEPT_BACK" ? { problems: toJson(legible(end.problems)) } : {}),
      ...(end.state === "CANCELLED" ? { cancelledBecause: end.because } : {}),
    },
  });
  if (count > 0 && end.state === "KEPT_BACK") await tellOfKeptBack(db, id, at);
  return count > 0;
}

/** In the transaction that keeps it back. */
async function tellOfKeptBack(db: Db, id: string, at: Date): Promise<void> {
  await db.$executeRaw`
    INSERT INTO webhook_deliveries (publisher_id, webhook_id, scheduled_id, due_at, created_at)
    SELECT w.publisher_id, w.id, s.id, ${at.toISOString()}::timestamptz, ${at.toISOString()}::timestamptz
    FROM scheduled_changes s JOIN webhooks w ON w.publisher_id = s.publisher_id
    WHERE s.id = ${id}::uuid AND w.disabled_at IS NULL AND (w.kinds = '{}' OR 'PLAN_KEPT_BACK' = ANY(w.kinds))`;
}

const changeOf = ({ createdByToken, createdByProgram, ...row }: ChangeRow): ScheduledChange => ({
  id: row.id,
  publisher: row.publisher,
  slug: row.slug,
  kind: row.kind,
  state: row.state,
  dueAt: row.dueAt,
  localTime: row.localTime,
  zone: row.zone,
  version: row.version,
  changeNote: row.changeNote,
  reason: row.reason,
  inForce: row.inForce,
  revision: row.revision,
  problems: row.problems as readonly Problem[],
  cancelledBecause: row.cancelledBecause,
  createdAt: row.createdAt,
  createdBy: authorOf(createdByToken, createdByProgram),
  endedAt: row.endedAt,
});
