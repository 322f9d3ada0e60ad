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
import { batchSizes } from "../component/batch.js";
import { componentGraph } from "../component/graph.js";
import type { Component, Route } from "../model/component.js";
import { noHousehold, type Household } from "../model/household.js";
import type { Line } from "../model/line.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Path, type Problem, type Result, type Warning } from "../problem.js";
import { asStated, type DietJudge } from "../nutrition/diets.js";
import { toBase } from "../quantity/convert.js";
import { checkBundle } from "./check-bundle.js";
import { chooseSwap, swapsNotOffered } from "./choose-swap.js";
import { compileLine } from "./compile-line.js";
import type { CompiledComponent, CompiledLine, CompiledMeal, CompiledPlan } from "./compiled-plan.js";
import { lineContext } from "./line-context.js";

/** For each component of the bundle, by slug, the route to take instead of making it as written. */
export type RouteChoice = ReadonlyMap<string, Route>;
const asWritten: RouteChoice = new Map();
interface Lines {
  readonly lines: readonly CompiledLine[];
  readonly warnings: readonly Warning[];
}

/** What a household's wishes change about a compiled plan; two households with equal keys share it. */
const choiceKey = stryMutAct_9fa48("1421") ? () => undefined : (stryCov_9fa48("1421"), (() => {
  const choiceKey = (routes: RouteChoice, household: Household): string => (stryMutAct_9fa48("1424") ? routes.size === 0 && household.diets.length === 0 || household.swaps.length === 0 : stryMutAct_9fa48("1423") ? false : stryMutAct_9fa48("1422") ? true : (stryCov_9fa48("1422", "1423", "1424"), (stryMutAct_9fa48("1426") ? routes.size === 0 || household.diets.length === 0 : stryMutAct_9fa48("1425") ? true : (stryCov_9fa48("1425", "1426"), (stryMutAct_9fa48("1428") ? routes.size !== 0 : stryMutAct_9fa48("1427") ? true : (stryCov_9fa48("1427", "1428"), routes.size === 0)) && (stryMutAct_9fa48("1430") ? household.diets.length !== 0 : stryMutAct_9fa48("1429") ? true : (stryCov_9fa48("1429", "1430"), household.diets.length === 0)))) && (stryMutAct_9fa48("1432") ? household.swaps.length !== 0 : stryMutAct_9fa48("1431") ? true : (stryCov_9fa48("1431", "1432"), household.swaps.length === 0)))) ? stryMutAct_9fa48("1433") ? "Stryker was here!" : (stryCov_9fa48("1433"), "") : JSON.stringify(stryMutAct_9fa48("1434") ? [] : (stryCov_9fa48("1434"), [(stryMutAct_9fa48("1435") ? [] : (stryCov_9fa48("1435"), [...routes])).map(stryMutAct_9fa48("1436") ? () => undefined : (stryCov_9fa48("1436"), ([component, route]) => stryMutAct_9fa48("1437") ? [] : (stryCov_9fa48("1437"), [component, route.name]))).toSorted(), household.diets, household.swaps]));
  return choiceKey;
})());

/** Ways one bundle may be asked for that are kept compiled; readers' wishes are many, bundles live long. */
const keptPerBundle = 16;
const compiled = new WeakMap<PlanBundle, WeakMap<DietJudge, Map<string, Result<CompiledPlan>>>>();
function keptFor(bundle: PlanBundle, fitsDiet: DietJudge): Map<string, Result<CompiledPlan>> {
  if (stryMutAct_9fa48("1438")) {
    {}
  } else {
    stryCov_9fa48("1438");
    const byJudge = stryMutAct_9fa48("1439") ? compiled.get(bundle) && new WeakMap<DietJudge, Map<string, Result<CompiledPlan>>>() : (stryCov_9fa48("1439"), compiled.get(bundle) ?? new WeakMap<DietJudge, Map<string, Result<CompiledPlan>>>());
    compiled.set(bundle, byJudge);
    const kept = stryMutAct_9fa48("1440") ? byJudge.get(fitsDiet) && new Map<string, Result<CompiledPlan>>() : (stryCov_9fa48("1440"), byJudge.get(fitsDiet) ?? new Map<string, Result<CompiledPlan>>());
    byJudge.set(fitsDiet, kept);
    return kept;
  }
}

/**
 * Resolves every reference, unit and fact of a plan once, for one choice of routes and swaps. The answer is kept as long as
 * the bundle lives. Fails with all problems of `checkBundle`.
 */
export function compilePlan(bundle: PlanBundle, household: Household = noHousehold, routes: RouteChoice = asWritten, fitsDiet: DietJudge = asStated): Result<CompiledPlan> {
  if (stryMutAct_9fa48("1441")) {
    {}
  } else {
    stryCov_9fa48("1441");
    const kept = keptFor(bundle, fitsDiet);
    const key = choiceKey(routes, household);
    const known = kept.get(key);
    if (stryMutAct_9fa48("1444") ? known === undefined : stryMutAct_9fa48("1443") ? false : stryMutAct_9fa48("1442") ? true : (stryCov_9fa48("1442", "1443", "1444"), known !== undefined)) return known;
    const oldest = kept.keys().next();
    if (stryMutAct_9fa48("1447") ? kept.size >= keptPerBundle || oldest.done !== true : stryMutAct_9fa48("1446") ? false : stryMutAct_9fa48("1445") ? true : (stryCov_9fa48("1445", "1446", "1447"), (stryMutAct_9fa48("1450") ? kept.size < keptPerBundle : stryMutAct_9fa48("1449") ? kept.size > keptPerBundle : stryMutAct_9fa48("1448") ? true : (stryCov_9fa48("1448", "1449", "1450"), kept.size >= keptPerBundle)) && (stryMutAct_9fa48("1452") ? oldest.done === true : stryMutAct_9fa48("1451") ? true : (stryCov_9fa48("1451", "1452"), oldest.done !== (stryMutAct_9fa48("1453") ? false : (stryCov_9fa48("1453"), true)))))) kept.delete(oldest.value);
    const result = compile(bundle, household, routes, fitsDiet);
    kept.set(key, result);
    return result;
  }
}
function compile(bundle: PlanBundle, household: Household, routes: RouteChoice, fitsDiet: DietJudge): Result<CompiledPlan> {
  if (stryMutAct_9fa48("1454")) {
    {}
  } else {
    stryCov_9fa48("1454");
    const problems = checkBundle(bundle);
    if (stryMutAct_9fa48("1458") ? problems.length <= 0 : stryMutAct_9fa48("1457") ? problems.length >= 0 : stryMutAct_9fa48("1456") ? false : stryMutAct_9fa48("1455") ? true : (stryCov_9fa48("1455", "1456", "1457", "1458"), problems.length > 0)) return failed(problems);
    const context = lineContext(bundle);
    const faults: Problem[] = stryMutAct_9fa48("1459") ? ["Stryker was here"] : (stryCov_9fa48("1459"), []);
    const linesOf = (lines: readonly Line[], path: Path): Lines => {
      if (stryMutAct_9fa48("1460")) {
        {}
      } else {
        stryCov_9fa48("1460");
        const done: CompiledLine[] = stryMutAct_9fa48("1461") ? ["Stryker was here"] : (stryCov_9fa48("1461"), []);
        const warnings: Warning[] = stryMutAct_9fa48("1462") ? ["Stryker was here"] : (stryCov_9fa48("1462"), []);
        for (const line of lines) {
          if (stryMutAct_9fa48("1463")) {
            {}
          } else {
            stryCov_9fa48("1463");
            const at = stryMutAct_9fa48("1464") ? [] : (stryCov_9fa48("1464"), [...path, stryMutAct_9fa48("1465") ? "" : (stryCov_9fa48("1465"), "lines"), line.id]);
            const chosen = chooseSwap(line, household, context.foods, fitsDiet, at);
            const result = compileLine(line, chosen.swap, at, context);
            if (stryMutAct_9fa48("1467") ? false : stryMutAct_9fa48("1466") ? true : (stryCov_9fa48("1466", "1467"), result.ok)) done.push(result.value.line);else faults.push(...result.problems);
            warnings.push(...chosen.warnings, ...(result.ok ? result.value.warnings : stryMutAct_9fa48("1468") ? ["Stryker was here"] : (stryCov_9fa48("1468"), [])));
          }
        }
        return stryMutAct_9fa48("1469") ? {} : (stryCov_9fa48("1469"), {
          lines: done,
          warnings
        });
      }
    };
    const warnings: Warning[] = stryMutAct_9fa48("1470") ? ["Stryker was here"] : (stryCov_9fa48("1470"), []);
    const meals = bundle.plan.meals.map((meal): CompiledMeal => {
      if (stryMutAct_9fa48("1471")) {
        {}
      } else {
        stryCov_9fa48("1471");
        const lines = linesOf(meal.lines, stryMutAct_9fa48("1472") ? [] : (stryCov_9fa48("1472"), [stryMutAct_9fa48("1473") ? "" : (stryCov_9fa48("1473"), "meals"), meal.slug]));
        warnings.push(...lines.warnings);
        return stryMutAct_9fa48("1474") ? {} : (stryCov_9fa48("1474"), {
          meal,
          lines: lines.lines,
          takes: stryMutAct_9fa48("1475") ? lines.lines : (stryCov_9fa48("1475"), lines.lines.filter(stryMutAct_9fa48("1476") ? () => undefined : (stryCov_9fa48("1476"), ({
            component
          }) => stryMutAct_9fa48("1480") ? component < 0 : stryMutAct_9fa48("1479") ? component > 0 : stryMutAct_9fa48("1478") ? false : stryMutAct_9fa48("1477") ? true : (stryCov_9fa48("1477", "1478", "1479", "1480"), component >= 0))))
        });
      }
    });
    const made = bundle.components.map(stryMutAct_9fa48("1481") ? () => undefined : (stryCov_9fa48("1481"), component => routed(component, stryMutAct_9fa48("1482") ? routes.get(component.slug) && null : (stryCov_9fa48("1482"), routes.get(component.slug) ?? null))));
    // A component that only an abandoned route's lines led to is not made, and its warnings do not matter.
    const graph = componentGraph(made.map(stryMutAct_9fa48("1483") ? () => undefined : (stryCov_9fa48("1483"), ({
      lines,
      component
    }) => stryMutAct_9fa48("1484") ? {} : (stryCov_9fa48("1484"), {
      ...component,
      lines,
      routes: stryMutAct_9fa48("1485") ? ["Stryker was here"] : (stryCov_9fa48("1485"), [])
    }))), bundle.plan.meals.flatMap(stryMutAct_9fa48("1486") ? () => undefined : (stryCov_9fa48("1486"), ({
      lines
    }) => lines)));
    const unreached = new Set(graph.unreached);
    const components = made.map(({
      component,
      route,
      lines: written,
      path
    }): CompiledComponent => {
      if (stryMutAct_9fa48("1487")) {
        {}
      } else {
        stryCov_9fa48("1487");
        const lines = linesOf(written, path);
        if (stryMutAct_9fa48("1490") ? false : stryMutAct_9fa48("1489") ? true : stryMutAct_9fa48("1488") ? unreached.has(component.slug) : (stryCov_9fa48("1488", "1489", "1490"), !unreached.has(component.slug))) warnings.push(...lines.warnings);
        const base = toBase(component.yield.amount, component, null);
        if (stryMutAct_9fa48("1493") ? false : stryMutAct_9fa48("1492") ? true : stryMutAct_9fa48("1491") ? base.ok : (stryCov_9fa48("1491", "1492", "1493"), !base.ok)) throw new TypeError(stryMutAct_9fa48("1494") ? `` : (stryCov_9fa48("1494"), `the yield of ${component.slug} was checked and is not convertible`));
        return stryMutAct_9fa48("1495") ? {} : (stryCov_9fa48("1495"), {
          component,
          route,
          lines: lines.lines,
          takes: stryMutAct_9fa48("1496") ? lines.lines : (stryCov_9fa48("1496"), lines.lines.filter(stryMutAct_9fa48("1497") ? () => undefined : (stryCov_9fa48("1497"), ({
            component: index
          }) => stryMutAct_9fa48("1501") ? index < 0 : stryMutAct_9fa48("1500") ? index > 0 : stryMutAct_9fa48("1499") ? false : stryMutAct_9fa48("1498") ? true : (stryCov_9fa48("1498", "1499", "1500", "1501"), index >= 0)))),
          sizes: batchSizes(component.batch),
          yield: base.amount
        });
      }
    });
    if (stryMutAct_9fa48("1505") ? faults.length <= 0 : stryMutAct_9fa48("1504") ? faults.length >= 0 : stryMutAct_9fa48("1503") ? false : stryMutAct_9fa48("1502") ? true : (stryCov_9fa48("1502", "1503", "1504", "1505"), faults.length > 0)) return failed(faults);
    const makeOrder = stryMutAct_9fa48("1506") ? graph.makeOrder : (stryCov_9fa48("1506"), graph.makeOrder.filter(stryMutAct_9fa48("1507") ? () => undefined : (stryCov_9fa48("1507"), index => stryMutAct_9fa48("1508") ? unreached.has(bundle.components[index]?.slug ?? "") : (stryCov_9fa48("1508"), !unreached.has(stryMutAct_9fa48("1509") ? bundle.components[index]?.slug && "" : (stryCov_9fa48("1509"), (stryMutAct_9fa48("1510") ? bundle.components[index].slug : (stryCov_9fa48("1510"), bundle.components[index]?.slug)) ?? (stryMutAct_9fa48("1511") ? "Stryker was here!" : (stryCov_9fa48("1511"), ""))))))));
    const allLines = (stryMutAct_9fa48("1512") ? [] : (stryCov_9fa48("1512"), [...bundle.plan.meals, ...made])).flatMap(stryMutAct_9fa48("1513") ? () => undefined : (stryCov_9fa48("1513"), ({
      lines
    }) => lines));
    return ok(stryMutAct_9fa48("1514") ? {} : (stryCov_9fa48("1514"), {
      bundle,
      meals,
      components,
      makeOrder,
      warnings: stryMutAct_9fa48("1515") ? [] : (stryCov_9fa48("1515"), [...warnings, ...swapsNotOffered(allLines, household)])
    }));
  }
}
function routed(component: Component, route: Route | null): {
  component: Component;
  route: Route | null;
  lines: readonly Line[];
  path: Path;
} {
  if (stryMutAct_9fa48("1516")) {
    {}
  } else {
    stryCov_9fa48("1516");
    const path = stryMutAct_9fa48("1517") ? [] : (stryCov_9fa48("1517"), [stryMutAct_9fa48("1518") ? "" : (stryCov_9fa48("1518"), "components"), component.slug]);
    return (stryMutAct_9fa48("1521") ? route !== null : stryMutAct_9fa48("1520") ? false : stryMutAct_9fa48("1519") ? true : (stryCov_9fa48("1519", "1520", "1521"), route === null)) ? stryMutAct_9fa48("1522") ? {} : (stryCov_9fa48("1522"), {
      component,
      route,
      lines: component.lines,
      path
    }) : stryMutAct_9fa48("1523") ? {} : (stryCov_9fa48("1523"), {
      component,
      route,
      lines: route.lines,
      path: stryMutAct_9fa48("1524") ? [] : (stryCov_9fa48("1524"), [...path, stryMutAct_9fa48("1525") ? "" : (stryCov_9fa48("1525"), "routes"), route.name])
    });
  }
}