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
import type { Step } from "../model/component.js";
import type { Path } from "../problem.js";
import type { Finding } from "./finding.js";

/** Appliance codes that have to be hot before something goes in. */
const ovens: ReadonlySet<string> = new Set(stryMutAct_9fa48("655") ? [] : (stryCov_9fa48("655"), [stryMutAct_9fa48("656") ? "" : (stryCov_9fa48("656"), "oven"), stryMutAct_9fa48("657") ? "" : (stryCov_9fa48("657"), "oven-shelf")]));

/** Steps that come before one, directly or through others. */
function before(step: Step, steps: readonly Step[]): readonly Step[] {
  if (stryMutAct_9fa48("658")) {
    {}
  } else {
    stryCov_9fa48("658");
    const byId = new Map(steps.map(stryMutAct_9fa48("659") ? () => undefined : (stryCov_9fa48("659"), each => stryMutAct_9fa48("660") ? [] : (stryCov_9fa48("660"), [each.id, each]))));
    const found = new Set<Step>();
    const open = stryMutAct_9fa48("661") ? [] : (stryCov_9fa48("661"), [...step.after]);
    for (let id = open.pop(); stryMutAct_9fa48("663") ? id === undefined : stryMutAct_9fa48("662") ? false : (stryCov_9fa48("662", "663"), id !== undefined); id = open.pop()) {
      if (stryMutAct_9fa48("664")) {
        {}
      } else {
        stryCov_9fa48("664");
        const earlier = byId.get(id);
        if (stryMutAct_9fa48("667") ? earlier === undefined && found.has(earlier) : stryMutAct_9fa48("666") ? false : stryMutAct_9fa48("665") ? true : (stryCov_9fa48("665", "666", "667"), (stryMutAct_9fa48("669") ? earlier !== undefined : stryMutAct_9fa48("668") ? false : (stryCov_9fa48("668", "669"), earlier === undefined)) || found.has(earlier))) continue;
        found.add(earlier);
        open.push(...earlier.after);
      }
    }
    return stryMutAct_9fa48("670") ? [] : (stryCov_9fa48("670"), [...found]);
  }
}

/**
 * Baking needs a temperature, and an oven that was lit in time: a step before it in the same oven that uses no line of
 * food. One component's preheating serves every other that bakes at the same temperature.
 *
 * @param preheated temperatures that some other component's steps preheat to
 */
export function checkOvens(steps: readonly Step[], component: string, path: Path, preheated: ReadonlySet<number>): readonly Finding[] {
  if (stryMutAct_9fa48("671")) {
    {}
  } else {
    stryCov_9fa48("671");
    return steps.flatMap((step): Finding[] => {
      if (stryMutAct_9fa48("672")) {
        {}
      } else {
        stryCov_9fa48("672");
        if (stryMutAct_9fa48("675") ? (step.appliance === null || !ovens.has(step.appliance)) && isPreheating(step) : stryMutAct_9fa48("674") ? false : stryMutAct_9fa48("673") ? true : (stryCov_9fa48("673", "674", "675"), (stryMutAct_9fa48("677") ? step.appliance === null && !ovens.has(step.appliance) : stryMutAct_9fa48("676") ? false : (stryCov_9fa48("676", "677"), (stryMutAct_9fa48("679") ? step.appliance !== null : stryMutAct_9fa48("678") ? false : (stryCov_9fa48("678", "679"), step.appliance === null)) || (stryMutAct_9fa48("680") ? ovens.has(step.appliance) : (stryCov_9fa48("680"), !ovens.has(step.appliance))))) || isPreheating(step))) return stryMutAct_9fa48("681") ? ["Stryker was here"] : (stryCov_9fa48("681"), []);
        const at = stryMutAct_9fa48("682") ? [] : (stryCov_9fa48("682"), [...path, stryMutAct_9fa48("683") ? "" : (stryCov_9fa48("683"), "steps"), step.id]);
        if (stryMutAct_9fa48("686") ? step.temperatureC !== null : stryMutAct_9fa48("685") ? false : stryMutAct_9fa48("684") ? true : (stryCov_9fa48("684", "685", "686"), step.temperatureC === null)) {
          if (stryMutAct_9fa48("687")) {
            {}
          } else {
            stryCov_9fa48("687");
            return stryMutAct_9fa48("688") ? [] : (stryCov_9fa48("688"), [stryMutAct_9fa48("689") ? {} : (stryCov_9fa48("689"), {
              code: stryMutAct_9fa48("690") ? "" : (stryCov_9fa48("690"), "OVEN_WITHOUT_TEMPERATURE"),
              severity: stryMutAct_9fa48("691") ? "" : (stryCov_9fa48("691"), "LOOK"),
              path: at,
              component,
              step: step.id
            })]);
          }
        }
        const {
          temperatureC
        } = step;
        const lit = stryMutAct_9fa48("692") ? before(step, steps).every(each => isPreheating(each) && each.temperatureC === temperatureC) : (stryCov_9fa48("692"), before(step, steps).some(stryMutAct_9fa48("693") ? () => undefined : (stryCov_9fa48("693"), each => stryMutAct_9fa48("696") ? isPreheating(each) || each.temperatureC === temperatureC : stryMutAct_9fa48("695") ? false : stryMutAct_9fa48("694") ? true : (stryCov_9fa48("694", "695", "696"), isPreheating(each) && (stryMutAct_9fa48("698") ? each.temperatureC !== temperatureC : stryMutAct_9fa48("697") ? true : (stryCov_9fa48("697", "698"), each.temperatureC === temperatureC))))));
        if (stryMutAct_9fa48("701") ? lit && preheated.has(temperatureC) : stryMutAct_9fa48("700") ? false : stryMutAct_9fa48("699") ? true : (stryCov_9fa48("699", "700", "701"), lit || preheated.has(temperatureC))) return stryMutAct_9fa48("702") ? ["Stryker was here"] : (stryCov_9fa48("702"), []);
        return stryMutAct_9fa48("703") ? [] : (stryCov_9fa48("703"), [stryMutAct_9fa48("704") ? {} : (stryCov_9fa48("704"), {
          code: stryMutAct_9fa48("705") ? "" : (stryCov_9fa48("705"), "OVEN_NOT_PREHEATED"),
          severity: stryMutAct_9fa48("706") ? "" : (stryCov_9fa48("706"), "LOOK"),
          path: at,
          component,
          step: step.id,
          temperatureC
        })]);
      }
    });
  }
}

/** Heating an oven with nothing in it. */
export const isPreheating = stryMutAct_9fa48("707") ? () => undefined : (stryCov_9fa48("707"), (() => {
  const isPreheating = (step: Step): boolean => stryMutAct_9fa48("710") ? step.appliance !== null && ovens.has(step.appliance) && step.lines.length === 0 && step.attention === "UNATTENDED" || step.after.length === 0 : stryMutAct_9fa48("709") ? false : stryMutAct_9fa48("708") ? true : (stryCov_9fa48("708", "709", "710"), (stryMutAct_9fa48("712") ? step.appliance !== null && ovens.has(step.appliance) && step.lines.length === 0 || step.attention === "UNATTENDED" : stryMutAct_9fa48("711") ? true : (stryCov_9fa48("711", "712"), (stryMutAct_9fa48("714") ? step.appliance !== null && ovens.has(step.appliance) || step.lines.length === 0 : stryMutAct_9fa48("713") ? true : (stryCov_9fa48("713", "714"), (stryMutAct_9fa48("716") ? step.appliance !== null || ovens.has(step.appliance) : stryMutAct_9fa48("715") ? true : (stryCov_9fa48("715", "716"), (stryMutAct_9fa48("718") ? step.appliance === null : stryMutAct_9fa48("717") ? true : (stryCov_9fa48("717", "718"), step.appliance !== null)) && ovens.has(step.appliance))) && (stryMutAct_9fa48("720") ? step.lines.length !== 0 : stryMutAct_9fa48("719") ? true : (stryCov_9fa48("719", "720"), step.lines.length === 0)))) && (stryMutAct_9fa48("722") ? step.attention !== "UNATTENDED" : stryMutAct_9fa48("721") ? true : (stryCov_9fa48("721", "722"), step.attention === (stryMutAct_9fa48("723") ? "" : (stryCov_9fa48("723"), "UNATTENDED")))))) && (stryMutAct_9fa48("725") ? step.after.length !== 0 : stryMutAct_9fa48("724") ? true : (stryCov_9fa48("724", "725"), step.after.length === 0)));
  return isPreheating;
})());