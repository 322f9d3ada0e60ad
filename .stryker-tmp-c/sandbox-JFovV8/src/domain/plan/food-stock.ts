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
import { foodYield } from "../component/food-yield.js";
import { missingText, toDimension, toDimensionOf } from "../quantity/convert.js";
import { toNumber } from "../quantity/rational.js";
import type { Food } from "../model/food.js";
import type { Household, OnHand } from "../model/household.js";
import type { Path, Warning } from "../problem.js";
import { coveredByStock, type Stock } from "../shopping/on-hand.js";
import { needOf, type MergedNeed } from "../shopping/merge.js";
import { daysBetween, sessionDate } from "./session-date.js";
interface Entry {
  readonly onHand: OnHand;
  readonly path: Path;
  readonly food: Food | null;
  readonly slug: string;
  readonly lastDay: number | null;
}
export interface StockUse {
  /** Base units covered, by line. */
  readonly covered: readonly number[];
  readonly warnings: readonly Warning[];
}

/** In the dimension of a line, or the fact that is missing. */
function inLine({
  onHand: {
    amount,
    unit
  }
}: Entry, {
  food,
  dimension
}: MergedNeed<unknown>): number | string {
  if (stryMutAct_9fa48("1937")) {
    {}
  } else {
    stryCov_9fa48("1937");
    // To taste: there is some, and nothing to take it off.
    if (stryMutAct_9fa48("1940") ? dimension !== null : stryMutAct_9fa48("1939") ? false : stryMutAct_9fa48("1938") ? true : (stryCov_9fa48("1938", "1939", "1940"), dimension === null)) return 0;
    const converted = toDimension(stryMutAct_9fa48("1941") ? {} : (stryCov_9fa48("1941"), {
      low: amount,
      high: amount,
      unit
    }), dimension, food, null);
    return converted.ok ? converted.amount.low : missingText(converted.missing);
  }
}
interface OtherForm {
  /** What the entry gives, in the line's dimension. */
  readonly gives: number;
  /** The same in grams. */
  readonly grams: number;
  /** Grams of what is on hand that the whole need would take. */
  readonly wouldTake: number;
}

/** What an entry gives of another food that it turns into. */
const asOtherForm = (entry: Entry, line: MergedNeed<unknown>): OtherForm | null => {
  if (stryMutAct_9fa48("1942")) {
    {}
  } else {
    stryCov_9fa48("1942");
    if (stryMutAct_9fa48("1945") ? entry.food === null && line.dimension === null : stryMutAct_9fa48("1944") ? false : stryMutAct_9fa48("1943") ? true : (stryCov_9fa48("1943", "1944", "1945"), (stryMutAct_9fa48("1947") ? entry.food !== null : stryMutAct_9fa48("1946") ? false : (stryCov_9fa48("1946", "1947"), entry.food === null)) || (stryMutAct_9fa48("1949") ? line.dimension !== null : stryMutAct_9fa48("1948") ? false : (stryCov_9fa48("1948", "1949"), line.dimension === null)))) return null;
    const perGram = foodYield(entry.food, line.food.slug);
    if (stryMutAct_9fa48("1952") ? perGram !== null : stryMutAct_9fa48("1951") ? false : stryMutAct_9fa48("1950") ? true : (stryCov_9fa48("1950", "1951", "1952"), perGram === null)) return null;
    const grams = stryMutAct_9fa48("1953") ? toDimensionOf(toNumber(entry.onHand.amount), entry.onHand.unit, "MASS", entry.food).low : (stryCov_9fa48("1953"), toDimensionOf(toNumber(entry.onHand.amount), entry.onHand.unit, stryMutAct_9fa48("1954") ? "" : (stryCov_9fa48("1954"), "MASS"), entry.food)?.low);
    if (stryMutAct_9fa48("1957") ? grams !== undefined : stryMutAct_9fa48("1956") ? false : stryMutAct_9fa48("1955") ? true : (stryCov_9fa48("1955", "1956", "1957"), grams === undefined)) return null;
    const ofOneGram = stryMutAct_9fa48("1958") ? toDimensionOf(1, "g", line.dimension, line.food).low : (stryCov_9fa48("1958"), toDimensionOf(1, stryMutAct_9fa48("1959") ? "" : (stryCov_9fa48("1959"), "g"), line.dimension, line.food)?.low);
    if (stryMutAct_9fa48("1962") ? ofOneGram !== undefined : stryMutAct_9fa48("1961") ? false : stryMutAct_9fa48("1960") ? true : (stryCov_9fa48("1960", "1961", "1962"), ofOneGram === undefined)) return null;
    const cooked = stryMutAct_9fa48("1963") ? grams / perGram : (stryCov_9fa48("1963"), grams * perGram);
    return stryMutAct_9fa48("1964") ? {} : (stryCov_9fa48("1964"), {
      gives: stryMutAct_9fa48("1965") ? cooked / ofOneGram : (stryCov_9fa48("1965"), cooked * ofOneGram),
      grams: cooked,
      wouldTake: stryMutAct_9fa48("1966") ? line.high / ofOneGram * perGram : (stryCov_9fa48("1966"), (stryMutAct_9fa48("1967") ? line.high * ofOneGram : (stryCov_9fa48("1967"), line.high / ofOneGram)) / perGram)
    });
  }
};
const needUntil = stryMutAct_9fa48("1968") ? () => undefined : (stryCov_9fa48("1968"), (() => {
  const needUntil = (line: MergedNeed<unknown>) => stryMutAct_9fa48("1969") ? () => undefined : (stryCov_9fa48("1969"), (day: number): number => needOf(stryMutAct_9fa48("1970") ? line.contributions : (stryCov_9fa48("1970"), line.contributions.filter(stryMutAct_9fa48("1971") ? () => undefined : (stryCov_9fa48("1971"), each => stryMutAct_9fa48("1975") ? each.day > day : stryMutAct_9fa48("1974") ? each.day < day : stryMutAct_9fa48("1973") ? false : stryMutAct_9fa48("1972") ? true : (stryCov_9fa48("1972", "1973", "1974", "1975"), each.day <= day))))).high);
  return needUntil;
})());

/**
 * Takes what is on hand off the lines of a list, in any unit the food's facts can compare, before packs are chosen; never
 * below nothing. What cannot be compared, is too old, is not needed, or would only do in another form is said.
 *
 * @param find the food an entry names, or null if nobody knows it
 */
export function useFoodStock(lines: readonly MergedNeed<unknown>[], household: Household, canonical: (slug: string) => string, find: (slug: string) => Food | null): StockUse {
  if (stryMutAct_9fa48("1976")) {
    {}
  } else {
    stryCov_9fa48("1976");
    const today = sessionDate(household);
    const warnings: Warning[] = stryMutAct_9fa48("1977") ? ["Stryker was here"] : (stryCov_9fa48("1977"), []);
    const entries = household.onHand.flatMap((onHand, at): Entry[] => {
      if (stryMutAct_9fa48("1978")) {
        {}
      } else {
        stryCov_9fa48("1978");
        if (stryMutAct_9fa48("1981") ? onHand.item.kind === "FOOD" : stryMutAct_9fa48("1980") ? false : stryMutAct_9fa48("1979") ? true : (stryCov_9fa48("1979", "1980", "1981"), onHand.item.kind !== (stryMutAct_9fa48("1982") ? "" : (stryCov_9fa48("1982"), "FOOD")))) return stryMutAct_9fa48("1983") ? ["Stryker was here"] : (stryCov_9fa48("1983"), []);
        const path: Path = stryMutAct_9fa48("1984") ? [] : (stryCov_9fa48("1984"), [stryMutAct_9fa48("1985") ? "" : (stryCov_9fa48("1985"), "household"), stryMutAct_9fa48("1986") ? "" : (stryCov_9fa48("1986"), "onHand"), at]);
        const lastDay = (stryMutAct_9fa48("1989") ? onHand.useBy === null && today === null : stryMutAct_9fa48("1988") ? false : stryMutAct_9fa48("1987") ? true : (stryCov_9fa48("1987", "1988", "1989"), (stryMutAct_9fa48("1991") ? onHand.useBy !== null : stryMutAct_9fa48("1990") ? false : (stryCov_9fa48("1990", "1991"), onHand.useBy === null)) || (stryMutAct_9fa48("1993") ? today !== null : stryMutAct_9fa48("1992") ? false : (stryCov_9fa48("1992", "1993"), today === null)))) ? null : daysBetween(today, onHand.useBy);
        const slug = canonical(onHand.item.food);
        if (stryMutAct_9fa48("1996") ? lastDay !== null || lastDay < 0 : stryMutAct_9fa48("1995") ? false : stryMutAct_9fa48("1994") ? true : (stryCov_9fa48("1994", "1995", "1996"), (stryMutAct_9fa48("1998") ? lastDay === null : stryMutAct_9fa48("1997") ? true : (stryCov_9fa48("1997", "1998"), lastDay !== null)) && (stryMutAct_9fa48("2001") ? lastDay >= 0 : stryMutAct_9fa48("2000") ? lastDay <= 0 : stryMutAct_9fa48("1999") ? true : (stryCov_9fa48("1999", "2000", "2001"), lastDay < 0)))) {
          if (stryMutAct_9fa48("2002")) {
            {}
          } else {
            stryCov_9fa48("2002");
            warnings.push(stryMutAct_9fa48("2003") ? {} : (stryCov_9fa48("2003"), {
              code: stryMutAct_9fa48("2004") ? "" : (stryCov_9fa48("2004"), "ON_HAND_TOO_OLD"),
              path,
              item: slug,
              useBy: stryMutAct_9fa48("2005") ? onHand.useBy && "" : (stryCov_9fa48("2005"), onHand.useBy ?? (stryMutAct_9fa48("2006") ? "Stryker was here!" : (stryCov_9fa48("2006"), "")))
            }));
            return stryMutAct_9fa48("2007") ? ["Stryker was here"] : (stryCov_9fa48("2007"), []);
          }
        }
        return stryMutAct_9fa48("2008") ? [] : (stryCov_9fa48("2008"), [stryMutAct_9fa48("2009") ? {} : (stryCov_9fa48("2009"), {
          onHand,
          path,
          food: find(onHand.item.food),
          slug,
          lastDay
        })]);
      }
    });
    const stocks: Stock[][] = lines.map(stryMutAct_9fa48("2010") ? () => undefined : (stryCov_9fa48("2010"), () => stryMutAct_9fa48("2011") ? ["Stryker was here"] : (stryCov_9fa48("2011"), [])));
    for (const entry of entries) {
      if (stryMutAct_9fa48("2012")) {
        {}
      } else {
        stryCov_9fa48("2012");
        const own = lines.flatMap(stryMutAct_9fa48("2013") ? () => undefined : (stryCov_9fa48("2013"), (line, at) => (stryMutAct_9fa48("2016") ? line.food.slug !== entry.slug : stryMutAct_9fa48("2015") ? false : stryMutAct_9fa48("2014") ? true : (stryCov_9fa48("2014", "2015", "2016"), line.food.slug === entry.slug)) ? stryMutAct_9fa48("2017") ? [] : (stryCov_9fa48("2017"), [at]) : stryMutAct_9fa48("2018") ? ["Stryker was here"] : (stryCov_9fa48("2018"), [])));
        const amounts = own.map(stryMutAct_9fa48("2019") ? () => undefined : (stryCov_9fa48("2019"), at => stryMutAct_9fa48("2020") ? {} : (stryCov_9fa48("2020"), {
          at,
          amount: inLine(entry, lines[at]!)
        })));
        const comparable = amounts.find(stryMutAct_9fa48("2021") ? () => undefined : (stryCov_9fa48("2021"), ({
          amount
        }) => stryMutAct_9fa48("2024") ? typeof amount !== "number" : stryMutAct_9fa48("2023") ? false : stryMutAct_9fa48("2022") ? true : (stryCov_9fa48("2022", "2023", "2024"), typeof amount === (stryMutAct_9fa48("2025") ? "" : (stryCov_9fa48("2025"), "number")))));
        if (stryMutAct_9fa48("2028") ? typeof comparable?.amount !== "number" : stryMutAct_9fa48("2027") ? false : stryMutAct_9fa48("2026") ? true : (stryCov_9fa48("2026", "2027", "2028"), typeof (stryMutAct_9fa48("2029") ? comparable.amount : (stryCov_9fa48("2029"), comparable?.amount)) === (stryMutAct_9fa48("2030") ? "" : (stryCov_9fa48("2030"), "number")))) {
          if (stryMutAct_9fa48("2031")) {
            {}
          } else {
            stryCov_9fa48("2031");
            stocks[comparable.at]!.push(stryMutAct_9fa48("2032") ? {} : (stryCov_9fa48("2032"), {
              amount: comparable.amount,
              lastDay: entry.lastDay
            }));
            continue;
          }
        }
        const [incomparable] = amounts;
        if (stryMutAct_9fa48("2035") ? typeof incomparable?.amount !== "string" : stryMutAct_9fa48("2034") ? false : stryMutAct_9fa48("2033") ? true : (stryCov_9fa48("2033", "2034", "2035"), typeof (stryMutAct_9fa48("2036") ? incomparable.amount : (stryCov_9fa48("2036"), incomparable?.amount)) === (stryMutAct_9fa48("2037") ? "" : (stryCov_9fa48("2037"), "string")))) {
          if (stryMutAct_9fa48("2038")) {
            {}
          } else {
            stryCov_9fa48("2038");
            const missing = incomparable.amount;
            warnings.push(stryMutAct_9fa48("2039") ? {} : (stryCov_9fa48("2039"), {
              code: stryMutAct_9fa48("2040") ? "" : (stryCov_9fa48("2040"), "ON_HAND_NOT_COMPARABLE"),
              path: entry.path,
              item: entry.slug,
              missing
            }));
            continue;
          }
        }
        const at = lines.findIndex(stryMutAct_9fa48("2041") ? () => undefined : (stryCov_9fa48("2041"), line => stryMutAct_9fa48("2044") ? asOtherForm(entry, line) === null : stryMutAct_9fa48("2043") ? false : stryMutAct_9fa48("2042") ? true : (stryCov_9fa48("2042", "2043", "2044"), asOtherForm(entry, line) !== null)));
        const other = (stryMutAct_9fa48("2048") ? at >= 0 : stryMutAct_9fa48("2047") ? at <= 0 : stryMutAct_9fa48("2046") ? false : stryMutAct_9fa48("2045") ? true : (stryCov_9fa48("2045", "2046", "2047", "2048"), at < 0)) ? null : asOtherForm(entry, lines[at]!);
        if (stryMutAct_9fa48("2051") ? other !== null : stryMutAct_9fa48("2050") ? false : stryMutAct_9fa48("2049") ? true : (stryCov_9fa48("2049", "2050", "2051"), other === null)) warnings.push(stryMutAct_9fa48("2052") ? {} : (stryCov_9fa48("2052"), {
          code: stryMutAct_9fa48("2053") ? "" : (stryCov_9fa48("2053"), "ON_HAND_NOT_NEEDED"),
          path: entry.path,
          item: entry.slug
        }));else if (stryMutAct_9fa48("2055") ? false : stryMutAct_9fa48("2054") ? true : (stryCov_9fa48("2054", "2055"), entry.onHand.asOtherForm)) stocks[at]!.push(stryMutAct_9fa48("2056") ? {} : (stryCov_9fa48("2056"), {
          amount: other.gives,
          lastDay: entry.lastDay
        }));else warnings.push(offered(entry, lines[at]!, other));
      }
    }
    const covered = lines.map(stryMutAct_9fa48("2057") ? () => undefined : (stryCov_9fa48("2057"), (line, at) => coveredByStock(line.high, stocks[at]!, needUntil(line))));
    return stryMutAct_9fa48("2058") ? {} : (stryCov_9fa48("2058"), {
      covered,
      warnings
    });
  }
}
const offered = stryMutAct_9fa48("2059") ? () => undefined : (stryCov_9fa48("2059"), (() => {
  const offered = (entry: Entry, line: MergedNeed<unknown>, {
    grams,
    wouldTake
  }: OtherForm): Warning => stryMutAct_9fa48("2060") ? {} : (stryCov_9fa48("2060"), {
    code: stryMutAct_9fa48("2061") ? "" : (stryCov_9fa48("2061"), "ON_HAND_IN_OTHER_FORM"),
    path: entry.path,
    item: line.food.slug,
    from: entry.slug,
    gives: grams,
    wouldTake
  });
  return offered;
})());