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
import type { Component } from "../model/component.js";
import type { Food } from "../model/food.js";
import type { Line } from "../model/line.js";
import type { Plan, PlanBundle } from "../model/plan.js";
const linesOf = stryMutAct_9fa48("0") ? () => undefined : (stryCov_9fa48("0"), (() => {
  const linesOf = ({
    lines,
    routes
  }: Component): readonly Line[] => stryMutAct_9fa48("1") ? [] : (stryCov_9fa48("1"), [...lines, ...routes.flatMap(stryMutAct_9fa48("2") ? () => undefined : (stryCov_9fa48("2"), route => route.lines))]);
  return linesOf;
})());
const componentsIn = stryMutAct_9fa48("3") ? () => undefined : (stryCov_9fa48("3"), (() => {
  const componentsIn = (lines: readonly Line[]): readonly string[] => lines.flatMap(stryMutAct_9fa48("4") ? () => undefined : (stryCov_9fa48("4"), ({
    item
  }) => (stryMutAct_9fa48("7") ? item.kind !== "COMPONENT" : stryMutAct_9fa48("6") ? false : stryMutAct_9fa48("5") ? true : (stryCov_9fa48("5", "6", "7"), item.kind === (stryMutAct_9fa48("8") ? "" : (stryCov_9fa48("8"), "COMPONENT")))) ? stryMutAct_9fa48("9") ? [] : (stryCov_9fa48("9"), [item.component]) : stryMutAct_9fa48("10") ? ["Stryker was here"] : (stryCov_9fa48("10"), [])));
  return componentsIn;
})());
const foodsIn = stryMutAct_9fa48("11") ? () => undefined : (stryCov_9fa48("11"), (() => {
  const foodsIn = (lines: readonly Line[]): readonly string[] => lines.flatMap(stryMutAct_9fa48("12") ? () => undefined : (stryCov_9fa48("12"), ({
    item,
    swaps
  }) => stryMutAct_9fa48("13") ? [] : (stryCov_9fa48("13"), [...((stryMutAct_9fa48("16") ? item.kind !== "FOOD" : stryMutAct_9fa48("15") ? false : stryMutAct_9fa48("14") ? true : (stryCov_9fa48("14", "15", "16"), item.kind === (stryMutAct_9fa48("17") ? "" : (stryCov_9fa48("17"), "FOOD")))) ? stryMutAct_9fa48("18") ? [] : (stryCov_9fa48("18"), [item.food]) : stryMutAct_9fa48("19") ? ["Stryker was here"] : (stryCov_9fa48("19"), [])), ...swaps.map(stryMutAct_9fa48("20") ? () => undefined : (stryCov_9fa48("20"), ({
    food
  }) => food))])));
  return foodsIn;
})());

/**
 * The plan with those of the components and foods that its lines, routes and swaps lead to, in the order given.
 * What is named but not given is left out; `checkBundle` says so. A cycle ends where it began.
 */
export function bundleOf(plan: Plan, components: readonly Component[], foods: readonly Food[]): PlanBundle {
  if (stryMutAct_9fa48("21")) {
    {}
  } else {
    stryCov_9fa48("21");
    const bySlug = new Map(components.map(stryMutAct_9fa48("22") ? () => undefined : (stryCov_9fa48("22"), component => stryMutAct_9fa48("23") ? [] : (stryCov_9fa48("23"), [component.slug, component]))));
    const mealLines = plan.meals.flatMap(stryMutAct_9fa48("24") ? () => undefined : (stryCov_9fa48("24"), ({
      lines
    }) => lines));
    const reached = new Set<string>();
    const open = stryMutAct_9fa48("25") ? [] : (stryCov_9fa48("25"), [...componentsIn(mealLines)]);
    for (let slug = open.pop(); stryMutAct_9fa48("27") ? slug === undefined : stryMutAct_9fa48("26") ? false : (stryCov_9fa48("26", "27"), slug !== undefined); slug = open.pop()) {
      if (stryMutAct_9fa48("28")) {
        {}
      } else {
        stryCov_9fa48("28");
        const component = bySlug.get(slug);
        if (stryMutAct_9fa48("31") ? component === undefined && reached.has(slug) : stryMutAct_9fa48("30") ? false : stryMutAct_9fa48("29") ? true : (stryCov_9fa48("29", "30", "31"), (stryMutAct_9fa48("33") ? component !== undefined : stryMutAct_9fa48("32") ? false : (stryCov_9fa48("32", "33"), component === undefined)) || reached.has(slug))) continue;
        reached.add(slug);
        open.push(...componentsIn(linesOf(component)));
      }
    }
    const used = stryMutAct_9fa48("34") ? components : (stryCov_9fa48("34"), components.filter(stryMutAct_9fa48("35") ? () => undefined : (stryCov_9fa48("35"), ({
      slug
    }) => reached.has(slug))));
    const named = new Set(foodsIn(stryMutAct_9fa48("36") ? [] : (stryCov_9fa48("36"), [...mealLines, ...used.flatMap(linesOf)])));
    return stryMutAct_9fa48("37") ? {} : (stryCov_9fa48("37"), {
      plan,
      components: used,
      foods: stryMutAct_9fa48("38") ? foods : (stryCov_9fa48("38"), foods.filter(stryMutAct_9fa48("39") ? () => undefined : (stryCov_9fa48("39"), ({
        slug
      }) => named.has(slug))))
    });
  }
}