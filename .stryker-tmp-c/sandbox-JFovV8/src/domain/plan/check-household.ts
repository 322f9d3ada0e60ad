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
import type { Household, OnHand } from "../model/household.js";
import type { Path, Problem } from "../problem.js";
import { checkCount, checkNumber, checkRational, checkText } from "./check-text.js";
import { isDate, isInstant, isZone } from "./session-date.js";

/** The most entries of each kind a reader may send. */
const mostEntries = 1_000;
const unfit = stryMutAct_9fa48("454") ? () => undefined : (stryCov_9fa48("454"), (() => {
  const unfit = (path: Path, what: string, value: string): Problem => stryMutAct_9fa48("455") ? {} : (stryCov_9fa48("455"), {
    code: stryMutAct_9fa48("456") ? "" : (stryCov_9fa48("456"), "BAD_HOUSEHOLD"),
    path,
    what,
    value: stryMutAct_9fa48("457") ? value : (stryCov_9fa48("457"), value.slice(0, 60))
  });
  return unfit;
})());
function checkEaters(servings: number, {
  eaters
}: Household): Problem[] {
  if (stryMutAct_9fa48("458")) {
    {}
  } else {
    stryCov_9fa48("458");
    if (stryMutAct_9fa48("461") ? eaters !== null : stryMutAct_9fa48("460") ? false : stryMutAct_9fa48("459") ? true : (stryCov_9fa48("459", "460", "461"), eaters === null)) return stryMutAct_9fa48("462") ? ["Stryker was here"] : (stryCov_9fa48("462"), []);
    const path: Path = stryMutAct_9fa48("463") ? [] : (stryCov_9fa48("463"), [stryMutAct_9fa48("464") ? "" : (stryCov_9fa48("464"), "household"), stryMutAct_9fa48("465") ? "" : (stryCov_9fa48("465"), "eaters")]);
    const problems = eaters.flatMap(stryMutAct_9fa48("466") ? () => undefined : (stryCov_9fa48("466"), ({
      count,
      portion
    }, index) => stryMutAct_9fa48("467") ? [] : (stryCov_9fa48("467"), [...checkNumber(count, stryMutAct_9fa48("468") ? [] : (stryCov_9fa48("468"), [...path, index, stryMutAct_9fa48("469") ? "" : (stryCov_9fa48("469"), "count")]), stryMutAct_9fa48("470") ? {} : (stryCov_9fa48("470"), {
      min: 1,
      max: limits.servings
    })), ...((stryMutAct_9fa48("473") ? Number.isFinite(count) || !Number.isInteger(count) : stryMutAct_9fa48("472") ? false : stryMutAct_9fa48("471") ? true : (stryCov_9fa48("471", "472", "473"), Number.isFinite(count) && (stryMutAct_9fa48("474") ? Number.isInteger(count) : (stryCov_9fa48("474"), !Number.isInteger(count))))) ? stryMutAct_9fa48("475") ? [] : (stryCov_9fa48("475"), [unfit(stryMutAct_9fa48("476") ? [] : (stryCov_9fa48("476"), [...path, index, stryMutAct_9fa48("477") ? "" : (stryCov_9fa48("477"), "count")]), stryMutAct_9fa48("478") ? "" : (stryCov_9fa48("478"), "NOT_WHOLE_PEOPLE"), String(count))]) : stryMutAct_9fa48("479") ? ["Stryker was here"] : (stryCov_9fa48("479"), [])), ...checkRational(portion, stryMutAct_9fa48("480") ? [] : (stryCov_9fa48("480"), [...path, index, stryMutAct_9fa48("481") ? "" : (stryCov_9fa48("481"), "portion")]), stryMutAct_9fa48("482") ? {} : (stryCov_9fa48("482"), {
      min: 1e-3,
      max: 100
    }))])));
    if (stryMutAct_9fa48("486") ? problems.length <= 0 : stryMutAct_9fa48("485") ? problems.length >= 0 : stryMutAct_9fa48("484") ? false : stryMutAct_9fa48("483") ? true : (stryCov_9fa48("483", "484", "485", "486"), problems.length > 0)) return problems;
    const people = eaters.reduce(stryMutAct_9fa48("487") ? () => undefined : (stryCov_9fa48("487"), (sum, {
      count
    }) => stryMutAct_9fa48("488") ? sum - count : (stryCov_9fa48("488"), sum + count)), 0);
    return (stryMutAct_9fa48("491") ? people !== servings : stryMutAct_9fa48("490") ? false : stryMutAct_9fa48("489") ? true : (stryCov_9fa48("489", "490", "491"), people === servings)) ? stryMutAct_9fa48("492") ? ["Stryker was here"] : (stryCov_9fa48("492"), []) : stryMutAct_9fa48("493") ? [] : (stryCov_9fa48("493"), [unfit(path, stryMutAct_9fa48("494") ? "" : (stryCov_9fa48("494"), "EATERS_ARE_NOT_THE_SERVINGS"), String(people))]);
  }
}
function checkSession({
  session
}: Household): Problem[] {
  if (stryMutAct_9fa48("495")) {
    {}
  } else {
    stryCov_9fa48("495");
    if (stryMutAct_9fa48("498") ? session !== null : stryMutAct_9fa48("497") ? false : stryMutAct_9fa48("496") ? true : (stryCov_9fa48("496", "497", "498"), session === null)) return stryMutAct_9fa48("499") ? ["Stryker was here"] : (stryCov_9fa48("499"), []);
    const path: Path = stryMutAct_9fa48("500") ? [] : (stryCov_9fa48("500"), [stryMutAct_9fa48("501") ? "" : (stryCov_9fa48("501"), "household"), stryMutAct_9fa48("502") ? "" : (stryCov_9fa48("502"), "session")]);
    return stryMutAct_9fa48("503") ? [] : (stryCov_9fa48("503"), [...(isInstant(session.start) ? stryMutAct_9fa48("504") ? ["Stryker was here"] : (stryCov_9fa48("504"), []) : stryMutAct_9fa48("505") ? [] : (stryCov_9fa48("505"), [unfit(stryMutAct_9fa48("506") ? [] : (stryCov_9fa48("506"), [...path, stryMutAct_9fa48("507") ? "" : (stryCov_9fa48("507"), "start")]), stryMutAct_9fa48("508") ? "" : (stryCov_9fa48("508"), "NOT_AN_INSTANT"), session.start)])), ...(isZone(session.zone) ? stryMutAct_9fa48("509") ? ["Stryker was here"] : (stryCov_9fa48("509"), []) : stryMutAct_9fa48("510") ? [] : (stryCov_9fa48("510"), [unfit(stryMutAct_9fa48("511") ? [] : (stryCov_9fa48("511"), [...path, stryMutAct_9fa48("512") ? "" : (stryCov_9fa48("512"), "zone")]), stryMutAct_9fa48("513") ? "" : (stryCov_9fa48("513"), "NOT_A_TIME_ZONE"), session.zone)]))]);
  }
}
function checkOnHand({
  item,
  amount,
  unit,
  useBy
}: OnHand, path: Path): Problem[] {
  if (stryMutAct_9fa48("514")) {
    {}
  } else {
    stryCov_9fa48("514");
    return stryMutAct_9fa48("515") ? [] : (stryCov_9fa48("515"), [...checkRational(amount, stryMutAct_9fa48("516") ? [] : (stryCov_9fa48("516"), [...path, stryMutAct_9fa48("517") ? "" : (stryCov_9fa48("517"), "amount")]), stryMutAct_9fa48("518") ? {} : (stryCov_9fa48("518"), {
      min: 0,
      max: limits.amount
    })), ...checkText((stryMutAct_9fa48("521") ? item.kind !== "FOOD" : stryMutAct_9fa48("520") ? false : stryMutAct_9fa48("519") ? true : (stryCov_9fa48("519", "520", "521"), item.kind === (stryMutAct_9fa48("522") ? "" : (stryCov_9fa48("522"), "FOOD")))) ? item.food : item.component, stryMutAct_9fa48("523") ? "" : (stryCov_9fa48("523"), "a slug"), path), ...checkText(unit, stryMutAct_9fa48("524") ? "" : (stryCov_9fa48("524"), "a unit"), stryMutAct_9fa48("525") ? [] : (stryCov_9fa48("525"), [...path, stryMutAct_9fa48("526") ? "" : (stryCov_9fa48("526"), "unit")])), ...((stryMutAct_9fa48("529") ? useBy === null && isDate(useBy) : stryMutAct_9fa48("528") ? false : stryMutAct_9fa48("527") ? true : (stryCov_9fa48("527", "528", "529"), (stryMutAct_9fa48("531") ? useBy !== null : stryMutAct_9fa48("530") ? false : (stryCov_9fa48("530", "531"), useBy === null)) || isDate(useBy))) ? stryMutAct_9fa48("532") ? ["Stryker was here"] : (stryCov_9fa48("532"), []) : stryMutAct_9fa48("533") ? [] : (stryCov_9fa48("533"), [unfit(stryMutAct_9fa48("534") ? [] : (stryCov_9fa48("534"), [...path, stryMutAct_9fa48("535") ? "" : (stryCov_9fa48("535"), "useBy")]), stryMutAct_9fa48("536") ? "" : (stryCov_9fa48("536"), "NOT_A_DATE"), useBy)]))]);
  }
}

/** What a reader sent about the household, before anything is computed from it. */
export function checkHousehold(servings: number, household: Household): readonly Problem[] {
  if (stryMutAct_9fa48("537")) {
    {}
  } else {
    stryCov_9fa48("537");
    const path: Path = stryMutAct_9fa48("538") ? [] : (stryCov_9fa48("538"), [stryMutAct_9fa48("539") ? "" : (stryCov_9fa48("539"), "household")]);
    return stryMutAct_9fa48("540") ? [] : (stryCov_9fa48("540"), [...checkCount(household.onHand.length, mostEntries, stryMutAct_9fa48("541") ? "" : (stryCov_9fa48("541"), "things on hand"), stryMutAct_9fa48("542") ? [] : (stryCov_9fa48("542"), [...path, stryMutAct_9fa48("543") ? "" : (stryCov_9fa48("543"), "onHand")])), ...checkCount(household.swaps.length, mostEntries, stryMutAct_9fa48("544") ? "" : (stryCov_9fa48("544"), "swaps"), stryMutAct_9fa48("545") ? [] : (stryCov_9fa48("545"), [...path, stryMutAct_9fa48("546") ? "" : (stryCov_9fa48("546"), "swaps")])), ...checkCount(household.diets.length, mostEntries, stryMutAct_9fa48("547") ? "" : (stryCov_9fa48("547"), "diets"), stryMutAct_9fa48("548") ? [] : (stryCov_9fa48("548"), [...path, stryMutAct_9fa48("549") ? "" : (stryCov_9fa48("549"), "diets")])), ...checkCount(household.routes.byName.length, mostEntries, stryMutAct_9fa48("550") ? "" : (stryCov_9fa48("550"), "routes"), stryMutAct_9fa48("551") ? [] : (stryCov_9fa48("551"), [...path, stryMutAct_9fa48("552") ? "" : (stryCov_9fa48("552"), "routes")])), ...checkCount(stryMutAct_9fa48("553") ? household.eaters?.length && 0 : (stryCov_9fa48("553"), (stryMutAct_9fa48("554") ? household.eaters.length : (stryCov_9fa48("554"), household.eaters?.length)) ?? 0), mostEntries, stryMutAct_9fa48("555") ? "" : (stryCov_9fa48("555"), "eaters"), stryMutAct_9fa48("556") ? [] : (stryCov_9fa48("556"), [...path, stryMutAct_9fa48("557") ? "" : (stryCov_9fa48("557"), "eaters")])), ...(stryMutAct_9fa48("558") ? household.onHand.flatMap((each, index) => checkOnHand(each, [...path, "onHand", index])) : (stryCov_9fa48("558"), household.onHand.slice(0, mostEntries).flatMap(stryMutAct_9fa48("559") ? () => undefined : (stryCov_9fa48("559"), (each, index) => checkOnHand(each, stryMutAct_9fa48("560") ? [] : (stryCov_9fa48("560"), [...path, stryMutAct_9fa48("561") ? "" : (stryCov_9fa48("561"), "onHand"), index])))))), ...checkSession(household), ...checkEaters(servings, household)]);
  }
}