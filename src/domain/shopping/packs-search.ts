import { sameShare } from "../engine-limits.js";
import { unlimitedWork, type Work } from "../counted-work.js";
import { memoize } from "../memoize.js";
import { greatestCommonDivisor } from "../quantity/rational.js";
import { contentGrid } from "./packs-grid.js";
import { LabelQueue } from "./packs-queue.js";

/** A pack with a content in base units, > 0, and a price in whole parts of the currency unit, >= 0. */
export interface PricedPack {
  readonly content: number;
  readonly price: number;
}

interface Cover {
  /** How many of each pack, in the order given. */
  readonly counts: readonly number[];
  /** False only where the search gave up at `mostLabels`. */
  readonly proved: boolean;
}

/** Selections one search looks at before it gives up. Real shelves take some ten; 50 contrived packs some ten thousand. */
const mostLabels = 100_000;

/** What one selection and those that follow from it take. */
const stepsOfLabel = 2;

/** A shortfall that is nothing but the last digits of a double: 800.0000000001 g are covered by 800 g. */
export const coverSlack = (need: number): number => Math.min(need * sameShare, 0.01);

/** Room for the last digits of a bound: a bound may be a little too low, never too high. */
const boundSlack = 1e-13;
const tieShare = 1e-12;

interface Best {
  price: number;
  /** 0 for anything up to the slack. */
  waste: number;
  packs: number;
  label: number;
  bulk: number;
}

/** The most content for the money; among equals the largest, so that fewer are carried. */
const bulkOf = (packs: readonly PricedPack[]): number =>
  packs.reduce((best, pack, at) => {
    const [mine, theirs] = [pack.price * packs[best]!.content, packs[best]!.price * pack.content];
    return mine < theirs || (mine === theirs && pack.content > packs[best]!.content) ? at : best;
  }, 0);

/** What a pack costs more than the same content of the bulk pack; exactly 0 where that is only the last digits. */
const regretOf = ({ price, content }: PricedPack, ratio: number): number => {
  const regret = price - ratio * content;
  return regret <= price * tieShare ? 0 : regret;
};

type Shelf = ReturnType<typeof shelfOf>;

/** What a search needs to know of the packs, whatever the amount. */
const shelfOf = memoize((packs: readonly PricedPack[]) => {
  const bulk = bulkOf(packs);
  const ratio = packs[bulk]!.price / packs[bulk]!.content;
  const grid = contentGrid(packs.map(({ content }) => content));
  return {
    bulk,
    ratio,
    grid,
    gridBulk: grid[bulk]!,
    largest: Math.max(...packs.map(({ content }) => content)),
    priceStep: packs.reduce((step, { price }) => greatestCommonDivisor(step, price), 0) || 1,
    others: packs
      .flatMap((pack, at) => (at === bulk ? [] : [{ at, regret: regretOf(pack, ratio) }]))
      .toSorted((a, b) => a.regret - b.regret || packs[b.at]!.content - packs[a.at]!.content || a.at - b.at),
  };
});

/**
 * Best-first over selections of packs other than the bulk pack, each of which is then filled up with the bulk pack. A label
 * is one selection. Two labels whose contents differ by whole bulk packs can be filled up to the same total, so the dearer
 * (or, where equal, the one of more packs) is dropped unless it is also the smaller: at most a few labels for every
 * remainder of the bulk pack, however large the need.
 */
class CoverSearch {
  private readonly bulk: number;
  private readonly ratio: number;
  private readonly largest: number;
  private readonly grid: readonly number[];
  private readonly gridBulk: number;
  private readonly priceStep: number;
  private readonly others: Shelf["others"];
  private readonly target: number;
  private readonly slack: number;
  /** No total comes closer to the need: with 50 g packs, 120 g waste 30 g at least. */
  private readonly leastWaste: number;
  private readonly queue = new LabelQueue();
  private readonly price: number[] = [];
  private readonly content: number[] = [];
  private readonly count: number[] = [];
  private readonly remainder: number[] = [];
  private readonly regret: number[] = [];
  private readonly parent: number[] = [];
  private readonly added: number[] = [];
  /** Newest label of each remainder, and the one before it. */
  private readonly newest = new Map<number, number>();
  private readonly older: number[] = [];
  private best: Best = { price: Infinity, waste: Infinity, packs: Infinity, label: -1, bulk: 0 };

  constructor(
    private readonly packs: readonly PricedPack[],
    private readonly need: number,
    private readonly work: Work,
  ) {
    ({
      bulk: this.bulk,
      ratio: this.ratio,
      largest: this.largest,
      grid: this.grid,
      gridBulk: this.gridBulk,
      priceStep: this.priceStep,
      others: this.others,
    } = shelfOf(packs));
    this.slack = coverSlack(need);
    this.target = need - this.slack;
    const unit = packs[this.bulk]!.content / this.gridBulk;
    this.leastWaste = Math.max(0, Math.ceil((this.target / unit) * (1 - boundSlack)) * unit - need) + tieShare * need;
  }

  /** No way of filling up such a selection beats the best cover known. */
  private hopeless(price: number, content: number, count: number): boolean {
    const { best } = this;
    const rest = this.target - content;
    const atLeast = Math.ceil(((price + this.ratio * rest) / this.priceStep) * (1 - boundSlack)) * this.priceStep;
    if (atLeast !== best.price) return atLeast > best.price;
    return best.waste <= this.leastWaste && count + Math.ceil((rest / this.largest) * (1 - boundSlack)) >= best.packs;
  }

  private dominated(price: number, content: number, count: number, remainder: number): boolean {
    const bulk = this.packs[this.bulk]!;
    for (let other = this.newest.get(remainder) ?? -1; other >= 0; other = this.older[other]!) {
      const fill = Math.round((content - this.content[other]!) / bulk.content);
      if (fill < 0) continue;
      const dearer = price - this.price[other]! - fill * bulk.price;
      if (dearer > 0 || (dearer === 0 && count >= this.count[other]! + fill)) return true;
    }
    return false;
  }

  private keepIfBetter(label: number): void {
    const bulk = this.packs[this.bulk]!;
    const fill = Math.max(0, Math.ceil((this.target - this.content[label]!) / bulk.content));
    const price = this.price[label]! + fill * bulk.price;
    const { best } = this;
    if (price > best.price) return;
    const over = this.content[label]! + fill * bulk.content - this.need;
    const waste = over <= this.slack ? 0 : over;
    const packs = this.count[label]! + fill;
    if (price === best.price) {
      const more = waste - best.waste;
      const equal = Math.abs(more) <= tieShare * this.need;
      if (equal ? packs >= best.packs : more > 0) return;
    }
    this.best = { price, waste, packs, label, bulk: fill };
  }

  private addLabel(parent: number, at: number, regret: number): void {
    const pack = at < 0 ? { price: 0, content: 0 } : this.packs[at]!;
    const price = (this.price[parent] ?? 0) + pack.price;
    const content = (this.content[parent] ?? 0) + pack.content;
    const count = at < 0 ? 0 : this.count[parent]! + 1;
    const remainder = at < 0 ? 0 : (this.remainder[parent]! + this.grid[at]!) % this.gridBulk;
    if (this.dominated(price, content, count, remainder)) return;
    const label = this.price.length;
    this.price.push(price);
    this.content.push(content);
    this.count.push(count);
    this.remainder.push(remainder);
    this.regret.push(regret);
    this.parent.push(parent);
    this.added.push(at);
    this.older.push(this.newest.get(remainder) ?? -1);
    this.newest.set(remainder, label);
    this.keepIfBetter(label);
    if (content < this.target) this.queue.push(label, regret, count - content / this.packs[this.bulk]!.content);
  }

  private addPacksTo(label: number): void {
    for (const { at, regret } of this.others) {
      const sum = this.regret[label]! + regret;
      if ((this.ratio * this.target + sum) * (1 - boundSlack) > this.best.price) break;
      const pack = this.packs[at]!;
      const filled = Math.min(this.target, this.content[label]! + pack.content);
      if (!this.hopeless(this.price[label]! + pack.price, filled, this.count[label]! + 1))
        this.addLabel(label, at, sum);
    }
  }

  run(): Cover {
    this.addLabel(-1, -1, 0);
    let label = this.queue.pop();
    while (label !== null && this.price.length <= mostLabels) {
      this.work.step(stepsOfLabel);
      if (!this.hopeless(this.price[label]!, this.content[label]!, this.count[label]!)) this.addPacksTo(label);
      label = this.queue.pop();
    }
    return { counts: this.counts(), proved: label === null };
  }

  private counts(): readonly number[] {
    const counts = this.packs.map((_, at) => (at === this.bulk ? this.best.bulk : 0));
    for (let label = this.best.label; label > 0; label = this.parent[label]!) counts[this.added[label]!]! += 1;
    return counts;
  }
}

/**
 * The cheapest cover of an amount by whole packs; among equals the least waste, then the fewest packs, then a fixed choice
 * that depends on nothing but the packs' order. Exact (Gomory's group relaxation of the knapsack cover, with the bound on
 * what the rest must cost), unless `proved` is false.
 *
 * @param need base units, > 0 and finite
 * @param packs at least one
 */
export function cheapestCover(need: number, packs: readonly PricedPack[], work: Work = unlimitedWork): Cover {
  const [only, another] = packs;
  // Most shelves hold one pack worth having, and then there is nothing to search.
  if (only !== undefined && another === undefined) {
    return { counts: [Math.ceil((need - coverSlack(need)) / only.content)], proved: true };
  }
  return new CoverSearch(packs, need, work).run();
}
