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
import type { Food } from "../model/food.js";
import { nutritionOf, type Nutrition, type NutritionInput, type Span } from "../nutrition/nutrients.js";
import { inDimension } from "../quantity/convert.js";
import { eatenFoods, type EatenMeal } from "./eaten.js";
import { lineContext } from "./line-context.js";
import type { ScaledLine, ScaledPlan } from "./scaled.js";

/** Every food that goes into a meal, through its components, each once; with swaps and routes as they were taken. */
export const foodsOfMeal = stryMutAct_9fa48("1585") ? () => undefined : (stryCov_9fa48("1585"), (() => {
  const foodsOfMeal = ({
    foods
  }: EatenMeal): readonly Food[] => stryMutAct_9fa48("1586") ? [] : (stryCov_9fa48("1586"), [...new Map(foods.map(stryMutAct_9fa48("1587") ? () => undefined : (stryCov_9fa48("1587"), ({
    food
  }) => stryMutAct_9fa48("1588") ? [] : (stryCov_9fa48("1588"), [food.slug, food])))).values()]);
  return foodsOfMeal;
})());

/** Every food of the plan, as `foodsOfMeal`. */
export const foodsOfPlan = stryMutAct_9fa48("1589") ? () => undefined : (stryCov_9fa48("1589"), (() => {
  const foodsOfPlan = (scaled: ScaledPlan): readonly Food[] => stryMutAct_9fa48("1590") ? [] : (stryCov_9fa48("1590"), [...new Map(eatenFoods(scaled).flatMap(foodsOfMeal).map(stryMutAct_9fa48("1591") ? () => undefined : (stryCov_9fa48("1591"), food => stryMutAct_9fa48("1592") ? [] : (stryCov_9fa48("1592"), [food.slug, food])))).values()]);
  return foodsOfPlan;
})());

/** Grams a line adds to the plate; null where its amount cannot be weighed. A line to taste weighs next to nothing. */
function weight(line: ScaledLine, scaled: ScaledPlan): Span | null {
  if (stryMutAct_9fa48("1593")) {
    {}
  } else {
    stryCov_9fa48("1593");
    if (stryMutAct_9fa48("1596") ? line.amount !== null : stryMutAct_9fa48("1595") ? false : stryMutAct_9fa48("1594") ? true : (stryCov_9fa48("1594", "1595", "1596"), line.amount === null)) return stryMutAct_9fa48("1597") ? {} : (stryCov_9fa48("1597"), {
      low: 0,
      high: 0
    });
    const {
      foods,
      components
    } = lineContext(scaled.bundle);
    const {
      item
    } = line;
    const facts = (stryMutAct_9fa48("1600") ? item.kind !== "FOOD" : stryMutAct_9fa48("1599") ? false : stryMutAct_9fa48("1598") ? true : (stryCov_9fa48("1598", "1599", "1600"), item.kind === (stryMutAct_9fa48("1601") ? "" : (stryCov_9fa48("1601"), "FOOD")))) ? foods.get(item.food) : stryMutAct_9fa48("1602") ? components.get(item.component).component : (stryCov_9fa48("1602"), components.get(item.component)?.component);
    const mass = (stryMutAct_9fa48("1605") ? facts !== undefined : stryMutAct_9fa48("1604") ? false : stryMutAct_9fa48("1603") ? true : (stryCov_9fa48("1603", "1604", "1605"), facts === undefined)) ? null : inDimension(line.amount, stryMutAct_9fa48("1606") ? "" : (stryCov_9fa48("1606"), "MASS"), facts, line.line.form);
    return (stryMutAct_9fa48("1609") ? mass?.ok !== true : stryMutAct_9fa48("1608") ? false : stryMutAct_9fa48("1607") ? true : (stryCov_9fa48("1607", "1608", "1609"), (stryMutAct_9fa48("1610") ? mass.ok : (stryCov_9fa48("1610"), mass?.ok)) === (stryMutAct_9fa48("1611") ? false : (stryCov_9fa48("1611"), true)))) ? stryMutAct_9fa48("1612") ? {} : (stryCov_9fa48("1612"), {
      low: mass.amount.low,
      high: mass.amount.high
    }) : null;
  }
}

/** What a meal weighs as it is put together; null unless every line can be weighed. Finishing steps are taken to lose nothing. */
function plateGrams(lines: readonly ScaledLine[], scaled: ScaledPlan): Span | null {
  if (stryMutAct_9fa48("1613")) {
    {}
  } else {
    stryCov_9fa48("1613");
    const sum = stryMutAct_9fa48("1614") ? {} : (stryCov_9fa48("1614"), {
      low: 0,
      high: 0
    });
    for (const line of lines) {
      if (stryMutAct_9fa48("1615")) {
        {}
      } else {
        stryCov_9fa48("1615");
        const grams = weight(line, scaled);
        if (stryMutAct_9fa48("1618") ? grams !== null : stryMutAct_9fa48("1617") ? false : stryMutAct_9fa48("1616") ? true : (stryCov_9fa48("1616", "1617", "1618"), grams === null)) return null;
        stryMutAct_9fa48("1619") ? sum.low -= grams.low : (stryCov_9fa48("1619"), sum.low += grams.low);
        stryMutAct_9fa48("1620") ? sum.high -= grams.high : (stryCov_9fa48("1620"), sum.high += grams.high);
      }
    }
    return (stryMutAct_9fa48("1624") ? sum.low <= 0 : stryMutAct_9fa48("1623") ? sum.low >= 0 : stryMutAct_9fa48("1622") ? false : stryMutAct_9fa48("1621") ? true : (stryCov_9fa48("1621", "1622", "1623", "1624"), sum.low > 0)) ? sum : null;
  }
}

/** A part is not the whole: zest and juice have figures of their own, which the whole fruit's are not. */
const inputOf = stryMutAct_9fa48("1625") ? () => undefined : (stryCov_9fa48("1625"), (() => {
  const inputOf = ({
    food,
    part,
    grams
  }: EatenMeal["foods"][number]): NutritionInput => stryMutAct_9fa48("1626") ? {} : (stryCov_9fa48("1626"), {
    food: (stryMutAct_9fa48("1629") ? part !== null : stryMutAct_9fa48("1628") ? false : stryMutAct_9fa48("1627") ? true : (stryCov_9fa48("1627", "1628", "1629"), part === null)) ? food : stryMutAct_9fa48("1630") ? {} : (stryCov_9fa48("1630"), {
      slug: food.slug,
      nutrients: null
    }),
    grams
  });
  return inputOf;
})());
export interface MealNutrition {
  readonly meal: string;
  readonly nutrition: Nutrition;
}

/**
 * Nutrition of each meal and of one serving of all meals together, from raw foods through the components. Water and other
 * things that are always there count where they have figures and are passed over where they have none.
 *
 * @param servings that share each meal
 */
export function planNutrition(scaled: ScaledPlan, servings: number): {
  readonly meals: readonly MealNutrition[];
  readonly plan: Nutrition;
} {
  if (stryMutAct_9fa48("1631")) {
    {}
  } else {
    stryCov_9fa48("1631");
    const eaten = eatenFoods(scaled);
    const counts = stryMutAct_9fa48("1632") ? () => undefined : (stryCov_9fa48("1632"), (() => {
      const counts = ({
        food
      }: EatenMeal["foods"][number]): boolean => stryMutAct_9fa48("1635") ? !food.alwaysThere && food.nutrients !== null : stryMutAct_9fa48("1634") ? false : stryMutAct_9fa48("1633") ? true : (stryCov_9fa48("1633", "1634", "1635"), (stryMutAct_9fa48("1636") ? food.alwaysThere : (stryCov_9fa48("1636"), !food.alwaysThere)) || (stryMutAct_9fa48("1638") ? food.nutrients === null : stryMutAct_9fa48("1637") ? false : (stryCov_9fa48("1637", "1638"), food.nutrients !== null)));
      return counts;
    })());
    const plates = scaled.meals.map(stryMutAct_9fa48("1639") ? () => undefined : (stryCov_9fa48("1639"), ({
      lines
    }) => plateGrams(lines, scaled)));
    const inputs = eaten.map(stryMutAct_9fa48("1640") ? () => undefined : (stryCov_9fa48("1640"), ({
      foods
    }) => stryMutAct_9fa48("1641") ? foods.map(inputOf) : (stryCov_9fa48("1641"), foods.filter(counts).map(inputOf))));
    const whole = plates.reduce<Span | null>(stryMutAct_9fa48("1642") ? () => undefined : (stryCov_9fa48("1642"), (sum, plate) => (stryMutAct_9fa48("1645") ? sum === null && plate === null : stryMutAct_9fa48("1644") ? false : stryMutAct_9fa48("1643") ? true : (stryCov_9fa48("1643", "1644", "1645"), (stryMutAct_9fa48("1647") ? sum !== null : stryMutAct_9fa48("1646") ? false : (stryCov_9fa48("1646", "1647"), sum === null)) || (stryMutAct_9fa48("1649") ? plate !== null : stryMutAct_9fa48("1648") ? false : (stryCov_9fa48("1648", "1649"), plate === null)))) ? null : stryMutAct_9fa48("1650") ? {} : (stryCov_9fa48("1650"), {
      low: stryMutAct_9fa48("1651") ? sum.low - plate.low : (stryCov_9fa48("1651"), sum.low + plate.low),
      high: stryMutAct_9fa48("1652") ? sum.high - plate.high : (stryCov_9fa48("1652"), sum.high + plate.high)
    })), stryMutAct_9fa48("1653") ? {} : (stryCov_9fa48("1653"), {
      low: 0,
      high: 0
    }));
    return stryMutAct_9fa48("1654") ? {} : (stryCov_9fa48("1654"), {
      meals: eaten.map(stryMutAct_9fa48("1655") ? () => undefined : (stryCov_9fa48("1655"), ({
        meal
      }, at) => stryMutAct_9fa48("1656") ? {} : (stryCov_9fa48("1656"), {
        meal: meal.slug,
        nutrition: nutritionOf(stryMutAct_9fa48("1657") ? {} : (stryCov_9fa48("1657"), {
          inputs: stryMutAct_9fa48("1658") ? inputs[at] && [] : (stryCov_9fa48("1658"), inputs[at] ?? (stryMutAct_9fa48("1659") ? ["Stryker was here"] : (stryCov_9fa48("1659"), []))),
          cookedGrams: stryMutAct_9fa48("1660") ? plates[at] && null : (stryCov_9fa48("1660"), plates[at] ?? null),
          servings
        }))
      }))),
      plan: nutritionOf(stryMutAct_9fa48("1661") ? {} : (stryCov_9fa48("1661"), {
        inputs: inputs.flat(),
        cookedGrams: (stryMutAct_9fa48("1664") ? whole !== null || whole.low > 0 : stryMutAct_9fa48("1663") ? false : stryMutAct_9fa48("1662") ? true : (stryCov_9fa48("1662", "1663", "1664"), (stryMutAct_9fa48("1666") ? whole === null : stryMutAct_9fa48("1665") ? true : (stryCov_9fa48("1665", "1666"), whole !== null)) && (stryMutAct_9fa48("1669") ? whole.low <= 0 : stryMutAct_9fa48("1668") ? whole.low >= 0 : stryMutAct_9fa48("1667") ? true : (stryCov_9fa48("1667", "1668", "1669"), whole.low > 0)))) ? whole : null,
        servings
      }))
    });
  }
}