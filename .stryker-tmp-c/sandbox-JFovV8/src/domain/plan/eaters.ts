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
import type { Household } from "../model/household.js";
import { toNumber } from "../quantity/rational.js";

/** Servings in amounts of food: two adults and a child who eats half are three people and 2.5 servings. */
export function effectiveServings(servings: number, {
  eaters
}: Household): number {
  if (stryMutAct_9fa48("1923")) {
    {}
  } else {
    stryCov_9fa48("1923");
    if (stryMutAct_9fa48("1926") ? eaters !== null : stryMutAct_9fa48("1925") ? false : stryMutAct_9fa48("1924") ? true : (stryCov_9fa48("1924", "1925", "1926"), eaters === null)) return servings;
    return eaters.reduce(stryMutAct_9fa48("1927") ? () => undefined : (stryCov_9fa48("1927"), (sum, {
      count,
      portion
    }) => stryMutAct_9fa48("1928") ? sum - count * toNumber(portion) : (stryCov_9fa48("1928"), sum + (stryMutAct_9fa48("1929") ? count / toNumber(portion) : (stryCov_9fa48("1929"), count * toNumber(portion))))), 0);
  }
}