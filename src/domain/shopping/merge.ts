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

/**
 * Whole amounts add up; of the parts only the largest sum counts, since all parts come out of the same pieces. Both ends of
 * a range are added up on their own.
 */
export function needOf<S>(contributions: readonly Contribution<S>[]): { readonly low: number; readonly high: number } {
  let [low, high] = [0, 0];
  const parts = new Map<string, { low: number; high: number }>();
  for (const each of contributions) {
    if (each.dimension === null) continue;
    if (each.part === null) {
      low += each.low;
      high += each.high;
      continue;
    }
    const sum = parts.get(each.part) ?? { low: 0, high: 0 };
    parts.set(each.part, { low: sum.low + each.low, high: sum.high + each.high });
  }
  let [mostLow, mostHigh] = [0, 0];
  for (const sum of parts.values()) {
    mostLow = Math.max(mostLow, sum.low);
    mostHigh = Math.max(mostHigh, sum.high);
  }
  return { low: low + mostLow, high: high + mostHigh };
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
