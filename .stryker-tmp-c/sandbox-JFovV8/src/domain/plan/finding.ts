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
import type { BaseAmount } from "../model/amount.js";
import type { ClaimProblem, Path } from "../problem.js";

/** STOPS: must be mended before publishing. LOOK: readers complain about it; the writer decides. */
export type Severity = "STOPS" | "LOOK";
interface ToLookAt {
  readonly severity: "LOOK";
  readonly path: Path;
}

/** What the writer's check found, as facts; sentences are made at the edge. What stops publishing is a problem itself. */
export type Finding = (ClaimProblem & {
  readonly severity: "STOPS";
}) | (ToLookAt & ({
  readonly code: "LINE_IN_NO_STEP";
  readonly item: string;
} | {
  readonly code: "AMOUNT_MISSING";
  readonly item: string;
} | {
  readonly code: "NOT_MEASURABLE";
  readonly item: string;
  readonly amount: BaseAmount;
} | {
  readonly code: "COMPONENT_NEVER_EATEN";
  readonly component: string;
} | {
  readonly code: "COMPONENT_LEFT_OVER";
  readonly component: string;
  readonly share: number;
  readonly limit: number;
} | {
  readonly code: "KEPT_TOO_LONG";
  readonly subject: string;
  readonly meal: string;
  readonly day: number;
  readonly days: number;
} | {
  readonly code: "NOBODY_SAYS_HOW_LONG";
  readonly subject: string;
} | {
  readonly code: "OVEN_WITHOUT_TEMPERATURE";
  readonly component: string;
  readonly step: string;
} | {
  readonly code: "OVEN_NOT_PREHEATED";
  readonly component: string;
  readonly step: string;
  readonly temperatureC: number;
} | {
  readonly code: "CAUTION_NOT_NAMED";
  readonly subject: string;
  readonly caution: string;
} | {
  readonly code: "CAUTION_UNKNOWN";
  readonly subject: string;
  readonly caution: string;
} | {
  readonly code: "SESSION_TOO_LONG";
  readonly minutes: number;
  readonly promised: number;
}));

/** The findings that stop publishing, as problems of the plan. */
export const stopping = stryMutAct_9fa48("1930") ? () => undefined : (stryCov_9fa48("1930"), (() => {
  const stopping = (findings: readonly Finding[]): readonly ClaimProblem[] => stryMutAct_9fa48("1931") ? findings : (stryCov_9fa48("1931"), findings.filter(stryMutAct_9fa48("1932") ? () => undefined : (stryCov_9fa48("1932"), finding => stryMutAct_9fa48("1935") ? finding.severity !== "STOPS" : stryMutAct_9fa48("1934") ? false : stryMutAct_9fa48("1933") ? true : (stryCov_9fa48("1933", "1934", "1935"), finding.severity === (stryMutAct_9fa48("1936") ? "" : (stryCov_9fa48("1936"), "STOPS"))))));
  return stopping;
})());