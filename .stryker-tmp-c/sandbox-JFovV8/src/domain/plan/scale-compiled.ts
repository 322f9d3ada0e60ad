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
import { limits, restOf } from "../limits.js";
import type { BaseAmount } from "../model/amount.js";
import type { Household } from "../model/household.js";
import { failed, ok, type Result, type Warning } from "../problem.js";
import type { CompiledComponent, CompiledLine, CompiledPlan } from "./compiled-plan.js";
import { componentsOnHand, type ComponentsOnHand } from "./components-on-hand.js";
import { batchGrowth, demandFor, mealGrowth, type Demand } from "./demand.js";
import { effectiveServings } from "./eaters.js";
import { servingsMore } from "./left-over.js";
import type { ScaledComponent, ScaledLine, ScaledMeal, ScaledPlan } from "./scaled.js";
const grown = stryMutAct_9fa48("2118") ? () => undefined : (stryCov_9fa48("2118"), (() => {
  const grown = (line: CompiledLine, growth: number): ScaledLine => stryMutAct_9fa48("2119") ? {} : (stryCov_9fa48("2119"), {
    line: line.line,
    item: line.item,
    amount: (stryMutAct_9fa48("2122") ? line.dimension !== null : stryMutAct_9fa48("2121") ? false : stryMutAct_9fa48("2120") ? true : (stryCov_9fa48("2120", "2121", "2122"), line.dimension === null)) ? null : stryMutAct_9fa48("2123") ? {} : (stryCov_9fa48("2123"), {
      dimension: line.dimension,
      low: stryMutAct_9fa48("2124") ? line.low / growth : (stryCov_9fa48("2124"), line.low * growth),
      high: stryMutAct_9fa48("2125") ? line.high / growth : (stryCov_9fa48("2125"), line.high * growth)
    }),
    inUnit: (stryMutAct_9fa48("2128") ? line.written !== null : stryMutAct_9fa48("2127") ? false : stryMutAct_9fa48("2126") ? true : (stryCov_9fa48("2126", "2127", "2128"), line.written === null)) ? null : stryMutAct_9fa48("2129") ? {} : (stryCov_9fa48("2129"), {
      low: stryMutAct_9fa48("2130") ? line.written.low / growth : (stryCov_9fa48("2130"), line.written.low * growth),
      high: stryMutAct_9fa48("2131") ? line.written.high / growth : (stryCov_9fa48("2131"), line.written.high * growth),
      unit: line.written.unit
    }),
    need: (stryMutAct_9fa48("2134") ? line.need !== null : stryMutAct_9fa48("2133") ? false : stryMutAct_9fa48("2132") ? true : (stryCov_9fa48("2132", "2133", "2134"), line.need === null)) ? null : stryMutAct_9fa48("2135") ? {} : (stryCov_9fa48("2135"), {
      ...line.need,
      low: stryMutAct_9fa48("2136") ? line.need.low / growth : (stryCov_9fa48("2136"), line.need.low * growth),
      high: stryMutAct_9fa48("2137") ? line.need.high / growth : (stryCov_9fa48("2137"), line.need.high * growth)
    })
  });
  return grown;
})());
function scaledComponent(compiled: CompiledComponent, index: number, demand: Demand): ScaledComponent {
  if (stryMutAct_9fa48("2138")) {
    {}
  } else {
    stryCov_9fa48("2138");
    const {
      dimension,
      low,
      high
    } = compiled.yield;
    const batches = demand.batches[index]!;
    const onHand = demand.onHand[index]!;
    const of = stryMutAct_9fa48("2139") ? () => undefined : (stryCov_9fa48("2139"), (() => {
      const of = (from: number, to: number): BaseAmount => stryMutAct_9fa48("2140") ? {} : (stryCov_9fa48("2140"), {
        dimension,
        low: from,
        high: to
      });
      return of;
    })());
    const used = of(restOf(demand.low[index]!, onHand), restOf(demand.high[index]!, onHand));
    const made = of(stryMutAct_9fa48("2141") ? batches / low : (stryCov_9fa48("2141"), batches * low), stryMutAct_9fa48("2142") ? Math.min(batches * high, used.high) : (stryCov_9fa48("2142"), Math.max(stryMutAct_9fa48("2143") ? batches / high : (stryCov_9fa48("2143"), batches * high), used.high)));
    return stryMutAct_9fa48("2144") ? {} : (stryCov_9fa48("2144"), {
      component: compiled.component,
      route: compiled.route,
      batches,
      loads: demand.loads[index]!,
      made: of(stryMutAct_9fa48("2145") ? Math.min(made.low, used.high) : (stryCov_9fa48("2145"), Math.max(made.low, used.high)), made.high),
      used,
      leftOver: of(restOf(made.low, used.high), restOf(made.high, used.low)),
      onHand: of(onHand, onHand),
      lines: compiled.lines.map(stryMutAct_9fa48("2146") ? () => undefined : (stryCov_9fa48("2146"), line => grown(line, batchGrowth(line, batches))))
    });
  }
}
function leftOverWarnings(plan: CompiledPlan, servings: number, stocks: ComponentsOnHand["stocks"], demand: Demand, components: readonly ScaledComponent[]): Warning[] {
  if (stryMutAct_9fa48("2147")) {
    {}
  } else {
    stryCov_9fa48("2147");
    const left = components.flatMap(stryMutAct_9fa48("2148") ? () => undefined : (stryCov_9fa48("2148"), ({
      leftOver,
      component: {
        slug
      }
    }, at) => (stryMutAct_9fa48("2152") ? leftOver.low <= 0 : stryMutAct_9fa48("2151") ? leftOver.low >= 0 : stryMutAct_9fa48("2150") ? false : stryMutAct_9fa48("2149") ? true : (stryCov_9fa48("2149", "2150", "2151", "2152"), leftOver.low > 0)) ? stryMutAct_9fa48("2153") ? [] : (stryCov_9fa48("2153"), [stryMutAct_9fa48("2154") ? {} : (stryCov_9fa48("2154"), {
      slug,
      index: plan.makeOrder[at]!
    })]) : stryMutAct_9fa48("2155") ? ["Stryker was here"] : (stryCov_9fa48("2155"), [])));
    if (stryMutAct_9fa48("2158") ? left.length !== 0 : stryMutAct_9fa48("2157") ? false : stryMutAct_9fa48("2156") ? true : (stryCov_9fa48("2156", "2157", "2158"), left.length === 0)) return stryMutAct_9fa48("2159") ? ["Stryker was here"] : (stryCov_9fa48("2159"), []);
    const indexes = left.map(stryMutAct_9fa48("2160") ? () => undefined : (stryCov_9fa48("2160"), ({
      index
    }) => index));
    const more = servingsMore(plan, servings, stocks, demand, indexes);
    return left.map(stryMutAct_9fa48("2161") ? () => undefined : (stryCov_9fa48("2161"), ({
      slug,
      index
    }) => stryMutAct_9fa48("2162") ? {} : (stryCov_9fa48("2162"), {
      code: stryMutAct_9fa48("2163") ? "" : (stryCov_9fa48("2163"), "LEFT_OVER"),
      path: stryMutAct_9fa48("2164") ? [] : (stryCov_9fa48("2164"), [stryMutAct_9fa48("2165") ? "" : (stryCov_9fa48("2165"), "components"), slug]),
      component: slug,
      servingsMore: stryMutAct_9fa48("2166") ? more.get(index) && null : (stryCov_9fa48("2166"), more.get(index) ?? null)
    })));
  }
}
export interface ScaledWithRest {
  readonly scaled: ScaledPlan;
  /** Share of each entry of `household.onHand` that the plan's components leave. */
  readonly left: readonly number[];
}

/** Nothing on hand is taken yet. */
export const allLeft = stryMutAct_9fa48("2167") ? () => undefined : (stryCov_9fa48("2167"), (() => {
  const allLeft = ({
    onHand
  }: Household): readonly number[] => onHand.map(stryMutAct_9fa48("2168") ? () => undefined : (stryCov_9fa48("2168"), () => 1));
  return allLeft;
})());
function leftAfter(left: readonly number[], {
  stocks
}: ComponentsOnHand, {
  taken
}: Demand): readonly number[] {
  if (stryMutAct_9fa48("2169")) {
    {}
  } else {
    stryCov_9fa48("2169");
    const after = stryMutAct_9fa48("2170") ? [] : (stryCov_9fa48("2170"), [...left]);
    for (const [index, stock] of stocks) {
      if (stryMutAct_9fa48("2171")) {
        {}
      } else {
        stryCov_9fa48("2171");
        stock.forEach(({
          amount,
          entry
        }, at) => {
          if (stryMutAct_9fa48("2172")) {
            {}
          } else {
            stryCov_9fa48("2172");
            if (stryMutAct_9fa48("2176") ? amount <= 0 : stryMutAct_9fa48("2175") ? amount >= 0 : stryMutAct_9fa48("2174") ? false : stryMutAct_9fa48("2173") ? true : (stryCov_9fa48("2173", "2174", "2175", "2176"), amount > 0)) stryMutAct_9fa48("2177") ? after[entry]! /= restOf(amount, taken.get(index)![at]!) / amount : (stryCov_9fa48("2177"), after[entry]! *= stryMutAct_9fa48("2178") ? restOf(amount, taken.get(index)![at]!) * amount : (stryCov_9fa48("2178"), restOf(amount, taken.get(index)![at]!) / amount));
          }
        });
      }
    }
    return after;
  }
}

/**
 * Scales a plan whose routes and swaps are chosen.
 *
 * @param left share of each entry of `household.onHand` that is still there
 * Problems: AMOUNT_OUT_OF_RANGE where a component would take more batches than anybody can make.
 */
export function scaleCompiled(plan: CompiledPlan, servings: number, household: Household, left: readonly number[]): Result<ScaledWithRest> {
  if (stryMutAct_9fa48("2179")) {
    {}
  } else {
    stryCov_9fa48("2179");
    const effective = effectiveServings(servings, household);
    const onHand = componentsOnHand(plan, household, left);
    const demand = demandFor(plan, effective, onHand.stocks);
    const tooMany = plan.makeOrder.find(stryMutAct_9fa48("2180") ? () => undefined : (stryCov_9fa48("2180"), index => stryMutAct_9fa48("2181") ? demand.batches[index]! <= limits.batches : (stryCov_9fa48("2181"), !(stryMutAct_9fa48("2185") ? demand.batches[index]! > limits.batches : stryMutAct_9fa48("2184") ? demand.batches[index]! < limits.batches : stryMutAct_9fa48("2183") ? false : stryMutAct_9fa48("2182") ? true : (stryCov_9fa48("2182", "2183", "2184", "2185"), demand.batches[index]! <= limits.batches)))));
    if (stryMutAct_9fa48("2188") ? tooMany === undefined : stryMutAct_9fa48("2187") ? false : stryMutAct_9fa48("2186") ? true : (stryCov_9fa48("2186", "2187", "2188"), tooMany !== undefined)) {
      if (stryMutAct_9fa48("2189")) {
        {}
      } else {
        stryCov_9fa48("2189");
        const slug = plan.components[tooMany]!.component.slug;
        const value = String(demand.batches[tooMany]);
        return failed(stryMutAct_9fa48("2190") ? [] : (stryCov_9fa48("2190"), [stryMutAct_9fa48("2191") ? {} : (stryCov_9fa48("2191"), {
          code: stryMutAct_9fa48("2192") ? "" : (stryCov_9fa48("2192"), "AMOUNT_OUT_OF_RANGE"),
          path: stryMutAct_9fa48("2193") ? [] : (stryCov_9fa48("2193"), [stryMutAct_9fa48("2194") ? "" : (stryCov_9fa48("2194"), "components"), slug]),
          value,
          min: 0,
          max: limits.batches
        })]));
      }
    }
    const meals = plan.meals.map(({
      meal,
      lines
    }): ScaledMeal => {
      if (stryMutAct_9fa48("2195")) {
        {}
      } else {
        stryCov_9fa48("2195");
        const factor = stryMutAct_9fa48("2196") ? effective * meal.serves : (stryCov_9fa48("2196"), effective / meal.serves);
        return stryMutAct_9fa48("2197") ? {} : (stryCov_9fa48("2197"), {
          meal,
          factor,
          lines: lines.map(stryMutAct_9fa48("2198") ? () => undefined : (stryCov_9fa48("2198"), line => grown(line, mealGrowth(line, factor))))
        });
      }
    });
    const components = plan.makeOrder.map(stryMutAct_9fa48("2199") ? () => undefined : (stryCov_9fa48("2199"), index => scaledComponent(plan.components[index]!, index, demand)));
    const warnings = stryMutAct_9fa48("2200") ? [] : (stryCov_9fa48("2200"), [...plan.warnings, ...onHand.warnings, ...leftOverWarnings(plan, effective, onHand.stocks, demand, components)]);
    return ok(stryMutAct_9fa48("2201") ? {} : (stryCov_9fa48("2201"), {
      scaled: stryMutAct_9fa48("2202") ? {} : (stryCov_9fa48("2202"), {
        bundle: plan.bundle,
        servings,
        meals,
        components,
        warnings
      }),
      left: leftAfter(left, onHand, demand)
    }));
  }
}