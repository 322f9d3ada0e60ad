import type { BulkSession, BulkSql } from "../sql/bulk-sql.js";
import { quarantineRows } from "./import-runs.js";
import { keptAside } from "./import-data.js";
import type { PriceOutlier, RunChunk } from "./import-data.js";
import { inTurns } from "./staged-ranges.js";

/** How many of a unit's base units, so that packs of 500 g and 1 kg compare. A food's own measure stands for itself. */
type UnitSize = readonly [unit: string, dimension: string, factor: number];

/** A rational as text: `"500"`, `"3/2"`. */
const number = (column: string): string =>
  `(split_part(${column}, '/', 1)::float8 / COALESCE(NULLIF(split_part(${column}, '/', 2), '')::float8, 1))`;

/** Price of one base unit of each pack. */
const priced = (table: string, food: string): string => `
  ${food} AS food, p.price_currency AS currency, COALESCE(u.dimension, p.content_unit) AS dimension,
  p.price_amount::float8 / (${number("p.content_high")} * COALESCE(u.factor, 1)) AS each
  FROM ${table}`;

const units = "LEFT JOIN units u ON u.unit = p.content_unit";
const hasPrice = "p.price_amount IS NOT NULL";
/** Packs that the file says something of are not what it is held against. */
const isOther = (food: string, pack: string): string =>
  `NOT EXISTS (SELECT FROM staged_prices t WHERE t.run_id = $1 AND t.food = ${food} AND t.pack_id = ${pack})`;

/**
 * Staged packs that cost more than `factor` times as much, or less than one `factor`th, for the same amount as is usual for their food: by the
 * packs that are known, else by the others of the file. Of two packs of a file that disagree so, both.
 */
export async function outlyingPrices(
  bulk: BulkSql,
  run: string,
  sizes: readonly UnitSize[],
  factor: number,
): Promise<readonly PriceOutlier[]> {
  const found: PriceOutlier[] = [];
  await inTurns(await stagedFoods(bulk, run), async (foods) => {
    found.push(...(await bulk.transaction((session) => outliersOf(session, { run, foods, sizes, factor }))));
  });
  return found.toSorted((a, b) => a.line - b.line);
}

/** Foods of the staged rows, some at a time, so that one statement has no more rows than it may, or those of one food; null: all. */
async function stagedFoods(
  { rowsAtOnce, transaction }: BulkSql,
  run: string,
): Promise<readonly (readonly string[] | null)[]> {
  if (!Number.isFinite(rowsAtOnce)) return [null];
  const { rows } = await transaction((session) =>
    session.query("SELECT food, count(*) AS packs FROM staged_prices WHERE run_id = $1 GROUP BY food ORDER BY food", [
      run,
    ]),
  );
  const parts: { readonly foods: string[]; packs: number }[] = [];
  for (const row of rows) {
    const packs = Number(row["packs"]);
    const last = parts.at(-1);
    if (last === undefined || last.packs + packs > rowsAtOnce) parts.push({ foods: [String(row["food"])], packs });
    else {
      last.foods.push(String(row["food"]));
      last.packs += packs;
    }
  }
  return parts.map(({ foods }) => foods);
}

interface AskedOutliers {
  readonly run: string;
  /** null: all of the run. */
  readonly foods: readonly string[] | null;
  readonly sizes: readonly UnitSize[];
  readonly factor: number;
}

/** What is usual for a food depends on no other food. */
async function outliersOf(
  session: BulkSession,
  { run, foods, sizes, factor }: AskedOutliers,
): Promise<readonly PriceOutlier[]> {
  const { rows } = await session.query(
    `WITH units AS (SELECT * FROM jsonb_to_recordset($2::jsonb) AS u(unit text, dimension text, factor float8)),
     staged AS (SELECT p.line, p.pack_id, p.price_amount, ${priced("staged_prices p", "p.food")} ${units}
       WHERE p.run_id = $1 AND ${hasPrice} AND ($4::text[] IS NULL OR p.food = ANY ($4::text[]))),
     asked AS (SELECT DISTINCT food FROM staged),
     known AS (
       SELECT p.id AS pack_id, ${priced("packs p JOIN foods f ON f.id = p.food_id", "f.slug")} ${units}
         WHERE ${hasPrice} AND f.slug IN (SELECT food FROM asked) AND ${isOther("f.slug", "p.id")}
       UNION ALL
       SELECT p.pack_id, ${priced("listed_packs p", "p.food")} ${units}
         WHERE ${hasPrice} AND p.food IN (SELECT food FROM asked) AND ${isOther("p.food", "p.pack_id")}),
     spread AS (SELECT food, currency, dimension FROM (
         SELECT food, currency, dimension, each FROM staged UNION ALL SELECT food, currency, dimension, each FROM known) a
       GROUP BY food, currency, dimension HAVING max(each) > $3::float8 * min(each)),
     by_known AS (SELECT food, currency, dimension, percentile_disc(0.5) WITHIN GROUP (ORDER BY each) AS usual,
         (array_agg(pack_id ORDER BY pack_id))[1:5] AS packs
       FROM known JOIN spread USING (food, currency, dimension) GROUP BY food, currency, dimension),
     by_file AS (SELECT food, currency, dimension, percentile_disc(0.5) WITHIN GROUP (ORDER BY each) AS usual,
         count(*) AS packs_of, max(each) AS dearest, min(each) AS cheapest, (array_agg(pack_id ORDER BY line))[1:6] AS packs
       FROM staged JOIN spread USING (food, currency, dimension) GROUP BY food, currency, dimension)
     SELECT s.line, s.food, s.price_amount || ' ' || s.currency AS price,
       s.each / CASE WHEN k.usual IS NOT NULL THEN k.usual
         WHEN b.packs_of = 2 AND s.each = b.cheapest THEN b.dearest
         WHEN b.packs_of = 2 THEN b.cheapest ELSE b.usual END AS ratio,
       COALESCE(k.packs, array_remove(b.packs, s.pack_id)) AS packs
     FROM staged s JOIN by_file b USING (food, currency, dimension) LEFT JOIN by_known k USING (food, currency, dimension)
     ORDER BY s.line`,
    [run, JSON.stringify(sizes.map(([unit, dimension, each]) => ({ unit, dimension, factor: each }))), factor, foods],
  );
  return rows
    .map((row) => ({
      line: Number(row["line"]),
      food: String(row["food"]),
      price: String(row["price"]),
      ratio: Number(row["ratio"]),
      packs: row["packs"] as readonly string[],
    }))
    .filter(({ ratio }) => ratio > factor || ratio * factor < 1);
}

/** Takes staged rows back out, to be looked at by a person. false: the run is not this worker's any more. */
export async function setAside(
  session: BulkSession,
  run: string,
  worker: string,
  quarantine: RunChunk["quarantine"],
  rowsAtOnce: number,
): Promise<boolean> {
  const { rows } = await session.query(
    "UPDATE import_runs SET quarantined = quarantined + $3 WHERE id = $1 AND worker = $2 AND state = 'RUNNING' RETURNING quarantined",
    [run, worker, quarantine.length],
  );
  const [row] = rows;
  if (row === undefined) return false;
  const lines = JSON.stringify(quarantine.map(({ line }) => line));
  await session.query(
    "DELETE FROM staged_prices WHERE run_id = $1 AND line IN (SELECT value::int FROM jsonb_array_elements_text($2::jsonb))",
    [run, lines],
  );
  const kept = quarantineRows(run, keptAside(quarantine, Number(row["quarantined"])));
  const size = Math.min(rowsAtOnce, Math.max(1, kept.length));
  const parts = Array.from({ length: Math.ceil(kept.length / size) }, (_, at) =>
    kept.slice(at * size, (at + 1) * size),
  );
  await inTurns(parts, (part) =>
    session.query(
      "INSERT INTO quarantined_rows SELECT * FROM jsonb_populate_recordset(NULL::quarantined_rows, $1::jsonb)",
      [JSON.stringify(part)],
    ),
  );
  return true;
}
