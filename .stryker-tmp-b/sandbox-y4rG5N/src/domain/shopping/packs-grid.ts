/** Of whole numbers; 0 counts as divided by everything. */
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
export const greatestCommonDivisor = (a: number, b: number): number => {
  if (stryMutAct_9fa48("408")) {
    {}
  } else {
    stryCov_9fa48("408");
    let [x, y] = stryMutAct_9fa48("409") ? [] : (stryCov_9fa48("409"), [a, b]);
    while (stryMutAct_9fa48("411") ? y === 0 : stryMutAct_9fa48("410") ? false : (stryCov_9fa48("410", "411"), y !== 0)) [x, y] = stryMutAct_9fa48("412") ? [] : (stryCov_9fa48("412"), [y, stryMutAct_9fa48("413") ? x * y : (stryCov_9fa48("413"), x % y)]);
    return x;
  }
};

/** Sums of two must stay exact whole numbers. */
const most = 2 ** 50;
const isWhole = stryMutAct_9fa48("414") ? () => undefined : (stryCov_9fa48("414"), (() => {
  const isWhole = (value: number): boolean => stryMutAct_9fa48("418") ? Math.abs(value - Math.round(value)) > value * 1e-12 : stryMutAct_9fa48("417") ? Math.abs(value - Math.round(value)) < value * 1e-12 : stryMutAct_9fa48("416") ? false : stryMutAct_9fa48("415") ? true : (stryCov_9fa48("415", "416", "417", "418"), Math.abs(stryMutAct_9fa48("419") ? value + Math.round(value) : (stryCov_9fa48("419"), value - Math.round(value))) <= (stryMutAct_9fa48("420") ? value / 1e-12 : (stryCov_9fa48("420"), value * 1e-12)));
  return isWhole;
})());

/**
 * Contents as whole multiples of one unit, the largest there is among decimal places: 425.24 and 453.59237 g are 42524000 and
 * 45359237. Contents of no common decimal place (thirds of a pound) are rounded to the finest one that whole numbers hold.
 */
export function contentGrid(contents: readonly number[]): readonly number[] {
  if (stryMutAct_9fa48("421")) {
    {}
  } else {
    stryCov_9fa48("421");
    const largest = stryMutAct_9fa48("422") ? Math.min(...contents) : (stryCov_9fa48("422"), Math.max(...contents));
    let scale = 1;
    while (stryMutAct_9fa48("424") ? largest * scale * 10 <= most || !contents.every(content => isWhole(content * scale)) : stryMutAct_9fa48("423") ? false : (stryCov_9fa48("423", "424"), (stryMutAct_9fa48("427") ? largest * scale * 10 > most : stryMutAct_9fa48("426") ? largest * scale * 10 < most : stryMutAct_9fa48("425") ? true : (stryCov_9fa48("425", "426", "427"), (stryMutAct_9fa48("428") ? largest * scale / 10 : (stryCov_9fa48("428"), (stryMutAct_9fa48("429") ? largest / scale : (stryCov_9fa48("429"), largest * scale)) * 10)) <= most)) && (stryMutAct_9fa48("430") ? contents.every(content => isWhole(content * scale)) : (stryCov_9fa48("430"), !(stryMutAct_9fa48("431") ? contents.some(content => isWhole(content * scale)) : (stryCov_9fa48("431"), contents.every(stryMutAct_9fa48("432") ? () => undefined : (stryCov_9fa48("432"), content => isWhole(stryMutAct_9fa48("433") ? content / scale : (stryCov_9fa48("433"), content * scale)))))))))) stryMutAct_9fa48("434") ? scale /= 10 : (stryCov_9fa48("434"), scale *= 10);
    const whole = contents.map(stryMutAct_9fa48("435") ? () => undefined : (stryCov_9fa48("435"), content => stryMutAct_9fa48("436") ? Math.min(1, Math.round(content * scale)) : (stryCov_9fa48("436"), Math.max(1, Math.round(stryMutAct_9fa48("437") ? content / scale : (stryCov_9fa48("437"), content * scale))))));
    const divisor = whole.reduce(greatestCommonDivisor);
    return whole.map(stryMutAct_9fa48("438") ? () => undefined : (stryCov_9fa48("438"), content => stryMutAct_9fa48("439") ? content * divisor : (stryCov_9fa48("439"), content / divisor)));
  }
}