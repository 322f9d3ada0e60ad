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
import { factLimits, limits } from "../limits.js";
import type { Food, Pack } from "../model/food.js";
import type { Measured } from "../model/amount.js";
import type { Path, Problem } from "../problem.js";
import { missingText, toBase, type MeasureFacts } from "../quantity/convert.js";
import { nearestUnits } from "../quantity/unit.js";
import { moneyParts } from "../shopping/money.js";
import { checkCount, checkMeasured, checkNumber, checkText, checkUnique } from "./check-text.js";
const {
  entries,
  factor
} = factLimits;

/** A written amount that must be something, in a unit that somebody knows. */
export function checkConvertible(measured: Measured, item: string, facts: MeasureFacts, path: Path): Problem[] {
  if (stryMutAct_9fa48("328")) {
    {}
  } else {
    stryCov_9fa48("328");
    const written = checkMeasured(measured, path, factor.min);
    if (stryMutAct_9fa48("332") ? written.length <= 0 : stryMutAct_9fa48("331") ? written.length >= 0 : stryMutAct_9fa48("330") ? false : stryMutAct_9fa48("329") ? true : (stryCov_9fa48("329", "330", "331", "332"), written.length > 0)) return written;
    const base = toBase(measured, facts, null);
    if (stryMutAct_9fa48("334") ? false : stryMutAct_9fa48("333") ? true : (stryCov_9fa48("333", "334"), base.ok)) return stryMutAct_9fa48("335") ? ["Stryker was here"] : (stryCov_9fa48("335"), []);
    if (stryMutAct_9fa48("338") ? base.missing.code !== "UNIT" : stryMutAct_9fa48("337") ? false : stryMutAct_9fa48("336") ? true : (stryCov_9fa48("336", "337", "338"), base.missing.code === (stryMutAct_9fa48("339") ? "" : (stryCov_9fa48("339"), "UNIT")))) {
      if (stryMutAct_9fa48("340")) {
        {}
      } else {
        stryCov_9fa48("340");
        return stryMutAct_9fa48("341") ? [] : (stryCov_9fa48("341"), [stryMutAct_9fa48("342") ? {} : (stryCov_9fa48("342"), {
          code: stryMutAct_9fa48("343") ? "" : (stryCov_9fa48("343"), "UNKNOWN_UNIT"),
          path,
          unit: measured.unit,
          nearest: nearestUnits(measured.unit)
        })]);
      }
    }
    const missing = missingText(base.missing);
    return stryMutAct_9fa48("344") ? [] : (stryCov_9fa48("344"), [stryMutAct_9fa48("345") ? {} : (stryCov_9fa48("345"), {
      code: stryMutAct_9fa48("346") ? "" : (stryCov_9fa48("346"), "NOT_CONVERTIBLE"),
      path,
      item,
      from: measured.unit,
      to: stryMutAct_9fa48("347") ? "" : (stryCov_9fa48("347"), "g, ml or pieces"),
      missing
    })]);
  }
}

/** Densities and measures of a food or a component: numbers that one can multiply and divide by. */
export function checkMeasureFacts({
  densities,
  measures
}: MeasureFacts, path: Path): Problem[] {
  if (stryMutAct_9fa48("348")) {
    {}
  } else {
    stryCov_9fa48("348");
    return stryMutAct_9fa48("349") ? [] : (stryCov_9fa48("349"), [...checkCount(densities.length, entries, stryMutAct_9fa48("350") ? "" : (stryCov_9fa48("350"), "densities"), stryMutAct_9fa48("351") ? [] : (stryCov_9fa48("351"), [...path, stryMutAct_9fa48("352") ? "" : (stryCov_9fa48("352"), "densities")])), ...checkCount(measures.length, entries, stryMutAct_9fa48("353") ? "" : (stryCov_9fa48("353"), "measures"), stryMutAct_9fa48("354") ? [] : (stryCov_9fa48("354"), [...path, stryMutAct_9fa48("355") ? "" : (stryCov_9fa48("355"), "measures")])), ...densities.flatMap(stryMutAct_9fa48("356") ? () => undefined : (stryCov_9fa48("356"), ({
      gramsPerMl
    }, at) => checkNumber(gramsPerMl, stryMutAct_9fa48("357") ? [] : (stryCov_9fa48("357"), [...path, stryMutAct_9fa48("358") ? "" : (stryCov_9fa48("358"), "densities"), at]), factor))), ...checkUnique(measures.map(stryMutAct_9fa48("359") ? () => undefined : (stryCov_9fa48("359"), ({
      name
    }) => name)), stryMutAct_9fa48("360") ? () => undefined : (stryCov_9fa48("360"), name => stryMutAct_9fa48("361") ? [] : (stryCov_9fa48("361"), [...path, stryMutAct_9fa48("362") ? "" : (stryCov_9fa48("362"), "measures"), name]))), ...measures.flatMap(stryMutAct_9fa48("363") ? () => undefined : (stryCov_9fa48("363"), ({
      name,
      grams,
      millilitres,
      pieces
    }) => (stryMutAct_9fa48("364") ? [] : (stryCov_9fa48("364"), [grams, millilitres, pieces])).flatMap(stryMutAct_9fa48("365") ? () => undefined : (stryCov_9fa48("365"), fact => (stryMutAct_9fa48("368") ? fact !== null : stryMutAct_9fa48("367") ? false : stryMutAct_9fa48("366") ? true : (stryCov_9fa48("366", "367", "368"), fact === null)) ? stryMutAct_9fa48("369") ? ["Stryker was here"] : (stryCov_9fa48("369"), []) : checkNumber(fact, stryMutAct_9fa48("370") ? [] : (stryCov_9fa48("370"), [...path, stryMutAct_9fa48("371") ? "" : (stryCov_9fa48("371"), "measures"), name]), stryMutAct_9fa48("372") ? {} : (stryCov_9fa48("372"), {
      min: factor.min,
      max: limits.amount
    }))))))]);
  }
}
function checkPack(pack: Pack, food: Food, path: Path): Problem[] {
  if (stryMutAct_9fa48("373")) {
    {}
  } else {
    stryCov_9fa48("373");
    const at = stryMutAct_9fa48("374") ? [] : (stryCov_9fa48("374"), [...path, stryMutAct_9fa48("375") ? "" : (stryCov_9fa48("375"), "packs"), pack.id]);
    return stryMutAct_9fa48("376") ? [] : (stryCov_9fa48("376"), [...checkConvertible(pack.content, food.slug, food, at), ...((stryMutAct_9fa48("379") ? pack.price === null && moneyParts(pack.price.amount) !== null : stryMutAct_9fa48("378") ? false : stryMutAct_9fa48("377") ? true : (stryCov_9fa48("377", "378", "379"), (stryMutAct_9fa48("381") ? pack.price !== null : stryMutAct_9fa48("380") ? false : (stryCov_9fa48("380", "381"), pack.price === null)) || (stryMutAct_9fa48("383") ? moneyParts(pack.price.amount) === null : stryMutAct_9fa48("382") ? false : (stryCov_9fa48("382", "383"), moneyParts(pack.price.amount) !== null)))) ? stryMutAct_9fa48("384") ? ["Stryker was here"] : (stryCov_9fa48("384"), []) : stryMutAct_9fa48("385") ? [] : (stryCov_9fa48("385"), [stryMutAct_9fa48("386") ? {} : (stryCov_9fa48("386"), {
      code: "BAD_AMOUNT" as const,
      path: at,
      written: pack.price.amount,
      why: stryMutAct_9fa48("387") ? "" : (stryCov_9fa48("387"), "NOT_A_PRICE")
    })]))]);
  }
}
function checkParts(food: Food, path: Path): Problem[] {
  if (stryMutAct_9fa48("388")) {
    {}
  } else {
    stryCov_9fa48("388");
    const names = food.parts.map(stryMutAct_9fa48("389") ? () => undefined : (stryCov_9fa48("389"), ({
      name
    }) => name));
    return stryMutAct_9fa48("390") ? [] : (stryCov_9fa48("390"), [...checkUnique(names, stryMutAct_9fa48("391") ? () => undefined : (stryCov_9fa48("391"), name => stryMutAct_9fa48("392") ? [] : (stryCov_9fa48("392"), [...path, stryMutAct_9fa48("393") ? "" : (stryCov_9fa48("393"), "parts"), name]))), ...food.parts.flatMap(({
      name,
      perPiece,
      after
    }) => {
      if (stryMutAct_9fa48("394")) {
        {}
      } else {
        stryCov_9fa48("394");
        const at = stryMutAct_9fa48("395") ? [] : (stryCov_9fa48("395"), [...path, stryMutAct_9fa48("396") ? "" : (stryCov_9fa48("396"), "parts"), name]);
        const unknown = stryMutAct_9fa48("397") ? after : (stryCov_9fa48("397"), after.filter(stryMutAct_9fa48("398") ? () => undefined : (stryCov_9fa48("398"), each => stryMutAct_9fa48("399") ? names.includes(each) : (stryCov_9fa48("399"), !names.includes(each)))));
        return stryMutAct_9fa48("400") ? [] : (stryCov_9fa48("400"), [...checkConvertible(perPiece, food.slug, food, at), ...unknown.map(stryMutAct_9fa48("401") ? () => undefined : (stryCov_9fa48("401"), (part): Problem => stryMutAct_9fa48("402") ? {} : (stryCov_9fa48("402"), {
          code: stryMutAct_9fa48("403") ? "" : (stryCov_9fa48("403"), "UNKNOWN_PART"),
          path: stryMutAct_9fa48("404") ? [] : (stryCov_9fa48("404"), [...at, stryMutAct_9fa48("405") ? "" : (stryCov_9fa48("405"), "after")]),
          food: food.slug,
          part,
          known: names
        })))]);
      }
    })]);
  }
}

/**
 * The facts of a food that amounts are computed from: each must be a number in bounds, so that nothing computed from them
 * can be infinite, in units that somebody knows.
 */
export function checkFood(food: Food): Problem[] {
  if (stryMutAct_9fa48("406")) {
    {}
  } else {
    stryCov_9fa48("406");
    const path = stryMutAct_9fa48("407") ? [] : (stryCov_9fa48("407"), [stryMutAct_9fa48("408") ? "" : (stryCov_9fa48("408"), "foods"), food.slug]);
    const sizes = stryMutAct_9fa48("409") ? [] : (stryCov_9fa48("409"), [...checkCount(food.names.length, entries, stryMutAct_9fa48("410") ? "" : (stryCov_9fa48("410"), "names"), stryMutAct_9fa48("411") ? [] : (stryCov_9fa48("411"), [...path, stryMutAct_9fa48("412") ? "" : (stryCov_9fa48("412"), "names")])), ...checkCount(food.parts.length, entries, stryMutAct_9fa48("413") ? "" : (stryCov_9fa48("413"), "parts"), stryMutAct_9fa48("414") ? [] : (stryCov_9fa48("414"), [...path, stryMutAct_9fa48("415") ? "" : (stryCov_9fa48("415"), "parts")])), ...checkCount(food.edible.length, entries, stryMutAct_9fa48("416") ? "" : (stryCov_9fa48("416"), "edible portions"), stryMutAct_9fa48("417") ? [] : (stryCov_9fa48("417"), [...path, stryMutAct_9fa48("418") ? "" : (stryCov_9fa48("418"), "edible")])), ...checkCount(food.yields.length, entries, stryMutAct_9fa48("419") ? "" : (stryCov_9fa48("419"), "yields"), stryMutAct_9fa48("420") ? [] : (stryCov_9fa48("420"), [...path, stryMutAct_9fa48("421") ? "" : (stryCov_9fa48("421"), "yields")])), ...checkCount(food.packs.length, entries, stryMutAct_9fa48("422") ? "" : (stryCov_9fa48("422"), "packs"), stryMutAct_9fa48("423") ? [] : (stryCov_9fa48("423"), [...path, stryMutAct_9fa48("424") ? "" : (stryCov_9fa48("424"), "packs")]))]);
    if (stryMutAct_9fa48("428") ? sizes.length <= 0 : stryMutAct_9fa48("427") ? sizes.length >= 0 : stryMutAct_9fa48("426") ? false : stryMutAct_9fa48("425") ? true : (stryCov_9fa48("425", "426", "427", "428"), sizes.length > 0)) return sizes;
    return stryMutAct_9fa48("429") ? [] : (stryCov_9fa48("429"), [...checkText(food.slug, stryMutAct_9fa48("430") ? "" : (stryCov_9fa48("430"), "a slug"), path), ...checkText(food.aisle, stryMutAct_9fa48("431") ? "" : (stryCov_9fa48("431"), "an aisle"), stryMutAct_9fa48("432") ? [] : (stryCov_9fa48("432"), [...path, stryMutAct_9fa48("433") ? "" : (stryCov_9fa48("433"), "aisle")])), ...food.names.flatMap(stryMutAct_9fa48("434") ? () => undefined : (stryCov_9fa48("434"), ({
      one,
      many
    }, at) => stryMutAct_9fa48("435") ? [] : (stryCov_9fa48("435"), [...checkText(one, stryMutAct_9fa48("436") ? "" : (stryCov_9fa48("436"), "a name"), stryMutAct_9fa48("437") ? [] : (stryCov_9fa48("437"), [...path, stryMutAct_9fa48("438") ? "" : (stryCov_9fa48("438"), "names"), at])), ...checkText(many, stryMutAct_9fa48("439") ? "" : (stryCov_9fa48("439"), "a name"), stryMutAct_9fa48("440") ? [] : (stryCov_9fa48("440"), [...path, stryMutAct_9fa48("441") ? "" : (stryCov_9fa48("441"), "names"), at]))]))), ...checkMeasureFacts(food, path), ...checkParts(food, path), ...food.edible.flatMap(stryMutAct_9fa48("442") ? () => undefined : (stryCov_9fa48("442"), ({
      share
    }, at) => checkNumber(share, stryMutAct_9fa48("443") ? [] : (stryCov_9fa48("443"), [...path, stryMutAct_9fa48("444") ? "" : (stryCov_9fa48("444"), "edible"), at]), stryMutAct_9fa48("445") ? {} : (stryCov_9fa48("445"), {
      min: factLimits.leastShare,
      max: 1
    })))), ...food.yields.flatMap(stryMutAct_9fa48("446") ? () => undefined : (stryCov_9fa48("446"), ({
      gramsPerGram
    }, at) => checkNumber(gramsPerGram, stryMutAct_9fa48("447") ? [] : (stryCov_9fa48("447"), [...path, stryMutAct_9fa48("448") ? "" : (stryCov_9fa48("448"), "yields"), at]), factor))), ...checkUnique(food.packs.map(stryMutAct_9fa48("449") ? () => undefined : (stryCov_9fa48("449"), ({
      id
    }) => id)), stryMutAct_9fa48("450") ? () => undefined : (stryCov_9fa48("450"), id => stryMutAct_9fa48("451") ? [] : (stryCov_9fa48("451"), [...path, stryMutAct_9fa48("452") ? "" : (stryCov_9fa48("452"), "packs"), id]))), ...food.packs.flatMap(stryMutAct_9fa48("453") ? () => undefined : (stryCov_9fa48("453"), pack => checkPack(pack, food, path)))]);
  }
}