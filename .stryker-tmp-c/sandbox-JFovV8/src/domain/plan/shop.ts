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
import { restOf } from "../limits.js";
import type { Food } from "../model/food.js";
import type { Household } from "../model/household.js";
import type { Warning, WarningCode } from "../problem.js";
import { costsOf, type LineCost, type PackCount } from "../shopping/cost.js";
import { mergeNeeds, partsOver, type Contribution, type MergedNeed } from "../shopping/merge.js";
import { knownShelf } from "../shopping/known-shelf.js";
import { currencyFor, type Shop } from "../shopping/pack-options.js";
import { choosePacks } from "../shopping/packs.js";
import { contributionsOf, restated, type Source } from "./contributions.js";
import { effectiveServings } from "./eaters.js";
import { useFoodStock } from "./food-stock.js";
import { asFrozen, type FoodsToday } from "./foods-today.js";
import type { ScaledPlan, ShoppingLine, ShoppingList, Use } from "./scaled.js";
import { waitingOnList } from "./waiting-on-list.js";

/** What plans say that a reader of the list alone should hear too: what is missing on it, and what is on it all the same. */
const carried: ReadonlySet<WarningCode> = new Set<WarningCode>(stryMutAct_9fa48("2560") ? [] : (stryCov_9fa48("2560"), [stryMutAct_9fa48("2561") ? "" : (stryCov_9fa48("2561"), "NOT_COMBINED"), stryMutAct_9fa48("2562") ? "" : (stryCov_9fa48("2562"), "PART_NOT_COUNTED"), stryMutAct_9fa48("2563") ? "" : (stryCov_9fa48("2563"), "EDIBLE_PORTION_UNKNOWN"), stryMutAct_9fa48("2564") ? "" : (stryCov_9fa48("2564"), "DIET_NOT_MET"), stryMutAct_9fa48("2565") ? "" : (stryCov_9fa48("2565"), "SWAP_NOT_OFFERED")]));

/** With the place of the plan in the path where there are several. */
const carriedOver = stryMutAct_9fa48("2566") ? () => undefined : (stryCov_9fa48("2566"), (() => {
  const carriedOver = (plans: readonly ScaledPlan[]): Warning[] => plans.flatMap(stryMutAct_9fa48("2567") ? () => undefined : (stryCov_9fa48("2567"), ({
    warnings
  }, at) => stryMutAct_9fa48("2568") ? warnings.map(each => plans.length > 1 ? {
    ...each,
    path: ["plans", at, ...each.path]
  } : each) : (stryCov_9fa48("2568"), warnings.filter(stryMutAct_9fa48("2569") ? () => undefined : (stryCov_9fa48("2569"), ({
    code
  }) => carried.has(code))).map(stryMutAct_9fa48("2570") ? () => undefined : (stryCov_9fa48("2570"), each => (stryMutAct_9fa48("2574") ? plans.length <= 1 : stryMutAct_9fa48("2573") ? plans.length >= 1 : stryMutAct_9fa48("2572") ? false : stryMutAct_9fa48("2571") ? true : (stryCov_9fa48("2571", "2572", "2573", "2574"), plans.length > 1)) ? stryMutAct_9fa48("2575") ? {} : (stryCov_9fa48("2575"), {
    ...each,
    path: stryMutAct_9fa48("2576") ? [] : (stryCov_9fa48("2576"), [stryMutAct_9fa48("2577") ? "" : (stryCov_9fa48("2577"), "plans"), at, ...each.path])
  }) : each)))));
  return carriedOver;
})());
const useOf = stryMutAct_9fa48("2578") ? () => undefined : (stryCov_9fa48("2578"), (() => {
  const useOf = ({
    source,
    part,
    dimension,
    low,
    high
  }: Contribution<Source>): Use => stryMutAct_9fa48("2579") ? {} : (stryCov_9fa48("2579"), {
    bundle: source.scaled.bundle,
    meal: source.meal,
    component: source.component,
    part,
    asWritten: source.line.line.written,
    amount: (stryMutAct_9fa48("2582") ? dimension !== null : stryMutAct_9fa48("2581") ? false : stryMutAct_9fa48("2580") ? true : (stryCov_9fa48("2580", "2581", "2582"), dimension === null)) ? null : stryMutAct_9fa48("2583") ? {} : (stryCov_9fa48("2583"), {
      dimension,
      low,
      high
    })
  });
  return useOf;
})());
interface Bought {
  readonly buy: readonly PackCount[];
  readonly cost: LineCost;
  readonly warnings: readonly Warning[];
}

/** Chooses packs for one line. Without packs the amount itself is what to buy, and its price is not known. */
function buyLine(line: MergedNeed<Source>, toBuy: number, food: Food, shop: Shop): Bought {
  if (stryMutAct_9fa48("2584")) {
    {}
  } else {
    stryCov_9fa48("2584");
    const path = stryMutAct_9fa48("2585") ? [] : (stryCov_9fa48("2585"), [stryMutAct_9fa48("2586") ? "" : (stryCov_9fa48("2586"), "foods"), food.slug]);
    const unpriced: Warning = stryMutAct_9fa48("2587") ? {} : (stryCov_9fa48("2587"), {
      code: stryMutAct_9fa48("2588") ? "" : (stryCov_9fa48("2588"), "PRICE_UNKNOWN"),
      path,
      food: food.slug
    });
    const unknown = stryMutAct_9fa48("2589") ? {} : (stryCov_9fa48("2589"), {
      food: food.slug,
      atTill: null,
      usedShare: 0
    });
    if (stryMutAct_9fa48("2592") ? line.dimension !== null : stryMutAct_9fa48("2591") ? false : stryMutAct_9fa48("2590") ? true : (stryCov_9fa48("2590", "2591", "2592"), line.dimension === null)) return stryMutAct_9fa48("2593") ? {} : (stryCov_9fa48("2593"), {
      buy: stryMutAct_9fa48("2594") ? ["Stryker was here"] : (stryCov_9fa48("2594"), []),
      cost: unknown,
      warnings: stryMutAct_9fa48("2595") ? ["Stryker was here"] : (stryCov_9fa48("2595"), [])
    });
    if (stryMutAct_9fa48("2599") ? toBuy > 0 : stryMutAct_9fa48("2598") ? toBuy < 0 : stryMutAct_9fa48("2597") ? false : stryMutAct_9fa48("2596") ? true : (stryCov_9fa48("2596", "2597", "2598", "2599"), toBuy <= 0)) return stryMutAct_9fa48("2600") ? {} : (stryCov_9fa48("2600"), {
      buy: stryMutAct_9fa48("2601") ? ["Stryker was here"] : (stryCov_9fa48("2601"), []),
      cost: stryMutAct_9fa48("2602") ? {} : (stryCov_9fa48("2602"), {
        food: food.slug,
        atTill: 0,
        usedShare: 0
      }),
      warnings: stryMutAct_9fa48("2603") ? ["Stryker was here"] : (stryCov_9fa48("2603"), [])
    });
    const shelf = knownShelf(food, line.dimension, shop);
    const warnings = shelf.notComparable.map(stryMutAct_9fa48("2604") ? () => undefined : (stryCov_9fa48("2604"), ({
      pack,
      missing
    }): Warning => stryMutAct_9fa48("2605") ? {} : (stryCov_9fa48("2605"), {
      code: stryMutAct_9fa48("2606") ? "" : (stryCov_9fa48("2606"), "PACK_NOT_COMPARABLE"),
      path,
      food: food.slug,
      pack: pack.name,
      missing
    })));
    const choice = choosePacks(toBuy, shelf.options);
    if (stryMutAct_9fa48("2609") ? choice !== null : stryMutAct_9fa48("2608") ? false : stryMutAct_9fa48("2607") ? true : (stryCov_9fa48("2607", "2608", "2609"), choice === null)) return stryMutAct_9fa48("2610") ? {} : (stryCov_9fa48("2610"), {
      buy: stryMutAct_9fa48("2611") ? ["Stryker was here"] : (stryCov_9fa48("2611"), []),
      cost: unknown,
      warnings: stryMutAct_9fa48("2612") ? [] : (stryCov_9fa48("2612"), [...warnings, unpriced])
    });
    const buy = shelf.packs.flatMap(stryMutAct_9fa48("2613") ? () => undefined : (stryCov_9fa48("2613"), (pack, at) => (stryMutAct_9fa48("2617") ? choice.counts[at]! <= 0 : stryMutAct_9fa48("2616") ? choice.counts[at]! >= 0 : stryMutAct_9fa48("2615") ? false : stryMutAct_9fa48("2614") ? true : (stryCov_9fa48("2614", "2615", "2616", "2617"), choice.counts[at]! > 0)) ? stryMutAct_9fa48("2618") ? [] : (stryCov_9fa48("2618"), [stryMutAct_9fa48("2619") ? {} : (stryCov_9fa48("2619"), {
      pack,
      count: choice.counts[at]!
    })]) : stryMutAct_9fa48("2620") ? ["Stryker was here"] : (stryCov_9fa48("2620"), [])));
    if (stryMutAct_9fa48("2623") ? choice.price !== null : stryMutAct_9fa48("2622") ? false : stryMutAct_9fa48("2621") ? true : (stryCov_9fa48("2621", "2622", "2623"), choice.price === null)) return stryMutAct_9fa48("2624") ? {} : (stryCov_9fa48("2624"), {
      buy,
      cost: unknown,
      warnings: stryMutAct_9fa48("2625") ? [] : (stryCov_9fa48("2625"), [...warnings, unpriced])
    });
    return stryMutAct_9fa48("2626") ? {} : (stryCov_9fa48("2626"), {
      buy,
      cost: stryMutAct_9fa48("2627") ? {} : (stryCov_9fa48("2627"), {
        food: food.slug,
        atTill: choice.price,
        usedShare: stryMutAct_9fa48("2628") ? Math.max(1, toBuy / choice.content) : (stryCov_9fa48("2628"), Math.min(1, stryMutAct_9fa48("2629") ? toBuy * choice.content : (stryCov_9fa48("2629"), toBuy / choice.content)))
      }),
      warnings
    });
  }
}

/** Components that more than one of the plans makes, each in its own session (docs/decisions/0002). */
function madeTwice(plans: readonly ScaledPlan[]): Warning[] {
  if (stryMutAct_9fa48("2630")) {
    {}
  } else {
    stryCov_9fa48("2630");
    const makers = new Map<string, {
      readonly component: string;
      readonly slugs: string[];
    }>();
    for (const {
      bundle,
      components
    } of plans) {
      if (stryMutAct_9fa48("2631")) {
        {}
      } else {
        stryCov_9fa48("2631");
        for (const {
          component,
          batches
        } of components) {
          if (stryMutAct_9fa48("2632")) {
            {}
          } else {
            stryCov_9fa48("2632");
            if (stryMutAct_9fa48("2635") ? batches !== 0 : stryMutAct_9fa48("2634") ? false : stryMutAct_9fa48("2633") ? true : (stryCov_9fa48("2633", "2634", "2635"), batches === 0)) continue;
            const key = JSON.stringify(stryMutAct_9fa48("2636") ? [] : (stryCov_9fa48("2636"), [bundle.plan.publisher, component.slug]));
            const known = makers.get(key);
            if (stryMutAct_9fa48("2639") ? known !== undefined : stryMutAct_9fa48("2638") ? false : stryMutAct_9fa48("2637") ? true : (stryCov_9fa48("2637", "2638", "2639"), known === undefined)) makers.set(key, stryMutAct_9fa48("2640") ? {} : (stryCov_9fa48("2640"), {
              component: component.slug,
              slugs: stryMutAct_9fa48("2641") ? [] : (stryCov_9fa48("2641"), [bundle.plan.slug])
            }));else known.slugs.push(bundle.plan.slug);
          }
        }
      }
    }
    return (stryMutAct_9fa48("2642") ? [] : (stryCov_9fa48("2642"), [...makers.values()])).flatMap(stryMutAct_9fa48("2643") ? () => undefined : (stryCov_9fa48("2643"), ({
      component,
      slugs
    }): Warning[] => (stryMutAct_9fa48("2647") ? slugs.length >= 2 : stryMutAct_9fa48("2646") ? slugs.length <= 2 : stryMutAct_9fa48("2645") ? false : stryMutAct_9fa48("2644") ? true : (stryCov_9fa48("2644", "2645", "2646", "2647"), slugs.length < 2)) ? stryMutAct_9fa48("2648") ? ["Stryker was here"] : (stryCov_9fa48("2648"), []) : stryMutAct_9fa48("2649") ? [] : (stryCov_9fa48("2649"), [stryMutAct_9fa48("2650") ? {} : (stryCov_9fa48("2650"), {
      code: stryMutAct_9fa48("2651") ? "" : (stryCov_9fa48("2651"), "MADE_IN_TWO_PLANS"),
      path: stryMutAct_9fa48("2652") ? [] : (stryCov_9fa48("2652"), [stryMutAct_9fa48("2653") ? "" : (stryCov_9fa48("2653"), "components"), component]),
      component,
      plans: slugs
    })])));
  }
}

/**
 * Foods as the plans froze them. Where two plans froze one food differently and nothing newer is known, which one is taken must
 * not hang on the order of the plans.
 */
function frozenFoods(plans: readonly ScaledPlan[]): ReadonlyMap<string, Food> {
  if (stryMutAct_9fa48("2654")) {
    {}
  } else {
    stryCov_9fa48("2654");
    const found = new Map<string, Food>();
    for (const {
      bundle
    } of plans) {
      if (stryMutAct_9fa48("2655")) {
        {}
      } else {
        stryCov_9fa48("2655");
        for (const food of bundle.foods) {
          if (stryMutAct_9fa48("2656")) {
            {}
          } else {
            stryCov_9fa48("2656");
            const known = found.get(food.slug);
            if (stryMutAct_9fa48("2659") ? known !== undefined : stryMutAct_9fa48("2658") ? false : stryMutAct_9fa48("2657") ? true : (stryCov_9fa48("2657", "2658", "2659"), known === undefined)) found.set(food.slug, food);else if (stryMutAct_9fa48("2662") ? known !== food || JSON.stringify(known) < JSON.stringify(food) : stryMutAct_9fa48("2661") ? false : stryMutAct_9fa48("2660") ? true : (stryCov_9fa48("2660", "2661", "2662"), (stryMutAct_9fa48("2664") ? known === food : stryMutAct_9fa48("2663") ? true : (stryCov_9fa48("2663", "2664"), known !== food)) && (stryMutAct_9fa48("2667") ? JSON.stringify(known) >= JSON.stringify(food) : stryMutAct_9fa48("2666") ? JSON.stringify(known) <= JSON.stringify(food) : stryMutAct_9fa48("2665") ? true : (stryCov_9fa48("2665", "2666", "2667"), JSON.stringify(known) < JSON.stringify(food))))) found.set(food.slug, food);
          }
        }
      }
    }
    return found;
  }
}

/**
 * One list for any number of scaled plans: needs merged over all of them, then what is on hand, then whole packs, each
 * rounded once and last. Every line names its uses, which account for its need.
 */
export function shop(plans: readonly ScaledPlan[], household: Household, today: FoodsToday = asFrozen): ShoppingList {
  if (stryMutAct_9fa48("2668")) {
    {}
  } else {
    stryCov_9fa48("2668");
    const frozen = frozenFoods(plans);
    const find = stryMutAct_9fa48("2669") ? () => undefined : (stryCov_9fa48("2669"), (() => {
      const find = (slug: string): Food | null => stryMutAct_9fa48("2670") ? (today.bySlug.get(slug) ?? frozen.get(slug)) && null : (stryCov_9fa48("2670"), (stryMutAct_9fa48("2671") ? today.bySlug.get(slug) && frozen.get(slug) : (stryCov_9fa48("2671"), today.bySlug.get(slug) ?? frozen.get(slug))) ?? null);
      return find;
    })());
    const current = stryMutAct_9fa48("2672") ? () => undefined : (stryCov_9fa48("2672"), (() => {
      const current = (slug: string): Food | null => stryMutAct_9fa48("2673") ? find(today.canonical(slug)) && find(slug) : (stryCov_9fa48("2673"), find(today.canonical(slug)) ?? find(slug));
      return current;
    })());
    const all = plans.flatMap(stryMutAct_9fa48("2674") ? () => undefined : (stryCov_9fa48("2674"), plan => contributionsOf(plan, today.partKeeps))).map(stryMutAct_9fa48("2675") ? () => undefined : (stryCov_9fa48("2675"), each => restated(each, stryMutAct_9fa48("2676") ? current(each.food.slug) && each.food : (stryCov_9fa48("2676"), current(each.food.slug) ?? each.food))));
    const needs = mergeNeeds(all.map(stryMutAct_9fa48("2677") ? () => undefined : (stryCov_9fa48("2677"), ({
      contribution
    }) => contribution)));
    const stock = useFoodStock(needs, household, today.canonical, find);
    const place: Shop = stryMutAct_9fa48("2678") ? {} : (stryCov_9fa48("2678"), {
      region: household.region,
      currency: household.currency
    });
    const currency = currencyFor(needs.map(stryMutAct_9fa48("2679") ? () => undefined : (stryCov_9fa48("2679"), ({
      food
    }) => food)), place);
    const toBuy = needs.map(stryMutAct_9fa48("2680") ? () => undefined : (stryCov_9fa48("2680"), ({
      high
    }, at) => restOf(high, stock.covered[at]!)));
    const bought = needs.map(stryMutAct_9fa48("2681") ? () => undefined : (stryCov_9fa48("2681"), (line, at) => buyLine(line, toBuy[at]!, line.food, stryMutAct_9fa48("2682") ? {} : (stryCov_9fa48("2682"), {
      ...place,
      currency
    }))));
    const servings = plans.reduce(stryMutAct_9fa48("2683") ? () => undefined : (stryCov_9fa48("2683"), (sum, scaled) => stryMutAct_9fa48("2684") ? sum - effectiveServings(scaled.servings, household) : (stryCov_9fa48("2684"), sum + effectiveServings(scaled.servings, household))), 0);
    const costs = costsOf(bought.map(stryMutAct_9fa48("2685") ? () => undefined : (stryCov_9fa48("2685"), ({
      cost
    }) => cost)), servings, currency);
    const lines = needs.map((line, at): ShoppingLine => {
      if (stryMutAct_9fa48("2686")) {
        {}
      } else {
        stryCov_9fa48("2686");
        const {
          dimension,
          low,
          high,
          food,
          open,
          contributions
        } = line;
        const of = stryMutAct_9fa48("2687") ? () => undefined : (stryCov_9fa48("2687"), (() => {
          const of = (value: number): ShoppingLine["need"] => (stryMutAct_9fa48("2690") ? dimension !== null : stryMutAct_9fa48("2689") ? false : stryMutAct_9fa48("2688") ? true : (stryCov_9fa48("2688", "2689", "2690"), dimension === null)) ? null : stryMutAct_9fa48("2691") ? {} : (stryCov_9fa48("2691"), {
            dimension,
            low: value,
            high: value
          });
          return of;
        })());
        return stryMutAct_9fa48("2692") ? {} : (stryCov_9fa48("2692"), {
          food,
          need: (stryMutAct_9fa48("2695") ? dimension !== null : stryMutAct_9fa48("2694") ? false : stryMutAct_9fa48("2693") ? true : (stryCov_9fa48("2693", "2694", "2695"), dimension === null)) ? null : stryMutAct_9fa48("2696") ? {} : (stryCov_9fa48("2696"), {
            dimension,
            low,
            high
          }),
          onHand: of(stock.covered[at]!),
          toBuy: of(toBuy[at]!),
          buy: bought[at]!.buy,
          cost: costs.lines[at]!,
          uses: contributions.map(useOf),
          partsOver: partsOver(food, contributions),
          open
        });
      }
    });
    const warnings = stryMutAct_9fa48("2697") ? [] : (stryCov_9fa48("2697"), [...carriedOver(plans), ...all.flatMap(stryMutAct_9fa48("2698") ? () => undefined : (stryCov_9fa48("2698"), ({
      warning
    }) => (stryMutAct_9fa48("2701") ? warning !== null : stryMutAct_9fa48("2700") ? false : stryMutAct_9fa48("2699") ? true : (stryCov_9fa48("2699", "2700", "2701"), warning === null)) ? stryMutAct_9fa48("2702") ? ["Stryker was here"] : (stryCov_9fa48("2702"), []) : stryMutAct_9fa48("2703") ? [] : (stryCov_9fa48("2703"), [warning]))), ...needs.flatMap(stryMutAct_9fa48("2704") ? () => undefined : (stryCov_9fa48("2704"), line => waitingOnList(line, plans))), ...stock.warnings, ...bought.flatMap(stryMutAct_9fa48("2705") ? () => undefined : (stryCov_9fa48("2705"), each => each.warnings)), ...((stryMutAct_9fa48("2709") ? plans.length <= 1 : stryMutAct_9fa48("2708") ? plans.length >= 1 : stryMutAct_9fa48("2707") ? false : stryMutAct_9fa48("2706") ? true : (stryCov_9fa48("2706", "2707", "2708", "2709"), plans.length > 1)) ? madeTwice(plans) : stryMutAct_9fa48("2710") ? ["Stryker was here"] : (stryCov_9fa48("2710"), []))]);
    return stryMutAct_9fa48("2711") ? {} : (stryCov_9fa48("2711"), {
      lines,
      cost: costs.list,
      warnings
    });
  }
}