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

/** Money is added up in whole ten-thousandths of its currency unit, so that no sum drifts. */
export const partsPerUnit = 10_000;
const places = 4;
const SHAPE = stryMutAct_9fa48("228") ? /^(\d{1,10})(?:\.(\D{1,4}))?$/ : stryMutAct_9fa48("227") ? /^(\d{1,10})(?:\.(\d))?$/ : stryMutAct_9fa48("226") ? /^(\d{1,10})(?:\.(\d{1,4}))$/ : stryMutAct_9fa48("225") ? /^(\D{1,10})(?:\.(\d{1,4}))?$/ : stryMutAct_9fa48("224") ? /^(\d)(?:\.(\d{1,4}))?$/ : stryMutAct_9fa48("223") ? /^(\d{1,10})(?:\.(\d{1,4}))?/ : stryMutAct_9fa48("222") ? /(\d{1,10})(?:\.(\d{1,4}))?$/ : (stryCov_9fa48("222", "223", "224", "225", "226", "227", "228"), /^(\d{1,10})(?:\.(\d{1,4}))?$/);

/** `"3.2"` to 32000 parts; null for anything but a plain non-negative decimal of at most four places. */
export function moneyParts(amount: string): number | null {
  if (stryMutAct_9fa48("229")) {
    {}
  } else {
    stryCov_9fa48("229");
    const match = SHAPE.exec(amount);
    if (stryMutAct_9fa48("232") ? match !== null : stryMutAct_9fa48("231") ? false : stryMutAct_9fa48("230") ? true : (stryCov_9fa48("230", "231", "232"), match === null)) return null;
    const [, units = stryMutAct_9fa48("233") ? "" : (stryCov_9fa48("233"), "0"), decimals = stryMutAct_9fa48("234") ? "Stryker was here!" : (stryCov_9fa48("234"), "")] = match;
    return stryMutAct_9fa48("235") ? Number(units) * partsPerUnit - Number(decimals.padEnd(places, "0")) : (stryCov_9fa48("235"), (stryMutAct_9fa48("236") ? Number(units) / partsPerUnit : (stryCov_9fa48("236"), Number(units) * partsPerUnit)) + Number(decimals.padEnd(places, stryMutAct_9fa48("237") ? "" : (stryCov_9fa48("237"), "0"))));
  }
}
const knownPlaces = new Map<string, number>();

/** Decimal places of a currency's smallest coin (ISO 4217 as the runtime carries it): yen 0, euro 2, dinar 3. */
function minorPlaces(currency: string): number {
  if (stryMutAct_9fa48("238")) {
    {}
  } else {
    stryCov_9fa48("238");
    const known = knownPlaces.get(currency);
    if (stryMutAct_9fa48("241") ? known === undefined : stryMutAct_9fa48("240") ? false : stryMutAct_9fa48("239") ? true : (stryCov_9fa48("239", "240", "241"), known !== undefined)) return known;
    const found = (stryMutAct_9fa48("245") ? /^[^A-Z]{3}$/ : stryMutAct_9fa48("244") ? /^[A-Z]$/ : stryMutAct_9fa48("243") ? /^[A-Z]{3}/ : stryMutAct_9fa48("242") ? /[A-Z]{3}$/ : (stryCov_9fa48("242", "243", "244", "245"), /^[A-Z]{3}$/)).test(currency) ? stryMutAct_9fa48("246") ? new Intl.NumberFormat("en", {
      style: "currency",
      currency
    }).resolvedOptions().maximumFractionDigits && 2 : (stryCov_9fa48("246"), new Intl.NumberFormat(stryMutAct_9fa48("247") ? "" : (stryCov_9fa48("247"), "en"), stryMutAct_9fa48("248") ? {} : (stryCov_9fa48("248"), {
      style: stryMutAct_9fa48("249") ? "" : (stryCov_9fa48("249"), "currency"),
      currency
    })).resolvedOptions().maximumFractionDigits ?? 2) : 2;
    knownPlaces.set(currency, stryMutAct_9fa48("250") ? Math.max(places, found) : (stryCov_9fa48("250"), Math.min(places, found)));
    return stryMutAct_9fa48("251") ? Math.max(places, found) : (stryCov_9fa48("251"), Math.min(places, found));
  }
}

/** Parts of a currency's smallest coin: 100 for a cent. */
export const minorParts = stryMutAct_9fa48("252") ? () => undefined : (stryCov_9fa48("252"), (() => {
  const minorParts = (currency: string): number => 10 ** (stryMutAct_9fa48("253") ? places + minorPlaces(currency) : (stryCov_9fa48("253"), places - minorPlaces(currency)));
  return minorParts;
})());

/** 32000 parts to `"3.20"`: the places of the currency, more only where the parts need them. Whole parts, >= 0. */
export function moneyOf(parts: number, currency: string): Money {
  if (stryMutAct_9fa48("254")) {
    {}
  } else {
    stryCov_9fa48("254");
    const whole = Math.floor(stryMutAct_9fa48("255") ? parts * partsPerUnit : (stryCov_9fa48("255"), parts / partsPerUnit));
    const decimals = String(stryMutAct_9fa48("256") ? parts + whole * partsPerUnit : (stryCov_9fa48("256"), parts - (stryMutAct_9fa48("257") ? whole / partsPerUnit : (stryCov_9fa48("257"), whole * partsPerUnit)))).padStart(places, stryMutAct_9fa48("258") ? "" : (stryCov_9fa48("258"), "0"));
    const kept = minorPlaces(currency);
    const shown = stryMutAct_9fa48("259") ? decimals.slice(0, kept) - decimals.slice(kept).replace(/0+$/, "") : (stryCov_9fa48("259"), (stryMutAct_9fa48("260") ? decimals : (stryCov_9fa48("260"), decimals.slice(0, kept))) + (stryMutAct_9fa48("261") ? decimals.replace(/0+$/, "") : (stryCov_9fa48("261"), decimals.slice(kept).replace(stryMutAct_9fa48("263") ? /0$/ : stryMutAct_9fa48("262") ? /0+/ : (stryCov_9fa48("262", "263"), /0+$/), stryMutAct_9fa48("264") ? "Stryker was here!" : (stryCov_9fa48("264"), "")))));
    return stryMutAct_9fa48("265") ? {} : (stryCov_9fa48("265"), {
      amount: (stryMutAct_9fa48("268") ? shown !== "" : stryMutAct_9fa48("267") ? false : stryMutAct_9fa48("266") ? true : (stryCov_9fa48("266", "267", "268"), shown === (stryMutAct_9fa48("269") ? "Stryker was here!" : (stryCov_9fa48("269"), "")))) ? String(whole) : stryMutAct_9fa48("270") ? `` : (stryCov_9fa48("270"), `${whole}.${shown}`),
      currency
    });
  }
}

/** Room for the last digits of a share, so that an exact half is one. */
const halfSlack = 1e-9;

/** The nearest whole number of coins, half upwards, in parts: money that was divided is rounded once, here. */
export const roundedTo = stryMutAct_9fa48("271") ? () => undefined : (stryCov_9fa48("271"), (() => {
  const roundedTo = (coin: number, parts: number): number => stryMutAct_9fa48("272") ? Math.floor(parts / coin + 0.5 + halfSlack) / coin : (stryCov_9fa48("272"), Math.floor(stryMutAct_9fa48("273") ? parts / coin + 0.5 - halfSlack : (stryCov_9fa48("273"), (stryMutAct_9fa48("274") ? parts / coin - 0.5 : (stryCov_9fa48("274"), (stryMutAct_9fa48("275") ? parts * coin : (stryCov_9fa48("275"), parts / coin)) + 0.5)) + halfSlack)) * coin);
  return roundedTo;
})());

/** A share of what was paid, in parts that need not be whole. */
export interface PaidShare {
  readonly paid: number;
  readonly share: number;
}

/**
 * Rounds shares of what was paid to whole coins so that they still add up to their rounded sum: each is rounded down, and the
 * coins left go to the largest remainders (first come first where equal). No share is rounded to more than was paid, which
 * matters only where a price has fractions of a coin.
 */
export function roundedTogether(coin: number, amounts: readonly PaidShare[]): readonly number[] {
  if (stryMutAct_9fa48("276")) {
    {}
  } else {
    stryCov_9fa48("276");
    const exact = amounts.map(stryMutAct_9fa48("277") ? () => undefined : (stryCov_9fa48("277"), ({
      paid,
      share
    }) => stryMutAct_9fa48("278") ? paid / share : (stryCov_9fa48("278"), paid * share)));
    const floors = exact.map(stryMutAct_9fa48("279") ? () => undefined : (stryCov_9fa48("279"), each => stryMutAct_9fa48("280") ? Math.floor(each / coin + halfSlack) / coin : (stryCov_9fa48("280"), Math.floor(stryMutAct_9fa48("281") ? each / coin - halfSlack : (stryCov_9fa48("281"), (stryMutAct_9fa48("282") ? each * coin : (stryCov_9fa48("282"), each / coin)) + halfSlack)) * coin)));
    const short = stryMutAct_9fa48("283") ? roundedTo(coin, sum(exact)) + sum(floors) : (stryCov_9fa48("283"), roundedTo(coin, sum(exact)) - sum(floors));
    const byRemainder = stryMutAct_9fa48("284") ? amounts.map(({
      paid
    }, index) => ({
      index,
      room: paid - floors[index]!,
      remainder: exact[index]! - floors[index]!
    })).toSorted((a, b) => b.remainder - a.remainder || a.index - b.index) : (stryCov_9fa48("284"), amounts.map(stryMutAct_9fa48("285") ? () => undefined : (stryCov_9fa48("285"), ({
      paid
    }, index) => stryMutAct_9fa48("286") ? {} : (stryCov_9fa48("286"), {
      index,
      room: stryMutAct_9fa48("287") ? paid + floors[index]! : (stryCov_9fa48("287"), paid - floors[index]!),
      remainder: stryMutAct_9fa48("288") ? exact[index]! + floors[index]! : (stryCov_9fa48("288"), exact[index]! - floors[index]!)
    }))).filter(stryMutAct_9fa48("289") ? () => undefined : (stryCov_9fa48("289"), ({
      room
    }) => stryMutAct_9fa48("293") ? room < coin : stryMutAct_9fa48("292") ? room > coin : stryMutAct_9fa48("291") ? false : stryMutAct_9fa48("290") ? true : (stryCov_9fa48("290", "291", "292", "293"), room >= coin))).toSorted(stryMutAct_9fa48("294") ? () => undefined : (stryCov_9fa48("294"), (a, b) => stryMutAct_9fa48("297") ? b.remainder - a.remainder && a.index - b.index : stryMutAct_9fa48("296") ? false : stryMutAct_9fa48("295") ? true : (stryCov_9fa48("295", "296", "297"), (stryMutAct_9fa48("298") ? b.remainder + a.remainder : (stryCov_9fa48("298"), b.remainder - a.remainder)) || (stryMutAct_9fa48("299") ? a.index + b.index : (stryCov_9fa48("299"), a.index - b.index))))));
    const raised = new Set(stryMutAct_9fa48("300") ? byRemainder.map(({
      index
    }) => index) : (stryCov_9fa48("300"), byRemainder.slice(0, stryMutAct_9fa48("301") ? Math.min(0, Math.round(short / coin)) : (stryCov_9fa48("301"), Math.max(0, Math.round(stryMutAct_9fa48("302") ? short * coin : (stryCov_9fa48("302"), short / coin))))).map(stryMutAct_9fa48("303") ? () => undefined : (stryCov_9fa48("303"), ({
      index
    }) => index))));
    return floors.map(stryMutAct_9fa48("304") ? () => undefined : (stryCov_9fa48("304"), (each, index) => raised.has(index) ? stryMutAct_9fa48("305") ? each - coin : (stryCov_9fa48("305"), each + coin) : each));
  }
}
const sum = stryMutAct_9fa48("306") ? () => undefined : (stryCov_9fa48("306"), (() => {
  const sum = (parts: readonly number[]): number => parts.reduce(stryMutAct_9fa48("307") ? () => undefined : (stryCov_9fa48("307"), (total, each) => stryMutAct_9fa48("308") ? total - each : (stryCov_9fa48("308"), total + each)), 0);
  return sum;
})());