// @ts-nocheck
function stryNS_9fa48() {
  var g = typeof globalThis === 'object' && globalThis && globalThis.Math === Math && globalThis || new Function("return this")();
  var ns = g.__stryker__ || (g.__stryker__ = {});
  if (ns.activeMutant === undefined && g.process && g.process.env && g.process.env.__STRYKER_ACTIVE_MUTANT__) {
    ns.activeMutant = g.process.env.__STRYKER_ACTIVE_MUTANT__;
  }
  function retrieveNS() {
    return ns;
  }
  stryNS_9fa48 = retrieveNS;
  return retrieveNS();
}
stryNS_9fa48();
function stryCov_9fa48() {
  var ns = stryNS_9fa48();
  var cov = ns.mutantCoverage || (ns.mutantCoverage = {
    static: {},
    perTest: {}
  });
  function cover() {
    var c = cov.static;
    if (ns.currentTestId) {
      c = cov.perTest[ns.currentTestId] = cov.perTest[ns.currentTestId] || {};
    }
    var a = arguments;
    for (var i = 0; i < a.length; i++) {
      c[a[i]] = (c[a[i]] || 0) + 1;
    }
  }
  stryCov_9fa48 = cover;
  cover.apply(null, arguments);
}
function stryMutAct_9fa48(id) {
  var ns = stryNS_9fa48();
  function isActive(id) {
    if (ns.activeMutant === id) {
      if (ns.hitCount !== void 0 && ++ns.hitCount > ns.hitLimit) {
        throw new Error('Stryker: Hit count limit reached (' + ns.hitCount + ')');
      }
      return true;
    }
    return false;
  }
  stryMutAct_9fa48 = isActive;
  return isActive(id);
}
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
  if (stryMutAct_9fa48("763")) {
    {}
  } else {
    stryCov_9fa48("763");
    const sorted = packs.toSorted(stryMutAct_9fa48("764") ? () => undefined : (stryCov_9fa48("764"), (a, b) => stryMutAct_9fa48("767") ? (b.content - a.content || a.price - b.price) && a.at - b.at : stryMutAct_9fa48("766") ? false : stryMutAct_9fa48("765") ? true : (stryCov_9fa48("765", "766", "767"), (stryMutAct_9fa48("769") ? b.content - a.content && a.price - b.price : stryMutAct_9fa48("768") ? false : (stryCov_9fa48("768", "769"), (stryMutAct_9fa48("770") ? b.content + a.content : (stryCov_9fa48("770"), b.content - a.content)) || (stryMutAct_9fa48("771") ? a.price + b.price : (stryCov_9fa48("771"), a.price - b.price)))) || (stryMutAct_9fa48("772") ? a.at + b.at : (stryCov_9fa48("772"), a.at - b.at)))));
    let [cheapest, last] = stryMutAct_9fa48("773") ? [] : (stryCov_9fa48("773"), [Infinity, NaN]);
    return stryMutAct_9fa48("774") ? sorted : (stryCov_9fa48("774"), sorted.filter(({
      content,
      price
    }) => {
      if (stryMutAct_9fa48("775")) {
        {}
      } else {
        stryCov_9fa48("775");
        const useful = stryMutAct_9fa48("778") ? price <= cheapest || content !== last : stryMutAct_9fa48("777") ? false : stryMutAct_9fa48("776") ? true : (stryCov_9fa48("776", "777", "778"), (stryMutAct_9fa48("781") ? price > cheapest : stryMutAct_9fa48("780") ? price < cheapest : stryMutAct_9fa48("779") ? true : (stryCov_9fa48("779", "780", "781"), price <= cheapest)) && (stryMutAct_9fa48("783") ? content === last : stryMutAct_9fa48("782") ? true : (stryCov_9fa48("782", "783"), content !== last)));
        last = content;
        cheapest = stryMutAct_9fa48("784") ? Math.max(cheapest, price) : (stryCov_9fa48("784"), Math.min(cheapest, price));
        return useful;
      }
    }));
  }
}

/**
 * The cheapest whole packs that cover an amount; among equals the least waste, then the fewest packs, then as many as possible
 * of the larger. A pack without a price is taken only where no pack has one; then the least waste decides, and the price stays
 * unknown. An amount is covered up to the last digits of a double (`coverSlack`).
 *
 * @param toBuy base units; nothing is bought for 0 or less. Throws a RangeError unless finite
 * @returns null where there is no pack to choose from
 */
export function choosePacks(toBuy: number, options: readonly PackOption[]): PackChoice | null {
  if (stryMutAct_9fa48("785")) {
    {}
  } else {
    stryCov_9fa48("785");
    if (stryMutAct_9fa48("788") ? false : stryMutAct_9fa48("787") ? true : stryMutAct_9fa48("786") ? Number.isFinite(toBuy) : (stryCov_9fa48("786", "787", "788"), !Number.isFinite(toBuy))) throw new RangeError(stryMutAct_9fa48("789") ? `` : (stryCov_9fa48("789"), `not an amount to buy: ${toBuy}`));
    const usable = options.flatMap(stryMutAct_9fa48("790") ? () => undefined : (stryCov_9fa48("790"), ({
      content,
      price
    }, at) => (stryMutAct_9fa48("793") ? content > 0 || Number.isFinite(content) : stryMutAct_9fa48("792") ? false : stryMutAct_9fa48("791") ? true : (stryCov_9fa48("791", "792", "793"), (stryMutAct_9fa48("796") ? content <= 0 : stryMutAct_9fa48("795") ? content >= 0 : stryMutAct_9fa48("794") ? true : (stryCov_9fa48("794", "795", "796"), content > 0)) && Number.isFinite(content))) ? stryMutAct_9fa48("797") ? [] : (stryCov_9fa48("797"), [stryMutAct_9fa48("798") ? {} : (stryCov_9fa48("798"), {
      at,
      content,
      price
    })]) : stryMutAct_9fa48("799") ? ["Stryker was here"] : (stryCov_9fa48("799"), [])));
    if (stryMutAct_9fa48("802") ? usable.length !== 0 : stryMutAct_9fa48("801") ? false : stryMutAct_9fa48("800") ? true : (stryCov_9fa48("800", "801", "802"), usable.length === 0)) return null;
    if (stryMutAct_9fa48("806") ? toBuy > 0 : stryMutAct_9fa48("805") ? toBuy < 0 : stryMutAct_9fa48("804") ? false : stryMutAct_9fa48("803") ? true : (stryCov_9fa48("803", "804", "805", "806"), toBuy <= 0)) return stryMutAct_9fa48("807") ? {} : (stryCov_9fa48("807"), {
      counts: options.map(stryMutAct_9fa48("808") ? () => undefined : (stryCov_9fa48("808"), () => 0)),
      content: 0,
      price: 0,
      proved: stryMutAct_9fa48("809") ? false : (stryCov_9fa48("809"), true)
    });
    const priced = usable.flatMap(stryMutAct_9fa48("810") ? () => undefined : (stryCov_9fa48("810"), ({
      at,
      content,
      price
    }) => (stryMutAct_9fa48("813") ? price !== null : stryMutAct_9fa48("812") ? false : stryMutAct_9fa48("811") ? true : (stryCov_9fa48("811", "812", "813"), price === null)) ? stryMutAct_9fa48("814") ? ["Stryker was here"] : (stryCov_9fa48("814"), []) : stryMutAct_9fa48("815") ? [] : (stryCov_9fa48("815"), [stryMutAct_9fa48("816") ? {} : (stryCov_9fa48("816"), {
      at,
      content,
      price
    })])));
    // Where no price is known all cost the same nothing, which leaves it to the waste.
    const packs = candidatesOf((stryMutAct_9fa48("820") ? priced.length <= 0 : stryMutAct_9fa48("819") ? priced.length >= 0 : stryMutAct_9fa48("818") ? false : stryMutAct_9fa48("817") ? true : (stryCov_9fa48("817", "818", "819", "820"), priced.length > 0)) ? priced : usable.map(stryMutAct_9fa48("821") ? () => undefined : (stryCov_9fa48("821"), pack => stryMutAct_9fa48("822") ? {} : (stryCov_9fa48("822"), {
      ...pack,
      price: 0
    }))));
    const cover = cheapestCover(toBuy, packs);
    const counts = options.map(stryMutAct_9fa48("823") ? () => undefined : (stryCov_9fa48("823"), () => 0));
    packs.forEach(stryMutAct_9fa48("824") ? () => undefined : (stryCov_9fa48("824"), ({
      at
    }, i) => counts[at] = cover.counts[i]!));
    const sum = stryMutAct_9fa48("825") ? () => undefined : (stryCov_9fa48("825"), (() => {
      const sum = (of: (pack: Candidate) => number): number => packs.reduce(stryMutAct_9fa48("826") ? () => undefined : (stryCov_9fa48("826"), (total, pack, i) => stryMutAct_9fa48("827") ? total - cover.counts[i]! * of(pack) : (stryCov_9fa48("827"), total + (stryMutAct_9fa48("828") ? cover.counts[i]! / of(pack) : (stryCov_9fa48("828"), cover.counts[i]! * of(pack))))), 0);
      return sum;
    })());
    return stryMutAct_9fa48("829") ? {} : (stryCov_9fa48("829"), {
      counts,
      content: sum(stryMutAct_9fa48("830") ? () => undefined : (stryCov_9fa48("830"), ({
        content
      }) => content)),
      price: (stryMutAct_9fa48("834") ? priced.length <= 0 : stryMutAct_9fa48("833") ? priced.length >= 0 : stryMutAct_9fa48("832") ? false : stryMutAct_9fa48("831") ? true : (stryCov_9fa48("831", "832", "833", "834"), priced.length > 0)) ? sum(stryMutAct_9fa48("835") ? () => undefined : (stryCov_9fa48("835"), ({
        price
      }) => price)) : null,
      proved: cover.proved
    });
  }
}