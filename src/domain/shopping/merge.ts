import { restOf } from "../engine-limits.js";
import type { BaseAmount, Dimension } from "../model/amount.js";
import type { Food } from "../model/food.js";
import { toBase } from "../quantity/convert.js";
import { shoppedAs } from "./shopped-as.js";
import { sharedPieces, type PartUses } from "./shared-pieces.js";

/** What one line of one plan adds to a food. `source` is the caller's own. */
export interface Contribution<S> {
  readonly food: Food;
  readonly part: string | null;
  /** null: listed without an amount (to taste, or a part nobody can count). */
  readonly dimension: Dimension | null;
  readonly low: number;
  readonly high: number;
  /** Days after the session on which it is used. */
  readonly day: number;
  /** Of a part: days it keeps once its piece is cut; null where nobody says. */
  readonly keeps: number | null;
  /** There may be more of it than the amount says. */
  readonly open: boolean;
  readonly source: S;
}

/** One line of the list: everything of one food that can be added up. */
export interface MergedNeed<S> {
  readonly food: Food;
  /** null: nobody gave an amount. */
  readonly dimension: Dimension | null;
  readonly low: number;
  readonly high: number;
  readonly open: boolean;
  readonly contributions: readonly Contribution<S>[];
}

interface Range {
  readonly low: number;
  readonly high: number;
}

const none: Range = { low: 0, high: 0 };

/** Both ends of what the uses of each part add up to, in pieces; under null those of the whole food. */
function sumsOf<S>(contributions: readonly Contribution<S>[]): ReadonlyMap<string | null, Range> {
  const sums = new Map<string | null, Range>();
  for (const { part, dimension, low, high } of contributions) {
    if (dimension === null) continue;
    const sum = sums.get(part) ?? none;
    sums.set(part, { low: sum.low + low, high: sum.high + high });
  }
  return sums;
}

/** The uses of each part by day, at one end of their ranges. Where the plans do not agree how long it keeps, the least counts. */
export function partUses<S>(
  contributions: readonly Contribution<S>[],
  end: keyof Range,
): readonly (PartUses & { readonly part: string })[] {
  const uses = new Map<string, { readonly part: string; keeps: number | null; readonly byDay: Map<number, number> }>();
  for (const { part, dimension, day, keeps, [end]: pieces } of contributions) {
    if (part === null || dimension === null) continue;
    const known = uses.get(part) ?? { part, keeps: null, byDay: new Map<number, number>() };
    if (keeps !== null) known.keeps = Math.min(keeps, known.keeps ?? keeps);
    known.byDay.set(day, (known.byDay.get(day) ?? 0) + pieces);
    uses.set(part, known);
  }
  return [...uses.values()];
}

/** Pieces that uses of parts share, at both ends. */
const piecesOf = <S>(contributions: readonly Contribution<S>[]): Range => {
  if (!contributions.some(({ part }) => part !== null)) return none;
  return { low: sharedPieces(partUses(contributions, "low")), high: sharedPieces(partUses(contributions, "high")) };
};

/**
 * Whole amounts add up; of the parts only the largest sum counts, since all parts come out of the same pieces, for as long as
 * what is left of a cut piece keeps. Both ends of a range are added up on their own.
 */
export function needOf<S>(contributions: readonly Contribution<S>[]): Range {
  const whole = sumsOf(contributions).get(null) ?? none;
  const pieces = piecesOf(contributions);
  return { low: whole.low + pieces.low, high: whole.high + pieces.high };
}

/** Some of a part that no use takes. */
export interface PartOver {
  readonly part: string;
  /** Pieces of the food it is left of. */
  readonly pieces: number;
  /** How much of the part that is; null where what one piece gives cannot be said. */
  readonly amount: BaseAmount | null;
}

/** Of the pieces that parts are taken from, how many are left of each part; none where no part is used. */
export function partsOver<S>(food: Food, contributions: readonly Contribution<S>[]): readonly PartOver[] {
  if (food.parts.length === 0) return [];
  const sums = sumsOf(contributions);
  const { high } = piecesOf(contributions);
  const uncounted = new Set(contributions.filter(({ dimension }) => dimension === null).map(({ part }) => part));
  return food.parts
    .filter(({ name }) => !uncounted.has(name))
    .flatMap(({ name, perPiece }): PartOver[] => {
      const pieces = restOf(high, (sums.get(name) ?? none).high);
      if (!(pieces > 0)) return [];
      const gives = toBase(perPiece, food, name);
      if (!gives.ok) return [{ part: name, pieces, amount: null }];
      const { dimension, low, high: most } = gives.amount;
      return [{ part: name, pieces, amount: { dimension, low: low * pieces, high: most * pieces } }];
    });
}

/** Pieces of its own that a part takes because what is left of a piece cut before does not keep until its use. */
export function notShared<S>(contributions: readonly Contribution<S>[]): boolean {
  const { high } = piecesOf(contributions);
  const sums = [...sumsOf(contributions)].map(([part, sum]) => (part === null ? 0 : sum.high));
  return restOf(high, Math.max(0, ...sums)) > 0;
}

/**
 * Merges by food; amounts that cannot be turned into one dimension stay on lines of their own. Uses without an amount join
 * the food's first line. Lines are ordered by aisle, then food, then dimension, whatever the order of the plans.
 */
export function mergeNeeds<S>(
  contributions: readonly Contribution<S>[],
  canonical?: (slug: string) => string,
): readonly MergedNeed<S>[] {
  const byFood = new Map<string, { food: Food; groups: Map<Dimension | null, Contribution<S>[]> }>();
  for (const each of contributions) {
    const { food } = each;
    const name = food.owner === undefined ? food.slug : shoppedAs(food, canonical);
    const known = byFood.get(name) ?? { food, groups: new Map<Dimension | null, Contribution<S>[]>() };
    byFood.set(name, known);
    const group = known.groups.get(each.dimension);
    if (group === undefined) known.groups.set(each.dimension, [each]);
    else group.push(each);
  }
  const lines = [...byFood.values()].flatMap(({ food, groups }) => {
    const unmeasured = groups.get(null) ?? [];
    const measured = [...groups].filter(([dimension]) => dimension !== null).toSorted(([a], [b]) => (a! < b! ? -1 : 1));
    const all: [Dimension | null, Contribution<S>[]][] = measured.length === 0 ? [[null, []]] : measured;
    return all.map(([dimension, group], at): MergedNeed<S> => {
      const joined = at === 0 ? [...group, ...unmeasured] : group;
      return { food, dimension, ...needOf(joined), open: joined.some(({ open }) => open), contributions: joined };
    });
  });
  return lines.toSorted(
    (a, b) =>
      compare(a.food.aisle, b.food.aisle) ||
      compare(a.food.slug, b.food.slug) ||
      compare(a.food.owner ?? "", b.food.owner ?? "") ||
      compare(a.dimension ?? "", b.dimension ?? ""),
  );
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
