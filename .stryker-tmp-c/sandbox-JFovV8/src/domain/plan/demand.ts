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
import { batchesBegun, batchesFor } from "../component/batch.js";
import { restOf } from "../limits.js";
import { takeFromStock, type Stock } from "../shopping/on-hand.js";
import type { CompiledLine, CompiledPlan } from "./compiled-plan.js";

/** Per component, by its index in the compiled plan, in base units of its yield. */
export interface Demand {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** What the household has of it and need not make, <= high. */
  readonly onHand: Float64Array;
  /** The same for each stock given, in its order. */
  readonly taken: ReadonlyMap<number, readonly number[]>;
  readonly batches: Float64Array;
  readonly loads: Float64Array;
}

/** How much a line of a meal grows from factor 1; the factor is servings / meal.serves. */
export function mealGrowth({
  line
}: CompiledLine, factor: number): number {
  if (stryMutAct_9fa48("1727")) {
    {}
  } else {
    stryCov_9fa48("1727");
    switch (line.rule) {
      case stryMutAct_9fa48("1729") ? "" : (stryCov_9fa48("1729"), "PROPORTIONAL"):
        if (stryMutAct_9fa48("1728")) {} else {
          stryCov_9fa48("1728");
          return factor;
        }
      case stryMutAct_9fa48("1731") ? "" : (stryCov_9fa48("1731"), "PER_BATCH"):
        if (stryMutAct_9fa48("1730")) {} else {
          stryCov_9fa48("1730");
          return (stryMutAct_9fa48("1735") ? factor <= 0 : stryMutAct_9fa48("1734") ? factor >= 0 : stryMutAct_9fa48("1733") ? false : stryMutAct_9fa48("1732") ? true : (stryCov_9fa48("1732", "1733", "1734", "1735"), factor > 0)) ? 1 : 0;
        }
      case stryMutAct_9fa48("1737") ? "" : (stryCov_9fa48("1737"), "POWER"):
        if (stryMutAct_9fa48("1736")) {} else {
          stryCov_9fa48("1736");
          return (stryMutAct_9fa48("1741") ? factor <= 0 : stryMutAct_9fa48("1740") ? factor >= 0 : stryMutAct_9fa48("1739") ? false : stryMutAct_9fa48("1738") ? true : (stryCov_9fa48("1738", "1739", "1740", "1741"), factor > 0)) ? factor ** (stryMutAct_9fa48("1742") ? line.exponent && 1 : (stryCov_9fa48("1742"), line.exponent ?? 1)) : 0;
        }
      case stryMutAct_9fa48("1744") ? "" : (stryCov_9fa48("1744"), "TO_TASTE"):
        if (stryMutAct_9fa48("1743")) {} else {
          stryCov_9fa48("1743");
          return 0;
        }
    }
  }
}

/** How much a line of a component grows from one batch. */
export function batchGrowth({
  line
}: CompiledLine, batches: number): number {
  if (stryMutAct_9fa48("1745")) {
    {}
  } else {
    stryCov_9fa48("1745");
    switch (line.rule) {
      case stryMutAct_9fa48("1747") ? "" : (stryCov_9fa48("1747"), "PROPORTIONAL"):
        if (stryMutAct_9fa48("1746")) {} else {
          stryCov_9fa48("1746");
          return batches;
        }
      case stryMutAct_9fa48("1749") ? "" : (stryCov_9fa48("1749"), "PER_BATCH"):
        if (stryMutAct_9fa48("1748")) {} else {
          stryCov_9fa48("1748");
          return batchesBegun(batches);
        }
      case stryMutAct_9fa48("1751") ? "" : (stryCov_9fa48("1751"), "POWER"):
        if (stryMutAct_9fa48("1750")) {} else {
          stryCov_9fa48("1750");
          return (stryMutAct_9fa48("1755") ? batches <= 0 : stryMutAct_9fa48("1754") ? batches >= 0 : stryMutAct_9fa48("1753") ? false : stryMutAct_9fa48("1752") ? true : (stryCov_9fa48("1752", "1753", "1754", "1755"), batches > 0)) ? batches ** (stryMutAct_9fa48("1756") ? line.exponent && 1 : (stryCov_9fa48("1756"), line.exponent ?? 1)) : 0;
        }
      case stryMutAct_9fa48("1758") ? "" : (stryCov_9fa48("1758"), "TO_TASTE"):
        if (stryMutAct_9fa48("1757")) {} else {
          stryCov_9fa48("1757");
          return 0;
        }
    }
  }
}

/** What meals after a day take of a component directly; what goes into other components is used at the session. */
function takenAfter(plan: CompiledPlan, servings: number, component: number, day: number): number {
  if (stryMutAct_9fa48("1759")) {
    {}
  } else {
    stryCov_9fa48("1759");
    let sum = 0;
    for (const {
      meal,
      takes
    } of plan.meals) {
      if (stryMutAct_9fa48("1760")) {
        {}
      } else {
        stryCov_9fa48("1760");
        if (stryMutAct_9fa48("1764") ? meal.day > day : stryMutAct_9fa48("1763") ? meal.day < day : stryMutAct_9fa48("1762") ? false : stryMutAct_9fa48("1761") ? true : (stryCov_9fa48("1761", "1762", "1763", "1764"), meal.day <= day)) continue;
        for (const line of takes) {
          if (stryMutAct_9fa48("1765")) {
            {}
          } else {
            stryCov_9fa48("1765");
            if (stryMutAct_9fa48("1768") ? line.component !== component : stryMutAct_9fa48("1767") ? false : stryMutAct_9fa48("1766") ? true : (stryCov_9fa48("1766", "1767", "1768"), line.component === component)) stryMutAct_9fa48("1769") ? sum -= line.high * mealGrowth(line, servings / meal.serves) : (stryCov_9fa48("1769"), sum += stryMutAct_9fa48("1770") ? line.high / mealGrowth(line, servings / meal.serves) : (stryCov_9fa48("1770"), line.high * mealGrowth(line, stryMutAct_9fa48("1771") ? servings * meal.serves : (stryCov_9fa48("1771"), servings / meal.serves))));
          }
        }
      }
    }
    return sum;
  }
}

/**
 * Steps 1 and 2 of the computation: servings to demand on components, and demand to batches, users before what they
 * use. Everything is made for the upper end of a range.
 *
 * @param servings > 0, may be a fraction
 * @param stocks what there is already, by component index
 */
export function demandFor(plan: CompiledPlan, servings: number, stocks: ReadonlyMap<number, readonly Stock[]>): Demand {
  if (stryMutAct_9fa48("1772")) {
    {}
  } else {
    stryCov_9fa48("1772");
    const size = plan.components.length;
    const low = new Float64Array(size);
    const high = new Float64Array(size);
    const onHand = new Float64Array(size);
    const batches = new Float64Array(size);
    const loads = new Float64Array(size);
    const taken = new Map<number, readonly number[]>();
    for (const {
      meal,
      takes
    } of plan.meals) {
      if (stryMutAct_9fa48("1773")) {
        {}
      } else {
        stryCov_9fa48("1773");
        const factor = stryMutAct_9fa48("1774") ? servings * meal.serves : (stryCov_9fa48("1774"), servings / meal.serves);
        for (const line of takes) {
          if (stryMutAct_9fa48("1775")) {
            {}
          } else {
            stryCov_9fa48("1775");
            const growth = mealGrowth(line, factor);
            stryMutAct_9fa48("1776") ? low[line.component]! -= line.low * growth : (stryCov_9fa48("1776"), low[line.component]! += stryMutAct_9fa48("1777") ? line.low / growth : (stryCov_9fa48("1777"), line.low * growth));
            stryMutAct_9fa48("1778") ? high[line.component]! -= line.high * growth : (stryCov_9fa48("1778"), high[line.component]! += stryMutAct_9fa48("1779") ? line.high / growth : (stryCov_9fa48("1779"), line.high * growth));
          }
        }
      }
    }
    for (let at = stryMutAct_9fa48("1780") ? plan.makeOrder.length + 1 : (stryCov_9fa48("1780"), plan.makeOrder.length - 1); stryMutAct_9fa48("1783") ? at < 0 : stryMutAct_9fa48("1782") ? at > 0 : stryMutAct_9fa48("1781") ? false : (stryCov_9fa48("1781", "1782", "1783"), at >= 0); stryMutAct_9fa48("1784") ? at++ : (stryCov_9fa48("1784"), at--)) {
      if (stryMutAct_9fa48("1785")) {
        {}
      } else {
        stryCov_9fa48("1785");
        const index = plan.makeOrder[at]!;
        const {
          sizes,
          takes,
          yield: perBatch
        } = plan.components[index]!;
        const demand = high[index]!;
        const stock = stocks.get(index);
        if (stryMutAct_9fa48("1788") ? stock === undefined : stryMutAct_9fa48("1787") ? false : stryMutAct_9fa48("1786") ? true : (stryCov_9fa48("1786", "1787", "1788"), stock !== undefined)) {
          if (stryMutAct_9fa48("1789")) {
            {}
          } else {
            stryCov_9fa48("1789");
            const until = stryMutAct_9fa48("1790") ? () => undefined : (stryCov_9fa48("1790"), (() => {
              const until = (day: number): number => stryMutAct_9fa48("1791") ? demand + takenAfter(plan, servings, index, day) : (stryCov_9fa48("1791"), demand - takenAfter(plan, servings, index, day));
              return until;
            })());
            const shares = takeFromStock(demand, stock, until);
            taken.set(index, shares);
            onHand[index] = stryMutAct_9fa48("1792") ? Math.max(demand, shares.reduce((sum, each) => sum + each, 0)) : (stryCov_9fa48("1792"), Math.min(demand, shares.reduce(stryMutAct_9fa48("1793") ? () => undefined : (stryCov_9fa48("1793"), (sum, each) => stryMutAct_9fa48("1794") ? sum - each : (stryCov_9fa48("1794"), sum + each)), 0)));
          }
        }
        const made = batchesFor(stryMutAct_9fa48("1795") ? restOf(demand, onHand[index]!) * perBatch.low : (stryCov_9fa48("1795"), restOf(demand, onHand[index]!) / perBatch.low), sizes);
        batches[index] = made.made;
        loads[index] = made.loads;
        for (const line of takes) {
          if (stryMutAct_9fa48("1796")) {
            {}
          } else {
            stryCov_9fa48("1796");
            const growth = batchGrowth(line, made.made);
            stryMutAct_9fa48("1797") ? low[line.component]! -= line.low * growth : (stryCov_9fa48("1797"), low[line.component]! += stryMutAct_9fa48("1798") ? line.low / growth : (stryCov_9fa48("1798"), line.low * growth));
            stryMutAct_9fa48("1799") ? high[line.component]! -= line.high * growth : (stryCov_9fa48("1799"), high[line.component]! += stryMutAct_9fa48("1800") ? line.high / growth : (stryCov_9fa48("1800"), line.high * growth));
          }
        }
      }
    }
    return stryMutAct_9fa48("1801") ? {} : (stryCov_9fa48("1801"), {
      low,
      high,
      onHand,
      taken,
      batches,
      loads
    });
  }
}