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
import { edibleShare } from "../component/edible.js";
import type { BaseAmount } from "../model/amount.js";
import type { Food } from "../model/food.js";
import type { Meal } from "../model/plan.js";
import { inDimension, toBase } from "../quantity/convert.js";
import { lineContext } from "./line-context.js";
import type { ScaledComponent, ScaledLine, ScaledPlan } from "./scaled.js";

/** Grams of a food's edible portion, raw, that are eaten of it; null where nobody can say how much. */
export interface EatenFood {
  readonly food: Food;
  readonly part: string | null;
  readonly optional: boolean;
  readonly grams: {
    readonly low: number;
    readonly high: number;
  } | null;
}
export interface EatenMeal {
  readonly meal: Meal;
  /** Of all its servings together. One entry for each food and part, in no particular order. */
  readonly foods: readonly EatenFood[];
}
type Grams = EatenFood["grams"];
const plus = stryMutAct_9fa48("1802") ? () => undefined : (stryCov_9fa48("1802"), (() => {
  const plus = (a: Grams, b: Grams): Grams => (stryMutAct_9fa48("1805") ? a === null && b === null : stryMutAct_9fa48("1804") ? false : stryMutAct_9fa48("1803") ? true : (stryCov_9fa48("1803", "1804", "1805"), (stryMutAct_9fa48("1807") ? a !== null : stryMutAct_9fa48("1806") ? false : (stryCov_9fa48("1806", "1807"), a === null)) || (stryMutAct_9fa48("1809") ? b !== null : stryMutAct_9fa48("1808") ? false : (stryCov_9fa48("1808", "1809"), b === null)))) ? null : stryMutAct_9fa48("1810") ? {} : (stryCov_9fa48("1810"), {
    low: stryMutAct_9fa48("1811") ? a.low - b.low : (stryCov_9fa48("1811"), a.low + b.low),
    high: stryMutAct_9fa48("1812") ? a.high - b.high : (stryCov_9fa48("1812"), a.high + b.high)
  });
  return plus;
})());

/** Grams of a whole food's edible portion in an amount of it: what was weighed ready is eaten, of what was bought a share. */
function edibleGrams(amount: BaseAmount, line: ScaledLine, food: Food): Grams {
  if (stryMutAct_9fa48("1813")) {
    {}
  } else {
    stryCov_9fa48("1813");
    const mass = inDimension(amount, stryMutAct_9fa48("1814") ? "" : (stryCov_9fa48("1814"), "MASS"), food, line.line.form);
    if (stryMutAct_9fa48("1817") ? false : stryMutAct_9fa48("1816") ? true : stryMutAct_9fa48("1815") ? mass.ok : (stryCov_9fa48("1815", "1816", "1817"), !mass.ok)) return null;
    const {
      low,
      high
    } = mass.amount;
    // A food nobody gives an edible portion for is eaten as it is bought: flour, oil, lentils.
    const ready = stryMutAct_9fa48("1820") ? line.line.measured === "READY" || amount.dimension !== "COUNT" : stryMutAct_9fa48("1819") ? false : stryMutAct_9fa48("1818") ? true : (stryCov_9fa48("1818", "1819", "1820"), (stryMutAct_9fa48("1822") ? line.line.measured !== "READY" : stryMutAct_9fa48("1821") ? true : (stryCov_9fa48("1821", "1822"), line.line.measured === (stryMutAct_9fa48("1823") ? "" : (stryCov_9fa48("1823"), "READY")))) && (stryMutAct_9fa48("1825") ? amount.dimension === "COUNT" : stryMutAct_9fa48("1824") ? true : (stryCov_9fa48("1824", "1825"), amount.dimension !== (stryMutAct_9fa48("1826") ? "" : (stryCov_9fa48("1826"), "COUNT")))));
    const share = ready ? 1 : stryMutAct_9fa48("1827") ? edibleShare(food, line.line.form) && 1 : (stryCov_9fa48("1827"), edibleShare(food, line.line.form) ?? 1);
    return stryMutAct_9fa48("1828") ? {} : (stryCov_9fa48("1828"), {
      low: stryMutAct_9fa48("1829") ? low / share : (stryCov_9fa48("1829"), low * share),
      high: stryMutAct_9fa48("1830") ? high / share : (stryCov_9fa48("1830"), high * share)
    });
  }
}

/** Grams of a part: by weight as it is, by the piece through what one piece gives. */
function partGrams(amount: BaseAmount, partName: string, food: Food): Grams {
  if (stryMutAct_9fa48("1831")) {
    {}
  } else {
    stryCov_9fa48("1831");
    const mass = inDimension(amount, stryMutAct_9fa48("1832") ? "" : (stryCov_9fa48("1832"), "MASS"), food, partName);
    if (stryMutAct_9fa48("1835") ? amount.dimension === "COUNT" : stryMutAct_9fa48("1834") ? false : stryMutAct_9fa48("1833") ? true : (stryCov_9fa48("1833", "1834", "1835"), amount.dimension !== (stryMutAct_9fa48("1836") ? "" : (stryCov_9fa48("1836"), "COUNT")))) return mass.ok ? stryMutAct_9fa48("1837") ? {} : (stryCov_9fa48("1837"), {
      low: mass.amount.low,
      high: mass.amount.high
    }) : null;
    const part = food.parts.find(stryMutAct_9fa48("1838") ? () => undefined : (stryCov_9fa48("1838"), ({
      name
    }) => stryMutAct_9fa48("1841") ? name !== partName : stryMutAct_9fa48("1840") ? false : stryMutAct_9fa48("1839") ? true : (stryCov_9fa48("1839", "1840", "1841"), name === partName)));
    const gives = (stryMutAct_9fa48("1844") ? part !== undefined : stryMutAct_9fa48("1843") ? false : stryMutAct_9fa48("1842") ? true : (stryCov_9fa48("1842", "1843", "1844"), part === undefined)) ? null : toBase(part.perPiece, food, partName);
    if (stryMutAct_9fa48("1847") ? gives === null && !gives.ok : stryMutAct_9fa48("1846") ? false : stryMutAct_9fa48("1845") ? true : (stryCov_9fa48("1845", "1846", "1847"), (stryMutAct_9fa48("1849") ? gives !== null : stryMutAct_9fa48("1848") ? false : (stryCov_9fa48("1848", "1849"), gives === null)) || (stryMutAct_9fa48("1850") ? gives.ok : (stryCov_9fa48("1850"), !gives.ok)))) return null;
    const one = inDimension(gives.amount, stryMutAct_9fa48("1851") ? "" : (stryCov_9fa48("1851"), "MASS"), food, partName);
    return one.ok ? stryMutAct_9fa48("1852") ? {} : (stryCov_9fa48("1852"), {
      low: stryMutAct_9fa48("1853") ? one.amount.low / amount.low : (stryCov_9fa48("1853"), one.amount.low * amount.low),
      high: stryMutAct_9fa48("1854") ? one.amount.high / amount.high : (stryCov_9fa48("1854"), one.amount.high * amount.high)
    }) : null;
  }
}
function gramsOf(line: ScaledLine, food: Food, part: string | null): Grams {
  if (stryMutAct_9fa48("1855")) {
    {}
  } else {
    stryCov_9fa48("1855");
    if (stryMutAct_9fa48("1858") ? line.amount !== null : stryMutAct_9fa48("1857") ? false : stryMutAct_9fa48("1856") ? true : (stryCov_9fa48("1856", "1857", "1858"), line.amount === null)) return null;
    return (stryMutAct_9fa48("1861") ? part !== null : stryMutAct_9fa48("1860") ? false : stryMutAct_9fa48("1859") ? true : (stryCov_9fa48("1859", "1860", "1861"), part === null)) ? edibleGrams(line.amount, line, food) : partGrams(line.amount, part, food);
  }
}
class Tally {
  private readonly byKey = new Map<string, EatenFood>();
  add({
    food,
    part,
    optional,
    grams
  }: EatenFood): void {
    if (stryMutAct_9fa48("1862")) {
      {}
    } else {
      stryCov_9fa48("1862");
      const key = JSON.stringify(stryMutAct_9fa48("1863") ? [] : (stryCov_9fa48("1863"), [food.slug, part]));
      const known = this.byKey.get(key);
      this.byKey.set(key, (stryMutAct_9fa48("1866") ? known !== undefined : stryMutAct_9fa48("1865") ? false : stryMutAct_9fa48("1864") ? true : (stryCov_9fa48("1864", "1865", "1866"), known === undefined)) ? stryMutAct_9fa48("1867") ? {} : (stryCov_9fa48("1867"), {
        food,
        part,
        optional,
        grams
      }) : stryMutAct_9fa48("1868") ? {} : (stryCov_9fa48("1868"), {
        food,
        part,
        optional: stryMutAct_9fa48("1871") ? known.optional || optional : stryMutAct_9fa48("1870") ? false : stryMutAct_9fa48("1869") ? true : (stryCov_9fa48("1869", "1870", "1871"), known.optional && optional),
        grams: plus(known.grams, grams)
      }));
    }
  }
  foods(): readonly EatenFood[] {
    if (stryMutAct_9fa48("1872")) {
      {}
    } else {
      stryCov_9fa48("1872");
      return stryMutAct_9fa48("1873") ? [] : (stryCov_9fa48("1873"), [...this.byKey.values()]);
    }
  }
}

/** What share of a component's batches an amount of it is. Both ends; null when none of it was made (all was on hand). */
function shareOf(amount: BaseAmount | null, made: BaseAmount): Grams {
  if (stryMutAct_9fa48("1874")) {
    {}
  } else {
    stryCov_9fa48("1874");
    if (stryMutAct_9fa48("1877") ? amount === null && !(made.low > 0) : stryMutAct_9fa48("1876") ? false : stryMutAct_9fa48("1875") ? true : (stryCov_9fa48("1875", "1876", "1877"), (stryMutAct_9fa48("1879") ? amount !== null : stryMutAct_9fa48("1878") ? false : (stryCov_9fa48("1878", "1879"), amount === null)) || (stryMutAct_9fa48("1880") ? made.low > 0 : (stryCov_9fa48("1880"), !(stryMutAct_9fa48("1884") ? made.low <= 0 : stryMutAct_9fa48("1883") ? made.low >= 0 : stryMutAct_9fa48("1882") ? false : stryMutAct_9fa48("1881") ? true : (stryCov_9fa48("1881", "1882", "1883", "1884"), made.low > 0)))))) return null;
    return stryMutAct_9fa48("1885") ? {} : (stryCov_9fa48("1885"), {
      low: stryMutAct_9fa48("1886") ? amount.low * made.high : (stryCov_9fa48("1886"), amount.low / made.high),
      high: stryMutAct_9fa48("1887") ? amount.high * made.low : (stryCov_9fa48("1887"), amount.high / made.low)
    });
  }
}
const times = stryMutAct_9fa48("1888") ? () => undefined : (stryCov_9fa48("1888"), (() => {
  const times = (grams: Grams, share: Grams): Grams => (stryMutAct_9fa48("1891") ? grams === null && share === null : stryMutAct_9fa48("1890") ? false : stryMutAct_9fa48("1889") ? true : (stryCov_9fa48("1889", "1890", "1891"), (stryMutAct_9fa48("1893") ? grams !== null : stryMutAct_9fa48("1892") ? false : (stryCov_9fa48("1892", "1893"), grams === null)) || (stryMutAct_9fa48("1895") ? share !== null : stryMutAct_9fa48("1894") ? false : (stryCov_9fa48("1894", "1895"), share === null)))) ? null : stryMutAct_9fa48("1896") ? {} : (stryCov_9fa48("1896"), {
    low: stryMutAct_9fa48("1897") ? grams.low / share.low : (stryCov_9fa48("1897"), grams.low * share.low),
    high: stryMutAct_9fa48("1898") ? grams.high / share.high : (stryCov_9fa48("1898"), grams.high * share.high)
  });
  return times;
})());

/**
 * What the eaters of each meal eat, as raw food: through every component down to the foods, in the share of the
 * component that the meal takes. What is left over is not eaten. Foods without an amount are there all the same.
 */
export function eatenFoods(scaled: ScaledPlan): readonly EatenMeal[] {
  if (stryMutAct_9fa48("1899")) {
    {}
  } else {
    stryCov_9fa48("1899");
    const {
      foods
    } = lineContext(scaled.bundle);
    const ofComponent = new Map<string, {
      scaled: ScaledComponent;
      foods: readonly EatenFood[];
    }>();
    const tally = (lines: readonly ScaledLine[]): readonly EatenFood[] => {
      if (stryMutAct_9fa48("1900")) {
        {}
      } else {
        stryCov_9fa48("1900");
        const sum = new Tally();
        for (const line of lines) {
          if (stryMutAct_9fa48("1901")) {
            {}
          } else {
            stryCov_9fa48("1901");
            const {
              item
            } = line;
            const {
              optional
            } = line.line;
            if (stryMutAct_9fa48("1904") ? item.kind !== "FOOD" : stryMutAct_9fa48("1903") ? false : stryMutAct_9fa48("1902") ? true : (stryCov_9fa48("1902", "1903", "1904"), item.kind === (stryMutAct_9fa48("1905") ? "" : (stryCov_9fa48("1905"), "FOOD")))) {
              if (stryMutAct_9fa48("1906")) {
                {}
              } else {
                stryCov_9fa48("1906");
                const food = foods.get(item.food);
                if (stryMutAct_9fa48("1909") ? food === undefined : stryMutAct_9fa48("1908") ? false : stryMutAct_9fa48("1907") ? true : (stryCov_9fa48("1907", "1908", "1909"), food !== undefined)) sum.add(stryMutAct_9fa48("1910") ? {} : (stryCov_9fa48("1910"), {
                  food,
                  part: item.part,
                  optional,
                  grams: gramsOf(line, food, item.part)
                }));
                continue;
              }
            }
            const taken = ofComponent.get(item.component);
            if (stryMutAct_9fa48("1913") ? taken !== undefined : stryMutAct_9fa48("1912") ? false : stryMutAct_9fa48("1911") ? true : (stryCov_9fa48("1911", "1912", "1913"), taken === undefined)) continue;
            const share = shareOf(line.amount, taken.scaled.made);
            for (const each of taken.foods) {
              if (stryMutAct_9fa48("1914")) {
                {}
              } else {
                stryCov_9fa48("1914");
                sum.add(stryMutAct_9fa48("1915") ? {} : (stryCov_9fa48("1915"), {
                  ...each,
                  optional: stryMutAct_9fa48("1918") ? optional && each.optional : stryMutAct_9fa48("1917") ? false : stryMutAct_9fa48("1916") ? true : (stryCov_9fa48("1916", "1917", "1918"), optional || each.optional),
                  grams: times(each.grams, share)
                }));
              }
            }
          }
        }
        return sum.foods();
      }
    };
    // Inputs come before what uses them, so every component a line takes is there already.
    for (const each of scaled.components) {
      if (stryMutAct_9fa48("1919")) {
        {}
      } else {
        stryCov_9fa48("1919");
        ofComponent.set(each.component.slug, stryMutAct_9fa48("1920") ? {} : (stryCov_9fa48("1920"), {
          scaled: each,
          foods: tally(each.lines)
        }));
      }
    }
    return scaled.meals.map(stryMutAct_9fa48("1921") ? () => undefined : (stryCov_9fa48("1921"), ({
      meal,
      lines
    }) => stryMutAct_9fa48("1922") ? {} : (stryCov_9fa48("1922"), {
      meal,
      foods: tally(lines)
    })));
  }
}