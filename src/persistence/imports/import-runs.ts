import { z } from "zod";
import { Prisma } from "../generated/client.js";
import type { ImportChange, ImportRun, ImportRunData, QuarantinedRow, RunChunk, RunEnd } from "./import-data.js";
import { keptAside } from "./import-data.js";
import { isId } from "../sql/keys.js";
import { instantKey, readPage } from "../sql/read-page.js";
import type { Db, Session } from "../database/session.js";
import { legible, storable } from "../sql/storable-text.js";
import { toJson } from "../sql/json-column.js";
import { tellOfEndedRun } from "../webhooks/webhook-deliveries.js";

const runColumns = Prisma.sql`r.id, r.feed_id AS feed, r.file_id AS file, r.kind::text, r.state::text, r.asked_by AS "askedBy",
  r.force, r.undoes, r.created_at AS "createdAt", r.started_at AS "startedAt", r.ended_at AS "endedAt",
  r.heartbeat_at AS "heartbeatAt", r.rows_read AS read, r.last_line AS "lastLine", r.created, r.changed, r.unchanged,
  r.quarantined, r.repeated, r.problems, r.warnings, r.fetches_failed AS "fetchesFailed", r.due_at AS "dueAt"`;

const rowColumns = Prisma.sql`q.line, q.part, q.raw, q.problems, q.offer, q.settled_at AS "settledAt"`;

const keys = z.tuple([instantKey, z.uuid()]);
const rowKeys = z.tuple([z.string().regex(/^\d{1,9}$/), z.string().regex(/^\d{1,9}$/)]);

const isActive = Prisma.sql`state IN ('QUEUED', 'RUNNING')`;

export function importRunData(session: Session): ImportRunData {
  const { db } = session;
  return {
    queue: (run, at) =>
      session.transaction(async (inside) => {
        const { feed, file, kind, askedBy, force, undoes } = storable(run);
        // Whoever queues a run of the same feed waits here.
        await inside.$queryRaw`SELECT id FROM feeds WHERE id = ${feed}::uuid FOR UPDATE`;
        const [made] = await inside.$queryRaw<{ id: string }[]>`
          INSERT INTO import_runs (feed_id, file_id, kind, asked_by, force, undoes, created_at)
          SELECT ${feed}::uuid, ${file}::uuid, ${kind}::"RunKind", ${askedBy}, ${force}, ${undoes}::uuid,
            ${at.toISOString()}::timestamptz
          WHERE NOT EXISTS (SELECT FROM import_runs WHERE feed_id = ${feed}::uuid AND ${isActive})
          RETURNING id`;
        return made?.id ?? null;
      }),
    isActive: async (feed) =>
      (await db.importRun.count({ where: { feedId: feed, state: { in: ["QUEUED", "RUNNING"] } } })) > 0,
    byId: async (id) => {
      if (!isId(id)) return null;
      const [row] = await db.$queryRaw<ImportRun[]>`SELECT ${runColumns} FROM import_runs r WHERE r.id = ${id}::uuid`;
      return row ?? null;
    },
    page: (feed, request) =>
      readPage<ImportRun, readonly [string, string]>(
        db,
        {
          order: [
            { column: Prisma.sql`i.created_at`, type: Prisma.sql`timestamptz`, descending: true },
            { column: Prisma.sql`i.id`, type: Prisma.sql`uuid`, descending: false },
          ],
          keys,
          from: Prisma.sql`import_runs i`,
          where: Prisma.sql`i.feed_id = ${feed}::uuid`,
          columns: runColumns,
          join: Prisma.sql`JOIN import_runs r ON r.id = k.k1`,
          keysOf: ({ createdAt, id }) => [createdAt.toISOString(), id],
        },
        request,
      ),
    claim: async (worker, at, deadSince) => {
      const now = at.toISOString();
      const [row] = await db.$queryRaw<ImportRun[]>`
        UPDATE import_runs r SET state = 'RUNNING', worker = ${worker}, heartbeat_at = ${now}::timestamptz,
          started_at = COALESCE(r.started_at, ${now}::timestamptz), due_at = NULL
        WHERE r.id = (SELECT id FROM import_runs
          WHERE (state = 'QUEUED' AND (due_at IS NULL OR due_at <= ${now}::timestamptz)) OR (state = 'RUNNING' AND heartbeat_at < ${deadSince.toISOString()}::timestamptz)
          ORDER BY created_at, id FOR UPDATE SKIP LOCKED LIMIT 1)
        RETURNING ${runColumns}`;
      return row ?? null;
    },
    newestBetween: async (feed, since, until) => {
      const [row] = await db.$queryRaw<ImportRun[]>`
        SELECT ${runColumns} FROM import_runs r
        WHERE r.feed_id = ${feed}::uuid AND r.created_at >= ${since.toISOString()}::timestamptz
          AND r.created_at <= ${until.toISOString()}::timestamptz
        ORDER BY r.created_at DESC, r.id LIMIT 1`;
      return row ?? null;
    },
    endedSince: (since, feeds, most) => db.$queryRaw<ImportRun[]>`
      SELECT ${runColumns} FROM import_runs r
      WHERE r.ended_at >= ${since.toISOString()}::timestamptz AND r.feed_id = ANY(${[...feeds]}::uuid[])
      ORDER BY r.ended_at DESC, r.id LIMIT ${most}`,
    toMend: async (ids) => {
      const rows = await db.$queryRaw<{ readonly id: string; readonly rows: number }[]>`
        SELECT q.run_id AS id, count(*)::int AS rows FROM quarantined_rows q
        WHERE q.run_id = ANY(${[...ids]}::uuid[]) AND q.settled_at IS NULL GROUP BY q.run_id`;
      const found = new Map(rows.map(({ id, rows: count }) => [id, count]));
      return ids.map((id) => found.get(id) ?? 0);
    },
    attach: async (id, worker, file) => {
      const { count } = await db.importRun.updateMany({ where: running(id, worker), data: { fileId: file } });
      return count > 0;
    },
    putOff: async (id, worker, dueAt, problems) => {
      const { count } = await db.importRun.updateMany({
        where: running(id, worker),
        data: {
          ...{ state: "QUEUED", worker: null, heartbeatAt: null, dueAt, fetchesFailed: { increment: 1 } },
          problems: toJson(legible(problems)),
        },
      });
      return count > 0;
    },
    beat: async (id, worker, at) => {
      const { count } = await db.importRun.updateMany({ where: running(id, worker), data: { heartbeatAt: at } });
      return count > 0;
    },
    advance: (id, worker, chunk) => session.transaction((inside) => advance(inside, id, worker, chunk)),
    finish: (id, worker, { state, at, problems, counts }) =>
      end(session, running(id, worker), {
        ...{ state, endedAt: at, problems: toJson(legible(problems)) },
        ...countColumns(counts),
      }),
    cancel: async (id, at) =>
      isId(id) &&
      end(session, { id, state: { in: ["QUEUED", "RUNNING"] } }, { state: "CANCELLED", endedAt: at, dueAt: null }),
    quarantined: (id, request) =>
      readPage<QuarantinedRow, readonly [string, string]>(
        db,
        {
          order: [
            { column: Prisma.sql`w.line`, type: Prisma.sql`int`, descending: false },
            { column: Prisma.sql`w.part`, type: Prisma.sql`int`, descending: false },
          ],
          keys: rowKeys,
          from: Prisma.sql`quarantined_rows w`,
          where: Prisma.sql`w.run_id = ${id}::uuid`,
          columns: rowColumns,
          join: Prisma.sql`JOIN quarantined_rows q ON q.run_id = ${id}::uuid AND q.line = k.k0 AND q.part = k.k1`,
          keysOf: ({ line, part }) => [String(line), String(part)],
        },
        request,
      ),
    quarantinedRow: async (id, line, part) => {
      if (!isId(id)) return null;
      const [row] = await db.$queryRaw<QuarantinedRow[]>`
        SELECT ${rowColumns} FROM quarantined_rows q WHERE q.run_id = ${id}::uuid AND q.line = ${line} AND q.part = ${part}`;
      return row ?? null;
    },
    settle: async (id, line, part, by, at) => {
      const { count } = await db.quarantinedRow.updateMany({
        where: { runId: id, line, part, settledAt: null },
        data: { settledAt: at, settledBy: by },
      });
      return count > 0;
    },
    changes: async (id, most) => {
      if (!isId(id)) return [];
      return db.$queryRaw<ImportChange[]>`
        SELECT key, before, after FROM import_changes WHERE run_id = ${id}::uuid ORDER BY key LIMIT ${most ?? null}::int`;
    },
    changesOf: (id, keys) => db.$queryRaw<ImportChange[]>`
      SELECT key, before, after FROM import_changes WHERE run_id = ${id}::uuid AND key = ANY(${[...keys]}::text[])`,
  };
}

const running = (id: string, worker: string) => ({ id, worker, state: "RUNNING" as const });

/** Ends a run and tells of it, both or neither. false: it was not as it had to be. */
const end = (
  session: Session,
  where: Prisma.ImportRunWhereInput & { readonly id: string },
  data: Prisma.ImportRunUpdateManyMutationInput & { readonly endedAt: Date },
): Promise<boolean> =>
  session.transaction(async (inside) => {
    const { count } = await inside.importRun.updateMany({ where, data });
    if (count > 0) await tellOfEndedRun(inside, where.id, data.endedAt);
    return count > 0;
  });

const countColumns = (counts: RunEnd["counts"]) => {
  if (counts === null) return {};
  const { read, ...others } = counts;
  return { rowsRead: read, ...others };
};

/** The most rows of one import that are kept to be warned of, and as many again: a file that spells one word wrong does so in each. */
const mostWarnings = 200;

/** Inside a transaction. */
async function advance(db: Db, id: string, worker: string, chunk: RunChunk): Promise<boolean> {
  const {
    read,
    created,
    changed,
    unchanged,
    quarantined,
    repeated,
    lastLine,
    quarantine,
    changes,
    warnings = [],
  } = chunk;
  const { count } = await db.importRun.updateMany({
    where: running(id, worker),
    data: {
      rowsRead: { increment: read },
      created: { increment: created },
      changed: { increment: changed },
      unchanged: { increment: unchanged },
      quarantined: { increment: quarantined },
      repeated: { increment: repeated },
      lastLine,
    },
  });
  if (count === 0) return false;
  if (quarantine.length > 0) {
    const run = await db.importRun.findUniqueOrThrow({ where: { id }, select: { quarantined: true } });
    const rows = JSON.stringify(quarantineRows(id, keptAside(quarantine, run.quarantined)));
    await db.$executeRaw`
      INSERT INTO quarantined_rows SELECT * FROM jsonb_populate_recordset(NULL::quarantined_rows, ${rows}::jsonb)`;
  }
  if (warnings.length > 0) {
    const added = JSON.stringify(legible(warnings.slice(0, mostWarnings)));
    await db.$executeRaw`
      UPDATE import_runs SET warnings = warnings || ${added}::jsonb
      WHERE id = ${id}::uuid AND jsonb_array_length(warnings) < ${mostWarnings}`;
  }
  if (changes.length > 0) {
    const rows = JSON.stringify(changes.map(({ key, before, after }) => ({ run_id: id, key, before, after })));
    // The first state of a thing that a run touches twice is the one to go back to.
    await db.$executeRaw`
      INSERT INTO import_changes AS c (run_id, key, before, after)
      SELECT run_id, key, before, after FROM jsonb_populate_recordset(NULL::import_changes, ${rows}::jsonb)
      ON CONFLICT (run_id, key) DO UPDATE SET after = excluded.after`;
  }
  return true;
}

/** Rows for `quarantined_rows`, named as in the database. */
export const quarantineRows = (run: string, rows: RunChunk["quarantine"]) =>
  rows.map(({ line, part, raw, problems, offer }) => ({
    run_id: run,
    ...legible({ line, part, raw, problems, offer }),
  }));
