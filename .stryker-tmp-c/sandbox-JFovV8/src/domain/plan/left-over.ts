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
import { limits, sameShare } from "../limits.js";
import type { Stock } from "../shopping/on-hand.js";
import type { CompiledPlan } from "./compiled-plan.js";
import { demandFor, type Demand } from "./demand.js";

/**
 * For each of some components, how many more servings of the plan its left-over would still feed, nothing more of it being
 * made: the largest k for which servings + k needs no more batches. Found by bisection, since more servings never need
 * fewer, and for all of them together: one demand answers for every component. null where not even one more fits, or
 * where no number of servings ever needs more.
 *
 * @param made the demand at `servings`
 * @param components by index in the compiled plan
 */
export function servingsMore(plan: CompiledPlan, servings: number, stocks: ReadonlyMap<number, readonly Stock[]>, made: Demand, components: readonly number[]): ReadonlyMap<number, number | null> {
  if (stryMutAct_9fa48("2068")) {
    {}
  } else {
    stryCov_9fa48("2068");
    const answers = new Map<number, number | null>(components.map(stryMutAct_9fa48("2069") ? () => undefined : (stryCov_9fa48("2069"), index => stryMutAct_9fa48("2070") ? [] : (stryCov_9fa48("2070"), [index, null]))));
    const split = (more: number, open: readonly number[]): {
      fit: number[];
      beyond: number[];
    } => {
      if (stryMutAct_9fa48("2071")) {
        {}
      } else {
        stryCov_9fa48("2071");
        const {
          batches
        } = demandFor(plan, stryMutAct_9fa48("2072") ? servings - more : (stryCov_9fa48("2072"), servings + more), stocks);
        const fit: number[] = stryMutAct_9fa48("2073") ? ["Stryker was here"] : (stryCov_9fa48("2073"), []);
        const beyond: number[] = stryMutAct_9fa48("2074") ? ["Stryker was here"] : (stryCov_9fa48("2074"), []);
        for (const index of open) {
          if (stryMutAct_9fa48("2075")) {
            {}
          } else {
            stryCov_9fa48("2075");
            ((stryMutAct_9fa48("2079") ? batches[index]! > made.batches[index]! * (1 + sameShare) : stryMutAct_9fa48("2078") ? batches[index]! < made.batches[index]! * (1 + sameShare) : stryMutAct_9fa48("2077") ? false : stryMutAct_9fa48("2076") ? true : (stryCov_9fa48("2076", "2077", "2078", "2079"), batches[index]! <= (stryMutAct_9fa48("2080") ? made.batches[index]! / (1 + sameShare) : (stryCov_9fa48("2080"), made.batches[index]! * (stryMutAct_9fa48("2081") ? 1 - sameShare : (stryCov_9fa48("2081"), 1 + sameShare)))))) ? fit : beyond).push(index);
          }
        }
        return stryMutAct_9fa48("2082") ? {} : (stryCov_9fa48("2082"), {
          fit,
          beyond
        });
      }
    };
    /** `low` more fit for all of these, `high` more for none. */
    const narrow = (low: number, high: number, open: readonly number[]): void => {
      if (stryMutAct_9fa48("2083")) {
        {}
      } else {
        stryCov_9fa48("2083");
        if (stryMutAct_9fa48("2086") ? open.length !== 0 : stryMutAct_9fa48("2085") ? false : stryMutAct_9fa48("2084") ? true : (stryCov_9fa48("2084", "2085", "2086"), open.length === 0)) return;
        if (stryMutAct_9fa48("2090") ? high - low > 1 : stryMutAct_9fa48("2089") ? high - low < 1 : stryMutAct_9fa48("2088") ? false : stryMutAct_9fa48("2087") ? true : (stryCov_9fa48("2087", "2088", "2089", "2090"), (stryMutAct_9fa48("2091") ? high + low : (stryCov_9fa48("2091"), high - low)) <= 1)) {
          if (stryMutAct_9fa48("2092")) {
            {}
          } else {
            stryCov_9fa48("2092");
            for (const index of open) answers.set(index, low);
            return;
          }
        }
        const middle = Math.floor(stryMutAct_9fa48("2093") ? (low + high) * 2 : (stryCov_9fa48("2093"), (stryMutAct_9fa48("2094") ? low - high : (stryCov_9fa48("2094"), low + high)) / 2));
        const {
          fit,
          beyond
        } = split(middle, open);
        narrow(low, middle, beyond);
        narrow(middle, high, fit);
      }
    };
    let {
      fit
    } = split(1, components);
    for (let low = 1; stryMutAct_9fa48("2096") ? fit.length > 0 || 2 * low <= limits.servings : stryMutAct_9fa48("2095") ? false : (stryCov_9fa48("2095", "2096"), (stryMutAct_9fa48("2099") ? fit.length <= 0 : stryMutAct_9fa48("2098") ? fit.length >= 0 : stryMutAct_9fa48("2097") ? true : (stryCov_9fa48("2097", "2098", "2099"), fit.length > 0)) && (stryMutAct_9fa48("2102") ? 2 * low > limits.servings : stryMutAct_9fa48("2101") ? 2 * low < limits.servings : stryMutAct_9fa48("2100") ? true : (stryCov_9fa48("2100", "2101", "2102"), (stryMutAct_9fa48("2103") ? 2 / low : (stryCov_9fa48("2103"), 2 * low)) <= limits.servings))); stryMutAct_9fa48("2104") ? low /= 2 : (stryCov_9fa48("2104"), low *= 2)) {
      if (stryMutAct_9fa48("2105")) {
        {}
      } else {
        stryCov_9fa48("2105");
        const doubled = split(stryMutAct_9fa48("2106") ? 2 / low : (stryCov_9fa48("2106"), 2 * low), fit);
        narrow(low, stryMutAct_9fa48("2107") ? 2 / low : (stryCov_9fa48("2107"), 2 * low), doubled.beyond);
        fit = doubled.fit;
      }
    }
    return answers;
  }
}