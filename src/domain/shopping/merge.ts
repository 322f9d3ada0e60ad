import { restOf } from "../limits.js";
import type { Dimension } from "../model/amount.js";
import type { Food } from "../model/food.js";

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

/**
 * Whole amounts add up; of the parts only the largest sum counts, since all parts come out of the same pieces. Both ends of
 * a range are added up on their own.
 */
export function needOf<S>(contributions: readonly Contribution<S>[]): Range {
  const sums = sumsOf(contributions);
  const whole = sums.get(null) ?? none;
  let [low, high] = [0, 0];
  for (const [part, sum] of sums) {
    if (part === null) continue;
    low = Math.max(low, sum.low);
    high = Math.max(high, sum.high);
  }
  return { low: whole.low + low, high: whole.high + high };
}

/** Of the pieces that the most wanted part takes, how many are left of each other part; none where no part is used. */
export function partsOver<S>(
  food: Food,
  contributions: readonly Contribution<S>[],
): readonly { readonly part: string; readonly pieces: number }[] {
  const sums = sumsOf(contributions);
  const most = Math.max(0, ...[...sums].map(([part, { high }]) => (part === null ? 0 : high)));
  const uncounted = new Set(contributions.filter(({ dimension }) => dimension === null).map(({ part }) => part));
  return food.parts
    .filter(({ name }) => !uncounted.has(name))
    .map(({ name }) => ({ part: name, pieces: restOf(most, (sums.get(name) ?? none).high) }))
    .filter(({ pieces }) => pieces > 0);
}

/**
 * Merges by food; amounts that cannot be turned into one dimension stay on lines of their own. Uses without an amount join
 * the food's first line. Lines are ordered by aisle, then food, then dimension, whatever the order of the plans.
 */
export function mergeNeeds<S>(contributions: readonly Contribution<S>[]): readonly MergedNeed<S>[] {
  const byFood = new Map<string, { food: Food; groups: Map<Dimension | null, Contribution<S>[]> }>();
  for (const each of contributions) {
    const { food } = each;
    const known = byFood.get(food.slug) ?? { food, groups: new Map<Dimension | null, Contribution<S>[]>() };
    byFood.set(food.slug, known);
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
      compare(a.dimension ?? "", b.dimension ?? ""),
  );
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
