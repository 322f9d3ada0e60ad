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
import type { Household } from "../model/household.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Problem, type Result } from "../problem.js";
import { moneyParts } from "../shopping/money.js";
import { checkHousehold } from "./check-household.js";
import { chooseRoutes, type Score } from "./choose-routes.js";
import type { CompiledPlan } from "./compiled-plan.js";
import { asFrozen, type FoodsToday } from "./foods-today.js";
import { allLeft, scaleCompiled, type ScaledWithRest } from "./scale-compiled.js";
import type { ScaledPlan } from "./scaled.js";
import { shop } from "./shop.js";
import { workOf } from "./work-of.js";

/** A plan and how many it is cooked for. */
export interface PlanPortion {
  readonly bundle: PlanBundle;
  readonly servings: number;
}

/** What makes one choice of routes better than another; null where the plan is taken as written. */
function scoreBy(servings: number, household: Household, today: FoodsToday, left: readonly number[]): ((plan: CompiledPlan) => Score) | null {
  if (stryMutAct_9fa48("2203")) {
    {}
  } else {
    stryCov_9fa48("2203");
    const {
      mode
    } = household.routes;
    if (stryMutAct_9fa48("2206") ? mode !== "AS_WRITTEN" : stryMutAct_9fa48("2205") ? false : stryMutAct_9fa48("2204") ? true : (stryCov_9fa48("2204", "2205", "2206"), mode === (stryMutAct_9fa48("2207") ? "" : (stryCov_9fa48("2207"), "AS_WRITTEN")))) return null;
    return plan => {
      if (stryMutAct_9fa48("2208")) {
        {}
      } else {
        stryCov_9fa48("2208");
        const result = scaleCompiled(plan, servings, household, left);
        if (stryMutAct_9fa48("2211") ? false : stryMutAct_9fa48("2210") ? true : stryMutAct_9fa48("2209") ? result.ok : (stryCov_9fa48("2209", "2210", "2211"), !result.ok)) return stryMutAct_9fa48("2212") ? [] : (stryCov_9fa48("2212"), [Infinity]);
        const {
          scaled
        } = result.value;
        if (stryMutAct_9fa48("2215") ? mode !== "LEAST_WORK" : stryMutAct_9fa48("2214") ? false : stryMutAct_9fa48("2213") ? true : (stryCov_9fa48("2213", "2214", "2215"), mode === (stryMutAct_9fa48("2216") ? "" : (stryCov_9fa48("2216"), "LEAST_WORK")))) return workOf(scaled);
        const {
          atTill,
          unpriced
        } = shop(stryMutAct_9fa48("2217") ? [] : (stryCov_9fa48("2217"), [scaled]), household, today).cost;
        // A price nobody knows is not a low price: fewer of those first, then the till.
        return stryMutAct_9fa48("2218") ? [] : (stryCov_9fa48("2218"), [unpriced.length, (stryMutAct_9fa48("2221") ? atTill !== null : stryMutAct_9fa48("2220") ? false : stryMutAct_9fa48("2219") ? true : (stryCov_9fa48("2219", "2220", "2221"), atTill === null)) ? 0 : stryMutAct_9fa48("2222") ? moneyParts(atTill.amount) && 0 : (stryCov_9fa48("2222"), moneyParts(atTill.amount) ?? 0)]);
      }
    };
  }
}
function scaleOne({
  bundle,
  servings
}: PlanPortion, household: Household, today: FoodsToday, left: readonly number[]): Result<ScaledWithRest> {
  if (stryMutAct_9fa48("2223")) {
    {}
  } else {
    stryCov_9fa48("2223");
    if (stryMutAct_9fa48("2226") ? (!Number.isInteger(servings) || servings < 1) && servings > limits.servings : stryMutAct_9fa48("2225") ? false : stryMutAct_9fa48("2224") ? true : (stryCov_9fa48("2224", "2225", "2226"), (stryMutAct_9fa48("2228") ? !Number.isInteger(servings) && servings < 1 : stryMutAct_9fa48("2227") ? false : (stryCov_9fa48("2227", "2228"), (stryMutAct_9fa48("2229") ? Number.isInteger(servings) : (stryCov_9fa48("2229"), !Number.isInteger(servings))) || (stryMutAct_9fa48("2232") ? servings >= 1 : stryMutAct_9fa48("2231") ? servings <= 1 : stryMutAct_9fa48("2230") ? false : (stryCov_9fa48("2230", "2231", "2232"), servings < 1)))) || (stryMutAct_9fa48("2235") ? servings <= limits.servings : stryMutAct_9fa48("2234") ? servings >= limits.servings : stryMutAct_9fa48("2233") ? false : (stryCov_9fa48("2233", "2234", "2235"), servings > limits.servings)))) {
      if (stryMutAct_9fa48("2236")) {
        {}
      } else {
        stryCov_9fa48("2236");
        return failed(stryMutAct_9fa48("2237") ? [] : (stryCov_9fa48("2237"), [stryMutAct_9fa48("2238") ? {} : (stryCov_9fa48("2238"), {
          code: stryMutAct_9fa48("2239") ? "" : (stryCov_9fa48("2239"), "SERVINGS_OUT_OF_RANGE"),
          path: stryMutAct_9fa48("2240") ? [] : (stryCov_9fa48("2240"), [stryMutAct_9fa48("2241") ? "" : (stryCov_9fa48("2241"), "servings")]),
          value: servings,
          min: 1,
          max: limits.servings
        })]));
      }
    }
    const unfit = checkHousehold(servings, household);
    if (stryMutAct_9fa48("2245") ? unfit.length <= 0 : stryMutAct_9fa48("2244") ? unfit.length >= 0 : stryMutAct_9fa48("2243") ? false : stryMutAct_9fa48("2242") ? true : (stryCov_9fa48("2242", "2243", "2244", "2245"), unfit.length > 0)) return failed(unfit);
    const chosen = chooseRoutes(bundle, household, scoreBy(servings, household, today, left), today.fitsDiet);
    return chosen.ok ? scaleCompiled(chosen.value, servings, household, left) : chosen;
  }
}

/**
 * Scales a plan for one household: meals, batches, left-overs, unrounded. Answers are values in base units; rounding and words
 * are for whoever shows them.
 *
 * @param servings how many eat each meal: a whole number from 1 to limits.servings
 * Problems: SERVINGS_OUT_OF_RANGE, BAD_HOUSEHOLD, UNKNOWN_ROUTE, AMOUNT_OUT_OF_RANGE, and all of `checkBundle`.
 */
export function scalePlan(bundle: PlanBundle, servings: number, household: Household, today: FoodsToday = asFrozen): Result<ScaledPlan> {
  if (stryMutAct_9fa48("2246")) {
    {}
  } else {
    stryCov_9fa48("2246");
    const result = scaleOne(stryMutAct_9fa48("2247") ? {} : (stryCov_9fa48("2247"), {
      bundle,
      servings
    }), household, today, allLeft(household));
    return result.ok ? ok(result.value.scaled) : result;
  }
}
const compare = stryMutAct_9fa48("2248") ? () => undefined : (stryCov_9fa48("2248"), (() => {
  const compare = (a: string, b: string): number => (stryMutAct_9fa48("2252") ? a >= b : stryMutAct_9fa48("2251") ? a <= b : stryMutAct_9fa48("2250") ? false : stryMutAct_9fa48("2249") ? true : (stryCov_9fa48("2249", "2250", "2251", "2252"), a < b)) ? stryMutAct_9fa48("2253") ? +1 : (stryCov_9fa48("2253"), -1) : (stryMutAct_9fa48("2257") ? a <= b : stryMutAct_9fa48("2256") ? a >= b : stryMutAct_9fa48("2255") ? false : stryMutAct_9fa48("2254") ? true : (stryCov_9fa48("2254", "2255", "2256", "2257"), a > b)) ? 1 : 0;
  return compare;
})());

/** Whose turn it is to take from what is on hand, whatever order a reader names the plans in. */
const inTurn = stryMutAct_9fa48("2258") ? () => undefined : (stryCov_9fa48("2258"), (() => {
  const inTurn = (a: PlanPortion, b: PlanPortion): number => stryMutAct_9fa48("2261") ? (compare(a.bundle.plan.publisher, b.bundle.plan.publisher) || compare(a.bundle.plan.slug, b.bundle.plan.slug)) && a.servings - b.servings : stryMutAct_9fa48("2260") ? false : stryMutAct_9fa48("2259") ? true : (stryCov_9fa48("2259", "2260", "2261"), (stryMutAct_9fa48("2263") ? compare(a.bundle.plan.publisher, b.bundle.plan.publisher) && compare(a.bundle.plan.slug, b.bundle.plan.slug) : stryMutAct_9fa48("2262") ? false : (stryCov_9fa48("2262", "2263"), compare(a.bundle.plan.publisher, b.bundle.plan.publisher) || compare(a.bundle.plan.slug, b.bundle.plan.slug))) || (stryMutAct_9fa48("2264") ? a.servings + b.servings : (stryCov_9fa48("2264"), a.servings - b.servings)));
  return inTurn;
})());

/**
 * Scales several plans for one household, for one list: what one plan takes of a component on hand is not there for the next.
 * Answers come in the order asked; problems carry the index of their plan: `["plans", 2, "servings"]`.
 */
export function scalePlans(portions: readonly PlanPortion[], household: Household, today: FoodsToday = asFrozen): Result<readonly ScaledPlan[]> {
  if (stryMutAct_9fa48("2265")) {
    {}
  } else {
    stryCov_9fa48("2265");
    const problems: Problem[] = stryMutAct_9fa48("2266") ? ["Stryker was here"] : (stryCov_9fa48("2266"), []);
    const scaled: ScaledPlan[] = stryMutAct_9fa48("2267") ? ["Stryker was here"] : (stryCov_9fa48("2267"), []);
    let left = allLeft(household);
    const turns = portions.map(stryMutAct_9fa48("2268") ? () => undefined : (stryCov_9fa48("2268"), (portion, at) => stryMutAct_9fa48("2269") ? {} : (stryCov_9fa48("2269"), {
      portion,
      at
    }))).toSorted(stryMutAct_9fa48("2270") ? () => undefined : (stryCov_9fa48("2270"), (a, b) => inTurn(a.portion, b.portion)));
    for (const {
      portion,
      at
    } of turns) {
      if (stryMutAct_9fa48("2271")) {
        {}
      } else {
        stryCov_9fa48("2271");
        const result = scaleOne(portion, household, today, left);
        if (stryMutAct_9fa48("2274") ? false : stryMutAct_9fa48("2273") ? true : stryMutAct_9fa48("2272") ? result.ok : (stryCov_9fa48("2272", "2273", "2274"), !result.ok)) {
          if (stryMutAct_9fa48("2275")) {
            {}
          } else {
            stryCov_9fa48("2275");
            problems.push(...result.problems.map(stryMutAct_9fa48("2276") ? () => undefined : (stryCov_9fa48("2276"), problem => stryMutAct_9fa48("2277") ? {} : (stryCov_9fa48("2277"), {
              ...problem,
              path: stryMutAct_9fa48("2278") ? [] : (stryCov_9fa48("2278"), [stryMutAct_9fa48("2279") ? "" : (stryCov_9fa48("2279"), "plans"), at, ...problem.path])
            }))));
            continue;
          }
        }
        scaled[at] = result.value.scaled;
        left = result.value.left;
      }
    }
    return (stryMutAct_9fa48("2283") ? problems.length <= 0 : stryMutAct_9fa48("2282") ? problems.length >= 0 : stryMutAct_9fa48("2281") ? false : stryMutAct_9fa48("2280") ? true : (stryCov_9fa48("2280", "2281", "2282", "2283"), problems.length > 0)) ? failed(problems) : ok(scaled.map(stryMutAct_9fa48("2284") ? () => undefined : (stryCov_9fa48("2284"), each => neededSomewhere(each, portions))));
  }
}

/** A component on hand that one plan does not use is no news where another of them does. */
function neededSomewhere(scaled: ScaledPlan, portions: readonly PlanPortion[]): ScaledPlan {
  if (stryMutAct_9fa48("2285")) {
    {}
  } else {
    stryCov_9fa48("2285");
    const known = new Set(portions.flatMap(stryMutAct_9fa48("2286") ? () => undefined : (stryCov_9fa48("2286"), ({
      bundle
    }) => bundle.components.map(stryMutAct_9fa48("2287") ? () => undefined : (stryCov_9fa48("2287"), ({
      slug
    }) => slug)))));
    const warnings = stryMutAct_9fa48("2288") ? scaled.warnings : (stryCov_9fa48("2288"), scaled.warnings.filter(stryMutAct_9fa48("2289") ? () => undefined : (stryCov_9fa48("2289"), each => stryMutAct_9fa48("2292") ? each.code !== "ON_HAND_NOT_NEEDED" && !known.has(each.item) : stryMutAct_9fa48("2291") ? false : stryMutAct_9fa48("2290") ? true : (stryCov_9fa48("2290", "2291", "2292"), (stryMutAct_9fa48("2294") ? each.code === "ON_HAND_NOT_NEEDED" : stryMutAct_9fa48("2293") ? false : (stryCov_9fa48("2293", "2294"), each.code !== (stryMutAct_9fa48("2295") ? "" : (stryCov_9fa48("2295"), "ON_HAND_NOT_NEEDED")))) || (stryMutAct_9fa48("2296") ? known.has(each.item) : (stryCov_9fa48("2296"), !known.has(each.item)))))));
    return stryMutAct_9fa48("2297") ? {} : (stryCov_9fa48("2297"), {
      ...scaled,
      warnings
    });
  }
}