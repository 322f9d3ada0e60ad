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
import type { Food } from "../model/food.js";

/** Grams of another food that one gram of this one turns into; the writer's number beats a table's. null: nobody says. */
export function foodYield(food: Food, into: string): number | null {
  if (stryMutAct_9fa48("208")) {
    {}
  } else {
    stryCov_9fa48("208");
    const rows = stryMutAct_9fa48("209") ? food.yields : (stryCov_9fa48("209"), food.yields.filter(stryMutAct_9fa48("210") ? () => undefined : (stryCov_9fa48("210"), row => stryMutAct_9fa48("213") ? row.food === into || row.gramsPerGram > 0 : stryMutAct_9fa48("212") ? false : stryMutAct_9fa48("211") ? true : (stryCov_9fa48("211", "212", "213"), (stryMutAct_9fa48("215") ? row.food !== into : stryMutAct_9fa48("214") ? true : (stryCov_9fa48("214", "215"), row.food === into)) && (stryMutAct_9fa48("218") ? row.gramsPerGram <= 0 : stryMutAct_9fa48("217") ? row.gramsPerGram >= 0 : stryMutAct_9fa48("216") ? true : (stryCov_9fa48("216", "217", "218"), row.gramsPerGram > 0))))));
    return stryMutAct_9fa48("219") ? (rows.find(({
      source
    }) => source.kind === "WRITER") ?? rows[0])?.gramsPerGram && null : (stryCov_9fa48("219"), (stryMutAct_9fa48("220") ? (rows.find(({
      source
    }) => source.kind === "WRITER") ?? rows[0]).gramsPerGram : (stryCov_9fa48("220"), (stryMutAct_9fa48("221") ? rows.find(({
      source
    }) => source.kind === "WRITER") && rows[0] : (stryCov_9fa48("221"), rows.find(stryMutAct_9fa48("222") ? () => undefined : (stryCov_9fa48("222"), ({
      source
    }) => stryMutAct_9fa48("225") ? source.kind !== "WRITER" : stryMutAct_9fa48("224") ? false : stryMutAct_9fa48("223") ? true : (stryCov_9fa48("223", "224", "225"), source.kind === (stryMutAct_9fa48("226") ? "" : (stryCov_9fa48("226"), "WRITER"))))) ?? rows[0]))?.gramsPerGram)) ?? null);
  }
}