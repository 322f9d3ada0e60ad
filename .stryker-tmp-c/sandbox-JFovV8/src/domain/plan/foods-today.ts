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
import type { Food, FoodPart } from "../model/food.js";
import { asStated, type DietJudge } from "../nutrition/diets.js";
import { partKeeps } from "../storage/part-keeping.js";

/**
 * The catalogue as it is now, beside what a revision froze: a synonym found later joins lines of old plans, and today's
 * packs and prices are those one buys at.
 */
export interface FoodsToday {
  /** The slug under which this food is shopped: its own, or that of the food it was found to be the same as. */
  readonly canonical: (slug: string) => string;
  readonly bySlug: ReadonlyMap<string, Food>;
  /** Whether a food fits a diet by the rules of the reader's region. The same function for the same rules: plans are kept compiled by it. */
  readonly fitsDiet: DietJudge;
  /** Whole days a part keeps once its piece is cut, also by the published rules of today; null where nobody says. */
  readonly partKeeps: (part: FoodPart) => number | null;
}
const writersWord = stryMutAct_9fa48("2062") ? {} : (stryCov_9fa48("2062"), {
  rules: stryMutAct_9fa48("2063") ? ["Stryker was here"] : (stryCov_9fa48("2063"), []),
  region: null,
  today: stryMutAct_9fa48("2064") ? "" : (stryCov_9fa48("2064"), "1970-01-01"),
  session: null
});

/** Nothing newer is known than what the plans froze. */
export const asFrozen: FoodsToday = stryMutAct_9fa48("2065") ? {} : (stryCov_9fa48("2065"), {
  canonical: stryMutAct_9fa48("2066") ? () => undefined : (stryCov_9fa48("2066"), slug => slug),
  bySlug: new Map(),
  fitsDiet: asStated,
  partKeeps: stryMutAct_9fa48("2067") ? () => undefined : (stryCov_9fa48("2067"), part => partKeeps(part, writersWord))
});