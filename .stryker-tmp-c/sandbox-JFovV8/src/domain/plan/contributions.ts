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
import { needDimension } from "../component/purchase-need.js";
import type { Component } from "../model/component.js";
import type { Food } from "../model/food.js";
import type { Meal } from "../model/plan.js";
import type { Warning } from "../problem.js";
import { inDimension, missingText } from "../quantity/convert.js";
import type { Contribution } from "../shopping/merge.js";
import type { FoodsToday } from "./foods-today.js";
import type { ScaledLine, ScaledPlan } from "./scaled.js";

/** Where a contribution to a shopping list comes from. */
export interface Source {
  readonly scaled: ScaledPlan;
  readonly meal: Meal | null;
  readonly component: Component | null;
  readonly line: ScaledLine;
}

/**
 * Everything a plan makes one buy, line by line, as it was frozen. What is always there is never bought.
 *
 * @param partKeeps whole days a part keeps once its piece is cut
 */
export function contributionsOf(scaled: ScaledPlan, partKeeps: FoodsToday["partKeeps"]): readonly Contribution<Source>[] {
  if (stryMutAct_9fa48("1670")) {
    {}
  } else {
    stryCov_9fa48("1670");
    const found: Contribution<Source>[] = stryMutAct_9fa48("1671") ? ["Stryker was here"] : (stryCov_9fa48("1671"), []);
    const keepsFor = (food: Food, name: string): number | null => {
      if (stryMutAct_9fa48("1672")) {
        {}
      } else {
        stryCov_9fa48("1672");
        const part = food.parts.find(stryMutAct_9fa48("1673") ? () => undefined : (stryCov_9fa48("1673"), each => stryMutAct_9fa48("1676") ? each.name !== name : stryMutAct_9fa48("1675") ? false : stryMutAct_9fa48("1674") ? true : (stryCov_9fa48("1674", "1675", "1676"), each.name === name)));
        return (stryMutAct_9fa48("1679") ? part !== undefined : stryMutAct_9fa48("1678") ? false : stryMutAct_9fa48("1677") ? true : (stryCov_9fa48("1677", "1678", "1679"), part === undefined)) ? null : partKeeps(part);
      }
    };
    const add = (lines: readonly ScaledLine[], meal: Meal | null, component: Component | null): void => {
      if (stryMutAct_9fa48("1680")) {
        {}
      } else {
        stryCov_9fa48("1680");
        for (const line of lines) {
          if (stryMutAct_9fa48("1681")) {
            {}
          } else {
            stryCov_9fa48("1681");
            const {
              need
            } = line;
            if (stryMutAct_9fa48("1684") ? need === null && need.food.alwaysThere : stryMutAct_9fa48("1683") ? false : stryMutAct_9fa48("1682") ? true : (stryCov_9fa48("1682", "1683", "1684"), (stryMutAct_9fa48("1686") ? need !== null : stryMutAct_9fa48("1685") ? false : (stryCov_9fa48("1685", "1686"), need === null)) || need.food.alwaysThere)) continue;
            found.push(stryMutAct_9fa48("1687") ? {} : (stryCov_9fa48("1687"), {
              food: need.food,
              part: need.part,
              dimension: need.dimension,
              low: need.low,
              high: need.high,
              day: stryMutAct_9fa48("1688") ? meal?.day && 0 : (stryCov_9fa48("1688"), (stryMutAct_9fa48("1689") ? meal.day : (stryCov_9fa48("1689"), meal?.day)) ?? 0),
              keeps: (stryMutAct_9fa48("1692") ? need.part !== null : stryMutAct_9fa48("1691") ? false : stryMutAct_9fa48("1690") ? true : (stryCov_9fa48("1690", "1691", "1692"), need.part === null)) ? null : keepsFor(need.food, need.part),
              open: stryMutAct_9fa48("1695") ? line.line.extra && need.dimension === null : stryMutAct_9fa48("1694") ? false : stryMutAct_9fa48("1693") ? true : (stryCov_9fa48("1693", "1694", "1695"), line.line.extra || (stryMutAct_9fa48("1697") ? need.dimension !== null : stryMutAct_9fa48("1696") ? false : (stryCov_9fa48("1696", "1697"), need.dimension === null))),
              source: stryMutAct_9fa48("1698") ? {} : (stryCov_9fa48("1698"), {
                scaled,
                meal,
                component,
                line
              })
            }));
          }
        }
      }
    };
    for (const {
      meal,
      lines
    } of scaled.meals) add(lines, meal, null);
    for (const {
      component,
      lines,
      batches
    } of scaled.components) if (stryMutAct_9fa48("1702") ? batches <= 0 : stryMutAct_9fa48("1701") ? batches >= 0 : stryMutAct_9fa48("1700") ? false : stryMutAct_9fa48("1699") ? true : (stryCov_9fa48("1699", "1700", "1701", "1702"), batches > 0)) add(lines, null, component);
    return found;
  }
}
export interface Restated {
  readonly contribution: Contribution<Source>;
  readonly warning: Warning | null;
}

/**
 * A contribution under the food it is shopped as today. Two revisions may have frozen a food when it was sold by the piece and
 * when by weight; where today's facts can turn one into the other, they go on one line.
 */
export function restated(contribution: Contribution<Source>, food: Food): Restated {
  if (stryMutAct_9fa48("1703")) {
    {}
  } else {
    stryCov_9fa48("1703");
    const {
      dimension,
      low,
      high,
      source
    } = contribution;
    const wanted = needDimension(food);
    if (stryMutAct_9fa48("1706") ? dimension === null && dimension === wanted : stryMutAct_9fa48("1705") ? false : stryMutAct_9fa48("1704") ? true : (stryCov_9fa48("1704", "1705", "1706"), (stryMutAct_9fa48("1708") ? dimension !== null : stryMutAct_9fa48("1707") ? false : (stryCov_9fa48("1707", "1708"), dimension === null)) || (stryMutAct_9fa48("1710") ? dimension !== wanted : stryMutAct_9fa48("1709") ? false : (stryCov_9fa48("1709", "1710"), dimension === wanted)))) return stryMutAct_9fa48("1711") ? {} : (stryCov_9fa48("1711"), {
      contribution: stryMutAct_9fa48("1712") ? {} : (stryCov_9fa48("1712"), {
        ...contribution,
        food
      }),
      warning: null
    });
    const {
      line
    } = source.line;
    const converted = inDimension(stryMutAct_9fa48("1713") ? {} : (stryCov_9fa48("1713"), {
      dimension,
      low,
      high
    }), wanted, food, line.form);
    if (stryMutAct_9fa48("1715") ? false : stryMutAct_9fa48("1714") ? true : (stryCov_9fa48("1714", "1715"), converted.ok)) return stryMutAct_9fa48("1716") ? {} : (stryCov_9fa48("1716"), {
      contribution: stryMutAct_9fa48("1717") ? {} : (stryCov_9fa48("1717"), {
        ...contribution,
        food,
        ...converted.amount
      }),
      warning: null
    });
    const known = stryMutAct_9fa48("1720") ? needDimension(contribution.food) === dimension : stryMutAct_9fa48("1719") ? false : stryMutAct_9fa48("1718") ? true : (stryCov_9fa48("1718", "1719", "1720"), needDimension(contribution.food) !== dimension);
    const missing = missingText(converted.missing);
    return stryMutAct_9fa48("1721") ? {} : (stryCov_9fa48("1721"), {
      contribution: stryMutAct_9fa48("1722") ? {} : (stryCov_9fa48("1722"), {
        ...contribution,
        food
      }),
      // Where its own plan could not combine it either, the plan has said so.
      warning: known ? null : stryMutAct_9fa48("1723") ? {} : (stryCov_9fa48("1723"), {
        code: stryMutAct_9fa48("1724") ? "" : (stryCov_9fa48("1724"), "NOT_COMBINED"),
        path: stryMutAct_9fa48("1725") ? [] : (stryCov_9fa48("1725"), [stryMutAct_9fa48("1726") ? "" : (stryCov_9fa48("1726"), "foods"), food.slug]),
        food: food.slug,
        missing
      })
    });
  }
}