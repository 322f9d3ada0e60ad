/** Some of a thing the household has, in base units of the need. */
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
export interface Stock {
  readonly amount: number;
  /** Days after the session until which it may be used; null: no date. */
  readonly lastDay: number | null;
}
const firstToGo = stryMutAct_9fa48("309") ? () => undefined : (stryCov_9fa48("309"), (() => {
  const firstToGo = (a: Stock, b: Stock): number => stryMutAct_9fa48("312") ? (a.lastDay ?? Infinity) - (b.lastDay ?? Infinity) && 0 : stryMutAct_9fa48("311") ? false : stryMutAct_9fa48("310") ? true : (stryCov_9fa48("310", "311", "312"), (stryMutAct_9fa48("313") ? (a.lastDay ?? Infinity) + (b.lastDay ?? Infinity) : (stryCov_9fa48("313"), (stryMutAct_9fa48("314") ? a.lastDay && Infinity : (stryCov_9fa48("314"), a.lastDay ?? Infinity)) - (stryMutAct_9fa48("315") ? b.lastDay && Infinity : (stryCov_9fa48("315"), b.lastDay ?? Infinity)))) || 0);
  return firstToGo;
})());

/**
 * How much of each stock a need takes, in the order of the stocks given. What has a date covers only uses up to that date, so the
 * one that is first to go is taken first; never more than the need.
 *
 * @param need what is needed in all
 * @param needUntil what is needed up to a day, from 0 to `need`, never falling
 */
export function takeFromStock(need: number, stock: readonly Stock[], needUntil: (day: number) => number): readonly number[] {
  if (stryMutAct_9fa48("316")) {
    {}
  } else {
    stryCov_9fa48("316");
    const taken = stock.map(stryMutAct_9fa48("317") ? () => undefined : (stryCov_9fa48("317"), () => 0));
    let covered = 0;
    const inOrder = stock.map(stryMutAct_9fa48("318") ? () => undefined : (stryCov_9fa48("318"), (each, at) => stryMutAct_9fa48("319") ? {} : (stryCov_9fa48("319"), {
      ...each,
      at
    }))).toSorted(firstToGo);
    for (const {
      amount,
      lastDay,
      at
    } of inOrder) {
      if (stryMutAct_9fa48("320")) {
        {}
      } else {
        stryCov_9fa48("320");
        const open = stryMutAct_9fa48("321") ? (lastDay === null ? need : Math.min(need, needUntil(lastDay))) + covered : (stryCov_9fa48("321"), ((stryMutAct_9fa48("324") ? lastDay !== null : stryMutAct_9fa48("323") ? false : stryMutAct_9fa48("322") ? true : (stryCov_9fa48("322", "323", "324"), lastDay === null)) ? need : stryMutAct_9fa48("325") ? Math.max(need, needUntil(lastDay)) : (stryCov_9fa48("325"), Math.min(need, needUntil(lastDay)))) - covered);
        taken[at] = stryMutAct_9fa48("326") ? Math.min(0, Math.min(amount, open)) : (stryCov_9fa48("326"), Math.max(0, stryMutAct_9fa48("327") ? Math.max(amount, open) : (stryCov_9fa48("327"), Math.min(amount, open))));
        stryMutAct_9fa48("328") ? covered -= taken[at] : (stryCov_9fa48("328"), covered += taken[at]);
      }
    }
    return taken;
  }
}

/** What `takeFromStock` takes in all. */
export const coveredByStock = stryMutAct_9fa48("329") ? () => undefined : (stryCov_9fa48("329"), (() => {
  const coveredByStock = (need: number, stock: readonly Stock[], needUntil: (day: number) => number): number => takeFromStock(need, stock, needUntil).reduce(stryMutAct_9fa48("330") ? () => undefined : (stryCov_9fa48("330"), (sum, each) => stryMutAct_9fa48("331") ? sum - each : (stryCov_9fa48("331"), sum + each)), 0);
  return coveredByStock;
})());