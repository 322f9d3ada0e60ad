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
import type { Warning } from "../problem.js";
import { notShared, partUses, type MergedNeed } from "../shopping/merge.js";
import { waitingParts, waitingPartWarning } from "../storage/part-keeping.js";
import type { Source } from "./contributions.js";
import type { ScaledPlan } from "./scaled.js";

/**
 * What a reader of a list should know about parts that are used on a later day than their pieces are cut: those that take pieces
 * of their own because the part does not keep until then, and those that are shared although nobody says how long they keep.
 */
export function waitingOnList({
  food,
  contributions
}: MergedNeed<Source>, plans: readonly ScaledPlan[]): readonly Warning[] {
  if (stryMutAct_9fa48("2712")) {
    {}
  } else {
    stryCov_9fa48("2712");
    // What would not matter even if every part had to be used at once is no news.
    if (stryMutAct_9fa48("2715") ? false : stryMutAct_9fa48("2714") ? true : stryMutAct_9fa48("2713") ? notShared(contributions.map(each => ({
      ...each,
      keeps: each.keeps ?? 0
    }))) : (stryCov_9fa48("2713", "2714", "2715"), !notShared(contributions.map(stryMutAct_9fa48("2716") ? () => undefined : (stryCov_9fa48("2716"), each => stryMutAct_9fa48("2717") ? {} : (stryCov_9fa48("2717"), {
      ...each,
      keeps: stryMutAct_9fa48("2718") ? each.keeps && 0 : (stryCov_9fa48("2718"), each.keeps ?? 0)
    })))))) return stryMutAct_9fa48("2719") ? ["Stryker was here"] : (stryCov_9fa48("2719"), []);
    const sharesAll = stryMutAct_9fa48("2720") ? notShared(contributions) : (stryCov_9fa48("2720"), !notShared(contributions));
    const keeps = new Map(partUses(contributions, stryMutAct_9fa48("2721") ? "" : (stryCov_9fa48("2721"), "high")).map(stryMutAct_9fa48("2722") ? () => undefined : (stryCov_9fa48("2722"), part => stryMutAct_9fa48("2723") ? [] : (stryCov_9fa48("2723"), [part.part, part.keeps]))));
    const uses = contributions.flatMap(stryMutAct_9fa48("2724") ? () => undefined : (stryCov_9fa48("2724"), ({
      part,
      day,
      dimension,
      source: {
        meal,
        scaled
      }
    }) => (stryMutAct_9fa48("2727") ? part === null && dimension === null : stryMutAct_9fa48("2726") ? false : stryMutAct_9fa48("2725") ? true : (stryCov_9fa48("2725", "2726", "2727"), (stryMutAct_9fa48("2729") ? part !== null : stryMutAct_9fa48("2728") ? false : (stryCov_9fa48("2728", "2729"), part === null)) || (stryMutAct_9fa48("2731") ? dimension !== null : stryMutAct_9fa48("2730") ? false : (stryCov_9fa48("2730", "2731"), dimension === null)))) ? stryMutAct_9fa48("2732") ? ["Stryker was here"] : (stryCov_9fa48("2732"), []) : stryMutAct_9fa48("2733") ? [] : (stryCov_9fa48("2733"), [stryMutAct_9fa48("2734") ? {} : (stryCov_9fa48("2734"), {
      part,
      day,
      meal: stryMutAct_9fa48("2735") ? meal?.slug && null : (stryCov_9fa48("2735"), (stryMutAct_9fa48("2736") ? meal.slug : (stryCov_9fa48("2736"), meal?.slug)) ?? null),
      plan: plans.indexOf(scaled)
    })])));
    return stryMutAct_9fa48("2737") ? waitingParts(uses, part => keeps.get(part) ?? null).map(each => {
      const warning = waitingPartWarning(food.slug, each);
      return plans.length > 1 ? {
        ...warning,
        path: ["plans", each.plan, ...warning.path]
      } : warning;
    }) : (stryCov_9fa48("2737"), waitingParts(uses, stryMutAct_9fa48("2738") ? () => undefined : (stryCov_9fa48("2738"), part => stryMutAct_9fa48("2739") ? keeps.get(part) && null : (stryCov_9fa48("2739"), keeps.get(part) ?? null))).filter(stryMutAct_9fa48("2740") ? () => undefined : (stryCov_9fa48("2740"), each => stryMutAct_9fa48("2743") ? each.keeps === null && !sharesAll : stryMutAct_9fa48("2742") ? false : stryMutAct_9fa48("2741") ? true : (stryCov_9fa48("2741", "2742", "2743"), (stryMutAct_9fa48("2745") ? each.keeps !== null : stryMutAct_9fa48("2744") ? false : (stryCov_9fa48("2744", "2745"), each.keeps === null)) || (stryMutAct_9fa48("2746") ? sharesAll : (stryCov_9fa48("2746"), !sharesAll))))).map(each => {
      if (stryMutAct_9fa48("2747")) {
        {}
      } else {
        stryCov_9fa48("2747");
        const warning = waitingPartWarning(food.slug, each);
        return (stryMutAct_9fa48("2751") ? plans.length <= 1 : stryMutAct_9fa48("2750") ? plans.length >= 1 : stryMutAct_9fa48("2749") ? false : stryMutAct_9fa48("2748") ? true : (stryCov_9fa48("2748", "2749", "2750", "2751"), plans.length > 1)) ? stryMutAct_9fa48("2752") ? {} : (stryCov_9fa48("2752"), {
          ...warning,
          path: stryMutAct_9fa48("2753") ? [] : (stryCov_9fa48("2753"), [stryMutAct_9fa48("2754") ? "" : (stryCov_9fa48("2754"), "plans"), each.plan, ...warning.path])
        }) : warning;
      }
    }));
  }
}