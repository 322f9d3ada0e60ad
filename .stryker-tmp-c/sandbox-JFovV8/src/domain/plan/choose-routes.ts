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
import type { Component, Route } from "../model/component.js";
import type { Household } from "../model/household.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Problem, type Result } from "../problem.js";
import type { DietJudge } from "../nutrition/diets.js";
import { checkBundle } from "./check-bundle.js";
import { compilePlan, type RouteChoice } from "./compile-plan.js";
import type { CompiledPlan } from "./compiled-plan.js";

/** Smaller is better, first number first. */
export type Score = readonly number[];

/** Up to so many combinations of routes are all tried; beyond, one component at a time is improved until none can be. */
const mostCombinations = 64;

/** The name under which a reader asks for a component as its writer made it. */
export const asWrittenName = stryMutAct_9fa48("991") ? "" : (stryCov_9fa48("991"), "as-written");
function named(bundle: PlanBundle, household: Household): Result<ReadonlyMap<string, Route | null>> {
  if (stryMutAct_9fa48("992")) {
    {}
  } else {
    stryCov_9fa48("992");
    const problems: Problem[] = stryMutAct_9fa48("993") ? ["Stryker was here"] : (stryCov_9fa48("993"), []);
    const fixed = new Map<string, Route | null>();
    household.routes.byName.forEach(({
      component: slug,
      route: name
    }, at) => {
      if (stryMutAct_9fa48("994")) {
        {}
      } else {
        stryCov_9fa48("994");
        const component = bundle.components.find(stryMutAct_9fa48("995") ? () => undefined : (stryCov_9fa48("995"), each => stryMutAct_9fa48("998") ? each.slug !== slug : stryMutAct_9fa48("997") ? false : stryMutAct_9fa48("996") ? true : (stryCov_9fa48("996", "997", "998"), each.slug === slug)));
        // A list over several plans names components of all of them; another plan's are no mistake here.
        if (stryMutAct_9fa48("1001") ? component !== undefined : stryMutAct_9fa48("1000") ? false : stryMutAct_9fa48("999") ? true : (stryCov_9fa48("999", "1000", "1001"), component === undefined)) return;
        const route = component.routes.find(stryMutAct_9fa48("1002") ? () => undefined : (stryCov_9fa48("1002"), each => stryMutAct_9fa48("1005") ? each.name !== name : stryMutAct_9fa48("1004") ? false : stryMutAct_9fa48("1003") ? true : (stryCov_9fa48("1003", "1004", "1005"), each.name === name)));
        if (stryMutAct_9fa48("1008") ? route !== undefined && name === asWrittenName : stryMutAct_9fa48("1007") ? false : stryMutAct_9fa48("1006") ? true : (stryCov_9fa48("1006", "1007", "1008"), (stryMutAct_9fa48("1010") ? route === undefined : stryMutAct_9fa48("1009") ? false : (stryCov_9fa48("1009", "1010"), route !== undefined)) || (stryMutAct_9fa48("1012") ? name !== asWrittenName : stryMutAct_9fa48("1011") ? false : (stryCov_9fa48("1011", "1012"), name === asWrittenName)))) fixed.set(slug, stryMutAct_9fa48("1013") ? route && null : (stryCov_9fa48("1013"), route ?? null));else {
          if (stryMutAct_9fa48("1014")) {
            {}
          } else {
            stryCov_9fa48("1014");
            const known = stryMutAct_9fa48("1015") ? [] : (stryCov_9fa48("1015"), [asWrittenName, ...component.routes.map(stryMutAct_9fa48("1016") ? () => undefined : (stryCov_9fa48("1016"), each => each.name))]);
            problems.push(stryMutAct_9fa48("1017") ? {} : (stryCov_9fa48("1017"), {
              code: stryMutAct_9fa48("1018") ? "" : (stryCov_9fa48("1018"), "UNKNOWN_ROUTE"),
              path: stryMutAct_9fa48("1019") ? [] : (stryCov_9fa48("1019"), [stryMutAct_9fa48("1020") ? "" : (stryCov_9fa48("1020"), "household"), stryMutAct_9fa48("1021") ? "" : (stryCov_9fa48("1021"), "routes"), at]),
              component: slug,
              route: name,
              known
            }));
          }
        }
      }
    });
    return (stryMutAct_9fa48("1025") ? problems.length <= 0 : stryMutAct_9fa48("1024") ? problems.length >= 0 : stryMutAct_9fa48("1023") ? false : stryMutAct_9fa48("1022") ? true : (stryCov_9fa48("1022", "1023", "1024", "1025"), problems.length > 0)) ? failed(problems) : ok(fixed);
  }
}
const choiceOf = stryMutAct_9fa48("1026") ? () => undefined : (stryCov_9fa48("1026"), (() => {
  const choiceOf = (routes: ReadonlyMap<string, Route | null>): RouteChoice => new Map((stryMutAct_9fa48("1027") ? [] : (stryCov_9fa48("1027"), [...routes])).flatMap(stryMutAct_9fa48("1028") ? () => undefined : (stryCov_9fa48("1028"), ([slug, route]) => (stryMutAct_9fa48("1031") ? route !== null : stryMutAct_9fa48("1030") ? false : stryMutAct_9fa48("1029") ? true : (stryCov_9fa48("1029", "1030", "1031"), route === null)) ? stryMutAct_9fa48("1032") ? ["Stryker was here"] : (stryCov_9fa48("1032"), []) : stryMutAct_9fa48("1033") ? [] : (stryCov_9fa48("1033"), [[slug, route] as const]))));
  return choiceOf;
})());
const better = (a: Score, b: Score): boolean => {
  if (stryMutAct_9fa48("1034")) {
    {}
  } else {
    stryCov_9fa48("1034");
    for (let at = 0; stryMutAct_9fa48("1037") ? at >= Math.max(a.length, b.length) : stryMutAct_9fa48("1036") ? at <= Math.max(a.length, b.length) : stryMutAct_9fa48("1035") ? false : (stryCov_9fa48("1035", "1036", "1037"), at < (stryMutAct_9fa48("1038") ? Math.min(a.length, b.length) : (stryCov_9fa48("1038"), Math.max(a.length, b.length)))); stryMutAct_9fa48("1039") ? at-- : (stryCov_9fa48("1039"), at++)) {
      if (stryMutAct_9fa48("1040")) {
        {}
      } else {
        stryCov_9fa48("1040");
        const difference = stryMutAct_9fa48("1041") ? (a[at] ?? 0) + (b[at] ?? 0) : (stryCov_9fa48("1041"), (stryMutAct_9fa48("1042") ? a[at] && 0 : (stryCov_9fa48("1042"), a[at] ?? 0)) - (stryMutAct_9fa48("1043") ? b[at] && 0 : (stryCov_9fa48("1043"), b[at] ?? 0)));
        if (stryMutAct_9fa48("1047") ? Math.abs(difference) <= 1e-9 : stryMutAct_9fa48("1046") ? Math.abs(difference) >= 1e-9 : stryMutAct_9fa48("1045") ? false : stryMutAct_9fa48("1044") ? true : (stryCov_9fa48("1044", "1045", "1046", "1047"), Math.abs(difference) > 1e-9)) return stryMutAct_9fa48("1051") ? difference >= 0 : stryMutAct_9fa48("1050") ? difference <= 0 : stryMutAct_9fa48("1049") ? false : stryMutAct_9fa48("1048") ? true : (stryCov_9fa48("1048", "1049", "1050", "1051"), difference < 0);
      }
    }
    return stryMutAct_9fa48("1052") ? true : (stryCov_9fa48("1052"), false);
  }
};
const combinations = stryMutAct_9fa48("1053") ? () => undefined : (stryCov_9fa48("1053"), (() => {
  const combinations = (open: readonly Component[]): Map<string, Route | null>[] => open.reduce<Map<string, Route | null>[]>(stryMutAct_9fa48("1054") ? () => undefined : (stryCov_9fa48("1054"), (all, component) => all.flatMap(stryMutAct_9fa48("1055") ? () => undefined : (stryCov_9fa48("1055"), chosen => (stryMutAct_9fa48("1056") ? [] : (stryCov_9fa48("1056"), [null, ...component.routes])).map(stryMutAct_9fa48("1057") ? () => undefined : (stryCov_9fa48("1057"), route => new Map(stryMutAct_9fa48("1058") ? [] : (stryCov_9fa48("1058"), [...chosen, stryMutAct_9fa48("1059") ? [] : (stryCov_9fa48("1059"), [component.slug, route])]))))))), stryMutAct_9fa48("1060") ? [] : (stryCov_9fa48("1060"), [new Map()]));
  return combinations;
})());

/** Tries routes of the components that are open. As written comes first, so a route must be truly better to be taken. */
function bestOf(open: readonly Component[], score: (routes: ReadonlyMap<string, Route | null>) => Score): Map<string, Route | null> {
  if (stryMutAct_9fa48("1061")) {
    {}
  } else {
    stryCov_9fa48("1061");
    const size = open.reduce(stryMutAct_9fa48("1062") ? () => undefined : (stryCov_9fa48("1062"), (product, {
      routes
    }) => stryMutAct_9fa48("1063") ? product / (routes.length + 1) : (stryCov_9fa48("1063"), product * (stryMutAct_9fa48("1064") ? routes.length - 1 : (stryCov_9fa48("1064"), routes.length + 1)))), 1);
    let best = new Map<string, Route | null>(open.map(stryMutAct_9fa48("1065") ? () => undefined : (stryCov_9fa48("1065"), ({
      slug
    }) => stryMutAct_9fa48("1066") ? [] : (stryCov_9fa48("1066"), [slug, null]))));
    let bestScore = score(best);
    const consider = (candidate: Map<string, Route | null>): boolean => {
      if (stryMutAct_9fa48("1067")) {
        {}
      } else {
        stryCov_9fa48("1067");
        const candidateScore = score(candidate);
        if (stryMutAct_9fa48("1070") ? false : stryMutAct_9fa48("1069") ? true : stryMutAct_9fa48("1068") ? better(candidateScore, bestScore) : (stryCov_9fa48("1068", "1069", "1070"), !better(candidateScore, bestScore))) return stryMutAct_9fa48("1071") ? true : (stryCov_9fa48("1071"), false);
        best = candidate;
        bestScore = candidateScore;
        return stryMutAct_9fa48("1072") ? false : (stryCov_9fa48("1072"), true);
      }
    };
    if (stryMutAct_9fa48("1076") ? size > mostCombinations : stryMutAct_9fa48("1075") ? size < mostCombinations : stryMutAct_9fa48("1074") ? false : stryMutAct_9fa48("1073") ? true : (stryCov_9fa48("1073", "1074", "1075", "1076"), size <= mostCombinations)) {
      if (stryMutAct_9fa48("1077")) {
        {}
      } else {
        stryCov_9fa48("1077");
        for (const candidate of combinations(open)) consider(candidate);
        return best;
      }
    }
    for (let improved = stryMutAct_9fa48("1078") ? false : (stryCov_9fa48("1078"), true); stryMutAct_9fa48("1079") ? false : (stryCov_9fa48("1079"), improved);) {
      if (stryMutAct_9fa48("1080")) {
        {}
      } else {
        stryCov_9fa48("1080");
        improved = stryMutAct_9fa48("1081") ? true : (stryCov_9fa48("1081"), false);
        for (const {
          slug,
          routes
        } of open) {
          if (stryMutAct_9fa48("1082")) {
            {}
          } else {
            stryCov_9fa48("1082");
            for (const route of stryMutAct_9fa48("1083") ? [] : (stryCov_9fa48("1083"), [null, ...routes])) improved = stryMutAct_9fa48("1086") ? consider(new Map([...best, [slug, route]])) && improved : stryMutAct_9fa48("1085") ? false : stryMutAct_9fa48("1084") ? true : (stryCov_9fa48("1084", "1085", "1086"), consider(new Map(stryMutAct_9fa48("1087") ? [] : (stryCov_9fa48("1087"), [...best, stryMutAct_9fa48("1088") ? [] : (stryCov_9fa48("1088"), [slug, route])]))) || improved);
          }
        }
      }
    }
    return best;
  }
}

/**
 * The plan with its routes settled: those named by the household, and for the others whichever way scores best over the
 * whole plan (a cheaper tin may make another pot unnecessary). Fails on a route that a component does not have, and with all of
 * `checkBundle`.
 *
 * @param scoreOf of one choice, given the compiled plan; null: as written
 */
export function chooseRoutes(bundle: PlanBundle, household: Household, scoreOf: ((plan: CompiledPlan) => Score) | null, fitsDiet: DietJudge): Result<CompiledPlan> {
  if (stryMutAct_9fa48("1089")) {
    {}
  } else {
    stryCov_9fa48("1089");
    const problems = checkBundle(bundle);
    if (stryMutAct_9fa48("1093") ? problems.length <= 0 : stryMutAct_9fa48("1092") ? problems.length >= 0 : stryMutAct_9fa48("1091") ? false : stryMutAct_9fa48("1090") ? true : (stryCov_9fa48("1090", "1091", "1092", "1093"), problems.length > 0)) return failed(problems);
    const fixed = named(bundle, household);
    if (stryMutAct_9fa48("1096") ? false : stryMutAct_9fa48("1095") ? true : stryMutAct_9fa48("1094") ? fixed.ok : (stryCov_9fa48("1094", "1095", "1096"), !fixed.ok)) return fixed;
    const open = (stryMutAct_9fa48("1099") ? scoreOf !== null : stryMutAct_9fa48("1098") ? false : stryMutAct_9fa48("1097") ? true : (stryCov_9fa48("1097", "1098", "1099"), scoreOf === null)) ? stryMutAct_9fa48("1100") ? ["Stryker was here"] : (stryCov_9fa48("1100"), []) : stryMutAct_9fa48("1101") ? bundle.components : (stryCov_9fa48("1101"), bundle.components.filter(stryMutAct_9fa48("1102") ? () => undefined : (stryCov_9fa48("1102"), ({
      slug,
      routes
    }) => stryMutAct_9fa48("1105") ? routes.length > 0 || !fixed.value.has(slug) : stryMutAct_9fa48("1104") ? false : stryMutAct_9fa48("1103") ? true : (stryCov_9fa48("1103", "1104", "1105"), (stryMutAct_9fa48("1108") ? routes.length <= 0 : stryMutAct_9fa48("1107") ? routes.length >= 0 : stryMutAct_9fa48("1106") ? true : (stryCov_9fa48("1106", "1107", "1108"), routes.length > 0)) && (stryMutAct_9fa48("1109") ? fixed.value.has(slug) : (stryCov_9fa48("1109"), !fixed.value.has(slug)))))));
    const compile = stryMutAct_9fa48("1110") ? () => undefined : (stryCov_9fa48("1110"), (() => {
      const compile = (routes: ReadonlyMap<string, Route | null>): Result<CompiledPlan> => compilePlan(bundle, household, choiceOf(new Map(stryMutAct_9fa48("1111") ? [] : (stryCov_9fa48("1111"), [...fixed.value, ...routes]))), fitsDiet);
      return compile;
    })());
    if (stryMutAct_9fa48("1114") ? open.length === 0 && scoreOf === null : stryMutAct_9fa48("1113") ? false : stryMutAct_9fa48("1112") ? true : (stryCov_9fa48("1112", "1113", "1114"), (stryMutAct_9fa48("1116") ? open.length !== 0 : stryMutAct_9fa48("1115") ? false : (stryCov_9fa48("1115", "1116"), open.length === 0)) || (stryMutAct_9fa48("1118") ? scoreOf !== null : stryMutAct_9fa48("1117") ? false : (stryCov_9fa48("1117", "1118"), scoreOf === null)))) return compile(new Map());
    return compile(bestOf(open, routes => {
      if (stryMutAct_9fa48("1119")) {
        {}
      } else {
        stryCov_9fa48("1119");
        const plan = compile(routes);
        return plan.ok ? scoreOf(plan.value) : stryMutAct_9fa48("1120") ? [] : (stryCov_9fa48("1120"), [Infinity]);
      }
    }));
  }
}