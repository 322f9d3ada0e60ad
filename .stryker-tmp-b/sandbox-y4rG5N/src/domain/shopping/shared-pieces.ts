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
import { restOf } from "../limits.js";

/** What the uses of one part take, in pieces by day, and for how many days after its piece is cut it still serves. */
export interface PartUses {
  /** null: for as long as it takes. */
  readonly keeps: number | null;
  readonly byDay: ReadonlyMap<number, number>;
}
const sumOf = stryMutAct_9fa48("836") ? () => undefined : (stryCov_9fa48("836"), (() => {
  const sumOf = ({
    byDay
  }: PartUses): number => (stryMutAct_9fa48("837") ? [] : (stryCov_9fa48("837"), [...byDay.values()])).reduce(stryMutAct_9fa48("838") ? () => undefined : (stryCov_9fa48("838"), (sum, pieces) => stryMutAct_9fa48("839") ? sum - pieces : (stryCov_9fa48("839"), sum + pieces)), 0);
  return sumOf;
})());

/**
 * The fewest pieces that give every use its part while it keeps. A piece gives one of each part, and all of them age from the
 * day it is cut. Where every part keeps long enough that is the largest sum of a part's uses.
 *
 * A piece cut as late as the uses so far allow serves the most of those to come, so going through the days in order and cutting
 * on each what is still missing is the least there is.
 */
export function sharedPieces(parts: readonly PartUses[]): number {
  if (stryMutAct_9fa48("840")) {
    {}
  } else {
    stryCov_9fa48("840");
    const days = stryMutAct_9fa48("841") ? [...new Set(parts.flatMap(({
      byDay
    }) => [...byDay.keys()]))] : (stryCov_9fa48("841"), (stryMutAct_9fa48("842") ? [] : (stryCov_9fa48("842"), [...new Set(parts.flatMap(stryMutAct_9fa48("843") ? () => undefined : (stryCov_9fa48("843"), ({
      byDay
    }) => stryMutAct_9fa48("844") ? [] : (stryCov_9fa48("844"), [...byDay.keys()]))))])).sort(stryMutAct_9fa48("845") ? () => undefined : (stryCov_9fa48("845"), (a, b) => stryMutAct_9fa48("846") ? a + b : (stryCov_9fa48("846"), a - b))));
    const lasting = (stryMutAct_9fa48("849") ? days.length !== 0 : stryMutAct_9fa48("848") ? false : stryMutAct_9fa48("847") ? true : (stryCov_9fa48("847", "848", "849"), days.length === 0)) ? 0 : stryMutAct_9fa48("850") ? days.at(-1)! + days[0]! : (stryCov_9fa48("850"), days.at(stryMutAct_9fa48("851") ? +1 : (stryCov_9fa48("851"), -1))! - days[0]!);
    if (stryMutAct_9fa48("854") ? parts.some(({
      keeps
    }) => keeps === null || keeps >= lasting) : stryMutAct_9fa48("853") ? false : stryMutAct_9fa48("852") ? true : (stryCov_9fa48("852", "853", "854"), parts.every(stryMutAct_9fa48("855") ? () => undefined : (stryCov_9fa48("855"), ({
      keeps
    }) => stryMutAct_9fa48("858") ? keeps === null && keeps >= lasting : stryMutAct_9fa48("857") ? false : stryMutAct_9fa48("856") ? true : (stryCov_9fa48("856", "857", "858"), (stryMutAct_9fa48("860") ? keeps !== null : stryMutAct_9fa48("859") ? false : (stryCov_9fa48("859", "860"), keeps === null)) || (stryMutAct_9fa48("863") ? keeps < lasting : stryMutAct_9fa48("862") ? keeps > lasting : stryMutAct_9fa48("861") ? false : (stryCov_9fa48("861", "862", "863"), keeps >= lasting))))))) return stryMutAct_9fa48("864") ? Math.min(0, ...parts.map(sumOf)) : (stryCov_9fa48("864"), Math.max(0, ...parts.map(sumOf)));
    const cut = days.map(stryMutAct_9fa48("865") ? () => undefined : (stryCov_9fa48("865"), () => 0));
    days.forEach((day, at) => {
      if (stryMutAct_9fa48("866")) {
        {}
      } else {
        stryCov_9fa48("866");
        cut[at] = stryMutAct_9fa48("867") ? Math.min(...parts.map(({
          keeps,
          byDay
        }) => byDay.has(day) ? missingOn(at, days, cut, keeps, byDay) : 0)) : (stryCov_9fa48("867"), Math.max(...parts.map(stryMutAct_9fa48("868") ? () => undefined : (stryCov_9fa48("868"), ({
          keeps,
          byDay
        }) => byDay.has(day) ? missingOn(at, days, cut, keeps, byDay) : 0))));
      }
    });
    return cut.reduce(stryMutAct_9fa48("869") ? () => undefined : (stryCov_9fa48("869"), (sum, pieces) => stryMutAct_9fa48("870") ? sum - pieces : (stryCov_9fa48("870"), sum + pieces)), 0);
  }
}

/** Pieces to cut on a day, so that each run of the part's uses up to it finds enough that were cut late enough. */
function missingOn(at: number, days: readonly number[], cut: readonly number[], keeps: number | null, byDay: PartUses["byDay"]): number {
  if (stryMutAct_9fa48("871")) {
    {}
  } else {
    stryCov_9fa48("871");
    let [wanted, there, missing] = stryMutAct_9fa48("872") ? [] : (stryCov_9fa48("872"), [0, 0, 0]);
    let oldest = at;
    for (let first = at; stryMutAct_9fa48("875") ? first < 0 : stryMutAct_9fa48("874") ? first > 0 : stryMutAct_9fa48("873") ? false : (stryCov_9fa48("873", "874", "875"), first >= 0); stryMutAct_9fa48("876") ? first++ : (stryCov_9fa48("876"), first--)) {
      if (stryMutAct_9fa48("877")) {
        {}
      } else {
        stryCov_9fa48("877");
        const day = days[first]!;
        stryMutAct_9fa48("878") ? wanted -= byDay.get(day) ?? 0 : (stryCov_9fa48("878"), wanted += stryMutAct_9fa48("879") ? byDay.get(day) && 0 : (stryCov_9fa48("879"), byDay.get(day) ?? 0));
        while (stryMutAct_9fa48("881") ? oldest > 0 || keeps === null || days[oldest - 1]! >= day - keeps : stryMutAct_9fa48("880") ? false : (stryCov_9fa48("880", "881"), (stryMutAct_9fa48("884") ? oldest <= 0 : stryMutAct_9fa48("883") ? oldest >= 0 : stryMutAct_9fa48("882") ? true : (stryCov_9fa48("882", "883", "884"), oldest > 0)) && (stryMutAct_9fa48("886") ? keeps === null && days[oldest - 1]! >= day - keeps : stryMutAct_9fa48("885") ? true : (stryCov_9fa48("885", "886"), (stryMutAct_9fa48("888") ? keeps !== null : stryMutAct_9fa48("887") ? false : (stryCov_9fa48("887", "888"), keeps === null)) || (stryMutAct_9fa48("891") ? days[oldest - 1]! < day - keeps : stryMutAct_9fa48("890") ? days[oldest - 1]! > day - keeps : stryMutAct_9fa48("889") ? false : (stryCov_9fa48("889", "890", "891"), days[stryMutAct_9fa48("892") ? oldest + 1 : (stryCov_9fa48("892"), oldest - 1)]! >= (stryMutAct_9fa48("893") ? day + keeps : (stryCov_9fa48("893"), day - keeps)))))))) stryMutAct_9fa48("894") ? there -= cut[--oldest]! : (stryCov_9fa48("894"), there += cut[stryMutAct_9fa48("895") ? ++oldest : (stryCov_9fa48("895"), --oldest)]!);
        missing = stryMutAct_9fa48("896") ? Math.min(missing, restOf(wanted, there)) : (stryCov_9fa48("896"), Math.max(missing, restOf(wanted, there)));
      }
    }
    return missing;
  }
}