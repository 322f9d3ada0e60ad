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
import { Temporal } from "temporal-polyfill";
import type { Household } from "../model/household.js";

/** The local date on which the household's session begins, ISO; null when it did not say. */
export function sessionDate({
  session
}: Household): string | null {
  if (stryMutAct_9fa48("2382")) {
    {}
  } else {
    stryCov_9fa48("2382");
    if (stryMutAct_9fa48("2385") ? session !== null : stryMutAct_9fa48("2384") ? false : stryMutAct_9fa48("2383") ? true : (stryCov_9fa48("2383", "2384", "2385"), session === null)) return null;
    return Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).toPlainDate().toString();
  }
}

/** ISO date so many days after another. */
export const daysAfter = stryMutAct_9fa48("2386") ? () => undefined : (stryCov_9fa48("2386"), (() => {
  const daysAfter = (date: string, days: number): string => Temporal.PlainDate.from(date).add(stryMutAct_9fa48("2387") ? {} : (stryCov_9fa48("2387"), {
    days
  })).toString();
  return daysAfter;
})());

/** Whole days from one ISO date to another; negative when the second is earlier. */
export const daysBetween = stryMutAct_9fa48("2388") ? () => undefined : (stryCov_9fa48("2388"), (() => {
  const daysBetween = (from: string, to: string): number => Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), stryMutAct_9fa48("2389") ? {} : (stryCov_9fa48("2389"), {
    largestUnit: stryMutAct_9fa48("2390") ? "" : (stryCov_9fa48("2390"), "day")
  })).days;
  return daysBetween;
})());

/** Temporal answers a text that it cannot read with a RangeError. */
function reads(read: () => unknown): boolean {
  if (stryMutAct_9fa48("2391")) {
    {}
  } else {
    stryCov_9fa48("2391");
    try {
      if (stryMutAct_9fa48("2392")) {
        {}
      } else {
        stryCov_9fa48("2392");
        read();
        return stryMutAct_9fa48("2393") ? false : (stryCov_9fa48("2393"), true);
      }
    } catch (error) {
      if (stryMutAct_9fa48("2394")) {
        {}
      } else {
        stryCov_9fa48("2394");
        if (stryMutAct_9fa48("2396") ? false : stryMutAct_9fa48("2395") ? true : (stryCov_9fa48("2395", "2396"), error instanceof RangeError)) return stryMutAct_9fa48("2397") ? true : (stryCov_9fa48("2397"), false);
        throw error;
      }
    }
  }
}

/** `2026-03-01`, and nothing longer. */
export const isDate = stryMutAct_9fa48("2398") ? () => undefined : (stryCov_9fa48("2398"), (() => {
  const isDate = (text: string): boolean => stryMutAct_9fa48("2401") ? /^\d{4}-\d{2}-\d{2}$/.test(text) || reads(() => Temporal.PlainDate.from(text)) : stryMutAct_9fa48("2400") ? false : stryMutAct_9fa48("2399") ? true : (stryCov_9fa48("2399", "2400", "2401"), (stryMutAct_9fa48("2409") ? /^\d{4}-\d{2}-\D{2}$/ : stryMutAct_9fa48("2408") ? /^\d{4}-\d{2}-\d$/ : stryMutAct_9fa48("2407") ? /^\d{4}-\D{2}-\d{2}$/ : stryMutAct_9fa48("2406") ? /^\d{4}-\d-\d{2}$/ : stryMutAct_9fa48("2405") ? /^\D{4}-\d{2}-\d{2}$/ : stryMutAct_9fa48("2404") ? /^\d-\d{2}-\d{2}$/ : stryMutAct_9fa48("2403") ? /^\d{4}-\d{2}-\d{2}/ : stryMutAct_9fa48("2402") ? /\d{4}-\d{2}-\d{2}$/ : (stryCov_9fa48("2402", "2403", "2404", "2405", "2406", "2407", "2408", "2409"), /^\d{4}-\d{2}-\d{2}$/)).test(text) && reads(stryMutAct_9fa48("2410") ? () => undefined : (stryCov_9fa48("2410"), () => Temporal.PlainDate.from(text))));
  return isDate;
})());

/** An instant with its offset: `2026-03-01T09:00:00Z`. */
export const isInstant = stryMutAct_9fa48("2411") ? () => undefined : (stryCov_9fa48("2411"), (() => {
  const isInstant = (text: string): boolean => stryMutAct_9fa48("2414") ? text.length <= 60 || reads(() => Temporal.Instant.from(text)) : stryMutAct_9fa48("2413") ? false : stryMutAct_9fa48("2412") ? true : (stryCov_9fa48("2412", "2413", "2414"), (stryMutAct_9fa48("2417") ? text.length > 60 : stryMutAct_9fa48("2416") ? text.length < 60 : stryMutAct_9fa48("2415") ? true : (stryCov_9fa48("2415", "2416", "2417"), text.length <= 60)) && reads(stryMutAct_9fa48("2418") ? () => undefined : (stryCov_9fa48("2418"), () => Temporal.Instant.from(text))));
  return isInstant;
})());

/** A name such as `Europe/Lisbon` that the clock of this machine knows. */
export const isZone = stryMutAct_9fa48("2419") ? () => undefined : (stryCov_9fa48("2419"), (() => {
  const isZone = (text: string): boolean => stryMutAct_9fa48("2422") ? text.length <= 60 || reads(() => Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text)) : stryMutAct_9fa48("2421") ? false : stryMutAct_9fa48("2420") ? true : (stryCov_9fa48("2420", "2421", "2422"), (stryMutAct_9fa48("2425") ? text.length > 60 : stryMutAct_9fa48("2424") ? text.length < 60 : stryMutAct_9fa48("2423") ? true : (stryCov_9fa48("2423", "2424", "2425"), text.length <= 60)) && reads(stryMutAct_9fa48("2426") ? () => undefined : (stryCov_9fa48("2426"), () => Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text))));
  return isZone;
})());