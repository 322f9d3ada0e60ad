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
import type { Money } from "../model/amount.js";
import type { Household } from "../model/household.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Result } from "../problem.js";
import { toDimension } from "../quantity/convert.js";
import { asFrozen, type FoodsToday } from "./foods-today.js";
import { scalePlan } from "./scale-plan.js";
import type { ScaledComponent, ScaledPlan, ShoppingLine, ShoppingList } from "./scaled.js";
import { shop } from "./shop.js";

/** The most rows one table may have. */
export const mostRows = 200;
export interface ServingsRow {
  readonly servings: number;
  /** What one serving eats, in money; null where no price is known. */
  readonly perServing: Money | null;
  /** What the till asks for. */
  readonly atTill: Money | null;
  /** Of each component, the share of what is made that nobody eats; on average over the components made. 0..1 */
  readonly leftOverShare: number;
  /** Of each food bought in packs, the share of what is bought that is not used; on average over those foods. 0..1 */
  readonly packWasteShare: number;
  /** Not a crumb of any component is left over. */
  readonly even: boolean;
}
const average = stryMutAct_9fa48("2298") ? () => undefined : (stryCov_9fa48("2298"), (() => {
  const average = (shares: readonly number[]): number => (stryMutAct_9fa48("2301") ? shares.length !== 0 : stryMutAct_9fa48("2300") ? false : stryMutAct_9fa48("2299") ? true : (stryCov_9fa48("2299", "2300", "2301"), shares.length === 0)) ? 0 : stryMutAct_9fa48("2302") ? shares.reduce((sum, each) => sum + each, 0) * shares.length : (stryCov_9fa48("2302"), shares.reduce(stryMutAct_9fa48("2303") ? () => undefined : (stryCov_9fa48("2303"), (sum, each) => stryMutAct_9fa48("2304") ? sum - each : (stryCov_9fa48("2304"), sum + each)), 0) / shares.length);
  return average;
})());
const leftOverShare = stryMutAct_9fa48("2305") ? () => undefined : (stryCov_9fa48("2305"), (() => {
  const leftOverShare = ({
    leftOver,
    made
  }: ScaledComponent): number => stryMutAct_9fa48("2306") ? leftOver.low * made.low : (stryCov_9fa48("2306"), leftOver.low / made.low);
  return leftOverShare;
})());

/** null where nothing is bought of it, or a pack cannot be compared with the need. */
function wasteOf({
  food,
  toBuy,
  buy
}: ShoppingLine): number | null {
  if (stryMutAct_9fa48("2307")) {
    {}
  } else {
    stryCov_9fa48("2307");
    if (stryMutAct_9fa48("2310") ? toBuy === null && buy.length === 0 : stryMutAct_9fa48("2309") ? false : stryMutAct_9fa48("2308") ? true : (stryCov_9fa48("2308", "2309", "2310"), (stryMutAct_9fa48("2312") ? toBuy !== null : stryMutAct_9fa48("2311") ? false : (stryCov_9fa48("2311", "2312"), toBuy === null)) || (stryMutAct_9fa48("2314") ? buy.length !== 0 : stryMutAct_9fa48("2313") ? false : (stryCov_9fa48("2313", "2314"), buy.length === 0)))) return null;
    let bought = 0;
    for (const {
      pack,
      count
    } of buy) {
      if (stryMutAct_9fa48("2315")) {
        {}
      } else {
        stryCov_9fa48("2315");
        const content = toDimension(pack.content, toBuy.dimension, food, null);
        if (stryMutAct_9fa48("2318") ? false : stryMutAct_9fa48("2317") ? true : stryMutAct_9fa48("2316") ? content.ok : (stryCov_9fa48("2316", "2317", "2318"), !content.ok)) return null;
        stryMutAct_9fa48("2319") ? bought -= count * content.amount.low : (stryCov_9fa48("2319"), bought += stryMutAct_9fa48("2320") ? count / content.amount.low : (stryCov_9fa48("2320"), count * content.amount.low));
      }
    }
    return stryMutAct_9fa48("2321") ? Math.min(0, 1 - toBuy.high / bought) : (stryCov_9fa48("2321"), Math.max(0, stryMutAct_9fa48("2322") ? 1 + toBuy.high / bought : (stryCov_9fa48("2322"), 1 - (stryMutAct_9fa48("2323") ? toBuy.high * bought : (stryCov_9fa48("2323"), toBuy.high / bought)))));
  }
}
function rowOf(scaled: ScaledPlan, list: ShoppingList): ServingsRow {
  if (stryMutAct_9fa48("2324")) {
    {}
  } else {
    stryCov_9fa48("2324");
    const made = stryMutAct_9fa48("2325") ? scaled.components : (stryCov_9fa48("2325"), scaled.components.filter(stryMutAct_9fa48("2326") ? () => undefined : (stryCov_9fa48("2326"), ({
      batches
    }) => stryMutAct_9fa48("2330") ? batches <= 0 : stryMutAct_9fa48("2329") ? batches >= 0 : stryMutAct_9fa48("2328") ? false : stryMutAct_9fa48("2327") ? true : (stryCov_9fa48("2327", "2328", "2329", "2330"), batches > 0))));
    return stryMutAct_9fa48("2331") ? {} : (stryCov_9fa48("2331"), {
      servings: scaled.servings,
      perServing: list.cost.perServing,
      atTill: list.cost.atTill,
      leftOverShare: average(made.map(leftOverShare)),
      packWasteShare: average(stryMutAct_9fa48("2332") ? list.lines.map(wasteOf) : (stryCov_9fa48("2332"), list.lines.map(wasteOf).filter(stryMutAct_9fa48("2333") ? () => undefined : (stryCov_9fa48("2333"), share => stryMutAct_9fa48("2336") ? share === null : stryMutAct_9fa48("2335") ? false : stryMutAct_9fa48("2334") ? true : (stryCov_9fa48("2334", "2335", "2336"), share !== null))))),
      even: stryMutAct_9fa48("2337") ? made.some(({
        leftOver
      }) => leftOver.low === 0) : (stryCov_9fa48("2337"), made.every(stryMutAct_9fa48("2338") ? () => undefined : (stryCov_9fa48("2338"), ({
        leftOver
      }) => stryMutAct_9fa48("2341") ? leftOver.low !== 0 : stryMutAct_9fa48("2340") ? false : stryMutAct_9fa48("2339") ? true : (stryCov_9fa48("2339", "2340", "2341"), leftOver.low === 0))))
    });
  }
}

/**
 * What a plan costs and leaves at every number of servings from one to another, so that a writer can say for how many it comes out
 * even. Problems: SERVINGS_OUT_OF_RANGE, TOO_LARGE beyond `mostRows`, and those of `scalePlan`.
 */
export function servingsTable(bundle: PlanBundle, from: number, to: number, household: Household, today: FoodsToday = asFrozen): Result<readonly ServingsRow[]> {
  if (stryMutAct_9fa48("2342")) {
    {}
  } else {
    stryCov_9fa48("2342");
    for (const [name, value] of Object.entries(stryMutAct_9fa48("2343") ? {} : (stryCov_9fa48("2343"), {
      from,
      to
    }))) {
      if (stryMutAct_9fa48("2344")) {
        {}
      } else {
        stryCov_9fa48("2344");
        if (stryMutAct_9fa48("2347") ? Number.isInteger(value) && value >= 1 || value <= limits.servings : stryMutAct_9fa48("2346") ? false : stryMutAct_9fa48("2345") ? true : (stryCov_9fa48("2345", "2346", "2347"), (stryMutAct_9fa48("2349") ? Number.isInteger(value) || value >= 1 : stryMutAct_9fa48("2348") ? true : (stryCov_9fa48("2348", "2349"), Number.isInteger(value) && (stryMutAct_9fa48("2352") ? value < 1 : stryMutAct_9fa48("2351") ? value > 1 : stryMutAct_9fa48("2350") ? true : (stryCov_9fa48("2350", "2351", "2352"), value >= 1)))) && (stryMutAct_9fa48("2355") ? value > limits.servings : stryMutAct_9fa48("2354") ? value < limits.servings : stryMutAct_9fa48("2353") ? true : (stryCov_9fa48("2353", "2354", "2355"), value <= limits.servings)))) continue;
        return failed(stryMutAct_9fa48("2356") ? [] : (stryCov_9fa48("2356"), [stryMutAct_9fa48("2357") ? {} : (stryCov_9fa48("2357"), {
          code: stryMutAct_9fa48("2358") ? "" : (stryCov_9fa48("2358"), "SERVINGS_OUT_OF_RANGE"),
          path: stryMutAct_9fa48("2359") ? [] : (stryCov_9fa48("2359"), [name]),
          value,
          min: 1,
          max: limits.servings
        })]));
      }
    }
    const size = stryMutAct_9fa48("2360") ? to - from - 1 : (stryCov_9fa48("2360"), (stryMutAct_9fa48("2361") ? to + from : (stryCov_9fa48("2361"), to - from)) + 1);
    if (stryMutAct_9fa48("2365") ? size <= mostRows : stryMutAct_9fa48("2364") ? size >= mostRows : stryMutAct_9fa48("2363") ? false : stryMutAct_9fa48("2362") ? true : (stryCov_9fa48("2362", "2363", "2364", "2365"), size > mostRows)) return failed(stryMutAct_9fa48("2366") ? [] : (stryCov_9fa48("2366"), [stryMutAct_9fa48("2367") ? {} : (stryCov_9fa48("2367"), {
      code: stryMutAct_9fa48("2368") ? "" : (stryCov_9fa48("2368"), "TOO_LARGE"),
      path: stryMutAct_9fa48("2369") ? [] : (stryCov_9fa48("2369"), [stryMutAct_9fa48("2370") ? "" : (stryCov_9fa48("2370"), "to")]),
      what: stryMutAct_9fa48("2371") ? "" : (stryCov_9fa48("2371"), "rows"),
      size,
      limit: mostRows
    })]));
    const rows: ServingsRow[] = stryMutAct_9fa48("2372") ? ["Stryker was here"] : (stryCov_9fa48("2372"), []);
    for (let servings = from; stryMutAct_9fa48("2375") ? servings > to : stryMutAct_9fa48("2374") ? servings < to : stryMutAct_9fa48("2373") ? false : (stryCov_9fa48("2373", "2374", "2375"), servings <= to); stryMutAct_9fa48("2376") ? servings-- : (stryCov_9fa48("2376"), servings++)) {
      if (stryMutAct_9fa48("2377")) {
        {}
      } else {
        stryCov_9fa48("2377");
        const scaled = scalePlan(bundle, servings, household, today);
        if (stryMutAct_9fa48("2380") ? false : stryMutAct_9fa48("2379") ? true : stryMutAct_9fa48("2378") ? scaled.ok : (stryCov_9fa48("2378", "2379", "2380"), !scaled.ok)) return scaled;
        rows.push(rowOf(scaled.value, shop(stryMutAct_9fa48("2381") ? [] : (stryCov_9fa48("2381"), [scaled.value]), household, today)));
      }
    }
    return ok(rows);
  }
}