import { ceilForgiving } from "../component/batch.js";

/** One pack a shop sells, ready to choose from. */
export interface PackOption {
  readonly index: number;
  /** Base units, > 0. */
  readonly content: number;
  /** Whole parts of the currency unit (money.ts), or null where nobody knows it. */
  readonly price: number | null;
}

export interface PackChoice {
  /** How many of each option, by its position in the list given. */
  readonly counts: readonly number[];
  readonly content: number;
  /** null when packs without a price had to be taken. */
  readonly price: number | null;
  /** False only where the search was cut off at `mostSteps`: a good cover, not proved the cheapest. */
  readonly proved: boolean;
}

/** Steps of one search. Real shelves take a few hundred; only contrived ones come near. */
export const mostSteps = 2_000_000;

interface Item {
  readonly at: number;
  readonly content: number;
  readonly price: number;
  /** More of this than that is never needed: a better pack gives the same content for no more money. */
  readonly cap: number;
}

interface Best {
  price: number;
  content: number;
  packs: number;
  counts: Int32Array | Float64Array;
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/** A content in ten-millionths of a base unit where that is exact (453.59237 g is), else null. */
const asInteger = (content: number): number | null => {
  const scaled = content * 1e7;
  const whole = Math.round(scaled);
  return whole > 0 && whole <= Number.MAX_SAFE_INTEGER && Math.abs(scaled - whole) <= 1e-9 * whole ? whole : null;
};

const capAgainst = (item: { readonly content: number }, better: { readonly content: number }): number => {
  const [mine, theirs] = [asInteger(item.content), asInteger(better.content)];
  return mine === null || theirs === null ? Infinity : theirs / greatestCommonDivisor(theirs, mine) - 1;
};

/** Best value first; packs that another beats in both content and price are left out. */
function ranked(options: readonly { readonly at: number; readonly content: number; readonly price: number }[]): Item[] {
  const sorted = options.toSorted(
    (a, b) => a.price * b.content - b.price * a.content || b.content - a.content || a.at - b.at,
  );
  const useful = sorted.filter(
    (a, i) =>
      !sorted.some(
        (b, j) =>
          i !== j &&
          b.content >= a.content &&
          b.price <= a.price &&
          (b.price < a.price || (b.content === a.content && j < i)),
      ),
  );
  return useful.map((item, i) => ({
    ...item,
    cap: Math.min(Infinity, ...useful.slice(0, i).map((better) => capAgainst(item, better))),
  }));
}

const slack = 1e-9;

/** Depth-first over counts, best value first, cut by what the rest must at least cost. */
class CoverSearch {
  steps = 0;
  best: Best;
  private readonly counts: Float64Array;

  constructor(
    private readonly items: readonly Item[],
    private readonly need: number,
  ) {
    this.counts = new Float64Array(items.length);
    this.best = { price: Infinity, content: Infinity, packs: Infinity, counts: this.counts.slice() };
  }

  private keepIfBetter(price: number, content: number, packs: number): void {
    const { best } = this;
    if (price > best.price) return;
    if (price === best.price) {
      const waste = content - best.content;
      const equal = Math.abs(waste) <= slack * this.need;
      if (equal ? packs >= best.packs : waste > 0) return;
    }
    this.best = { price, content, packs, counts: this.counts.slice() };
  }

  run(at: number, covered: number, price: number, packs: number): void {
    this.steps += 1;
    const left = this.need - covered;
    if (left <= slack * this.need) {
      this.keepIfBetter(price, covered, packs);
      return;
    }
    const item = this.items[at];
    if (item === undefined || this.steps > mostSteps) return;
    const next = this.items[at + 1];
    const most = Math.min(item.cap, ceilForgiving(left / item.content));
    for (let count = most; count >= 0; count--) {
      const spent = price + count * item.price;
      const rest = left - count * item.content;
      if (rest > slack * this.need) {
        // From here on fewer of this pack only makes the rest dearer: nothing below can win.
        if (next === undefined || spent + (rest * next.price) / next.content > this.best.price * (1 + slack)) break;
      } else if (spent > this.best.price) continue;
      this.counts[at] = count;
      this.run(at + 1, covered + count * item.content, spent, packs + count);
      if (this.steps > mostSteps) break;
    }
    this.counts[at] = 0;
  }
}

/**
 * The cheapest whole packs that cover an amount; among equals the least waste, then the fewest packs. Exact: branch
 * and bound over every count. Packs without a price are taken only where no pack has one, for the least waste.
 *
 * @param toBuy base units; nothing is bought for 0
 * @returns null where there is no pack to choose from
 */
export function choosePacks(toBuy: number, options: readonly PackOption[]): PackChoice | null {
  const usable = options.flatMap(({ content, price }, at) =>
    content > 0 && Number.isFinite(content) ? [{ at, content, price }] : [],
  );
  if (usable.length === 0) return null;
  const none = options.map(() => 0);
  if (!(toBuy > 0)) return { counts: none, content: 0, price: 0, proved: true };
  const priced = usable.flatMap(({ at, content, price }) => (price === null ? [] : [{ at, content, price }]));
  const unpriced = priced.length === 0;
  // Where no price is known, paying by content makes the cheapest cover the one with the least waste.
  const items = ranked(unpriced ? usable.map(({ at, content }) => ({ at, content, price: content })) : priced);
  const search = new CoverSearch(items, toBuy);
  search.run(0, 0, 0, 0);
  const { best } = search;
  const counts = [...none];
  items.forEach(({ at }, i) => (counts[at] = best.counts[i] ?? 0));
  return { counts, content: best.content, price: unpriced ? null : best.price, proved: search.steps <= mostSteps };
}
