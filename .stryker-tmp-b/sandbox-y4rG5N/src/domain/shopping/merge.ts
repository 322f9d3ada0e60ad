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
import type { BaseAmount, Dimension } from "../model/amount.js";
import type { Food } from "../model/food.js";
import { toBase } from "../quantity/convert.js";
import { sharedPieces, type PartUses } from "./shared-pieces.js";

/** What one line of one plan adds to a food. `source` is the caller's own. */
export interface Contribution<S> {
  readonly food: Food;
  readonly part: string | null;
  /** null: listed without an amount (to taste, or a part nobody can count). */
  readonly dimension: Dimension | null;
  readonly low: number;
  readonly high: number;
  /** Days after the session on which it is used. */
  readonly day: number;
  /** Of a part: days it keeps once its piece is cut; null where nobody says. */
  readonly keeps: number | null;
  /** There may be more of it than the amount says. */
  readonly open: boolean;
  readonly source: S;
}

/** One line of the list: everything of one food that can be added up. */
export interface MergedNeed<S> {
  readonly food: Food;
  /** null: nobody gave an amount. */
  readonly dimension: Dimension | null;
  readonly low: number;
  readonly high: number;
  readonly open: boolean;
  readonly contributions: readonly Contribution<S>[];
}
interface Range {
  readonly low: number;
  readonly high: number;
}
const none: Range = stryMutAct_9fa48("77") ? {} : (stryCov_9fa48("77"), {
  low: 0,
  high: 0
});

/** Both ends of what the uses of each part add up to, in pieces; under null those of the whole food. */
function sumsOf<S>(contributions: readonly Contribution<S>[]): ReadonlyMap<string | null, Range> {
  if (stryMutAct_9fa48("78")) {
    {}
  } else {
    stryCov_9fa48("78");
    const sums = new Map<string | null, Range>();
    for (const {
      part,
      dimension,
      low,
      high
    } of contributions) {
      if (stryMutAct_9fa48("79")) {
        {}
      } else {
        stryCov_9fa48("79");
        if (stryMutAct_9fa48("82") ? dimension !== null : stryMutAct_9fa48("81") ? false : stryMutAct_9fa48("80") ? true : (stryCov_9fa48("80", "81", "82"), dimension === null)) continue;
        const sum = stryMutAct_9fa48("83") ? sums.get(part) && none : (stryCov_9fa48("83"), sums.get(part) ?? none);
        sums.set(part, stryMutAct_9fa48("84") ? {} : (stryCov_9fa48("84"), {
          low: stryMutAct_9fa48("85") ? sum.low - low : (stryCov_9fa48("85"), sum.low + low),
          high: stryMutAct_9fa48("86") ? sum.high - high : (stryCov_9fa48("86"), sum.high + high)
        }));
      }
    }
    return sums;
  }
}

/** The uses of each part by day, at one end of their ranges. Where the plans do not agree how long it keeps, the least counts. */
export function partUses<S>(contributions: readonly Contribution<S>[], end: keyof Range): readonly (PartUses & {
  readonly part: string;
})[] {
  if (stryMutAct_9fa48("87")) {
    {}
  } else {
    stryCov_9fa48("87");
    const uses = new Map<string, {
      readonly part: string;
      keeps: number | null;
      readonly byDay: Map<number, number>;
    }>();
    for (const {
      part,
      dimension,
      day,
      keeps,
      [end]: pieces
    } of contributions) {
      if (stryMutAct_9fa48("88")) {
        {}
      } else {
        stryCov_9fa48("88");
        if (stryMutAct_9fa48("91") ? part === null && dimension === null : stryMutAct_9fa48("90") ? false : stryMutAct_9fa48("89") ? true : (stryCov_9fa48("89", "90", "91"), (stryMutAct_9fa48("93") ? part !== null : stryMutAct_9fa48("92") ? false : (stryCov_9fa48("92", "93"), part === null)) || (stryMutAct_9fa48("95") ? dimension !== null : stryMutAct_9fa48("94") ? false : (stryCov_9fa48("94", "95"), dimension === null)))) continue;
        const known = stryMutAct_9fa48("96") ? uses.get(part) && {
          part,
          keeps: null,
          byDay: new Map<number, number>()
        } : (stryCov_9fa48("96"), uses.get(part) ?? (stryMutAct_9fa48("97") ? {} : (stryCov_9fa48("97"), {
          part,
          keeps: null,
          byDay: new Map<number, number>()
        })));
        if (stryMutAct_9fa48("100") ? keeps === null : stryMutAct_9fa48("99") ? false : stryMutAct_9fa48("98") ? true : (stryCov_9fa48("98", "99", "100"), keeps !== null)) known.keeps = stryMutAct_9fa48("101") ? Math.max(keeps, known.keeps ?? keeps) : (stryCov_9fa48("101"), Math.min(keeps, stryMutAct_9fa48("102") ? known.keeps && keeps : (stryCov_9fa48("102"), known.keeps ?? keeps)));
        known.byDay.set(day, stryMutAct_9fa48("103") ? (known.byDay.get(day) ?? 0) - pieces : (stryCov_9fa48("103"), (stryMutAct_9fa48("104") ? known.byDay.get(day) && 0 : (stryCov_9fa48("104"), known.byDay.get(day) ?? 0)) + pieces));
        uses.set(part, known);
      }
    }
    return stryMutAct_9fa48("105") ? [] : (stryCov_9fa48("105"), [...uses.values()]);
  }
}

/** Pieces that uses of parts share, at both ends. */
const piecesOf = <S,>(contributions: readonly Contribution<S>[]): Range => {
  if (stryMutAct_9fa48("106")) {
    {}
  } else {
    stryCov_9fa48("106");
    if (stryMutAct_9fa48("109") ? false : stryMutAct_9fa48("108") ? true : stryMutAct_9fa48("107") ? contributions.some(({
      part
    }) => part !== null) : (stryCov_9fa48("107", "108", "109"), !(stryMutAct_9fa48("110") ? contributions.every(({
      part
    }) => part !== null) : (stryCov_9fa48("110"), contributions.some(stryMutAct_9fa48("111") ? () => undefined : (stryCov_9fa48("111"), ({
      part
    }) => stryMutAct_9fa48("114") ? part === null : stryMutAct_9fa48("113") ? false : stryMutAct_9fa48("112") ? true : (stryCov_9fa48("112", "113", "114"), part !== null))))))) return none;
    return stryMutAct_9fa48("115") ? {} : (stryCov_9fa48("115"), {
      low: sharedPieces(partUses(contributions, stryMutAct_9fa48("116") ? "" : (stryCov_9fa48("116"), "low"))),
      high: sharedPieces(partUses(contributions, stryMutAct_9fa48("117") ? "" : (stryCov_9fa48("117"), "high")))
    });
  }
};

/**
 * Whole amounts add up; of the parts only the largest sum counts, since all parts come out of the same pieces, for as long as
 * what is left of a cut piece keeps. Both ends of a range are added up on their own.
 */
export function needOf<S>(contributions: readonly Contribution<S>[]): Range {
  if (stryMutAct_9fa48("118")) {
    {}
  } else {
    stryCov_9fa48("118");
    const whole = stryMutAct_9fa48("119") ? sumsOf(contributions).get(null) && none : (stryCov_9fa48("119"), sumsOf(contributions).get(null) ?? none);
    const pieces = piecesOf(contributions);
    return stryMutAct_9fa48("120") ? {} : (stryCov_9fa48("120"), {
      low: stryMutAct_9fa48("121") ? whole.low - pieces.low : (stryCov_9fa48("121"), whole.low + pieces.low),
      high: stryMutAct_9fa48("122") ? whole.high - pieces.high : (stryCov_9fa48("122"), whole.high + pieces.high)
    });
  }
}

/** Some of a part that no use takes. */
export interface PartOver {
  readonly part: string;
  /** Pieces of the food it is left of. */
  readonly pieces: number;
  /** How much of the part that is; null where what one piece gives cannot be said. */
  readonly amount: BaseAmount | null;
}

/** Of the pieces that parts are taken from, how many are left of each part; none where no part is used. */
export function partsOver<S>(food: Food, contributions: readonly Contribution<S>[]): readonly PartOver[] {
  if (stryMutAct_9fa48("123")) {
    {}
  } else {
    stryCov_9fa48("123");
    const sums = sumsOf(contributions);
    const {
      high
    } = piecesOf(contributions);
    const uncounted = new Set(stryMutAct_9fa48("124") ? contributions.map(({
      part
    }) => part) : (stryCov_9fa48("124"), contributions.filter(stryMutAct_9fa48("125") ? () => undefined : (stryCov_9fa48("125"), ({
      dimension
    }) => stryMutAct_9fa48("128") ? dimension !== null : stryMutAct_9fa48("127") ? false : stryMutAct_9fa48("126") ? true : (stryCov_9fa48("126", "127", "128"), dimension === null))).map(stryMutAct_9fa48("129") ? () => undefined : (stryCov_9fa48("129"), ({
      part
    }) => part))));
    return stryMutAct_9fa48("130") ? food.parts.flatMap(({
      name,
      perPiece
    }): PartOver[] => {
      const pieces = restOf(high, (sums.get(name) ?? none).high);
      if (!(pieces > 0)) return [];
      const gives = toBase(perPiece, food, name);
      if (!gives.ok) return [{
        part: name,
        pieces,
        amount: null
      }];
      const {
        dimension,
        low,
        high: most
      } = gives.amount;
      return [{
        part: name,
        pieces,
        amount: {
          dimension,
          low: low * pieces,
          high: most * pieces
        }
      }];
    }) : (stryCov_9fa48("130"), food.parts.filter(stryMutAct_9fa48("131") ? () => undefined : (stryCov_9fa48("131"), ({
      name
    }) => stryMutAct_9fa48("132") ? uncounted.has(name) : (stryCov_9fa48("132"), !uncounted.has(name)))).flatMap(({
      name,
      perPiece
    }): PartOver[] => {
      if (stryMutAct_9fa48("133")) {
        {}
      } else {
        stryCov_9fa48("133");
        const pieces = restOf(high, (stryMutAct_9fa48("134") ? sums.get(name) && none : (stryCov_9fa48("134"), sums.get(name) ?? none)).high);
        if (stryMutAct_9fa48("137") ? false : stryMutAct_9fa48("136") ? true : stryMutAct_9fa48("135") ? pieces > 0 : (stryCov_9fa48("135", "136", "137"), !(stryMutAct_9fa48("141") ? pieces <= 0 : stryMutAct_9fa48("140") ? pieces >= 0 : stryMutAct_9fa48("139") ? false : stryMutAct_9fa48("138") ? true : (stryCov_9fa48("138", "139", "140", "141"), pieces > 0)))) return stryMutAct_9fa48("142") ? ["Stryker was here"] : (stryCov_9fa48("142"), []);
        const gives = toBase(perPiece, food, name);
        if (stryMutAct_9fa48("145") ? false : stryMutAct_9fa48("144") ? true : stryMutAct_9fa48("143") ? gives.ok : (stryCov_9fa48("143", "144", "145"), !gives.ok)) return stryMutAct_9fa48("146") ? [] : (stryCov_9fa48("146"), [stryMutAct_9fa48("147") ? {} : (stryCov_9fa48("147"), {
          part: name,
          pieces,
          amount: null
        })]);
        const {
          dimension,
          low,
          high: most
        } = gives.amount;
        return stryMutAct_9fa48("148") ? [] : (stryCov_9fa48("148"), [stryMutAct_9fa48("149") ? {} : (stryCov_9fa48("149"), {
          part: name,
          pieces,
          amount: stryMutAct_9fa48("150") ? {} : (stryCov_9fa48("150"), {
            dimension,
            low: stryMutAct_9fa48("151") ? low / pieces : (stryCov_9fa48("151"), low * pieces),
            high: stryMutAct_9fa48("152") ? most / pieces : (stryCov_9fa48("152"), most * pieces)
          })
        })]);
      }
    }));
  }
}

/** Pieces of its own that a part takes because what is left of a piece cut before does not keep until its use. */
export function notShared<S>(contributions: readonly Contribution<S>[]): boolean {
  if (stryMutAct_9fa48("153")) {
    {}
  } else {
    stryCov_9fa48("153");
    const {
      high
    } = piecesOf(contributions);
    const sums = (stryMutAct_9fa48("154") ? [] : (stryCov_9fa48("154"), [...sumsOf(contributions)])).map(stryMutAct_9fa48("155") ? () => undefined : (stryCov_9fa48("155"), ([part, sum]) => (stryMutAct_9fa48("158") ? part !== null : stryMutAct_9fa48("157") ? false : stryMutAct_9fa48("156") ? true : (stryCov_9fa48("156", "157", "158"), part === null)) ? 0 : sum.high));
    return stryMutAct_9fa48("162") ? restOf(high, Math.max(0, ...sums)) <= 0 : stryMutAct_9fa48("161") ? restOf(high, Math.max(0, ...sums)) >= 0 : stryMutAct_9fa48("160") ? false : stryMutAct_9fa48("159") ? true : (stryCov_9fa48("159", "160", "161", "162"), restOf(high, stryMutAct_9fa48("163") ? Math.min(0, ...sums) : (stryCov_9fa48("163"), Math.max(0, ...sums))) > 0);
  }
}

/**
 * Merges by food; amounts that cannot be turned into one dimension stay on lines of their own. Uses without an amount join
 * the food's first line. Lines are ordered by aisle, then food, then dimension, whatever the order of the plans.
 */
export function mergeNeeds<S>(contributions: readonly Contribution<S>[]): readonly MergedNeed<S>[] {
  if (stryMutAct_9fa48("164")) {
    {}
  } else {
    stryCov_9fa48("164");
    const byFood = new Map<string, {
      food: Food;
      groups: Map<Dimension | null, Contribution<S>[]>;
    }>();
    for (const each of contributions) {
      if (stryMutAct_9fa48("165")) {
        {}
      } else {
        stryCov_9fa48("165");
        const {
          food
        } = each;
        const known = stryMutAct_9fa48("166") ? byFood.get(food.slug) && {
          food,
          groups: new Map<Dimension | null, Contribution<S>[]>()
        } : (stryCov_9fa48("166"), byFood.get(food.slug) ?? (stryMutAct_9fa48("167") ? {} : (stryCov_9fa48("167"), {
          food,
          groups: new Map<Dimension | null, Contribution<S>[]>()
        })));
        byFood.set(food.slug, known);
        const group = known.groups.get(each.dimension);
        if (stryMutAct_9fa48("170") ? group !== undefined : stryMutAct_9fa48("169") ? false : stryMutAct_9fa48("168") ? true : (stryCov_9fa48("168", "169", "170"), group === undefined)) known.groups.set(each.dimension, stryMutAct_9fa48("171") ? [] : (stryCov_9fa48("171"), [each]));else group.push(each);
      }
    }
    const lines = (stryMutAct_9fa48("172") ? [] : (stryCov_9fa48("172"), [...byFood.values()])).flatMap(({
      food,
      groups
    }) => {
      if (stryMutAct_9fa48("173")) {
        {}
      } else {
        stryCov_9fa48("173");
        const unmeasured = stryMutAct_9fa48("174") ? groups.get(null) && [] : (stryCov_9fa48("174"), groups.get(null) ?? (stryMutAct_9fa48("175") ? ["Stryker was here"] : (stryCov_9fa48("175"), [])));
        const measured = stryMutAct_9fa48("176") ? [...groups].toSorted(([a], [b]) => a! < b! ? -1 : 1) : (stryCov_9fa48("176"), (stryMutAct_9fa48("177") ? [] : (stryCov_9fa48("177"), [...groups])).filter(stryMutAct_9fa48("178") ? () => undefined : (stryCov_9fa48("178"), ([dimension]) => stryMutAct_9fa48("181") ? dimension === null : stryMutAct_9fa48("180") ? false : stryMutAct_9fa48("179") ? true : (stryCov_9fa48("179", "180", "181"), dimension !== null))).toSorted(stryMutAct_9fa48("182") ? () => undefined : (stryCov_9fa48("182"), ([a], [b]) => (stryMutAct_9fa48("186") ? a! >= b! : stryMutAct_9fa48("185") ? a! <= b! : stryMutAct_9fa48("184") ? false : stryMutAct_9fa48("183") ? true : (stryCov_9fa48("183", "184", "185", "186"), a! < b!)) ? stryMutAct_9fa48("187") ? +1 : (stryCov_9fa48("187"), -1) : 1)));
        const all: [Dimension | null, Contribution<S>[]][] = (stryMutAct_9fa48("190") ? measured.length !== 0 : stryMutAct_9fa48("189") ? false : stryMutAct_9fa48("188") ? true : (stryCov_9fa48("188", "189", "190"), measured.length === 0)) ? stryMutAct_9fa48("191") ? [] : (stryCov_9fa48("191"), [stryMutAct_9fa48("192") ? [] : (stryCov_9fa48("192"), [null, stryMutAct_9fa48("193") ? ["Stryker was here"] : (stryCov_9fa48("193"), [])])]) : measured;
        return all.map(([dimension, group], at): MergedNeed<S> => {
          if (stryMutAct_9fa48("194")) {
            {}
          } else {
            stryCov_9fa48("194");
            const joined = (stryMutAct_9fa48("197") ? at !== 0 : stryMutAct_9fa48("196") ? false : stryMutAct_9fa48("195") ? true : (stryCov_9fa48("195", "196", "197"), at === 0)) ? stryMutAct_9fa48("198") ? [] : (stryCov_9fa48("198"), [...group, ...unmeasured]) : group;
            return stryMutAct_9fa48("199") ? {} : (stryCov_9fa48("199"), {
              food,
              dimension,
              ...needOf(joined),
              open: stryMutAct_9fa48("200") ? joined.every(({
                open
              }) => open) : (stryCov_9fa48("200"), joined.some(stryMutAct_9fa48("201") ? () => undefined : (stryCov_9fa48("201"), ({
                open
              }) => open))),
              contributions: joined
            });
          }
        });
      }
    });
    return lines.toSorted(stryMutAct_9fa48("202") ? () => undefined : (stryCov_9fa48("202"), (a, b) => stryMutAct_9fa48("205") ? (compare(a.food.aisle, b.food.aisle) || compare(a.food.slug, b.food.slug)) && compare(a.dimension ?? "", b.dimension ?? "") : stryMutAct_9fa48("204") ? false : stryMutAct_9fa48("203") ? true : (stryCov_9fa48("203", "204", "205"), (stryMutAct_9fa48("207") ? compare(a.food.aisle, b.food.aisle) && compare(a.food.slug, b.food.slug) : stryMutAct_9fa48("206") ? false : (stryCov_9fa48("206", "207"), compare(a.food.aisle, b.food.aisle) || compare(a.food.slug, b.food.slug))) || compare(stryMutAct_9fa48("208") ? a.dimension && "" : (stryCov_9fa48("208"), a.dimension ?? (stryMutAct_9fa48("209") ? "Stryker was here!" : (stryCov_9fa48("209"), ""))), stryMutAct_9fa48("210") ? b.dimension && "" : (stryCov_9fa48("210"), b.dimension ?? (stryMutAct_9fa48("211") ? "Stryker was here!" : (stryCov_9fa48("211"), "")))))));
  }
}
const compare = stryMutAct_9fa48("212") ? () => undefined : (stryCov_9fa48("212"), (() => {
  const compare = (a: string, b: string): number => (stryMutAct_9fa48("216") ? a >= b : stryMutAct_9fa48("215") ? a <= b : stryMutAct_9fa48("214") ? false : stryMutAct_9fa48("213") ? true : (stryCov_9fa48("213", "214", "215", "216"), a < b)) ? stryMutAct_9fa48("217") ? +1 : (stryCov_9fa48("217"), -1) : (stryMutAct_9fa48("221") ? a <= b : stryMutAct_9fa48("220") ? a >= b : stryMutAct_9fa48("219") ? false : stryMutAct_9fa48("218") ? true : (stryCov_9fa48("218", "219", "220", "221"), a > b)) ? 1 : 0;
  return compare;
})());