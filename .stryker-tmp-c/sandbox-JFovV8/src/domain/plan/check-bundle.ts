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
import { factLimits, limits } from "../limits.js";
import type { Component } from "../model/component.js";
import type { Line } from "../model/line.js";
import type { PlanBundle } from "../model/plan.js";
import type { Path, Problem } from "../problem.js";
import { checkConvertible, checkFood, checkMeasureFacts } from "./check-facts.js";
import { checkSteps } from "./check-steps.js";
import { checkCount, checkMeasured, checkNumber, checkRational, checkText, checkUnique } from "./check-text.js";
import { compileLine, type LineContext } from "./compile-line.js";
import { lineContext } from "./line-context.js";
const anyAmount = stryMutAct_9fa48("40") ? {} : (stryCov_9fa48("40"), {
  min: 0,
  max: limits.amount
});
function checkRule({
  rule,
  exponent,
  amount
}: Line, path: Path): Problem[] {
  if (stryMutAct_9fa48("41")) {
    {}
  } else {
    stryCov_9fa48("41");
    const shape = stryMutAct_9fa48("42") ? () => undefined : (stryCov_9fa48("42"), (() => {
      const shape = (expected: string, got: string): Problem[] => stryMutAct_9fa48("43") ? [] : (stryCov_9fa48("43"), [stryMutAct_9fa48("44") ? {} : (stryCov_9fa48("44"), {
        code: stryMutAct_9fa48("45") ? "" : (stryCov_9fa48("45"), "BAD_SHAPE"),
        path,
        expected,
        got
      })]);
      return shape;
    })());
    if (stryMutAct_9fa48("48") ? rule !== "TO_TASTE" : stryMutAct_9fa48("47") ? false : stryMutAct_9fa48("46") ? true : (stryCov_9fa48("46", "47", "48"), rule === (stryMutAct_9fa48("49") ? "" : (stryCov_9fa48("49"), "TO_TASTE")))) return (stryMutAct_9fa48("52") ? amount !== null : stryMutAct_9fa48("51") ? false : stryMutAct_9fa48("50") ? true : (stryCov_9fa48("50", "51", "52"), amount === null)) ? stryMutAct_9fa48("53") ? ["Stryker was here"] : (stryCov_9fa48("53"), []) : shape(stryMutAct_9fa48("54") ? "" : (stryCov_9fa48("54"), "no amount with TO_TASTE"), stryMutAct_9fa48("55") ? "" : (stryCov_9fa48("55"), "an amount"));
    if (stryMutAct_9fa48("58") ? amount !== null : stryMutAct_9fa48("57") ? false : stryMutAct_9fa48("56") ? true : (stryCov_9fa48("56", "57", "58"), amount === null)) return shape(stryMutAct_9fa48("59") ? `` : (stryCov_9fa48("59"), `an amount with ${rule}, or TO_TASTE`), stryMutAct_9fa48("60") ? "" : (stryCov_9fa48("60"), "no amount"));
    if (stryMutAct_9fa48("63") ? rule !== "POWER" : stryMutAct_9fa48("62") ? false : stryMutAct_9fa48("61") ? true : (stryCov_9fa48("61", "62", "63"), rule === (stryMutAct_9fa48("64") ? "" : (stryCov_9fa48("64"), "POWER")))) {
      if (stryMutAct_9fa48("65")) {
        {}
      } else {
        stryCov_9fa48("65");
        return (stryMutAct_9fa48("68") ? exponent !== null && exponent > 0 || exponent <= 1 : stryMutAct_9fa48("67") ? false : stryMutAct_9fa48("66") ? true : (stryCov_9fa48("66", "67", "68"), (stryMutAct_9fa48("70") ? exponent !== null || exponent > 0 : stryMutAct_9fa48("69") ? true : (stryCov_9fa48("69", "70"), (stryMutAct_9fa48("72") ? exponent === null : stryMutAct_9fa48("71") ? true : (stryCov_9fa48("71", "72"), exponent !== null)) && (stryMutAct_9fa48("75") ? exponent <= 0 : stryMutAct_9fa48("74") ? exponent >= 0 : stryMutAct_9fa48("73") ? true : (stryCov_9fa48("73", "74", "75"), exponent > 0)))) && (stryMutAct_9fa48("78") ? exponent > 1 : stryMutAct_9fa48("77") ? exponent < 1 : stryMutAct_9fa48("76") ? true : (stryCov_9fa48("76", "77", "78"), exponent <= 1)))) ? stryMutAct_9fa48("79") ? ["Stryker was here"] : (stryCov_9fa48("79"), []) : shape(stryMutAct_9fa48("80") ? "" : (stryCov_9fa48("80"), "an exponent above 0 and at most 1 with POWER"), String(exponent));
      }
    }
    return (stryMutAct_9fa48("83") ? exponent !== null : stryMutAct_9fa48("82") ? false : stryMutAct_9fa48("81") ? true : (stryCov_9fa48("81", "82", "83"), exponent === null)) ? stryMutAct_9fa48("84") ? ["Stryker was here"] : (stryCov_9fa48("84"), []) : shape(stryMutAct_9fa48("85") ? `` : (stryCov_9fa48("85"), `no exponent with ${rule}`), String(exponent));
  }
}
interface Checking {
  readonly context: LineContext;
  /** Foods and components whose own facts are at fault: lines on them cannot be computed, which is not the lines' fault. */
  readonly faulty: {
    readonly foods: ReadonlySet<string>;
    readonly components: ReadonlySet<string>;
  };
}
const leansOnFault = stryMutAct_9fa48("86") ? () => undefined : (stryCov_9fa48("86"), (() => {
  const leansOnFault = ({
    item,
    swaps
  }: Line, {
    faulty
  }: Checking): boolean => stryMutAct_9fa48("89") ? (item.kind === "FOOD" ? faulty.foods.has(item.food) : faulty.components.has(item.component)) && swaps.some(({
    food
  }) => faulty.foods.has(food)) : stryMutAct_9fa48("88") ? false : stryMutAct_9fa48("87") ? true : (stryCov_9fa48("87", "88", "89"), ((stryMutAct_9fa48("92") ? item.kind !== "FOOD" : stryMutAct_9fa48("91") ? false : stryMutAct_9fa48("90") ? true : (stryCov_9fa48("90", "91", "92"), item.kind === (stryMutAct_9fa48("93") ? "" : (stryCov_9fa48("93"), "FOOD")))) ? faulty.foods.has(item.food) : faulty.components.has(item.component)) || (stryMutAct_9fa48("94") ? swaps.every(({
    food
  }) => faulty.foods.has(food)) : (stryCov_9fa48("94"), swaps.some(stryMutAct_9fa48("95") ? () => undefined : (stryCov_9fa48("95"), ({
    food
  }) => faulty.foods.has(food))))));
  return leansOnFault;
})());
function checkLine(line: Line, path: Path, checking: Checking): Problem[] {
  if (stryMutAct_9fa48("96")) {
    {}
  } else {
    stryCov_9fa48("96");
    const problems = stryMutAct_9fa48("97") ? [] : (stryCov_9fa48("97"), [...checkText(line.id, stryMutAct_9fa48("98") ? "" : (stryCov_9fa48("98"), "an id"), path), ...checkCount(line.written.length, limits.text, stryMutAct_9fa48("99") ? "" : (stryCov_9fa48("99"), "characters of a written line"), path), ...checkCount(line.swaps.length, factLimits.entries, stryMutAct_9fa48("100") ? "" : (stryCov_9fa48("100"), "swaps"), stryMutAct_9fa48("101") ? [] : (stryCov_9fa48("101"), [...path, stryMutAct_9fa48("102") ? "" : (stryCov_9fa48("102"), "swaps")])), ...checkRule(line, path), ...((stryMutAct_9fa48("105") ? line.amount !== null : stryMutAct_9fa48("104") ? false : stryMutAct_9fa48("103") ? true : (stryCov_9fa48("103", "104", "105"), line.amount === null)) ? stryMutAct_9fa48("106") ? ["Stryker was here"] : (stryCov_9fa48("106"), []) : checkMeasured(line.amount, path, 0)), ...line.swaps.flatMap(stryMutAct_9fa48("107") ? () => undefined : (stryCov_9fa48("107"), swap => checkRational(swap.ratio, stryMutAct_9fa48("108") ? [] : (stryCov_9fa48("108"), [...path, stryMutAct_9fa48("109") ? "" : (stryCov_9fa48("109"), "swaps"), swap.food]), anyAmount)))]);
    if (stryMutAct_9fa48("112") ? problems.length > 0 && leansOnFault(line, checking) : stryMutAct_9fa48("111") ? false : stryMutAct_9fa48("110") ? true : (stryCov_9fa48("110", "111", "112"), (stryMutAct_9fa48("115") ? problems.length <= 0 : stryMutAct_9fa48("114") ? problems.length >= 0 : stryMutAct_9fa48("113") ? false : (stryCov_9fa48("113", "114", "115"), problems.length > 0)) || leansOnFault(line, checking))) return problems;
    if (stryMutAct_9fa48("118") ? line.amount?.unit === "batch" || line.item.kind === "FOOD" : stryMutAct_9fa48("117") ? false : stryMutAct_9fa48("116") ? true : (stryCov_9fa48("116", "117", "118"), (stryMutAct_9fa48("120") ? line.amount?.unit !== "batch" : stryMutAct_9fa48("119") ? true : (stryCov_9fa48("119", "120"), (stryMutAct_9fa48("121") ? line.amount.unit : (stryCov_9fa48("121"), line.amount?.unit)) === (stryMutAct_9fa48("122") ? "" : (stryCov_9fa48("122"), "batch")))) && (stryMutAct_9fa48("124") ? line.item.kind !== "FOOD" : stryMutAct_9fa48("123") ? true : (stryCov_9fa48("123", "124"), line.item.kind === (stryMutAct_9fa48("125") ? "" : (stryCov_9fa48("125"), "FOOD")))))) {
      if (stryMutAct_9fa48("126")) {
        {}
      } else {
        stryCov_9fa48("126");
        return stryMutAct_9fa48("127") ? [] : (stryCov_9fa48("127"), [stryMutAct_9fa48("128") ? {} : (stryCov_9fa48("128"), {
          code: stryMutAct_9fa48("129") ? "" : (stryCov_9fa48("129"), "BAD_AMOUNT"),
          path,
          written: line.written,
          why: stryMutAct_9fa48("130") ? "" : (stryCov_9fa48("130"), "BATCH_OF_A_FOOD")
        })]);
      }
    }
    const {
      context
    } = checking;
    const own = compileLine(line, null, path, context);
    const swaps = line.swaps.map(stryMutAct_9fa48("131") ? () => undefined : (stryCov_9fa48("131"), swap => compileLine(line, swap, stryMutAct_9fa48("132") ? [] : (stryCov_9fa48("132"), [...path, stryMutAct_9fa48("133") ? "" : (stryCov_9fa48("133"), "swaps"), swap.food]), context)));
    return (stryMutAct_9fa48("134") ? [] : (stryCov_9fa48("134"), [own, ...(own.ok ? swaps : stryMutAct_9fa48("135") ? ["Stryker was here"] : (stryCov_9fa48("135"), []))])).flatMap(stryMutAct_9fa48("136") ? () => undefined : (stryCov_9fa48("136"), result => result.ok ? stryMutAct_9fa48("137") ? ["Stryker was here"] : (stryCov_9fa48("137"), []) : result.problems));
  }
}
function checkLines(lines: readonly Line[], path: Path, checking: Checking): Problem[] {
  if (stryMutAct_9fa48("138")) {
    {}
  } else {
    stryCov_9fa48("138");
    return stryMutAct_9fa48("139") ? [] : (stryCov_9fa48("139"), [...checkUnique(lines.map(stryMutAct_9fa48("140") ? () => undefined : (stryCov_9fa48("140"), ({
      id
    }) => id)), stryMutAct_9fa48("141") ? () => undefined : (stryCov_9fa48("141"), id => stryMutAct_9fa48("142") ? [] : (stryCov_9fa48("142"), [...path, stryMutAct_9fa48("143") ? "" : (stryCov_9fa48("143"), "lines"), id]))), ...lines.flatMap(stryMutAct_9fa48("144") ? () => undefined : (stryCov_9fa48("144"), line => checkLine(line, stryMutAct_9fa48("145") ? [] : (stryCov_9fa48("145"), [...path, stryMutAct_9fa48("146") ? "" : (stryCov_9fa48("146"), "lines"), line.id]), checking)))]);
  }
}
function checkBatch({
  batch
}: Component, path: Path): Problem[] {
  if (stryMutAct_9fa48("147")) {
    {}
  } else {
    stryCov_9fa48("147");
    const at = stryMutAct_9fa48("148") ? [] : (stryCov_9fa48("148"), [...path, stryMutAct_9fa48("149") ? "" : (stryCov_9fa48("149"), "batch")]);
    const positive = stryMutAct_9fa48("150") ? {} : (stryCov_9fa48("150"), {
      min: Number.MIN_VALUE,
      max: limits.amount
    });
    const problems = stryMutAct_9fa48("151") ? [] : (stryCov_9fa48("151"), [...checkRational(batch.min, stryMutAct_9fa48("152") ? [] : (stryCov_9fa48("152"), [...at, stryMutAct_9fa48("153") ? "" : (stryCov_9fa48("153"), "min")]), anyAmount), ...((stryMutAct_9fa48("156") ? batch.max !== null : stryMutAct_9fa48("155") ? false : stryMutAct_9fa48("154") ? true : (stryCov_9fa48("154", "155", "156"), batch.max === null)) ? stryMutAct_9fa48("157") ? ["Stryker was here"] : (stryCov_9fa48("157"), []) : checkRational(batch.max, stryMutAct_9fa48("158") ? [] : (stryCov_9fa48("158"), [...at, stryMutAct_9fa48("159") ? "" : (stryCov_9fa48("159"), "max")]), positive)), ...((stryMutAct_9fa48("162") ? batch.increment !== null : stryMutAct_9fa48("161") ? false : stryMutAct_9fa48("160") ? true : (stryCov_9fa48("160", "161", "162"), batch.increment === null)) ? stryMutAct_9fa48("163") ? ["Stryker was here"] : (stryCov_9fa48("163"), []) : checkRational(batch.increment, stryMutAct_9fa48("164") ? [] : (stryCov_9fa48("164"), [...at, stryMutAct_9fa48("165") ? "" : (stryCov_9fa48("165"), "increment")]), positive))]);
    if (stryMutAct_9fa48("168") ? problems.length > 0 && batch.max === null : stryMutAct_9fa48("167") ? false : stryMutAct_9fa48("166") ? true : (stryCov_9fa48("166", "167", "168"), (stryMutAct_9fa48("171") ? problems.length <= 0 : stryMutAct_9fa48("170") ? problems.length >= 0 : stryMutAct_9fa48("169") ? false : (stryCov_9fa48("169", "170", "171"), problems.length > 0)) || (stryMutAct_9fa48("173") ? batch.max !== null : stryMutAct_9fa48("172") ? false : (stryCov_9fa48("172", "173"), batch.max === null)))) return problems;
    const {
      min,
      max
    } = batchSizes(batch);
    if (stryMutAct_9fa48("176") ? max >= min || max > 0 : stryMutAct_9fa48("175") ? false : stryMutAct_9fa48("174") ? true : (stryCov_9fa48("174", "175", "176"), (stryMutAct_9fa48("179") ? max < min : stryMutAct_9fa48("178") ? max > min : stryMutAct_9fa48("177") ? true : (stryCov_9fa48("177", "178", "179"), max >= min)) && (stryMutAct_9fa48("182") ? max <= 0 : stryMutAct_9fa48("181") ? max >= 0 : stryMutAct_9fa48("180") ? true : (stryCov_9fa48("180", "181", "182"), max > 0)))) return stryMutAct_9fa48("183") ? ["Stryker was here"] : (stryCov_9fa48("183"), []);
    return stryMutAct_9fa48("184") ? [] : (stryCov_9fa48("184"), [stryMutAct_9fa48("185") ? {} : (stryCov_9fa48("185"), {
      code: stryMutAct_9fa48("186") ? "" : (stryCov_9fa48("186"), "BAD_SHAPE"),
      path: at,
      expected: stryMutAct_9fa48("187") ? "" : (stryCov_9fa48("187"), "a largest size that at least one batch size fits in"),
      got: stryMutAct_9fa48("188") ? `` : (stryCov_9fa48("188"), `min ${batch.min}, max ${batch.max}`)
    })]);
  }
}
function checkComponentFacts(component: Component): Problem[] {
  if (stryMutAct_9fa48("189")) {
    {}
  } else {
    stryCov_9fa48("189");
    const path = stryMutAct_9fa48("190") ? [] : (stryCov_9fa48("190"), [stryMutAct_9fa48("191") ? "" : (stryCov_9fa48("191"), "components"), component.slug]);
    return stryMutAct_9fa48("192") ? [] : (stryCov_9fa48("192"), [...checkMeasureFacts(component, path), ...checkConvertible(component.yield.amount, component.slug, component, stryMutAct_9fa48("193") ? [] : (stryCov_9fa48("193"), [...path, stryMutAct_9fa48("194") ? "" : (stryCov_9fa48("194"), "yield")]))]);
  }
}
function checkComponent(component: Component, checking: Checking): Problem[] {
  if (stryMutAct_9fa48("195")) {
    {}
  } else {
    stryCov_9fa48("195");
    const path = stryMutAct_9fa48("196") ? [] : (stryCov_9fa48("196"), [stryMutAct_9fa48("197") ? "" : (stryCov_9fa48("197"), "components"), component.slug]);
    return stryMutAct_9fa48("198") ? [] : (stryCov_9fa48("198"), [...checkText(component.slug, stryMutAct_9fa48("199") ? "" : (stryCov_9fa48("199"), "a slug"), path), ...checkText(component.title, stryMutAct_9fa48("200") ? "" : (stryCov_9fa48("200"), "a title"), path), ...checkBatch(component, path), ...checkLines(component.lines, path, checking), ...checkUnique(component.routes.map(stryMutAct_9fa48("201") ? () => undefined : (stryCov_9fa48("201"), ({
      name
    }) => name)), stryMutAct_9fa48("202") ? () => undefined : (stryCov_9fa48("202"), name => stryMutAct_9fa48("203") ? [] : (stryCov_9fa48("203"), [...path, stryMutAct_9fa48("204") ? "" : (stryCov_9fa48("204"), "routes"), name]))), ...checkSteps(component.steps, path), ...component.routes.flatMap(stryMutAct_9fa48("205") ? () => undefined : (stryCov_9fa48("205"), ({
      name,
      lines,
      steps
    }) => stryMutAct_9fa48("206") ? [] : (stryCov_9fa48("206"), [...checkLines(lines, stryMutAct_9fa48("207") ? [] : (stryCov_9fa48("207"), [...path, stryMutAct_9fa48("208") ? "" : (stryCov_9fa48("208"), "routes"), name]), checking), ...checkSteps(steps, stryMutAct_9fa48("209") ? [] : (stryCov_9fa48("209"), [...path, stryMutAct_9fa48("210") ? "" : (stryCov_9fa48("210"), "routes"), name]))])))]);
  }
}
function checkSizes({
  plan,
  components,
  foods
}: PlanBundle): Problem[] {
  if (stryMutAct_9fa48("211")) {
    {}
  } else {
    stryCov_9fa48("211");
    const lines = stryMutAct_9fa48("212") ? [] : (stryCov_9fa48("212"), [...plan.meals, ...components, ...components.flatMap(stryMutAct_9fa48("213") ? () => undefined : (stryCov_9fa48("213"), ({
      routes
    }) => routes))]);
    return stryMutAct_9fa48("214") ? [] : (stryCov_9fa48("214"), [...checkCount(plan.meals.length, limits.meals, stryMutAct_9fa48("215") ? "" : (stryCov_9fa48("215"), "meals"), stryMutAct_9fa48("216") ? [] : (stryCov_9fa48("216"), [stryMutAct_9fa48("217") ? "" : (stryCov_9fa48("217"), "meals")])), ...checkCount(components.length, limits.components, stryMutAct_9fa48("218") ? "" : (stryCov_9fa48("218"), "components"), stryMutAct_9fa48("219") ? [] : (stryCov_9fa48("219"), [stryMutAct_9fa48("220") ? "" : (stryCov_9fa48("220"), "components")])), ...checkCount(foods.length, limits.foods, stryMutAct_9fa48("221") ? "" : (stryCov_9fa48("221"), "foods"), stryMutAct_9fa48("222") ? [] : (stryCov_9fa48("222"), [stryMutAct_9fa48("223") ? "" : (stryCov_9fa48("223"), "foods")])), ...checkCount(lines.reduce(stryMutAct_9fa48("224") ? () => undefined : (stryCov_9fa48("224"), (sum, each) => stryMutAct_9fa48("225") ? sum - each.lines.length : (stryCov_9fa48("225"), sum + each.lines.length)), 0), limits.lines, stryMutAct_9fa48("226") ? "" : (stryCov_9fa48("226"), "lines"), stryMutAct_9fa48("227") ? [] : (stryCov_9fa48("227"), [stryMutAct_9fa48("228") ? "" : (stryCov_9fa48("228"), "meals")])), ...checkCount(lines.reduce(stryMutAct_9fa48("229") ? () => undefined : (stryCov_9fa48("229"), (sum, each) => stryMutAct_9fa48("230") ? sum - each.steps.length : (stryCov_9fa48("230"), sum + each.steps.length)), 0), limits.steps, stryMutAct_9fa48("231") ? "" : (stryCov_9fa48("231"), "steps"), stryMutAct_9fa48("232") ? [] : (stryCov_9fa48("232"), [stryMutAct_9fa48("233") ? "" : (stryCov_9fa48("233"), "meals")]))]);
  }
}
function checkMeals({
  plan
}: PlanBundle, checking: Checking): Problem[] {
  if (stryMutAct_9fa48("234")) {
    {}
  } else {
    stryCov_9fa48("234");
    return plan.meals.flatMap(meal => {
      if (stryMutAct_9fa48("235")) {
        {}
      } else {
        stryCov_9fa48("235");
        const path = stryMutAct_9fa48("236") ? [] : (stryCov_9fa48("236"), [stryMutAct_9fa48("237") ? "" : (stryCov_9fa48("237"), "meals"), meal.slug]);
        return stryMutAct_9fa48("238") ? [] : (stryCov_9fa48("238"), [...checkText(meal.slug, stryMutAct_9fa48("239") ? "" : (stryCov_9fa48("239"), "a slug"), path), ...checkText(meal.title, stryMutAct_9fa48("240") ? "" : (stryCov_9fa48("240"), "a title"), path), ...checkNumber(meal.serves, stryMutAct_9fa48("241") ? [] : (stryCov_9fa48("241"), [...path, stryMutAct_9fa48("242") ? "" : (stryCov_9fa48("242"), "serves")]), stryMutAct_9fa48("243") ? {} : (stryCov_9fa48("243"), {
          min: 1,
          max: limits.servings
        })), ...checkNumber(meal.day, stryMutAct_9fa48("244") ? [] : (stryCov_9fa48("244"), [...path, stryMutAct_9fa48("245") ? "" : (stryCov_9fa48("245"), "day")]), stryMutAct_9fa48("246") ? {} : (stryCov_9fa48("246"), {
          min: 0,
          max: limits.day
        })), ...checkLines(meal.lines, path, checking), ...checkSteps(meal.steps, path)]);
      }
    });
  }
}

/** A problem repeats what somebody wrote, but not a megabyte of it. */
const mostShown = 200;
const cut = (value: unknown): unknown => {
  if (stryMutAct_9fa48("247")) {
    {}
  } else {
    stryCov_9fa48("247");
    if (stryMutAct_9fa48("250") ? typeof value === "string" || value.length > mostShown : stryMutAct_9fa48("249") ? false : stryMutAct_9fa48("248") ? true : (stryCov_9fa48("248", "249", "250"), (stryMutAct_9fa48("252") ? typeof value !== "string" : stryMutAct_9fa48("251") ? true : (stryCov_9fa48("251", "252"), typeof value === (stryMutAct_9fa48("253") ? "" : (stryCov_9fa48("253"), "string")))) && (stryMutAct_9fa48("256") ? value.length <= mostShown : stryMutAct_9fa48("255") ? value.length >= mostShown : stryMutAct_9fa48("254") ? true : (stryCov_9fa48("254", "255", "256"), value.length > mostShown)))) return stryMutAct_9fa48("257") ? `` : (stryCov_9fa48("257"), `${stryMutAct_9fa48("258") ? value : (stryCov_9fa48("258"), value.slice(0, mostShown))}…`);
    return Array.isArray(value) ? value.map(cut) : value;
  }
};
const shortened = stryMutAct_9fa48("259") ? () => undefined : (stryCov_9fa48("259"), (() => {
  const shortened = (problem: Problem): Problem => Object.fromEntries(Object.entries(problem).map(([key, value]) => [key, cut(value)])) as Problem;
  return shortened;
})());
const checked = new WeakMap<PlanBundle, readonly Problem[]>();

/**
 * Everything that would make a plan uncomputable, all at once, each with the path to its line: sizes beyond the limits,
 * broken amounts and rules, names that stand for nothing, units nobody knows, cycles with every step named, components
 * no meal leads to, demands that cannot be turned into the unit of their component's yield. A bundle is a value: the answer for one
 * is remembered as long as it lives.
 */
export function checkBundle(bundle: PlanBundle): readonly Problem[] {
  if (stryMutAct_9fa48("260")) {
    {}
  } else {
    stryCov_9fa48("260");
    const known = checked.get(bundle);
    if (stryMutAct_9fa48("263") ? known === undefined : stryMutAct_9fa48("262") ? false : stryMutAct_9fa48("261") ? true : (stryCov_9fa48("261", "262", "263"), known !== undefined)) return known;
    const problems = findProblems(bundle).map(shortened);
    checked.set(bundle, problems);
    return problems;
  }
}
function findProblems(bundle: PlanBundle): readonly Problem[] {
  if (stryMutAct_9fa48("264")) {
    {}
  } else {
    stryCov_9fa48("264");
    const {
      plan,
      components,
      foods
    } = bundle;
    const sizes = checkSizes(bundle);
    if (stryMutAct_9fa48("268") ? sizes.length <= 0 : stryMutAct_9fa48("267") ? sizes.length >= 0 : stryMutAct_9fa48("266") ? false : stryMutAct_9fa48("265") ? true : (stryCov_9fa48("265", "266", "267", "268"), sizes.length > 0)) return sizes;
    const foodFaults = foods.map(stryMutAct_9fa48("269") ? () => undefined : (stryCov_9fa48("269"), food => stryMutAct_9fa48("270") ? {} : (stryCov_9fa48("270"), {
      slug: food.slug,
      problems: checkFood(food)
    })));
    const componentFaults = components.map(stryMutAct_9fa48("271") ? () => undefined : (stryCov_9fa48("271"), each => stryMutAct_9fa48("272") ? {} : (stryCov_9fa48("272"), {
      slug: each.slug,
      problems: checkComponentFacts(each)
    })));
    const slugsOf = stryMutAct_9fa48("273") ? () => undefined : (stryCov_9fa48("273"), (() => {
      const slugsOf = (faults: typeof foodFaults): ReadonlySet<string> => new Set(faults.flatMap(stryMutAct_9fa48("274") ? () => undefined : (stryCov_9fa48("274"), ({
        slug,
        problems
      }) => (stryMutAct_9fa48("278") ? problems.length <= 0 : stryMutAct_9fa48("277") ? problems.length >= 0 : stryMutAct_9fa48("276") ? false : stryMutAct_9fa48("275") ? true : (stryCov_9fa48("275", "276", "277", "278"), problems.length > 0)) ? stryMutAct_9fa48("279") ? [] : (stryCov_9fa48("279"), [slug]) : stryMutAct_9fa48("280") ? ["Stryker was here"] : (stryCov_9fa48("280"), []))));
      return slugsOf;
    })());
    const checking: Checking = stryMutAct_9fa48("281") ? {} : (stryCov_9fa48("281"), {
      context: lineContext(bundle),
      faulty: stryMutAct_9fa48("282") ? {} : (stryCov_9fa48("282"), {
        foods: slugsOf(foodFaults),
        components: slugsOf(componentFaults)
      })
    });
    const graph = componentGraph(components, plan.meals.flatMap(stryMutAct_9fa48("283") ? () => undefined : (stryCov_9fa48("283"), ({
      lines
    }) => lines)));
    return stryMutAct_9fa48("284") ? [] : (stryCov_9fa48("284"), [...checkText(plan.title, stryMutAct_9fa48("285") ? "" : (stryCov_9fa48("285"), "a title"), stryMutAct_9fa48("286") ? [] : (stryCov_9fa48("286"), [stryMutAct_9fa48("287") ? "" : (stryCov_9fa48("287"), "title")])), ...checkNumber(plan.serves, stryMutAct_9fa48("288") ? [] : (stryCov_9fa48("288"), [stryMutAct_9fa48("289") ? "" : (stryCov_9fa48("289"), "serves")]), stryMutAct_9fa48("290") ? {} : (stryCov_9fa48("290"), {
      min: 1,
      max: limits.servings
    })), ...((stryMutAct_9fa48("293") ? plan.meals.length !== 0 : stryMutAct_9fa48("292") ? false : stryMutAct_9fa48("291") ? true : (stryCov_9fa48("291", "292", "293"), plan.meals.length === 0)) ? stryMutAct_9fa48("294") ? [] : (stryCov_9fa48("294"), [stryMutAct_9fa48("295") ? {} : (stryCov_9fa48("295"), {
      code: "BAD_SHAPE" as const,
      path: stryMutAct_9fa48("296") ? [] : (stryCov_9fa48("296"), [stryMutAct_9fa48("297") ? "" : (stryCov_9fa48("297"), "meals")]),
      expected: stryMutAct_9fa48("298") ? "" : (stryCov_9fa48("298"), "at least one meal"),
      got: stryMutAct_9fa48("299") ? "" : (stryCov_9fa48("299"), "none")
    })]) : stryMutAct_9fa48("300") ? ["Stryker was here"] : (stryCov_9fa48("300"), [])), ...checkUnique(plan.meals.map(stryMutAct_9fa48("301") ? () => undefined : (stryCov_9fa48("301"), ({
      slug
    }) => slug)), stryMutAct_9fa48("302") ? () => undefined : (stryCov_9fa48("302"), slug => stryMutAct_9fa48("303") ? [] : (stryCov_9fa48("303"), [stryMutAct_9fa48("304") ? "" : (stryCov_9fa48("304"), "meals"), slug]))), ...checkUnique(components.map(stryMutAct_9fa48("305") ? () => undefined : (stryCov_9fa48("305"), ({
      slug
    }) => slug)), stryMutAct_9fa48("306") ? () => undefined : (stryCov_9fa48("306"), slug => stryMutAct_9fa48("307") ? [] : (stryCov_9fa48("307"), [stryMutAct_9fa48("308") ? "" : (stryCov_9fa48("308"), "components"), slug]))), ...checkUnique(foods.map(stryMutAct_9fa48("309") ? () => undefined : (stryCov_9fa48("309"), ({
      slug
    }) => slug)), stryMutAct_9fa48("310") ? () => undefined : (stryCov_9fa48("310"), slug => stryMutAct_9fa48("311") ? [] : (stryCov_9fa48("311"), [stryMutAct_9fa48("312") ? "" : (stryCov_9fa48("312"), "foods"), slug]))), ...(stryMutAct_9fa48("313") ? [] : (stryCov_9fa48("313"), [...foodFaults, ...componentFaults])).flatMap(stryMutAct_9fa48("314") ? () => undefined : (stryCov_9fa48("314"), ({
      problems
    }) => problems)), ...checkMeals(bundle, checking), ...components.flatMap(stryMutAct_9fa48("315") ? () => undefined : (stryCov_9fa48("315"), component => checkComponent(component, checking))), ...graph.cycles.map(stryMutAct_9fa48("316") ? () => undefined : (stryCov_9fa48("316"), (cycle): Problem => stryMutAct_9fa48("317") ? {} : (stryCov_9fa48("317"), {
      code: stryMutAct_9fa48("318") ? "" : (stryCov_9fa48("318"), "COMPONENT_CYCLE"),
      path: stryMutAct_9fa48("319") ? [] : (stryCov_9fa48("319"), [stryMutAct_9fa48("320") ? "" : (stryCov_9fa48("320"), "components"), stryMutAct_9fa48("321") ? cycle[0] && "" : (stryCov_9fa48("321"), cycle[0] ?? (stryMutAct_9fa48("322") ? "Stryker was here!" : (stryCov_9fa48("322"), "")))]),
      cycle
    }))), ...graph.unreached.map(stryMutAct_9fa48("323") ? () => undefined : (stryCov_9fa48("323"), (component): Problem => stryMutAct_9fa48("324") ? {} : (stryCov_9fa48("324"), {
      code: stryMutAct_9fa48("325") ? "" : (stryCov_9fa48("325"), "COMPONENT_NOT_REACHED"),
      path: stryMutAct_9fa48("326") ? [] : (stryCov_9fa48("326"), [stryMutAct_9fa48("327") ? "" : (stryCov_9fa48("327"), "components"), component]),
      component
    })))]);
  }
}