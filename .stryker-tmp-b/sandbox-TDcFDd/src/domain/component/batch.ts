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
import { sameShare } from "../limits.js";
import type { BatchRule } from "../model/component.js";
import { toNumber } from "../quantity/rational.js";

/** A batch rule as numbers. `increment` 0: any size of at least `min`. `max` is the largest size of one load. */
export interface BatchSizes {
  readonly min: number;
  readonly max: number;
  readonly increment: number;
}
export interface Batches {
  /** In batches, over all loads. */
  readonly made: number;
  readonly loads: number;
}

/**
 * Rounds up, but forgives the last digits of a double: 2.0000000000001 is 2. However little there is, it is something:
 * 1e-12 is 1.
 *
 * @param give how far above a whole number is still that number; a difference has lost digits of what it was taken from
 */
export const ceilForgiving = (value: number, give: number = stryMutAct_9fa48("0") ? Math.abs(value) / sameShare : (stryCov_9fa48("0"), Math.abs(value) * sameShare)): number => {
  if (stryMutAct_9fa48("1")) {
    {}
  } else {
    stryCov_9fa48("1");
    const nearest = Math.round(value);
    return (stryMutAct_9fa48("5") ? Math.abs(value - nearest) > give : stryMutAct_9fa48("4") ? Math.abs(value - nearest) < give : stryMutAct_9fa48("3") ? false : stryMutAct_9fa48("2") ? true : (stryCov_9fa48("2", "3", "4", "5"), Math.abs(stryMutAct_9fa48("6") ? value + nearest : (stryCov_9fa48("6"), value - nearest)) <= give)) ? nearest : Math.ceil(value);
  }
};

/** Rational text was checked when the document was; the largest size is laid on the increment. */
export const batchSizes = (rule: BatchRule): BatchSizes => {
  if (stryMutAct_9fa48("7")) {
    {}
  } else {
    stryCov_9fa48("7");
    const min = toNumber(rule.min);
    const increment = (stryMutAct_9fa48("10") ? rule.increment !== null : stryMutAct_9fa48("9") ? false : stryMutAct_9fa48("8") ? true : (stryCov_9fa48("8", "9", "10"), rule.increment === null)) ? 0 : toNumber(rule.increment);
    const max = (stryMutAct_9fa48("13") ? rule.max !== null : stryMutAct_9fa48("12") ? false : stryMutAct_9fa48("11") ? true : (stryCov_9fa48("11", "12", "13"), rule.max === null)) ? Infinity : toNumber(rule.max);
    if (stryMutAct_9fa48("16") ? increment === 0 && max === Infinity : stryMutAct_9fa48("15") ? false : stryMutAct_9fa48("14") ? true : (stryCov_9fa48("14", "15", "16"), (stryMutAct_9fa48("18") ? increment !== 0 : stryMutAct_9fa48("17") ? false : (stryCov_9fa48("17", "18"), increment === 0)) || (stryMutAct_9fa48("20") ? max !== Infinity : stryMutAct_9fa48("19") ? false : (stryCov_9fa48("19", "20"), max === Infinity)))) return stryMutAct_9fa48("21") ? {} : (stryCov_9fa48("21"), {
      min,
      max,
      increment
    });
    return stryMutAct_9fa48("22") ? {} : (stryCov_9fa48("22"), {
      min,
      max: stryMutAct_9fa48("23") ? min - increment * Math.floor((max - min) / increment + sameShare) : (stryCov_9fa48("23"), min + (stryMutAct_9fa48("24") ? increment / Math.floor((max - min) / increment + sameShare) : (stryCov_9fa48("24"), increment * Math.floor(stryMutAct_9fa48("25") ? (max - min) / increment - sameShare : (stryCov_9fa48("25"), (stryMutAct_9fa48("26") ? (max - min) * increment : (stryCov_9fa48("26"), (stryMutAct_9fa48("27") ? max + min : (stryCov_9fa48("27"), max - min)) / increment)) + sameShare))))),
      increment
    });
  }
};

/**
 * The least that covers a demand: as few loads as possible, then as little as possible, each load within the rule.
 *
 * @param demand in batches, >= 0
 * @returns nothing made for no demand; otherwise `made` >= `demand` up to the last digits of a double
 */
export function batchesFor(demand: number, {
  min,
  max,
  increment
}: BatchSizes): Batches {
  if (stryMutAct_9fa48("28")) {
    {}
  } else {
    stryCov_9fa48("28");
    if (stryMutAct_9fa48("31") ? false : stryMutAct_9fa48("30") ? true : stryMutAct_9fa48("29") ? demand > 0 : (stryCov_9fa48("29", "30", "31"), !(stryMutAct_9fa48("35") ? demand <= 0 : stryMutAct_9fa48("34") ? demand >= 0 : stryMutAct_9fa48("33") ? false : stryMutAct_9fa48("32") ? true : (stryCov_9fa48("32", "33", "34", "35"), demand > 0)))) return stryMutAct_9fa48("36") ? {} : (stryCov_9fa48("36"), {
      made: 0,
      loads: 0
    });
    const loads = (stryMutAct_9fa48("39") ? max !== Infinity : stryMutAct_9fa48("38") ? false : stryMutAct_9fa48("37") ? true : (stryCov_9fa48("37", "38", "39"), max === Infinity)) ? 1 : stryMutAct_9fa48("40") ? Math.min(1, ceilForgiving(demand / max)) : (stryCov_9fa48("40"), Math.max(1, ceilForgiving(stryMutAct_9fa48("41") ? demand * max : (stryCov_9fa48("41"), demand / max))));
    const least = stryMutAct_9fa48("42") ? loads / min : (stryCov_9fa48("42"), loads * min);
    if (stryMutAct_9fa48("46") ? demand > least : stryMutAct_9fa48("45") ? demand < least : stryMutAct_9fa48("44") ? false : stryMutAct_9fa48("43") ? true : (stryCov_9fa48("43", "44", "45", "46"), demand <= least)) return stryMutAct_9fa48("47") ? {} : (stryCov_9fa48("47"), {
      made: least,
      loads
    });
    if (stryMutAct_9fa48("50") ? increment !== 0 : stryMutAct_9fa48("49") ? false : stryMutAct_9fa48("48") ? true : (stryCov_9fa48("48", "49", "50"), increment === 0)) return stryMutAct_9fa48("51") ? {} : (stryCov_9fa48("51"), {
      made: demand,
      loads
    });
    const more = ceilForgiving(stryMutAct_9fa48("52") ? (demand - least) * increment : (stryCov_9fa48("52"), (stryMutAct_9fa48("53") ? demand + least : (stryCov_9fa48("53"), demand - least)) / increment), stryMutAct_9fa48("54") ? demand / increment / sameShare : (stryCov_9fa48("54"), (stryMutAct_9fa48("55") ? demand * increment : (stryCov_9fa48("55"), demand / increment)) * sameShare));
    return stryMutAct_9fa48("56") ? {} : (stryCov_9fa48("56"), {
      made: stryMutAct_9fa48("57") ? least - increment * more : (stryCov_9fa48("57"), least + (stryMutAct_9fa48("58") ? increment / more : (stryCov_9fa48("58"), increment * more))),
      loads
    });
  }
}

/** How often a PER_BATCH line is taken: once for every batch that is begun. */
export const batchesBegun = stryMutAct_9fa48("59") ? () => undefined : (stryCov_9fa48("59"), (() => {
  const batchesBegun = (made: number): number => ceilForgiving(made);
  return batchesBegun;
})());