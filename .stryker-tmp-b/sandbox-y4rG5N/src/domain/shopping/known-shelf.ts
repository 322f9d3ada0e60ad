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
import type { Dimension } from "../model/amount.js";
import type { Food } from "../model/food.js";
import { packShelf, type PackShelf, type Shop } from "./pack-options.js";

/** Shops remembered for one food; readers come from many places, foods live long. */
export const keptPerFood = 16;
const shelves = new WeakMap<Food, Map<string, PackShelf>>();

/** `packShelf`, remembered as long as the food lives: a list asks for the same few shelves at every number of servings. */
export function knownShelf(food: Food, dimension: Dimension, shop: Shop): PackShelf {
  if (stryMutAct_9fa48("63")) {
    {}
  } else {
    stryCov_9fa48("63");
    const kept = stryMutAct_9fa48("64") ? shelves.get(food) && new Map<string, PackShelf>() : (stryCov_9fa48("64"), shelves.get(food) ?? new Map<string, PackShelf>());
    shelves.set(food, kept);
    const key = stryMutAct_9fa48("65") ? `` : (stryCov_9fa48("65"), `${dimension} ${stryMutAct_9fa48("66") ? shop.region && "" : (stryCov_9fa48("66"), shop.region ?? (stryMutAct_9fa48("67") ? "Stryker was here!" : (stryCov_9fa48("67"), "")))} ${stryMutAct_9fa48("68") ? shop.currency && "" : (stryCov_9fa48("68"), shop.currency ?? (stryMutAct_9fa48("69") ? "Stryker was here!" : (stryCov_9fa48("69"), "")))}`);
    const known = kept.get(key);
    if (stryMutAct_9fa48("72") ? known === undefined : stryMutAct_9fa48("71") ? false : stryMutAct_9fa48("70") ? true : (stryCov_9fa48("70", "71", "72"), known !== undefined)) return known;
    if (stryMutAct_9fa48("76") ? kept.size < keptPerFood : stryMutAct_9fa48("75") ? kept.size > keptPerFood : stryMutAct_9fa48("74") ? false : stryMutAct_9fa48("73") ? true : (stryCov_9fa48("73", "74", "75", "76"), kept.size >= keptPerFood)) kept.clear();
    const shelf = packShelf(food, dimension, shop);
    kept.set(key, shelf);
    return shelf;
  }
}