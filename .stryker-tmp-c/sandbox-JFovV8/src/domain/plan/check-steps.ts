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
import { limits } from "../limits.js";
import type { Step } from "../model/component.js";
import type { Path, Problem } from "../problem.js";
import { checkCount, checkNumber, checkRational, checkText, checkUnique } from "./check-text.js";
const minutes = stryMutAct_9fa48("876") ? {} : (stryCov_9fa48("876"), {
  min: 0,
  max: limits.minutes
});

/** Steps of one component, route or meal: what a schedule is computed from. Their order is the session's own concern. */
export function checkSteps(steps: readonly Step[], path: Path): Problem[] {
  if (stryMutAct_9fa48("877")) {
    {}
  } else {
    stryCov_9fa48("877");
    return stryMutAct_9fa48("878") ? [] : (stryCov_9fa48("878"), [...checkUnique(steps.map(stryMutAct_9fa48("879") ? () => undefined : (stryCov_9fa48("879"), ({
      id
    }) => id)), stryMutAct_9fa48("880") ? () => undefined : (stryCov_9fa48("880"), id => stryMutAct_9fa48("881") ? [] : (stryCov_9fa48("881"), [...path, stryMutAct_9fa48("882") ? "" : (stryCov_9fa48("882"), "steps"), id]))), ...steps.flatMap(step => {
      if (stryMutAct_9fa48("883")) {
        {}
      } else {
        stryCov_9fa48("883");
        const at = stryMutAct_9fa48("884") ? [] : (stryCov_9fa48("884"), [...path, stryMutAct_9fa48("885") ? "" : (stryCov_9fa48("885"), "steps"), step.id]);
        return stryMutAct_9fa48("886") ? [] : (stryCov_9fa48("886"), [...checkText(step.id, stryMutAct_9fa48("887") ? "" : (stryCov_9fa48("887"), "an id"), at), ...checkCount(step.text.length, limits.text, stryMutAct_9fa48("888") ? "" : (stryCov_9fa48("888"), "characters of a step"), at), ...checkNumber(step.minutes, stryMutAct_9fa48("889") ? [] : (stryCov_9fa48("889"), [...at, stryMutAct_9fa48("890") ? "" : (stryCov_9fa48("890"), "minutes")]), minutes), ...checkNumber(step.minWait, stryMutAct_9fa48("891") ? [] : (stryCov_9fa48("891"), [...at, stryMutAct_9fa48("892") ? "" : (stryCov_9fa48("892"), "minWait")]), minutes), ...((stryMutAct_9fa48("895") ? step.maxWait !== null : stryMutAct_9fa48("894") ? false : stryMutAct_9fa48("893") ? true : (stryCov_9fa48("893", "894", "895"), step.maxWait === null)) ? stryMutAct_9fa48("896") ? ["Stryker was here"] : (stryCov_9fa48("896"), []) : checkNumber(step.maxWait, stryMutAct_9fa48("897") ? [] : (stryCov_9fa48("897"), [...at, stryMutAct_9fa48("898") ? "" : (stryCov_9fa48("898"), "maxWait")]), minutes)), ...((stryMutAct_9fa48("901") ? step.loadBatches !== null : stryMutAct_9fa48("900") ? false : stryMutAct_9fa48("899") ? true : (stryCov_9fa48("899", "900", "901"), step.loadBatches === null)) ? stryMutAct_9fa48("902") ? ["Stryker was here"] : (stryCov_9fa48("902"), []) : checkRational(step.loadBatches, stryMutAct_9fa48("903") ? [] : (stryCov_9fa48("903"), [...at, stryMutAct_9fa48("904") ? "" : (stryCov_9fa48("904"), "loadBatches")]), stryMutAct_9fa48("905") ? {} : (stryCov_9fa48("905"), {
          min: 1e-3,
          max: limits.batches
        })))]);
      }
    })]);
  }
}