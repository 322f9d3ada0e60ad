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
import type { PlanBundle } from "../model/plan.js";
import type { LineContext } from "./compile-line.js";
const known = new WeakMap<PlanBundle, LineContext>();

/** Look-up of a bundle's foods and components by slug; remembered as long as the bundle lives. */
export function lineContext(bundle: PlanBundle): LineContext {
  if (stryMutAct_9fa48("2108")) {
    {}
  } else {
    stryCov_9fa48("2108");
    const found = known.get(bundle);
    if (stryMutAct_9fa48("2111") ? found === undefined : stryMutAct_9fa48("2110") ? false : stryMutAct_9fa48("2109") ? true : (stryCov_9fa48("2109", "2110", "2111"), found !== undefined)) return found;
    const context: LineContext = stryMutAct_9fa48("2112") ? {} : (stryCov_9fa48("2112"), {
      foods: new Map(bundle.foods.map(stryMutAct_9fa48("2113") ? () => undefined : (stryCov_9fa48("2113"), food => stryMutAct_9fa48("2114") ? [] : (stryCov_9fa48("2114"), [food.slug, food])))),
      components: new Map(bundle.components.map(stryMutAct_9fa48("2115") ? () => undefined : (stryCov_9fa48("2115"), (component, index) => stryMutAct_9fa48("2116") ? [] : (stryCov_9fa48("2116"), [component.slug, stryMutAct_9fa48("2117") ? {} : (stryCov_9fa48("2117"), {
        component,
        index
      })]))))
    });
    known.set(bundle, context);
    return context;
  }
}