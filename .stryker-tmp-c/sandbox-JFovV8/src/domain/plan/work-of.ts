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
import { loadsOf, stepMinutes } from "../prep-session/task.js";
import type { Score } from "./choose-routes.js";
import type { ScaledPlan } from "./scaled.js";

/** Minutes of work with the hands, then minutes in all, over everything that is made, as a session would count them. */
export function workOf({
  components
}: Pick<ScaledPlan, "components">): Score {
  if (stryMutAct_9fa48("2755")) {
    {}
  } else {
    stryCov_9fa48("2755");
    let [handsOn, all] = stryMutAct_9fa48("2756") ? [] : (stryCov_9fa48("2756"), [0, 0]);
    for (const {
      component,
      route,
      batches,
      loads
    } of components) {
      if (stryMutAct_9fa48("2757")) {
        {}
      } else {
        stryCov_9fa48("2757");
        if (stryMutAct_9fa48("2760") ? batches !== 0 : stryMutAct_9fa48("2759") ? false : stryMutAct_9fa48("2758") ? true : (stryCov_9fa48("2758", "2759", "2760"), batches === 0)) continue;
        for (const step of stryMutAct_9fa48("2761") ? route?.steps && component.steps : (stryCov_9fa48("2761"), (stryMutAct_9fa48("2762") ? route.steps : (stryCov_9fa48("2762"), route?.steps)) ?? component.steps)) {
          if (stryMutAct_9fa48("2763")) {
            {}
          } else {
            stryCov_9fa48("2763");
            const minutes = stryMutAct_9fa48("2764") ? stepMinutes(step, batches) / loadsOf(step, {
              batches,
              loads
            }) : (stryCov_9fa48("2764"), stepMinutes(step, batches) * loadsOf(step, stryMutAct_9fa48("2765") ? {} : (stryCov_9fa48("2765"), {
              batches,
              loads
            })));
            stryMutAct_9fa48("2766") ? all -= minutes : (stryCov_9fa48("2766"), all += minutes);
            if (stryMutAct_9fa48("2769") ? step.attention !== "HANDS_ON" : stryMutAct_9fa48("2768") ? false : stryMutAct_9fa48("2767") ? true : (stryCov_9fa48("2767", "2768", "2769"), step.attention === (stryMutAct_9fa48("2770") ? "" : (stryCov_9fa48("2770"), "HANDS_ON")))) stryMutAct_9fa48("2771") ? handsOn -= minutes : (stryCov_9fa48("2771"), handsOn += minutes);
          }
        }
      }
    }
    return stryMutAct_9fa48("2772") ? [] : (stryCov_9fa48("2772"), [handsOn, all]);
  }
}