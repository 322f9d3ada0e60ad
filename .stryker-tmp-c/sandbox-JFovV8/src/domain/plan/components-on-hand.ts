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
import type { Household, OnHand } from "../model/household.js";
import type { Path, Warning } from "../problem.js";
import { missingText, toDimension } from "../quantity/convert.js";
import { toNumber } from "../quantity/rational.js";
import type { Stock } from "../shopping/on-hand.js";
import type { CompiledComponent, CompiledPlan } from "./compiled-plan.js";
import { daysBetween, sessionDate } from "./session-date.js";

/** Some of a component the household has, in base units of its yield. */
export interface ComponentStock extends Stock {
  /** Place in `household.onHand`. */
  readonly entry: number;
}
export interface ComponentsOnHand {
  /** By index of the component. */
  readonly stocks: ReadonlyMap<number, readonly ComponentStock[]>;
  readonly warnings: readonly Warning[];
}

/** In base units of the component's yield, or the fact that is missing. */
function inYield({
  amount,
  unit
}: OnHand, {
  component,
  yield: perBatch
}: CompiledComponent): number | string {
  if (stryMutAct_9fa48("1526")) {
    {}
  } else {
    stryCov_9fa48("1526");
    if (stryMutAct_9fa48("1529") ? unit !== "batch" : stryMutAct_9fa48("1528") ? false : stryMutAct_9fa48("1527") ? true : (stryCov_9fa48("1527", "1528", "1529"), unit === (stryMutAct_9fa48("1530") ? "" : (stryCov_9fa48("1530"), "batch")))) return stryMutAct_9fa48("1531") ? toNumber(amount) / perBatch.low : (stryCov_9fa48("1531"), toNumber(amount) * perBatch.low);
    const converted = toDimension(stryMutAct_9fa48("1532") ? {} : (stryCov_9fa48("1532"), {
      low: amount,
      high: amount,
      unit
    }), perBatch.dimension, component, null);
    return converted.ok ? converted.amount.low : missingText(converted.missing);
  }
}

/**
 * What the household already has of the plan's components. It goes off the demand before batches are counted. What is past
 * its date when the session begins is left out and named; so is what cannot be compared with the yield.
 *
 * @param left share of each entry of `household.onHand` that is still there
 */
export function componentsOnHand(plan: CompiledPlan, household: Household, left: readonly number[]): ComponentsOnHand {
  if (stryMutAct_9fa48("1533")) {
    {}
  } else {
    stryCov_9fa48("1533");
    const warnings: Warning[] = stryMutAct_9fa48("1534") ? ["Stryker was here"] : (stryCov_9fa48("1534"), []);
    const stocks = new Map<number, ComponentStock[]>();
    const today = sessionDate(household);
    household.onHand.forEach((onHand, entry) => {
      if (stryMutAct_9fa48("1535")) {
        {}
      } else {
        stryCov_9fa48("1535");
        if (stryMutAct_9fa48("1538") ? onHand.item.kind === "COMPONENT" : stryMutAct_9fa48("1537") ? false : stryMutAct_9fa48("1536") ? true : (stryCov_9fa48("1536", "1537", "1538"), onHand.item.kind !== (stryMutAct_9fa48("1539") ? "" : (stryCov_9fa48("1539"), "COMPONENT")))) return;
        const path: Path = stryMutAct_9fa48("1540") ? [] : (stryCov_9fa48("1540"), [stryMutAct_9fa48("1541") ? "" : (stryCov_9fa48("1541"), "household"), stryMutAct_9fa48("1542") ? "" : (stryCov_9fa48("1542"), "onHand"), entry]);
        const item = onHand.item.component;
        const index = plan.makeOrder.find(stryMutAct_9fa48("1543") ? () => undefined : (stryCov_9fa48("1543"), each => stryMutAct_9fa48("1546") ? plan.components[each]!.component.slug !== item : stryMutAct_9fa48("1545") ? false : stryMutAct_9fa48("1544") ? true : (stryCov_9fa48("1544", "1545", "1546"), plan.components[each]!.component.slug === item)));
        if (stryMutAct_9fa48("1549") ? index !== undefined : stryMutAct_9fa48("1548") ? false : stryMutAct_9fa48("1547") ? true : (stryCov_9fa48("1547", "1548", "1549"), index === undefined)) {
          if (stryMutAct_9fa48("1550")) {
            {}
          } else {
            stryCov_9fa48("1550");
            warnings.push(stryMutAct_9fa48("1551") ? {} : (stryCov_9fa48("1551"), {
              code: stryMutAct_9fa48("1552") ? "" : (stryCov_9fa48("1552"), "ON_HAND_NOT_NEEDED"),
              path,
              item
            }));
            return;
          }
        }
        const {
          useBy
        } = onHand;
        const lastDay = (stryMutAct_9fa48("1555") ? useBy === null && today === null : stryMutAct_9fa48("1554") ? false : stryMutAct_9fa48("1553") ? true : (stryCov_9fa48("1553", "1554", "1555"), (stryMutAct_9fa48("1557") ? useBy !== null : stryMutAct_9fa48("1556") ? false : (stryCov_9fa48("1556", "1557"), useBy === null)) || (stryMutAct_9fa48("1559") ? today !== null : stryMutAct_9fa48("1558") ? false : (stryCov_9fa48("1558", "1559"), today === null)))) ? null : daysBetween(today, useBy);
        if (stryMutAct_9fa48("1562") ? lastDay !== null || lastDay < 0 : stryMutAct_9fa48("1561") ? false : stryMutAct_9fa48("1560") ? true : (stryCov_9fa48("1560", "1561", "1562"), (stryMutAct_9fa48("1564") ? lastDay === null : stryMutAct_9fa48("1563") ? true : (stryCov_9fa48("1563", "1564"), lastDay !== null)) && (stryMutAct_9fa48("1567") ? lastDay >= 0 : stryMutAct_9fa48("1566") ? lastDay <= 0 : stryMutAct_9fa48("1565") ? true : (stryCov_9fa48("1565", "1566", "1567"), lastDay < 0)))) {
          if (stryMutAct_9fa48("1568")) {
            {}
          } else {
            stryCov_9fa48("1568");
            warnings.push(stryMutAct_9fa48("1569") ? {} : (stryCov_9fa48("1569"), {
              code: stryMutAct_9fa48("1570") ? "" : (stryCov_9fa48("1570"), "ON_HAND_TOO_OLD"),
              path,
              item,
              useBy: stryMutAct_9fa48("1571") ? useBy && "" : (stryCov_9fa48("1571"), useBy ?? (stryMutAct_9fa48("1572") ? "Stryker was here!" : (stryCov_9fa48("1572"), "")))
            }));
            return;
          }
        }
        const amount = inYield(onHand, plan.components[index]!);
        if (stryMutAct_9fa48("1575") ? typeof amount !== "string" : stryMutAct_9fa48("1574") ? false : stryMutAct_9fa48("1573") ? true : (stryCov_9fa48("1573", "1574", "1575"), typeof amount === (stryMutAct_9fa48("1576") ? "" : (stryCov_9fa48("1576"), "string")))) warnings.push(stryMutAct_9fa48("1577") ? {} : (stryCov_9fa48("1577"), {
          code: stryMutAct_9fa48("1578") ? "" : (stryCov_9fa48("1578"), "ON_HAND_NOT_COMPARABLE"),
          path,
          item,
          missing: amount
        }));else stocks.set(index, stryMutAct_9fa48("1579") ? [] : (stryCov_9fa48("1579"), [...(stryMutAct_9fa48("1580") ? stocks.get(index) && [] : (stryCov_9fa48("1580"), stocks.get(index) ?? (stryMutAct_9fa48("1581") ? ["Stryker was here"] : (stryCov_9fa48("1581"), [])))), stryMutAct_9fa48("1582") ? {} : (stryCov_9fa48("1582"), {
          amount: stryMutAct_9fa48("1583") ? amount / left[entry]! : (stryCov_9fa48("1583"), amount * left[entry]!),
          lastDay,
          entry
        })]));
      }
    });
    return stryMutAct_9fa48("1584") ? {} : (stryCov_9fa48("1584"), {
      stocks,
      warnings
    });
  }
}