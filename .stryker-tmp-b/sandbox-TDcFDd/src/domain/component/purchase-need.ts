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
import type { BaseAmount, Dimension, Measured } from "../model/amount.js";
import type { Food, FoodPart } from "../model/food.js";
import type { Line } from "../model/line.js";
import { inDimension, missingText, toBase, toDimension, type Conversion } from "../quantity/convert.js";
import { edibleShare } from "./edible.js";

/** What a line makes one buy: an amount as purchased, or the fact that is missing to say so. */
export interface PurchaseNeed {
  /** In the food's need dimension, or in the line's own where `notCombined` says why; null for a part nobody can count. */
  readonly amount: BaseAmount | null;
  /** The fact without which it cannot join the food's other lines. */
  readonly notCombined: string | null;
  readonly edibleUnknown: boolean;
}

/** A food with parts is counted in pieces, since its parts come out of the same pieces; others as shops sell them. */
export const needDimension = stryMutAct_9fa48("285") ? () => undefined : (stryCov_9fa48("285"), (() => {
  const needDimension = (food: Food): Dimension => (stryMutAct_9fa48("289") ? food.parts.length <= 0 : stryMutAct_9fa48("288") ? food.parts.length >= 0 : stryMutAct_9fa48("287") ? false : stryMutAct_9fa48("286") ? true : (stryCov_9fa48("286", "287", "288", "289"), food.parts.length > 0)) ? stryMutAct_9fa48("290") ? "" : (stryCov_9fa48("290"), "COUNT") : food.shoppedBy;
  return needDimension;
})());
const divided = stryMutAct_9fa48("291") ? () => undefined : (stryCov_9fa48("291"), (() => {
  const divided = ({
    dimension,
    low,
    high
  }: BaseAmount, by: number): BaseAmount => stryMutAct_9fa48("292") ? {} : (stryCov_9fa48("292"), {
    dimension,
    low: stryMutAct_9fa48("293") ? low * by : (stryCov_9fa48("293"), low / by),
    high: stryMutAct_9fa48("294") ? high * by : (stryCov_9fa48("294"), high / by)
  });
  return divided;
})());

/** Pieces for an amount of a part. Of a piece that gives a range, the least is counted on, so that there is enough. */
const piecesForPart = (amount: BaseAmount, part: FoodPart, food: Food): BaseAmount | string => {
  if (stryMutAct_9fa48("295")) {
    {}
  } else {
    stryCov_9fa48("295");
    const gives = toBase(part.perPiece, food, part.name);
    if (stryMutAct_9fa48("298") ? false : stryMutAct_9fa48("297") ? true : stryMutAct_9fa48("296") ? gives.ok : (stryCov_9fa48("296", "297", "298"), !gives.ok)) return missingText(gives.missing);
    const {
      dimension,
      low,
      high
    } = gives.amount;
    // "Zest of 2 lemons": pieces of the whole, unless one piece is said to give so many pieces of the part.
    if (stryMutAct_9fa48("301") ? amount.dimension === "COUNT" || dimension !== "COUNT" : stryMutAct_9fa48("300") ? false : stryMutAct_9fa48("299") ? true : (stryCov_9fa48("299", "300", "301"), (stryMutAct_9fa48("303") ? amount.dimension !== "COUNT" : stryMutAct_9fa48("302") ? true : (stryCov_9fa48("302", "303"), amount.dimension === (stryMutAct_9fa48("304") ? "" : (stryCov_9fa48("304"), "COUNT")))) && (stryMutAct_9fa48("306") ? dimension === "COUNT" : stryMutAct_9fa48("305") ? true : (stryCov_9fa48("305", "306"), dimension !== (stryMutAct_9fa48("307") ? "" : (stryCov_9fa48("307"), "COUNT")))))) return amount;
    // The weight of the whole food says nothing about the weight of its part.
    if (stryMutAct_9fa48("310") ? amount.dimension === "MASS" || dimension === "COUNT" : stryMutAct_9fa48("309") ? false : stryMutAct_9fa48("308") ? true : (stryCov_9fa48("308", "309", "310"), (stryMutAct_9fa48("312") ? amount.dimension !== "MASS" : stryMutAct_9fa48("311") ? true : (stryCov_9fa48("311", "312"), amount.dimension === (stryMutAct_9fa48("313") ? "" : (stryCov_9fa48("313"), "MASS")))) && (stryMutAct_9fa48("315") ? dimension !== "COUNT" : stryMutAct_9fa48("314") ? true : (stryCov_9fa48("314", "315"), dimension === (stryMutAct_9fa48("316") ? "" : (stryCov_9fa48("316"), "COUNT")))))) return stryMutAct_9fa48("317") ? `` : (stryCov_9fa48("317"), `GRAMS_OF_ONE_PIECE:${part.name}`);
    if (stryMutAct_9fa48("320") ? amount.dimension === "VOLUME" || dimension === "COUNT" : stryMutAct_9fa48("319") ? false : stryMutAct_9fa48("318") ? true : (stryCov_9fa48("318", "319", "320"), (stryMutAct_9fa48("322") ? amount.dimension !== "VOLUME" : stryMutAct_9fa48("321") ? true : (stryCov_9fa48("321", "322"), amount.dimension === (stryMutAct_9fa48("323") ? "" : (stryCov_9fa48("323"), "VOLUME")))) && (stryMutAct_9fa48("325") ? dimension !== "COUNT" : stryMutAct_9fa48("324") ? true : (stryCov_9fa48("324", "325"), dimension === (stryMutAct_9fa48("326") ? "" : (stryCov_9fa48("326"), "COUNT")))))) return stryMutAct_9fa48("327") ? `` : (stryCov_9fa48("327"), `MILLILITRES_OF_ONE_PIECE:${part.name}`);
    const same = inDimension(amount, dimension, food, part.name);
    if (stryMutAct_9fa48("330") ? false : stryMutAct_9fa48("329") ? true : stryMutAct_9fa48("328") ? same.ok : (stryCov_9fa48("328", "329", "330"), !same.ok)) return missingText(same.missing);
    return stryMutAct_9fa48("331") ? {} : (stryCov_9fa48("331"), {
      dimension: stryMutAct_9fa48("332") ? "" : (stryCov_9fa48("332"), "COUNT"),
      low: stryMutAct_9fa48("333") ? same.amount.low * high : (stryCov_9fa48("333"), same.amount.low / high),
      high: stryMutAct_9fa48("334") ? same.amount.high * low : (stryCov_9fa48("334"), same.amount.high / low)
    });
  }
};

/** A READY amount is weighed after trimming: back to what was bought. Whole pieces stay whole. */
const asBought = (amount: BaseAmount, line: Pick<Line, "measured" | "form">, food: Food): {
  amount: BaseAmount;
  edibleUnknown: boolean;
} => {
  if (stryMutAct_9fa48("335")) {
    {}
  } else {
    stryCov_9fa48("335");
    if (stryMutAct_9fa48("338") ? line.measured === "AS_BOUGHT" && amount.dimension === "COUNT" : stryMutAct_9fa48("337") ? false : stryMutAct_9fa48("336") ? true : (stryCov_9fa48("336", "337", "338"), (stryMutAct_9fa48("340") ? line.measured !== "AS_BOUGHT" : stryMutAct_9fa48("339") ? false : (stryCov_9fa48("339", "340"), line.measured === (stryMutAct_9fa48("341") ? "" : (stryCov_9fa48("341"), "AS_BOUGHT")))) || (stryMutAct_9fa48("343") ? amount.dimension !== "COUNT" : stryMutAct_9fa48("342") ? false : (stryCov_9fa48("342", "343"), amount.dimension === (stryMutAct_9fa48("344") ? "" : (stryCov_9fa48("344"), "COUNT")))))) return stryMutAct_9fa48("345") ? {} : (stryCov_9fa48("345"), {
      amount,
      edibleUnknown: stryMutAct_9fa48("346") ? true : (stryCov_9fa48("346"), false)
    });
    const share = edibleShare(food, line.form);
    return (stryMutAct_9fa48("349") ? share !== null : stryMutAct_9fa48("348") ? false : stryMutAct_9fa48("347") ? true : (stryCov_9fa48("347", "348", "349"), share === null)) ? stryMutAct_9fa48("350") ? {} : (stryCov_9fa48("350"), {
      amount,
      edibleUnknown: stryMutAct_9fa48("351") ? false : (stryCov_9fa48("351"), true)
    }) : stryMutAct_9fa48("352") ? {} : (stryCov_9fa48("352"), {
      amount: divided(amount, share),
      edibleUnknown: stryMutAct_9fa48("353") ? true : (stryCov_9fa48("353"), false)
    });
  }
};

/**
 * As purchased = ready amount / edible portion, then into the dimension the food's needs are added up in.
 *
 * @param written the line's amount in base units of the dimension it was written in
 * @param measured the same as it was written, where it was: an own measure may know the wanted dimension itself
 */
export function purchaseNeed(written: BaseAmount, measured: Measured | null, line: Pick<Line, "measured" | "form">, part: FoodPart | null, food: Food): PurchaseNeed {
  if (stryMutAct_9fa48("354")) {
    {}
  } else {
    stryCov_9fa48("354");
    if (stryMutAct_9fa48("357") ? part === null : stryMutAct_9fa48("356") ? false : stryMutAct_9fa48("355") ? true : (stryCov_9fa48("355", "356", "357"), part !== null)) {
      if (stryMutAct_9fa48("358")) {
        {}
      } else {
        stryCov_9fa48("358");
        const pieces = piecesForPart(written, part, food);
        return (stryMutAct_9fa48("361") ? typeof pieces !== "string" : stryMutAct_9fa48("360") ? false : stryMutAct_9fa48("359") ? true : (stryCov_9fa48("359", "360", "361"), typeof pieces === (stryMutAct_9fa48("362") ? "" : (stryCov_9fa48("362"), "string")))) ? stryMutAct_9fa48("363") ? {} : (stryCov_9fa48("363"), {
          amount: null,
          notCombined: pieces,
          edibleUnknown: stryMutAct_9fa48("364") ? true : (stryCov_9fa48("364"), false)
        }) : stryMutAct_9fa48("365") ? {} : (stryCov_9fa48("365"), {
          amount: pieces,
          notCombined: null,
          edibleUnknown: stryMutAct_9fa48("366") ? true : (stryCov_9fa48("366"), false)
        });
      }
    }
    const {
      amount,
      edibleUnknown
    } = asBought(written, line, food);
    const into = stryMutAct_9fa48("367") ? () => undefined : (stryCov_9fa48("367"), (() => {
      const into = (dimension: Dimension): Conversion => (stryMutAct_9fa48("370") ? amount === written || measured !== null : stryMutAct_9fa48("369") ? false : stryMutAct_9fa48("368") ? true : (stryCov_9fa48("368", "369", "370"), (stryMutAct_9fa48("372") ? amount !== written : stryMutAct_9fa48("371") ? true : (stryCov_9fa48("371", "372"), amount === written)) && (stryMutAct_9fa48("374") ? measured === null : stryMutAct_9fa48("373") ? true : (stryCov_9fa48("373", "374"), measured !== null)))) ? toDimension(measured, dimension, food, line.form) : inDimension(amount, dimension, food, line.form);
      return into;
    })());
    const joined = into(needDimension(food));
    if (stryMutAct_9fa48("376") ? false : stryMutAct_9fa48("375") ? true : (stryCov_9fa48("375", "376"), joined.ok)) return stryMutAct_9fa48("377") ? {} : (stryCov_9fa48("377"), {
      amount: joined.amount,
      notCombined: null,
      edibleUnknown
    });
    const shopped = into(food.shoppedBy);
    return stryMutAct_9fa48("378") ? {} : (stryCov_9fa48("378"), {
      amount: shopped.ok ? shopped.amount : amount,
      notCombined: missingText(joined.missing),
      edibleUnknown
    });
  }
}