import { unhurried, type Work } from "../work.js";
import { onceFor } from "../once-for.js";
import { cheapestCover, type PricedPack } from "./packs-search.js";

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
  /** False only where the search was cut off (packs-search.ts): a good cover, not proved the best. */
  readonly proved: boolean;
}

interface Candidate extends PricedPack {
  readonly at: number;
}

/**
 * Largest first, cheapest first, so that the order of the document decides nothing but between twins. A pack for which another
 * gives as much for less money is in no cheapest cover.
 */
function candidatesOf(packs: readonly Candidate[]): readonly Candidate[] {
  const sorted = packs.toSorted((a, b) => b.content - a.content || a.price - b.price || a.at - b.at);
  let [cheapest, last] = [Infinity, NaN];
  return sorted.filter(({ content, price }) => {
    const useful = price <= cheapest && content !== last;
    last = content;
    cheapest = Math.min(cheapest, price);
    return useful;
  });
}

/** What can be chosen from, whatever the amount; shelves live as long as their foods. */
const shelved = onceFor((options: readonly PackOption[]) => {
  const usable = options.flatMap(({ content, price }, at) =>
    content > 0 && Number.isFinite(content) ? [{ at, content, price }] : [],
  );
  const priced = usable.flatMap(({ at, content, price }) => (price === null ? [] : [{ at, content, price }]));
  const isPriced = priced.length > 0;
  // Where no price is known all cost the same nothing, which leaves it to the waste.
  return { packs: candidatesOf(isPriced ? priced : usable.map((pack) => ({ ...pack, price: 0 }))), isPriced };
});

/**
 * The cheapest whole packs that cover an amount; among equals the least waste, then the fewest packs, then as many as possible
 * of the larger. A pack without a price is taken only where no pack has one; then the least waste decides, and the price stays
 * unknown. An amount is covered up to the last digits of a double (`coverSlack`).
 *
 * @param toBuy base units; nothing is bought for 0 or less. Throws a RangeError unless finite
 * @returns null where there is no pack to choose from
 */
export function choosePacks(toBuy: number, options: readonly PackOption[], work: Work = unhurried): PackChoice | null {
  if (!Number.isFinite(toBuy)) throw new RangeError(`not an amount to buy: ${toBuy}`);
  const { packs, isPriced } = shelved(options);
  if (packs.length === 0) return null;
  if (toBuy <= 0) return { counts: options.map(() => 0), content: 0, price: 0, proved: true };
  const cover = cheapestCover(toBuy, packs, work);
  const counts = options.map(() => 0);
  packs.forEach(({ at }, i) => (counts[at] = cover.counts[i]!));
  const sum = (of: (pack: Candidate) => number): number =>
    packs.reduce((total, pack, i) => total + cover.counts[i]! * of(pack), 0);
  return {
    counts,
    content: sum(({ content }) => content),
    price: isPriced ? sum(({ price }) => price) : null,
    proved: cover.proved,
  };
}
