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
import type { BaseAmount } from "../model/amount.js";
import type { Step } from "../model/component.js";
import type { Food } from "../model/food.js";
import type { Path } from "../problem.js";
import { inDimension } from "../quantity/convert.js";
import type { Finding } from "./finding.js";
import type { ScaledLine } from "./scaled.js";

/** The least a kitchen measures: 1 g on a scale, an eighth of a US teaspoon, an eighth of a piece. Common practice, no source. */
export const leastMeasured: Readonly<Record<BaseAmount["dimension"], number>> = stryMutAct_9fa48("562") ? {} : (stryCov_9fa48("562"), {
  MASS: 1,
  VOLUME: stryMutAct_9fa48("563") ? 4.92892159375 * 8 : (stryCov_9fa48("563"), 4.92892159375 / 8),
  COUNT: stryMutAct_9fa48("564") ? 1 * 8 : (stryCov_9fa48("564"), 1 / 8)
});
const nameOf = stryMutAct_9fa48("565") ? () => undefined : (stryCov_9fa48("565"), (() => {
  const nameOf = ({
    item
  }: ScaledLine): string => (stryMutAct_9fa48("568") ? item.kind !== "FOOD" : stryMutAct_9fa48("567") ? false : stryMutAct_9fa48("566") ? true : (stryCov_9fa48("566", "567", "568"), item.kind === (stryMutAct_9fa48("569") ? "" : (stryCov_9fa48("569"), "FOOD")))) ? item.food : item.component;
  return nameOf;
})());

/** Whether a kitchen can measure it in some dimension that the food's facts lead to. */
function measurable(amount: BaseAmount, line: ScaledLine, food: Food | null): boolean {
  if (stryMutAct_9fa48("570")) {
    {}
  } else {
    stryCov_9fa48("570");
    const ways = (["MASS", "VOLUME", "COUNT"] as const).flatMap(dimension => {
      if (stryMutAct_9fa48("571")) {
        {}
      } else {
        stryCov_9fa48("571");
        if (stryMutAct_9fa48("574") ? dimension !== amount.dimension : stryMutAct_9fa48("573") ? false : stryMutAct_9fa48("572") ? true : (stryCov_9fa48("572", "573", "574"), dimension === amount.dimension)) return stryMutAct_9fa48("575") ? [] : (stryCov_9fa48("575"), [amount]);
        const converted = (stryMutAct_9fa48("578") ? food !== null : stryMutAct_9fa48("577") ? false : stryMutAct_9fa48("576") ? true : (stryCov_9fa48("576", "577", "578"), food === null)) ? null : inDimension(amount, dimension, food, line.line.form);
        return (stryMutAct_9fa48("581") ? converted?.ok !== true : stryMutAct_9fa48("580") ? false : stryMutAct_9fa48("579") ? true : (stryCov_9fa48("579", "580", "581"), (stryMutAct_9fa48("582") ? converted.ok : (stryCov_9fa48("582"), converted?.ok)) === (stryMutAct_9fa48("583") ? false : (stryCov_9fa48("583"), true)))) ? stryMutAct_9fa48("584") ? [] : (stryCov_9fa48("584"), [converted.amount]) : stryMutAct_9fa48("585") ? ["Stryker was here"] : (stryCov_9fa48("585"), []);
      }
    });
    return stryMutAct_9fa48("586") ? ways.every(({
      dimension,
      high
    }) => high >= leastMeasured[dimension] * (1 - 1e-9)) : (stryCov_9fa48("586"), ways.some(stryMutAct_9fa48("587") ? () => undefined : (stryCov_9fa48("587"), ({
      dimension,
      high
    }) => stryMutAct_9fa48("591") ? high < leastMeasured[dimension] * (1 - 1e-9) : stryMutAct_9fa48("590") ? high > leastMeasured[dimension] * (1 - 1e-9) : stryMutAct_9fa48("589") ? false : stryMutAct_9fa48("588") ? true : (stryCov_9fa48("588", "589", "590", "591"), high >= (stryMutAct_9fa48("592") ? leastMeasured[dimension] / (1 - 1e-9) : (stryCov_9fa48("592"), leastMeasured[dimension] * (stryMutAct_9fa48("593") ? 1 + 1e-9 : (stryCov_9fa48("593"), 1 - 1e-9))))))));
  }
}

/** A line that no step mentions is only a fault where the writer says of steps what they use at all. */
function inNoStep(lines: readonly ScaledLine[], steps: readonly Step[], path: Path): Finding[] {
  if (stryMutAct_9fa48("594")) {
    {}
  } else {
    stryCov_9fa48("594");
    const used = new Set(steps.flatMap(stryMutAct_9fa48("595") ? () => undefined : (stryCov_9fa48("595"), step => step.lines)));
    if (stryMutAct_9fa48("598") ? used.size !== 0 : stryMutAct_9fa48("597") ? false : stryMutAct_9fa48("596") ? true : (stryCov_9fa48("596", "597", "598"), used.size === 0)) return stryMutAct_9fa48("599") ? ["Stryker was here"] : (stryCov_9fa48("599"), []);
    return stryMutAct_9fa48("600") ? lines.map(line => ({
      code: "LINE_IN_NO_STEP",
      severity: "LOOK",
      path: [...path, "lines", line.line.id],
      item: nameOf(line)
    })) : (stryCov_9fa48("600"), lines.filter(stryMutAct_9fa48("601") ? () => undefined : (stryCov_9fa48("601"), ({
      line
    }) => stryMutAct_9fa48("604") ? !used.has(line.id) || !line.optional : stryMutAct_9fa48("603") ? false : stryMutAct_9fa48("602") ? true : (stryCov_9fa48("602", "603", "604"), (stryMutAct_9fa48("605") ? used.has(line.id) : (stryCov_9fa48("605"), !used.has(line.id))) && (stryMutAct_9fa48("606") ? line.optional : (stryCov_9fa48("606"), !line.optional))))).map(stryMutAct_9fa48("607") ? () => undefined : (stryCov_9fa48("607"), line => stryMutAct_9fa48("608") ? {} : (stryCov_9fa48("608"), {
      code: stryMutAct_9fa48("609") ? "" : (stryCov_9fa48("609"), "LINE_IN_NO_STEP"),
      severity: stryMutAct_9fa48("610") ? "" : (stryCov_9fa48("610"), "LOOK"),
      path: stryMutAct_9fa48("611") ? [] : (stryCov_9fa48("611"), [...path, stryMutAct_9fa48("612") ? "" : (stryCov_9fa48("612"), "lines"), line.line.id]),
      item: nameOf(line)
    }))));
  }
}

/** Seasoning may be to taste; a component or something counted, weighed and bought fresh should have an amount. */
function withoutAmount(line: ScaledLine, path: Path): Finding[] {
  if (stryMutAct_9fa48("613")) {
    {}
  } else {
    stryCov_9fa48("613");
    if (stryMutAct_9fa48("616") ? line.amount !== null && line.item.kind === "FOOD" : stryMutAct_9fa48("615") ? false : stryMutAct_9fa48("614") ? true : (stryCov_9fa48("614", "615", "616"), (stryMutAct_9fa48("618") ? line.amount === null : stryMutAct_9fa48("617") ? false : (stryCov_9fa48("617", "618"), line.amount !== null)) || (stryMutAct_9fa48("620") ? line.item.kind !== "FOOD" : stryMutAct_9fa48("619") ? false : (stryCov_9fa48("619", "620"), line.item.kind === (stryMutAct_9fa48("621") ? "" : (stryCov_9fa48("621"), "FOOD")))))) return stryMutAct_9fa48("622") ? ["Stryker was here"] : (stryCov_9fa48("622"), []);
    return stryMutAct_9fa48("623") ? [] : (stryCov_9fa48("623"), [stryMutAct_9fa48("624") ? {} : (stryCov_9fa48("624"), {
      code: stryMutAct_9fa48("625") ? "" : (stryCov_9fa48("625"), "AMOUNT_MISSING"),
      severity: stryMutAct_9fa48("626") ? "" : (stryCov_9fa48("626"), "LOOK"),
      path,
      item: nameOf(line)
    })]);
  }
}

/** What readers would stumble over in the lines of one meal or component. */
export function checkScaledLines(lines: readonly ScaledLine[], steps: readonly Step[], path: Path, foods: ReadonlyMap<string, Food>): readonly Finding[] {
  if (stryMutAct_9fa48("627")) {
    {}
  } else {
    stryCov_9fa48("627");
    return stryMutAct_9fa48("628") ? [] : (stryCov_9fa48("628"), [...inNoStep(lines, steps, path), ...lines.flatMap((line): Finding[] => {
      if (stryMutAct_9fa48("629")) {
        {}
      } else {
        stryCov_9fa48("629");
        const at = stryMutAct_9fa48("630") ? [] : (stryCov_9fa48("630"), [...path, stryMutAct_9fa48("631") ? "" : (stryCov_9fa48("631"), "lines"), line.line.id]);
        const {
          amount
        } = line;
        if (stryMutAct_9fa48("634") ? amount !== null : stryMutAct_9fa48("633") ? false : stryMutAct_9fa48("632") ? true : (stryCov_9fa48("632", "633", "634"), amount === null)) return withoutAmount(line, at);
        const food = (stryMutAct_9fa48("637") ? line.item.kind !== "FOOD" : stryMutAct_9fa48("636") ? false : stryMutAct_9fa48("635") ? true : (stryCov_9fa48("635", "636", "637"), line.item.kind === (stryMutAct_9fa48("638") ? "" : (stryCov_9fa48("638"), "FOOD")))) ? stryMutAct_9fa48("639") ? foods.get(line.item.food) && null : (stryCov_9fa48("639"), foods.get(line.item.food) ?? null) : null;
        if (stryMutAct_9fa48("642") ? (line.item.kind === "COMPONENT" || amount.high === 0) && measurable(amount, line, food) : stryMutAct_9fa48("641") ? false : stryMutAct_9fa48("640") ? true : (stryCov_9fa48("640", "641", "642"), (stryMutAct_9fa48("644") ? line.item.kind === "COMPONENT" && amount.high === 0 : stryMutAct_9fa48("643") ? false : (stryCov_9fa48("643", "644"), (stryMutAct_9fa48("646") ? line.item.kind !== "COMPONENT" : stryMutAct_9fa48("645") ? false : (stryCov_9fa48("645", "646"), line.item.kind === (stryMutAct_9fa48("647") ? "" : (stryCov_9fa48("647"), "COMPONENT")))) || (stryMutAct_9fa48("649") ? amount.high !== 0 : stryMutAct_9fa48("648") ? false : (stryCov_9fa48("648", "649"), amount.high === 0)))) || measurable(amount, line, food))) return stryMutAct_9fa48("650") ? ["Stryker was here"] : (stryCov_9fa48("650"), []);
        return stryMutAct_9fa48("651") ? [] : (stryCov_9fa48("651"), [stryMutAct_9fa48("652") ? {} : (stryCov_9fa48("652"), {
          code: stryMutAct_9fa48("653") ? "" : (stryCov_9fa48("653"), "NOT_MEASURABLE"),
          severity: stryMutAct_9fa48("654") ? "" : (stryCov_9fa48("654"), "LOOK"),
          path: at,
          item: nameOf(line),
          amount
        })]);
      }
    })]);
  }
}