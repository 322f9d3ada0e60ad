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
import type { Money } from "../model/amount.js";
import type { Pack } from "../model/food.js";
import { minorParts, moneyOf, roundedTo, roundedTogether } from "./money.js";
export interface PackCount {
  readonly pack: Pack;
  readonly count: number;
}

/** Decimal strings. `unpriced` names the foods whose price nobody knows; they are in no sum. */
export interface Cost {
  readonly currency: string | null;
  /** What the till asks for. */
  readonly atTill: Money | null;
  /** The share of it that these servings eat. */
  readonly used: Money | null;
  /** What stays in the cupboard: atTill - used. */
  readonly carriedOver: Money | null;
  /** used / servings */
  readonly perServing: Money | null;
  readonly unpriced: readonly string[];
}

/** What one line costs before anything is rounded, in parts of the currency unit (money.ts). */
export interface LineCost {
  readonly food: string;
  /** null: something must be bought and its price is not known. */
  readonly atTill: number | null;
  /** Share of what is bought that is eaten, 0..1. */
  readonly usedShare: number;
}
interface Known {
  readonly atTill: number;
  readonly used: number;
}
const costOf = (known: Known | null, servings: number, currency: string | null, unpriced: readonly string[]): Cost => {
  if (stryMutAct_9fa48("0")) {
    {}
  } else {
    stryCov_9fa48("0");
    if (stryMutAct_9fa48("3") ? known === null && currency === null : stryMutAct_9fa48("2") ? false : stryMutAct_9fa48("1") ? true : (stryCov_9fa48("1", "2", "3"), (stryMutAct_9fa48("5") ? known !== null : stryMutAct_9fa48("4") ? false : (stryCov_9fa48("4", "5"), known === null)) || (stryMutAct_9fa48("7") ? currency !== null : stryMutAct_9fa48("6") ? false : (stryCov_9fa48("6", "7"), currency === null)))) {
      if (stryMutAct_9fa48("8")) {
        {}
      } else {
        stryCov_9fa48("8");
        return stryMutAct_9fa48("9") ? {} : (stryCov_9fa48("9"), {
          currency,
          atTill: null,
          used: null,
          carriedOver: null,
          perServing: null,
          unpriced
        });
      }
    }
    const {
      atTill,
      used
    } = known;
    return stryMutAct_9fa48("10") ? {} : (stryCov_9fa48("10"), {
      currency,
      atTill: moneyOf(atTill, currency),
      used: moneyOf(used, currency),
      carriedOver: moneyOf(stryMutAct_9fa48("11") ? atTill + used : (stryCov_9fa48("11"), atTill - used), currency),
      perServing: (stryMutAct_9fa48("15") ? servings <= 0 : stryMutAct_9fa48("14") ? servings >= 0 : stryMutAct_9fa48("13") ? false : stryMutAct_9fa48("12") ? true : (stryCov_9fa48("12", "13", "14", "15"), servings > 0)) ? moneyOf(roundedTo(minorParts(currency), stryMutAct_9fa48("16") ? used * servings : (stryCov_9fa48("16"), used / servings)), currency) : null,
      unpriced
    });
  }
};

/**
 * Costs of the lines of a list and of the whole list. What is eaten is rounded to the currency's smallest coin once, half
 * upwards, over all lines together, so that lines add up to the list and atTill = used + carriedOver to the last digit. A
 * price that is not known is in no sum; its food is named, once.
 *
 * @param currency of all prices; null where none is known
 */
export function costsOf(lines: readonly LineCost[], servings: number, currency: string | null): {
  readonly lines: readonly Cost[];
  readonly list: Cost;
} {
  if (stryMutAct_9fa48("17")) {
    {}
  } else {
    stryCov_9fa48("17");
    const coin = (stryMutAct_9fa48("20") ? currency !== null : stryMutAct_9fa48("19") ? false : stryMutAct_9fa48("18") ? true : (stryCov_9fa48("18", "19", "20"), currency === null)) ? 1 : minorParts(currency);
    const used = roundedTogether(coin, lines.map(stryMutAct_9fa48("21") ? () => undefined : (stryCov_9fa48("21"), ({
      atTill,
      usedShare
    }) => stryMutAct_9fa48("22") ? {} : (stryCov_9fa48("22"), {
      paid: stryMutAct_9fa48("23") ? atTill && 0 : (stryCov_9fa48("23"), atTill ?? 0),
      share: usedShare
    }))));
    const known = lines.map(stryMutAct_9fa48("24") ? () => undefined : (stryCov_9fa48("24"), ({
      atTill
    }, at): Known | null => (stryMutAct_9fa48("27") ? atTill !== null : stryMutAct_9fa48("26") ? false : stryMutAct_9fa48("25") ? true : (stryCov_9fa48("25", "26", "27"), atTill === null)) ? null : stryMutAct_9fa48("28") ? {} : (stryCov_9fa48("28"), {
      atTill,
      used: used[at]!
    })));
    const unpriced = stryMutAct_9fa48("29") ? [] : (stryCov_9fa48("29"), [...new Set(lines.flatMap(stryMutAct_9fa48("30") ? () => undefined : (stryCov_9fa48("30"), ({
      food,
      atTill
    }) => (stryMutAct_9fa48("33") ? atTill !== null : stryMutAct_9fa48("32") ? false : stryMutAct_9fa48("31") ? true : (stryCov_9fa48("31", "32", "33"), atTill === null)) ? stryMutAct_9fa48("34") ? [] : (stryCov_9fa48("34"), [food]) : stryMutAct_9fa48("35") ? ["Stryker was here"] : (stryCov_9fa48("35"), []))))]);
    const sums = known.reduce<Known>(stryMutAct_9fa48("36") ? () => undefined : (stryCov_9fa48("36"), (sum, each) => stryMutAct_9fa48("37") ? {} : (stryCov_9fa48("37"), {
      atTill: stryMutAct_9fa48("38") ? sum.atTill - (each?.atTill ?? 0) : (stryCov_9fa48("38"), sum.atTill + (stryMutAct_9fa48("39") ? each?.atTill && 0 : (stryCov_9fa48("39"), (stryMutAct_9fa48("40") ? each.atTill : (stryCov_9fa48("40"), each?.atTill)) ?? 0))),
      used: stryMutAct_9fa48("41") ? sum.used - (each?.used ?? 0) : (stryCov_9fa48("41"), sum.used + (stryMutAct_9fa48("42") ? each?.used && 0 : (stryCov_9fa48("42"), (stryMutAct_9fa48("43") ? each.used : (stryCov_9fa48("43"), each?.used)) ?? 0)))
    })), stryMutAct_9fa48("44") ? {} : (stryCov_9fa48("44"), {
      atTill: 0,
      used: 0
    }));
    const nothingKnown = stryMutAct_9fa48("47") ? unpriced.length > 0 || known.every(each => each === null) : stryMutAct_9fa48("46") ? false : stryMutAct_9fa48("45") ? true : (stryCov_9fa48("45", "46", "47"), (stryMutAct_9fa48("50") ? unpriced.length <= 0 : stryMutAct_9fa48("49") ? unpriced.length >= 0 : stryMutAct_9fa48("48") ? true : (stryCov_9fa48("48", "49", "50"), unpriced.length > 0)) && (stryMutAct_9fa48("51") ? known.some(each => each === null) : (stryCov_9fa48("51"), known.every(stryMutAct_9fa48("52") ? () => undefined : (stryCov_9fa48("52"), each => stryMutAct_9fa48("55") ? each !== null : stryMutAct_9fa48("54") ? false : stryMutAct_9fa48("53") ? true : (stryCov_9fa48("53", "54", "55"), each === null))))));
    return stryMutAct_9fa48("56") ? {} : (stryCov_9fa48("56"), {
      lines: lines.map(stryMutAct_9fa48("57") ? () => undefined : (stryCov_9fa48("57"), ({
        food
      }, at) => costOf(known[at]!, servings, currency, (stryMutAct_9fa48("60") ? known[at] !== null : stryMutAct_9fa48("59") ? false : stryMutAct_9fa48("58") ? true : (stryCov_9fa48("58", "59", "60"), known[at] === null)) ? stryMutAct_9fa48("61") ? [] : (stryCov_9fa48("61"), [food]) : stryMutAct_9fa48("62") ? ["Stryker was here"] : (stryCov_9fa48("62"), [])))),
      list: costOf(nothingKnown ? null : sums, servings, currency, unpriced)
    });
  }
}