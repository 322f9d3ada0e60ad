// @ts-nocheck
import type { Fraction } from "fraction.js";
import type { FoodPart } from "../../src/domain/model/food.js";
import { larger, zero } from "./exact-amounts.js";

/** What one use takes of a part, in pieces, and how many days after cutting the part still serves; null: any number. */
export interface ExactTaking {
  readonly part: string;
  readonly day: number;
  readonly pieces: Fraction;
  readonly keeps: number | null;
}

/** By the writer's word alone: the strictest rule of a place, the longer of fridge and shelf, whole days. */
export function daysKept({ keeping = [] }: Pick<FoodPart, "keeping">): number | null {
  const lengths = (["FRIDGE", "ROOM"] as const).flatMap((place) => {
    const here = keeping.filter((rule) => rule.place === place).map(({ days }) => days);
    return here.length === 0 ? [] : [Math.min(...here)];
  });
  return lengths.length === 0 ? null : Math.floor(Math.max(...lengths));
}

/**
 * The least number of pieces, from the other side: uses of a part on the days from `first` to `last` need pieces cut between `first`
 * less the days it keeps and `last`. Claims on stretches of days that do not meet are on different pieces and add up; the
 * most that such claims add up to is the least that will do (duality; the matrix of intervals is totally unimodular).
 */
export function exactPieces(takings: readonly ExactTaking[]): Fraction {
  const days = [...new Set(takings.map(({ day }) => day))].sort((a, b) => a - b);
  const claims = [...new Set(takings.map(({ part }) => part))].flatMap((part) => {
    const own = takings.filter((each) => each.part === part);
    const limits = own.flatMap(({ keeps }) => (keeps === null ? [] : [keeps]));
    const keeps = limits.length === 0 ? Infinity : Math.min(...limits);
    return days.flatMap((first) =>
      days
        .filter((last) => last >= first)
        .map((last) => ({
          from: first - keeps,
          to: last,
          pieces: own
            .filter(({ day }) => day >= first && day <= last)
            .reduce((sum, { pieces }) => sum.add(pieces), zero),
        })),
    );
  });
  const known = new Map<number, Fraction>();
  const mostUntil = (day: number): Fraction => {
    const before = known.get(day);
    if (before !== undefined) return before;
    const most = claims
      .filter(({ to }) => to <= day)
      .reduce(
        (best, { from, pieces }) => larger(best, pieces.add(from === -Infinity ? zero : mostUntil(from - 1))),
        zero,
      );
    known.set(day, most);
    return most;
  };
  return mostUntil(days.at(-1) ?? 0);
}
