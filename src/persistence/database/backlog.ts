import type { Sql } from "../sql/plain-sql.js";

/** Work of one kind that waits, is under way, or was given up within a day. */
interface BacklogRow {
  /** `imports`, `webhooks`, or `job:` and its name. */
  readonly queue: string;
  readonly state: "WAITING" | "RUNNING" | "FAILED";
  readonly count: number;
  /** Since the oldest was due, or was begun, or was given up. */
  readonly oldestSeconds: number;
}

export type Backlog = readonly BacklogRow[];

const own = `
SELECT 'imports' AS "queue", 'WAITING' AS "state", coalesce("due_at", "created_at") AS "since"
FROM "import_runs" WHERE "state" = 'QUEUED' AND coalesce("due_at", "created_at") <= now()
UNION ALL
SELECT 'imports', 'RUNNING', "started_at" FROM "import_runs" WHERE "state" = 'RUNNING'
UNION ALL
SELECT 'imports', 'FAILED', "ended_at" FROM "import_runs"
WHERE "state" IN ('FAILED', 'STOPPED') AND "ended_at" > now() - interval '1 day'
UNION ALL
SELECT 'webhooks', 'WAITING', "due_at" FROM "webhook_deliveries" WHERE "state" = 'PENDING' AND "due_at" <= now()
UNION ALL
SELECT 'webhooks', 'FAILED', "tried_at" FROM "webhook_deliveries"
WHERE "state" = 'DEAD' AND "tried_at" > now() - interval '1 day'`;

/** The job queue's table; it brings it along when it is first started. */
const jobs = `
UNION ALL
SELECT 'job:' || "name", CASE "state" WHEN 'active' THEN 'RUNNING' WHEN 'failed' THEN 'FAILED' ELSE 'WAITING' END,
  CASE "state" WHEN 'active' THEN "started_on" WHEN 'failed' THEN "completed_on" ELSE "start_after" END
FROM "pgboss"."job"
WHERE "name" NOT LIKE '\\_\\_pgboss%' AND ("state" = 'active' OR ("state" IN ('created', 'retry') AND "start_after" <= now())
  OR ("state" = 'failed' AND "completed_on" > now() - interval '1 day'))`;

/** What there is to do. Rows are missing where there is nothing. */
export async function readBacklog(sql: Sql): Promise<Backlog> {
  const { rows: found } = await sql.query(`SELECT to_regclass('pgboss.job') IS NOT NULL AS "known"`, []);
  const { rows } = await sql.query(
    `SELECT "queue", "state", count(*)::int AS "count",
       greatest(0, extract(epoch FROM now() - min("since")))::float8 AS "oldest"
     FROM (${own}${found[0]?.["known"] === true ? jobs : ""}) "work" GROUP BY 1, 2 ORDER BY 1, 2`,
    [],
  );
  return rows.map((row) => ({
    queue: String(row["queue"]),
    state: String(row["state"]) as BacklogRow["state"],
    count: Number(row["count"]),
    oldestSeconds: Number(row["oldest"]),
  }));
}
