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
import type { Measured, RationalText } from "../model/amount.js";
import type { Path, Problem } from "../problem.js";
import { compareRationals, parseRational } from "../quantity/rational.js";

/** A rational as text that is one, in lowest terms or not, and inside the bounds; else the problem with it. */
export function checkRational(text: RationalText, path: Path, bounds: {
  readonly min: number;
  readonly max: number;
}): Problem[] {
  if (stryMutAct_9fa48("906")) {
    {}
  } else {
    stryCov_9fa48("906");
    const rational = parseRational(text);
    if (stryMutAct_9fa48("909") ? rational !== null : stryMutAct_9fa48("908") ? false : stryMutAct_9fa48("907") ? true : (stryCov_9fa48("907", "908", "909"), rational === null)) return stryMutAct_9fa48("910") ? [] : (stryCov_9fa48("910"), [stryMutAct_9fa48("911") ? {} : (stryCov_9fa48("911"), {
      code: stryMutAct_9fa48("912") ? "" : (stryCov_9fa48("912"), "BAD_AMOUNT"),
      path,
      written: stryMutAct_9fa48("913") ? text : (stryCov_9fa48("913"), text.slice(0, 80)),
      why: stryMutAct_9fa48("914") ? "" : (stryCov_9fa48("914"), "NOT_A_NUMBER")
    })]);
    const value = stryMutAct_9fa48("915") ? rational.n * rational.d : (stryCov_9fa48("915"), rational.n / rational.d);
    if (stryMutAct_9fa48("918") ? value >= bounds.min || value <= bounds.max : stryMutAct_9fa48("917") ? false : stryMutAct_9fa48("916") ? true : (stryCov_9fa48("916", "917", "918"), (stryMutAct_9fa48("921") ? value < bounds.min : stryMutAct_9fa48("920") ? value > bounds.min : stryMutAct_9fa48("919") ? true : (stryCov_9fa48("919", "920", "921"), value >= bounds.min)) && (stryMutAct_9fa48("924") ? value > bounds.max : stryMutAct_9fa48("923") ? value < bounds.max : stryMutAct_9fa48("922") ? true : (stryCov_9fa48("922", "923", "924"), value <= bounds.max)))) return stryMutAct_9fa48("925") ? ["Stryker was here"] : (stryCov_9fa48("925"), []);
    return stryMutAct_9fa48("926") ? [] : (stryCov_9fa48("926"), [stryMutAct_9fa48("927") ? {} : (stryCov_9fa48("927"), {
      code: stryMutAct_9fa48("928") ? "" : (stryCov_9fa48("928"), "AMOUNT_OUT_OF_RANGE"),
      path,
      value: stryMutAct_9fa48("929") ? text : (stryCov_9fa48("929"), text.slice(0, 80)),
      min: bounds.min,
      max: bounds.max
    })]);
  }
}

/** Both ends of a measured amount, in order. Its unit is checked where it is converted. */
export function checkMeasured(measured: Measured, path: Path, min: number): Problem[] {
  if (stryMutAct_9fa48("930")) {
    {}
  } else {
    stryCov_9fa48("930");
    const bounds = stryMutAct_9fa48("931") ? {} : (stryCov_9fa48("931"), {
      min,
      max: limits.amount
    });
    const problems = stryMutAct_9fa48("932") ? [] : (stryCov_9fa48("932"), [...checkRational(measured.low, path, bounds), ...checkRational(measured.high, path, bounds)]);
    if (stryMutAct_9fa48("936") ? problems.length <= 0 : stryMutAct_9fa48("935") ? problems.length >= 0 : stryMutAct_9fa48("934") ? false : stryMutAct_9fa48("933") ? true : (stryCov_9fa48("933", "934", "935", "936"), problems.length > 0)) return stryMutAct_9fa48("937") ? problems : (stryCov_9fa48("937"), problems.slice(0, 1));
    if (stryMutAct_9fa48("941") ? compareRationals(measured.low, measured.high) > 0 : stryMutAct_9fa48("940") ? compareRationals(measured.low, measured.high) < 0 : stryMutAct_9fa48("939") ? false : stryMutAct_9fa48("938") ? true : (stryCov_9fa48("938", "939", "940", "941"), compareRationals(measured.low, measured.high) <= 0)) return stryMutAct_9fa48("942") ? ["Stryker was here"] : (stryCov_9fa48("942"), []);
    return stryMutAct_9fa48("943") ? [] : (stryCov_9fa48("943"), [stryMutAct_9fa48("944") ? {} : (stryCov_9fa48("944"), {
      code: stryMutAct_9fa48("945") ? "" : (stryCov_9fa48("945"), "BAD_AMOUNT"),
      path,
      written: stryMutAct_9fa48("946") ? `` : (stryCov_9fa48("946"), `${measured.low}-${measured.high}`),
      why: stryMutAct_9fa48("947") ? "" : (stryCov_9fa48("947"), "RANGE_UPSIDE_DOWN")
    })]);
  }
}
export function checkNumber(value: number, path: Path, bounds: {
  readonly min: number;
  readonly max: number;
}): Problem[] {
  if (stryMutAct_9fa48("948")) {
    {}
  } else {
    stryCov_9fa48("948");
    if (stryMutAct_9fa48("951") ? Number.isFinite(value) && value >= bounds.min || value <= bounds.max : stryMutAct_9fa48("950") ? false : stryMutAct_9fa48("949") ? true : (stryCov_9fa48("949", "950", "951"), (stryMutAct_9fa48("953") ? Number.isFinite(value) || value >= bounds.min : stryMutAct_9fa48("952") ? true : (stryCov_9fa48("952", "953"), Number.isFinite(value) && (stryMutAct_9fa48("956") ? value < bounds.min : stryMutAct_9fa48("955") ? value > bounds.min : stryMutAct_9fa48("954") ? true : (stryCov_9fa48("954", "955", "956"), value >= bounds.min)))) && (stryMutAct_9fa48("959") ? value > bounds.max : stryMutAct_9fa48("958") ? value < bounds.max : stryMutAct_9fa48("957") ? true : (stryCov_9fa48("957", "958", "959"), value <= bounds.max)))) return stryMutAct_9fa48("960") ? ["Stryker was here"] : (stryCov_9fa48("960"), []);
    return stryMutAct_9fa48("961") ? [] : (stryCov_9fa48("961"), [stryMutAct_9fa48("962") ? {} : (stryCov_9fa48("962"), {
      code: stryMutAct_9fa48("963") ? "" : (stryCov_9fa48("963"), "AMOUNT_OUT_OF_RANGE"),
      path,
      value: String(value),
      min: bounds.min,
      max: bounds.max
    })]);
  }
}
export function checkCount(size: number, limit: number, what: string, path: Path): Problem[] {
  if (stryMutAct_9fa48("964")) {
    {}
  } else {
    stryCov_9fa48("964");
    return (stryMutAct_9fa48("968") ? size > limit : stryMutAct_9fa48("967") ? size < limit : stryMutAct_9fa48("966") ? false : stryMutAct_9fa48("965") ? true : (stryCov_9fa48("965", "966", "967", "968"), size <= limit)) ? stryMutAct_9fa48("969") ? ["Stryker was here"] : (stryCov_9fa48("969"), []) : stryMutAct_9fa48("970") ? [] : (stryCov_9fa48("970"), [stryMutAct_9fa48("971") ? {} : (stryCov_9fa48("971"), {
      code: stryMutAct_9fa48("972") ? "" : (stryCov_9fa48("972"), "TOO_LARGE"),
      path,
      what,
      size,
      limit
    })]);
  }
}
export function checkText(text: string, what: string, path: Path): Problem[] {
  if (stryMutAct_9fa48("973")) {
    {}
  } else {
    stryCov_9fa48("973");
    if (stryMutAct_9fa48("976") ? text.length !== 0 : stryMutAct_9fa48("975") ? false : stryMutAct_9fa48("974") ? true : (stryCov_9fa48("974", "975", "976"), text.length === 0)) return stryMutAct_9fa48("977") ? [] : (stryCov_9fa48("977"), [stryMutAct_9fa48("978") ? {} : (stryCov_9fa48("978"), {
      code: stryMutAct_9fa48("979") ? "" : (stryCov_9fa48("979"), "BAD_SHAPE"),
      path,
      expected: stryMutAct_9fa48("980") ? `` : (stryCov_9fa48("980"), `${what} of at least one character`),
      got: stryMutAct_9fa48("981") ? "" : (stryCov_9fa48("981"), "nothing")
    })]);
    return checkCount(text.length, limits.text, stryMutAct_9fa48("982") ? `` : (stryCov_9fa48("982"), `characters of ${what}`), path);
  }
}

/** Each value once; the second and later ones are named. */
export function checkUnique(values: readonly string[], pathOf: (value: string) => Path): Problem[] {
  if (stryMutAct_9fa48("983")) {
    {}
  } else {
    stryCov_9fa48("983");
    const seen = new Set<string>();
    const problems: Problem[] = stryMutAct_9fa48("984") ? ["Stryker was here"] : (stryCov_9fa48("984"), []);
    for (const value of values) {
      if (stryMutAct_9fa48("985")) {
        {}
      } else {
        stryCov_9fa48("985");
        if (stryMutAct_9fa48("987") ? false : stryMutAct_9fa48("986") ? true : (stryCov_9fa48("986", "987"), seen.has(value))) problems.push(stryMutAct_9fa48("988") ? {} : (stryCov_9fa48("988"), {
          code: stryMutAct_9fa48("989") ? "" : (stryCov_9fa48("989"), "DUPLICATE"),
          path: pathOf(value),
          value: stryMutAct_9fa48("990") ? value : (stryCov_9fa48("990"), value.slice(0, 80))
        }));
        seen.add(value);
      }
    }
    return problems;
  }
}