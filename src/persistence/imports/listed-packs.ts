import { copyLine, type BulkSession, type BulkSql } from "../sql/bulk-sql.js";
import { inTurns, stagedRanges } from "./staged-ranges.js";
import { quarantineRows } from "./import-runs.js";
import { legible } from "../sql/storable-text.js";
import { outlyingPrices, setAside } from "./outlying-prices.js";
import { keptAside } from "./import-data.js";
import type { Compared, ListedPack, ListedPackData, RunChunk, RunCounts, RunEnd } from "./import-data.js";

/** So that only one process at a time waits for the table. */
const sweepLock = 72_707_371;

const facts = "name, content_low, content_high, content_unit, price_amount, price_currency, region, seen, loose";
const stagedColumns = `run_id, line, food, pack_id, ${facts}`;
/** `seen` is the day of looking, not a fact about the pack: alone it changes nothing. */
const compared = [
  "name",
  "content_low",
  "content_high",
  "content_unit",
  "price_amount",
  "price_currency",
  "region",
  "loose",
];
const differs = `(${compared.map((each) => `s.${each}`).join(", ")}) IS DISTINCT FROM (${compared.map((each) => `l.${each}`).join(", ")})`;
const samePack = "l.feed_id = $2 AND l.food = s.food AND l.pack_id = s.pack_id";

export function listedPackData(bulk: BulkSql): ListedPackData {
  return {
    stage: (run, worker, rows, chunk) =>
      bulk.transaction(async (session) => {
        const putAside = await advance(session, run, worker, chunk);
        if (putAside === null) return false;
        if (rows.length > 0) {
          await session.copy(`staged_prices (${stagedColumns})`, rows.map((row) => stagedLine(run, row)).join(""));
        }
        if (chunk.quarantine.length > 0) {
          const found = JSON.stringify(quarantineRows(run, keptAside(chunk.quarantine, putAside)));
          await session.query(
            "INSERT INTO quarantined_rows SELECT * FROM jsonb_populate_recordset(NULL::quarantined_rows, $1::jsonb)",
            [found],
          );
        }
        return true;
      }),
    compare: (run, feed) => bulk.transaction((session) => compare(session, run, feed)),
    outliers: (run, units, factor) => outlyingPrices(bulk, run, units, factor),
    setAside: (run, worker, rows) =>
      bulk.transaction((session) => setAside(session, run, worker, rows, bulk.rowsAtOnce)),
    note: (run, feed) =>
      bulk.transaction((session) => noteChanges(session, { run, feed, rowsAtOnce: bulk.rowsAtOnce })),
    merge: (run, feed, worker, end) =>
      bulk.transaction((session) => merge(session, { run, feed, rowsAtOnce: bulk.rowsAtOnce }, worker, end)),
    sweep: async () => {
      if (await bulk.transaction(emptyWhenIdle)) return;
      await bulk.transaction((session) =>
        session.query(`DELETE FROM staged_prices WHERE run_id IN (${endedRuns})`, []),
      );
    },
    undo: (run, feed, undone, worker, at) =>
      bulk.transaction((session) => undo(session, { run, feed, undone, worker, at })),
  };
}

const endedRuns = `SELECT r.id FROM import_runs r WHERE r.state NOT IN ('QUEUED', 'RUNNING')
  AND EXISTS (SELECT FROM staged_prices s WHERE s.run_id = r.id)`;

/**
 * Empties the table at once where no import runs, since rows deleted one by one leave their room behind and every sweep after it
 * would walk over it. false: an import runs, or somebody has the table. Whoever takes up a run meanwhile waits with its first rows.
 */
async function emptyWhenIdle(session: BulkSession): Promise<boolean> {
  const { rows: free } = await session.query(
    `SELECT FROM pg_class WHERE oid = 'staged_prices'::regclass AND NOT EXISTS (SELECT FROM import_runs WHERE state = 'RUNNING')
       AND EXISTS (SELECT FROM staged_prices) AND pg_try_advisory_xact_lock(${sweepLock})`,
    [],
  );
  if (free.length === 0) return false;
  await session.query("LOCK TABLE staged_prices IN ACCESS EXCLUSIVE MODE", []);
  const { rows: idle } = await session.query(
    "SELECT FROM pg_class WHERE oid = 'staged_prices'::regclass AND NOT EXISTS (SELECT FROM import_runs WHERE state = 'RUNNING')",
    [],
  );
  if (idle.length === 0) return false;
  await session.query("TRUNCATE staged_prices", []);
  return true;
}

const stagedLine = (run: string, { line, food, pack }: ListedPack): string =>
  copyLine([
    ...[run, line, food, pack.id, pack.name, pack.content.low, pack.content.high, pack.content.unit],
    ...[pack.price?.amount ?? null, pack.price?.currency ?? null, pack.region, pack.seen],
    pack.loose === undefined ? null : JSON.stringify(pack.loose),
  ]);

/** How many rows the run has put aside by now; null: it is not this worker's any more. */
async function advance(
  session: BulkSession,
  run: string,
  worker: string,
  { read, quarantined, lastLine }: Omit<RunChunk, "changes">,
): Promise<number | null> {
  const { rows } = await session.query(
    `UPDATE import_runs SET rows_read = rows_read + $3, quarantined = quarantined + $4, last_line = $5
     WHERE id = $1 AND worker = $2 AND state = 'RUNNING' RETURNING quarantined`,
    [run, worker, read, quarantined, lastLine],
  );
  const [row] = rows;
  return row === undefined ? null : numberOf(row["quarantined"]);
}

const numberOf = (value: unknown): number => Number(value ?? 0);

async function compare(session: BulkSession, run: string, feed: string): Promise<Compared> {
  // Rows that came a moment ago are not in the statistics yet, and a million of them would be planned for as if they were few.
  await session.query("ANALYZE staged_prices (run_id, line, food, pack_id)", []);
  // Which of several rows of one pack counts is told by the file: the last.
  const repeated = await session.query(
    `WITH twice AS (SELECT food, pack_id, max(line) AS line FROM staged_prices WHERE run_id = $1
       GROUP BY food, pack_id HAVING count(*) > 1)
     DELETE FROM staged_prices s USING twice t
     WHERE s.run_id = $1 AND s.food = t.food AND s.pack_id = t.pack_id AND s.line < t.line RETURNING 1`,
    [run],
  );
  // Written down with it: whoever goes on for a worker that is lost after this finds none of them any more.
  const noted = await session.query(
    "UPDATE import_runs SET repeated = repeated + $2::int WHERE id = $1 RETURNING repeated",
    [run, repeated.rows.length],
  );
  const known = await session.query("SELECT count(*) AS known FROM listed_packs WHERE feed_id = $1", [feed]);
  const all = await session.query("SELECT count(*) AS staged FROM staged_prices WHERE run_id = $1", [run]);
  const before = numberOf(known.rows[0]?.["known"]);
  const staged = numberOf(all.rows[0]?.["staged"]);
  const found =
    before === 0
      ? []
      : (
          await session.query(
            `SELECT count(*) AS matched, count(*) FILTER (WHERE ${differs}) AS changed
             FROM staged_prices s JOIN listed_packs l ON ${samePack} WHERE s.run_id = $1`,
            [run, feed],
          )
        ).rows;
  const matched = numberOf(found[0]?.["matched"]);
  const changed = numberOf(found[0]?.["changed"]);
  return {
    created: staged - matched,
    changed,
    unchanged: matched - changed,
    repeated: numberOf(noted.rows[0]?.["repeated"]),
    known: before,
  };
}

/** Tells no webhook: price lists are the operator's, and webhooks are publishers'. */
async function finish(session: BulkSession, run: string, worker: string, end: RunEnd): Promise<boolean> {
  const { rows } = await session.query(
    `UPDATE import_runs SET state = $3::"RunState", ended_at = $4::timestamptz, problems = $5::jsonb,
       created = COALESCE($6::int, created), changed = COALESCE($7::int, changed),
       unchanged = COALESCE($8::int, unchanged), repeated = COALESCE($9::int, repeated)
     WHERE id = $1 AND worker = $2 AND state = 'RUNNING' RETURNING id`,
    [
      ...[run, worker, end.state, end.at.toISOString(), JSON.stringify(legible(end.problems))],
      ...[end.counts?.created, end.counts?.changed, end.counts?.unchanged, end.counts?.repeated].map(
        (each) => each ?? null,
      ),
    ],
  );
  return rows.length > 0;
}

/** Rows of a run that become packs of a feed, and how many of them one statement takes. */
interface Merging {
  readonly run: string;
  readonly feed: string;
  readonly rowsAtOnce: number;
}

const inRange = "s.line BETWEEN $3 AND $4";

/** How each pack that differs was and will be. */
async function noteChanges(session: BulkSession, { run, feed, rowsAtOnce }: Merging): Promise<void> {
  await inTurns(await stagedRanges(session, run, rowsAtOnce), (range) =>
    session.query(
      `INSERT INTO import_changes (run_id, key, before, after)
       SELECT $1, jsonb_build_array(l.food, l.pack_id)::text, to_jsonb(l), to_jsonb(s) - 'run_id' - 'line'
       FROM staged_prices s JOIN listed_packs l ON ${samePack} WHERE s.run_id = $1 AND ${inRange} AND ${differs}
       ON CONFLICT (run_id, key) DO NOTHING`,
      [run, feed, ...range],
    ),
  );
}

async function merge(session: BulkSession, merging: Merging, worker: string, end: RunEnd): Promise<boolean> {
  const { run, feed, rowsAtOnce } = merging;
  if (!(await finish(session, run, worker, end))) return false;
  const ranges = await stagedRanges(session, run, rowsAtOnce);
  if ((end.counts?.changed ?? 1) > 0) {
    await noteChanges(session, merging);
    await inTurns(ranges, (range) =>
      session.query(
        `UPDATE listed_packs l SET (${facts}) = (${facts
          .split(", ")
          .map((each) => `s.${each}`)
          .join(", ")}), written_by = $1
         FROM staged_prices s WHERE ${samePack} AND s.run_id = $1 AND ${inRange} AND ${differs}`,
        [run, feed, ...range],
      ),
    );
  }
  if ((end.counts?.created ?? 1) > 0) {
    // In the order of the key: an index that grows at its end is built in half the time. Only this run writes this feed's packs.
    await inTurns(ranges, (range) =>
      session.query(
        `INSERT INTO listed_packs (feed_id, food, pack_id, ${facts}, made_by, written_by)
         SELECT $2, food, pack_id, ${facts}, $1, $1 FROM staged_prices s
         WHERE run_id = $1 AND ${inRange} AND NOT EXISTS (SELECT FROM listed_packs l WHERE ${samePack}) ORDER BY food, pack_id`,
        [run, feed, ...range],
      ),
    );
  }
  return true;
}

interface Undoing {
  readonly run: string;
  readonly feed: string;
  readonly undone: string;
  readonly worker: string;
  readonly at: Date;
}

async function undo(session: BulkSession, { run, feed, undone, worker, at }: Undoing): Promise<RunCounts | null> {
  const gone = await session.query(
    "WITH d AS (DELETE FROM listed_packs WHERE feed_id = $1 AND made_by = $2 AND written_by = $2 RETURNING 1) SELECT count(*) AS n FROM d",
    [feed, undone],
  );
  const back = await session.query(
    `WITH was AS (SELECT (jsonb_populate_record(NULL::listed_packs, before)).* FROM import_changes WHERE run_id = $2),
     d AS (UPDATE listed_packs l SET (${facts}, written_by) = (${facts
       .split(", ")
       .map((each) => `s.${each}`)
       .join(", ")}, s.written_by)
       FROM was s WHERE l.feed_id = $1 AND l.food = s.food AND l.pack_id = s.pack_id AND l.written_by = $2 RETURNING 1)
     SELECT count(*) AS n FROM d`,
    [feed, undone],
  );
  const kept = await session.query(
    `SELECT (SELECT count(*) FROM listed_packs WHERE feed_id = $1 AND made_by = $2 AND written_by <> $2)
      + (SELECT count(*) FROM import_changes WHERE run_id = $2) - $3::int AS n`,
    [feed, undone, numberOf(back.rows[0]?.["n"])],
  );
  const changed = numberOf(gone.rows[0]?.["n"]) + numberOf(back.rows[0]?.["n"]);
  const counts = {
    ...{ read: 0, created: 0, quarantined: 0, repeated: 0 },
    changed,
    unchanged: numberOf(kept.rows[0]?.["n"]),
  };
  const end: RunEnd = { state: "DONE", at, problems: [], counts };
  return (await finish(session, run, worker, end)) ? counts : null;
}
