import { restOf } from "../engine-limits.js";

/** What the uses of one part take, in pieces by day, and for how many days after its piece is cut it still serves. */
export interface PartUses {
  /** null: for as long as it takes. */
  readonly keeps: number | null;
  readonly byDay: ReadonlyMap<number, number>;
}

/**
 * The fewest pieces that give every use its part while it keeps. A piece gives one of each part, and all of them age from the
 * day it is cut. Where every part keeps long enough that is the largest sum of a part's uses.
 *
 * A piece cut as late as the uses so far allow serves the most of those to come, so going through the days in order and cutting
 * on each what is still missing is the least there is.
 */
export function sharedPieces(parts: readonly PartUses[]): number {
  const days = [...new Set(parts.flatMap(({ byDay }) => [...byDay.keys()]))].sort((a, b) => a - b);
  const cut = days.map(() => 0);
  days.forEach((day, at) => {
    cut[at] = Math.max(
      ...parts.map(({ keeps, byDay }) => (byDay.has(day) ? missingOn(at, days, cut, keeps, byDay) : 0)),
    );
  });
  return cut.reduce((sum, pieces) => sum + pieces, 0);
}

/** Pieces to cut on a day, so that each run of the part's uses up to it finds enough that were cut late enough. */
function missingOn(
  at: number,
  days: readonly number[],
  cut: readonly number[],
  keeps: number | null,
  byDay: PartUses["byDay"],
): number {
  let [wanted, there, missing] = [0, 0, 0];
  let oldest = at;
  for (let first = at; first >= 0; first--) {
    const day = days[first]!;
    wanted += byDay.get(day) ?? 0;
    while (oldest > 0 && (keeps === null || days[oldest - 1]! >= day - keeps)) there += cut[--oldest]!;
    missing = Math.max(missing, restOf(wanted, there));
  }
  return missing;
}
