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

/**
 * Share of the food as bought that is left when it is prepared in this form; the usual trimming where the form has none
 * of its own. The writer's number beats a table's. null: nobody says.
 */
export function edibleShare(food: Food, form: string | null): number | null {
  if (stryMutAct_9fa48("182")) {
    {}
  } else {
    stryCov_9fa48("182");
    const of = (wanted: string | null): number | null => {
      if (stryMutAct_9fa48("183")) {
        {}
      } else {
        stryCov_9fa48("183");
        const rows = stryMutAct_9fa48("184") ? food.edible : (stryCov_9fa48("184"), food.edible.filter(stryMutAct_9fa48("185") ? () => undefined : (stryCov_9fa48("185"), row => stryMutAct_9fa48("188") ? row.form === wanted && row.share > 0 || row.share <= 1 : stryMutAct_9fa48("187") ? false : stryMutAct_9fa48("186") ? true : (stryCov_9fa48("186", "187", "188"), (stryMutAct_9fa48("190") ? row.form === wanted || row.share > 0 : stryMutAct_9fa48("189") ? true : (stryCov_9fa48("189", "190"), (stryMutAct_9fa48("192") ? row.form !== wanted : stryMutAct_9fa48("191") ? true : (stryCov_9fa48("191", "192"), row.form === wanted)) && (stryMutAct_9fa48("195") ? row.share <= 0 : stryMutAct_9fa48("194") ? row.share >= 0 : stryMutAct_9fa48("193") ? true : (stryCov_9fa48("193", "194", "195"), row.share > 0)))) && (stryMutAct_9fa48("198") ? row.share > 1 : stryMutAct_9fa48("197") ? row.share < 1 : stryMutAct_9fa48("196") ? true : (stryCov_9fa48("196", "197", "198"), row.share <= 1))))));
        return stryMutAct_9fa48("199") ? (rows.find(({
          source
        }) => source.kind === "WRITER") ?? rows[0])?.share && null : (stryCov_9fa48("199"), (stryMutAct_9fa48("200") ? (rows.find(({
          source
        }) => source.kind === "WRITER") ?? rows[0]).share : (stryCov_9fa48("200"), (stryMutAct_9fa48("201") ? rows.find(({
          source
        }) => source.kind === "WRITER") && rows[0] : (stryCov_9fa48("201"), rows.find(stryMutAct_9fa48("202") ? () => undefined : (stryCov_9fa48("202"), ({
          source
        }) => stryMutAct_9fa48("205") ? source.kind !== "WRITER" : stryMutAct_9fa48("204") ? false : stryMutAct_9fa48("203") ? true : (stryCov_9fa48("203", "204", "205"), source.kind === (stryMutAct_9fa48("206") ? "" : (stryCov_9fa48("206"), "WRITER"))))) ?? rows[0]))?.share)) ?? null);
      }
    };
    return stryMutAct_9fa48("207") ? of(form) && of(null) : (stryCov_9fa48("207"), of(form) ?? of(null));
  }
}