import { Fraction } from "fraction.js";
import { unlimitedWork, type Work } from "../counted-work.js";
import { memoize } from "../memoize.js";
import { greatestCommonDivisor } from "../quantity/rational.js";
import { exactPrice, stepsAtATime, tillPrice, type LooseOption } from "./loose-goods.js";
import { cheapestCover, coverSlack, type PricedPack } from "./packs-search.js";

/** One pack a shop sells, or what it weighs out, ready to choose from. */
export interface PackOption {
  readonly index: number;
  /** Base units, > 0. */
  readonly content: number;
  /** Whole parts of the currency unit (money.ts), or null where nobody knows it. */
  readonly price: number | null;
  /** Sold loose: as many steps as one asks for, at a price for `content`. */
  readonly loose?: LooseOption;
}

export interface PackChoice {
  /** How many of each option, by its position in the list given; of what is loose, of its smallest steps. */
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

interface Shelf {
  readonly packs: readonly Candidate[];
  readonly isPriced: boolean;
}

/** Prices beyond this would no longer be whole numbers once they are multiplied. */
const mostParts = 1e15;

/**
 * Prices of loose goods may be shares of a part (an ounce of a pound): all are counted in the largest unit of which each is a whole number,
 * so that they compare exactly. Where there is none that doubles hold, each is rounded up to a whole part.
 */
function comparable(options: readonly (Candidate & { readonly exact: Fraction })[]): readonly Candidate[] {
  const scale = options.reduce((common, { exact }) => leastCommonMultiple(common, Number(exact.d)), 1);
  const dearest = Math.max(...options.map(({ price }) => price));
  const fits = scale * dearest <= mostParts;
  return options.map(({ at, content, exact, price }) => ({
    ...{ at, content },
    price: fits ? exact.mul(new Fraction(scale)).valueOf() : Math.ceil(price),
  }));
}

const leastCommonMultiple = (a: number, b: number): number => (a / greatestCommonDivisor(a, b)) * b;

/** What can be chosen from where loose goods are weighed out so many steps at a time. */
function shelfAt(options: readonly PackOption[], times: readonly number[]): Shelf {
  const usable = options.flatMap(({ content, price, loose }, at) => {
    const size = loose === undefined ? content : loose.step * times[at]!;
    if (!(size > 0 && Number.isFinite(size))) return [];
    return [{ at, content: size, price, loose }];
  });
  const priced = usable.flatMap(({ at, content, price, loose }) => {
    if (price === null) return [];
    const exact = loose === undefined ? new Fraction(price) : exactPrice(loose, price, times[at]!);
    return [{ at, content, exact, price: exact.valueOf() }];
  });
  const isPriced = priced.length > 0;
  const unpriced: readonly Candidate[] = usable.map(({ at, content }) => ({ at, content, price: 0 }));
  // Where no price is known all cost the same nothing, which leaves it to the waste.
  return { packs: candidatesOf(isPriced ? comparable(priced) : unpriced), isPriced };
}

interface SizedShelf extends Shelf {
  /** By the position of an option: how many of its steps are one of what is chosen. */
  readonly times: readonly number[];
}

const onceEach = memoize((options: readonly PackOption[]): SizedShelf | null => {
  if (options.some(({ loose }) => loose !== undefined)) return null;
  const times = options.map(() => 1);
  return { ...shelfAt(options, times), times };
});

/** Shelves live as long as their foods, and stay the same for needs that are weighed alike. */
const weighed = memoize((_: readonly PackOption[]) => new Map<string, SizedShelf>());

function shelfFor(toBuy: number, options: readonly PackOption[]): SizedShelf {
  const fixed = onceEach(options);
  if (fixed !== null) return fixed;
  const need = toBuy - coverSlack(toBuy);
  const times = options.map(({ loose }) => (loose === undefined ? 1 : stepsAtATime(loose, need)));
  const known = weighed(options);
  const key = times.join(" ");
  const shelf = known.get(key) ?? { ...shelfAt(options, times), times };
  known.set(key, shelf);
  return shelf;
}

/**
 * The cheapest whole packs, and weights of what is loose, that cover an amount; among equals the least waste, then the fewest packs, then as many as possible
 * of the larger. A pack without a price is taken only where no pack has one; then the least waste decides, and the price stays
 * unknown. An amount is covered up to the last digits of a double (`coverSlack`).
 *
 * @param toBuy base units; nothing is bought for 0 or less. Throws a RangeError unless finite
 * @returns null where there is no pack to choose from
 */
export function choosePacks(
  toBuy: number,
  options: readonly PackOption[],
  work: Work = unlimitedWork,
): PackChoice | null {
  if (!Number.isFinite(toBuy)) throw new RangeError(`not an amount to buy: ${toBuy}`);
  if (toBuy <= 0) {
    const some = shelfFor(0, options).packs.length > 0;
    return some ? { counts: options.map(() => 0), content: 0, price: 0, proved: true } : null;
  }
  const { packs, isPriced, times } = shelfFor(toBuy, options);
  if (packs.length === 0) return null;
  const cover = cheapestCover(toBuy, packs, work);
  const counts = options.map(() => 0);
  packs.forEach(({ at }, i) => (counts[at] = cover.counts[i]! * times[at]!));
  const content = packs.reduce((total, pack, i) => total + cover.counts[i]! * pack.content, 0);
  const price = isPriced ? options.reduce((total, option, at) => total + paidFor(option, counts[at]!), 0) : null;
  return { counts, content, price, proved: cover.proved };
}

/** What the till asks for so many of an option, in whole parts; 0 where nobody knows its price. */
export function paidFor({ price, loose }: PackOption, count: number): number {
  if (price === null || count === 0) return 0;
  return loose === undefined ? price * count : tillPrice(loose, price, count);
}
