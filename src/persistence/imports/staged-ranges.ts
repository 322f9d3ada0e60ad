import { setImmediate } from "node:timers/promises";
import type { BulkSession } from "../sql/bulk-sql.js";

/** Lines of a file from the first to the last, both included. */
type LineRange = readonly [from: number, to: number];

/** A line may not be later: the type of the column. */
const lastLine = 2_147_483_647;

/** Ranges of the staged rows of a run, each of so many rows at most: a line has one row. */
export async function stagedRanges(
  session: BulkSession,
  run: string,
  rowsAtOnce: number,
): Promise<readonly LineRange[]> {
  if (!Number.isFinite(rowsAtOnce)) return [[0, lastLine]];
  const { rows } = await session.query(
    "SELECT min(line) AS first, max(line) AS last FROM staged_prices WHERE run_id = $1",
    [run],
  );
  const [first, last] = [Number(rows[0]?.["first"] ?? 0), Number(rows[0]?.["last"] ?? -1)];
  const ranges: LineRange[] = [];
  for (let from = first; from <= last; from += rowsAtOnce) ranges.push([from, Math.min(last, from + rowsAtOnce - 1)]);
  return ranges;
}

/** One after the other; whoever waits for the thread gets a turn between two of them. */
export async function inTurns<Part>(parts: readonly Part[], work: (part: Part) => Promise<unknown>): Promise<void> {
  for (const [at, part] of parts.entries()) {
    if (at > 0) await setImmediate();
    await work(part);
  }
}
