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
import type { DietStatement } from "../nutrition/diets.js";
import type { PrepSession } from "../prep-session/session.js";
import type { Caution, CautionsFound } from "../storage/cautions.js";
import type { StorageAnswer } from "../storage/guidance.js";
import { checkScaledLines } from "./check-lines.js";
import { checkOvens, isPreheating } from "./check-ovens.js";
import type { Finding } from "./finding.js";
import { lineContext } from "./line-context.js";
import type { ScaledPlan } from "./scaled.js";

/** What is known of a plan at its own servings, taken as written. */
export interface PlanToCheck {
  readonly scaled: ScaledPlan;
  readonly storage: StorageAnswer;
  readonly cautions: CautionsFound;
  readonly session: PrepSession;
  /** One for every claim that a diet rule exists for. */
  readonly diets: readonly DietStatement[];
}

/** Share of what is made that may be left over before the writer is told. */
export const leftOverLimit = 0.2;
function components({
  scaled
}: PlanToCheck): Finding[] {
  if (stryMutAct_9fa48("726")) {
    {}
  } else {
    stryCov_9fa48("726");
    const {
      foods
    } = lineContext(scaled.bundle);
    const preheated = new Set(scaled.components.flatMap(stryMutAct_9fa48("727") ? () => undefined : (stryCov_9fa48("727"), ({
      component,
      route
    }) => (stryMutAct_9fa48("728") ? route?.steps && component.steps : (stryCov_9fa48("728"), (stryMutAct_9fa48("729") ? route.steps : (stryCov_9fa48("729"), route?.steps)) ?? component.steps)).flatMap(stryMutAct_9fa48("730") ? () => undefined : (stryCov_9fa48("730"), step => (stryMutAct_9fa48("733") ? isPreheating(step) || step.temperatureC !== null : stryMutAct_9fa48("732") ? false : stryMutAct_9fa48("731") ? true : (stryCov_9fa48("731", "732", "733"), isPreheating(step) && (stryMutAct_9fa48("735") ? step.temperatureC === null : stryMutAct_9fa48("734") ? true : (stryCov_9fa48("734", "735"), step.temperatureC !== null)))) ? stryMutAct_9fa48("736") ? [] : (stryCov_9fa48("736"), [step.temperatureC]) : stryMutAct_9fa48("737") ? ["Stryker was here"] : (stryCov_9fa48("737"), []))))));
    return scaled.components.flatMap((each): Finding[] => {
      if (stryMutAct_9fa48("738")) {
        {}
      } else {
        stryCov_9fa48("738");
        const {
          component,
          route,
          lines,
          used,
          made,
          leftOver
        } = each;
        const path = stryMutAct_9fa48("739") ? [] : (stryCov_9fa48("739"), [stryMutAct_9fa48("740") ? "" : (stryCov_9fa48("740"), "components"), component.slug]);
        if (stryMutAct_9fa48("743") ? used.high !== 0 : stryMutAct_9fa48("742") ? false : stryMutAct_9fa48("741") ? true : (stryCov_9fa48("741", "742", "743"), used.high === 0)) return stryMutAct_9fa48("744") ? [] : (stryCov_9fa48("744"), [stryMutAct_9fa48("745") ? {} : (stryCov_9fa48("745"), {
          code: stryMutAct_9fa48("746") ? "" : (stryCov_9fa48("746"), "COMPONENT_NEVER_EATEN"),
          severity: stryMutAct_9fa48("747") ? "" : (stryCov_9fa48("747"), "LOOK"),
          path,
          component: component.slug
        })]);
        const steps = stryMutAct_9fa48("748") ? route?.steps && component.steps : (stryCov_9fa48("748"), (stryMutAct_9fa48("749") ? route.steps : (stryCov_9fa48("749"), route?.steps)) ?? component.steps);
        const share = stryMutAct_9fa48("750") ? leftOver.low * made.low : (stryCov_9fa48("750"), leftOver.low / made.low);
        return stryMutAct_9fa48("751") ? [] : (stryCov_9fa48("751"), [...checkScaledLines(lines, steps, path, foods), ...checkOvens(steps, component.slug, path, preheated), ...((stryMutAct_9fa48("755") ? share <= leftOverLimit : stryMutAct_9fa48("754") ? share >= leftOverLimit : stryMutAct_9fa48("753") ? false : stryMutAct_9fa48("752") ? true : (stryCov_9fa48("752", "753", "754", "755"), share > leftOverLimit)) ? stryMutAct_9fa48("756") ? [] : (stryCov_9fa48("756"), [stryMutAct_9fa48("757") ? {} : (stryCov_9fa48("757"), {
          code: "COMPONENT_LEFT_OVER" as const,
          severity: "LOOK" as const,
          path,
          component: component.slug,
          share,
          limit: leftOverLimit
        })]) : stryMutAct_9fa48("758") ? ["Stryker was here"] : (stryCov_9fa48("758"), []))]);
      }
    });
  }
}
function meals({
  scaled
}: PlanToCheck): Finding[] {
  if (stryMutAct_9fa48("759")) {
    {}
  } else {
    stryCov_9fa48("759");
    const {
      foods
    } = lineContext(scaled.bundle);
    return scaled.meals.flatMap(stryMutAct_9fa48("760") ? () => undefined : (stryCov_9fa48("760"), ({
      meal,
      lines
    }) => checkScaledLines(lines, meal.steps, stryMutAct_9fa48("761") ? [] : (stryCov_9fa48("761"), [stryMutAct_9fa48("762") ? "" : (stryCov_9fa48("762"), "meals"), meal.slug]), foods)));
  }
}
function keeping({
  scaled,
  storage
}: PlanToCheck): Finding[] {
  if (stryMutAct_9fa48("763")) {
    {}
  } else {
    stryCov_9fa48("763");
    const dayOf = new Map(scaled.meals.map(stryMutAct_9fa48("764") ? () => undefined : (stryCov_9fa48("764"), ({
      meal
    }) => stryMutAct_9fa48("765") ? [] : (stryCov_9fa48("765"), [meal.slug, meal.day]))));
    const late = stryMutAct_9fa48("766") ? storage.guidance.flatMap(({
      subject,
      tooLateFor,
      days
    }) => tooLateFor.map((meal): Finding => ({
      code: "KEPT_TOO_LONG",
      severity: "LOOK",
      path: [subject.kind === "MEAL" ? "meals" : "components", subject.slug],
      subject: subject.slug,
      meal,
      day: dayOf.get(meal) ?? 0,
      days
    }))) : (stryCov_9fa48("766"), storage.guidance.filter(stryMutAct_9fa48("767") ? () => undefined : (stryCov_9fa48("767"), ({
      subject
    }) => stryMutAct_9fa48("770") ? subject.kind === "FOOD" : stryMutAct_9fa48("769") ? false : stryMutAct_9fa48("768") ? true : (stryCov_9fa48("768", "769", "770"), subject.kind !== (stryMutAct_9fa48("771") ? "" : (stryCov_9fa48("771"), "FOOD"))))).flatMap(stryMutAct_9fa48("772") ? () => undefined : (stryCov_9fa48("772"), ({
      subject,
      tooLateFor,
      days
    }) => tooLateFor.map(stryMutAct_9fa48("773") ? () => undefined : (stryCov_9fa48("773"), (meal): Finding => stryMutAct_9fa48("774") ? {} : (stryCov_9fa48("774"), {
      code: stryMutAct_9fa48("775") ? "" : (stryCov_9fa48("775"), "KEPT_TOO_LONG"),
      severity: stryMutAct_9fa48("776") ? "" : (stryCov_9fa48("776"), "LOOK"),
      path: stryMutAct_9fa48("777") ? [] : (stryCov_9fa48("777"), [(stryMutAct_9fa48("780") ? subject.kind !== "MEAL" : stryMutAct_9fa48("779") ? false : stryMutAct_9fa48("778") ? true : (stryCov_9fa48("778", "779", "780"), subject.kind === (stryMutAct_9fa48("781") ? "" : (stryCov_9fa48("781"), "MEAL")))) ? stryMutAct_9fa48("782") ? "" : (stryCov_9fa48("782"), "meals") : stryMutAct_9fa48("783") ? "" : (stryCov_9fa48("783"), "components"), subject.slug]),
      subject: subject.slug,
      meal,
      day: stryMutAct_9fa48("784") ? dayOf.get(meal) && 0 : (stryCov_9fa48("784"), dayOf.get(meal) ?? 0),
      days
    }))))));
    const unknown = stryMutAct_9fa48("785") ? storage.unknown.map(({
      subject
    }): Finding => ({
      code: "NOBODY_SAYS_HOW_LONG",
      severity: "LOOK",
      path: ["components", subject.slug],
      subject: subject.slug
    })) : (stryCov_9fa48("785"), storage.unknown.filter(stryMutAct_9fa48("786") ? () => undefined : (stryCov_9fa48("786"), ({
      subject
    }) => stryMutAct_9fa48("789") ? subject.kind !== "COMPONENT" : stryMutAct_9fa48("788") ? false : stryMutAct_9fa48("787") ? true : (stryCov_9fa48("787", "788", "789"), subject.kind === (stryMutAct_9fa48("790") ? "" : (stryCov_9fa48("790"), "COMPONENT"))))).map(stryMutAct_9fa48("791") ? () => undefined : (stryCov_9fa48("791"), ({
      subject
    }): Finding => stryMutAct_9fa48("792") ? {} : (stryCov_9fa48("792"), {
      code: stryMutAct_9fa48("793") ? "" : (stryCov_9fa48("793"), "NOBODY_SAYS_HOW_LONG"),
      severity: stryMutAct_9fa48("794") ? "" : (stryCov_9fa48("794"), "LOOK"),
      path: stryMutAct_9fa48("795") ? [] : (stryCov_9fa48("795"), [stryMutAct_9fa48("796") ? "" : (stryCov_9fa48("796"), "components"), subject.slug]),
      subject: subject.slug
    }))));
    return stryMutAct_9fa48("797") ? [] : (stryCov_9fa48("797"), [...late, ...unknown]);
  }
}

/** A caution that the rules find due and the writer did not name is shown to readers all the same; the writer should know. */
function cautions({
  scaled,
  cautions: found
}: PlanToCheck): Finding[] {
  if (stryMutAct_9fa48("798")) {
    {}
  } else {
    stryCov_9fa48("798");
    const named = new Map(scaled.components.map(stryMutAct_9fa48("799") ? () => undefined : (stryCov_9fa48("799"), ({
      component
    }) => stryMutAct_9fa48("800") ? [] : (stryCov_9fa48("800"), [component.slug, new Set(component.cautions)]))));
    const due = stryMutAct_9fa48("801") ? () => undefined : (stryCov_9fa48("801"), (() => {
      const due = ({
        code,
        about
      }: Caution): Finding[] => stryMutAct_9fa48("802") ? about.map(({
        slug
      }) => ({
        code: "CAUTION_NOT_NAMED",
        severity: "LOOK",
        path: ["components", slug],
        subject: slug,
        caution: code
      })) : (stryCov_9fa48("802"), about.filter(stryMutAct_9fa48("803") ? () => undefined : (stryCov_9fa48("803"), ({
        kind,
        slug
      }) => stryMutAct_9fa48("806") ? kind === "COMPONENT" || named.get(slug)?.has(code) === false : stryMutAct_9fa48("805") ? false : stryMutAct_9fa48("804") ? true : (stryCov_9fa48("804", "805", "806"), (stryMutAct_9fa48("808") ? kind !== "COMPONENT" : stryMutAct_9fa48("807") ? true : (stryCov_9fa48("807", "808"), kind === (stryMutAct_9fa48("809") ? "" : (stryCov_9fa48("809"), "COMPONENT")))) && (stryMutAct_9fa48("811") ? named.get(slug)?.has(code) !== false : stryMutAct_9fa48("810") ? true : (stryCov_9fa48("810", "811"), (stryMutAct_9fa48("812") ? named.get(slug).has(code) : (stryCov_9fa48("812"), named.get(slug)?.has(code))) === (stryMutAct_9fa48("813") ? true : (stryCov_9fa48("813"), false))))))).map(stryMutAct_9fa48("814") ? () => undefined : (stryCov_9fa48("814"), ({
        slug
      }) => stryMutAct_9fa48("815") ? {} : (stryCov_9fa48("815"), {
        code: stryMutAct_9fa48("816") ? "" : (stryCov_9fa48("816"), "CAUTION_NOT_NAMED"),
        severity: stryMutAct_9fa48("817") ? "" : (stryCov_9fa48("817"), "LOOK"),
        path: stryMutAct_9fa48("818") ? [] : (stryCov_9fa48("818"), [stryMutAct_9fa48("819") ? "" : (stryCov_9fa48("819"), "components"), slug]),
        subject: slug,
        caution: code
      }))));
      return due;
    })());
    const unknown = found.unknown.map(stryMutAct_9fa48("820") ? () => undefined : (stryCov_9fa48("820"), ({
      subject,
      code
    }): Finding => stryMutAct_9fa48("821") ? {} : (stryCov_9fa48("821"), {
      code: stryMutAct_9fa48("822") ? "" : (stryCov_9fa48("822"), "CAUTION_UNKNOWN"),
      severity: stryMutAct_9fa48("823") ? "" : (stryCov_9fa48("823"), "LOOK"),
      path: stryMutAct_9fa48("824") ? [] : (stryCov_9fa48("824"), [stryMutAct_9fa48("825") ? "" : (stryCov_9fa48("825"), "components"), subject.slug, stryMutAct_9fa48("826") ? "" : (stryCov_9fa48("826"), "cautions")]),
      subject: subject.slug,
      caution: code
    })));
    return stryMutAct_9fa48("827") ? [] : (stryCov_9fa48("827"), [...found.cautions.flatMap(due), ...unknown]);
  }
}

/** A claim that the facts contradict stops publishing, and so does one that they do not bear out: unknown is never "free from". */
function claims({
  scaled,
  diets
}: PlanToCheck): Finding[] {
  if (stryMutAct_9fa48("828")) {
    {}
  } else {
    stryCov_9fa48("828");
    return scaled.bundle.plan.claims.flatMap((claim, at): Finding[] => {
      if (stryMutAct_9fa48("829")) {
        {}
      } else {
        stryCov_9fa48("829");
        const found = stryMutAct_9fa48("830") ? {} : (stryCov_9fa48("830"), {
          severity: "STOPS" as const,
          path: stryMutAct_9fa48("831") ? [] : (stryCov_9fa48("831"), [stryMutAct_9fa48("832") ? "" : (stryCov_9fa48("832"), "claims"), at]),
          claim
        });
        const statement = diets.find(stryMutAct_9fa48("833") ? () => undefined : (stryCov_9fa48("833"), ({
          diet
        }) => stryMutAct_9fa48("836") ? diet !== claim : stryMutAct_9fa48("835") ? false : stryMutAct_9fa48("834") ? true : (stryCov_9fa48("834", "835", "836"), diet === claim)));
        if (stryMutAct_9fa48("839") ? statement !== undefined : stryMutAct_9fa48("838") ? false : stryMutAct_9fa48("837") ? true : (stryCov_9fa48("837", "838", "839"), statement === undefined)) return stryMutAct_9fa48("840") ? [] : (stryCov_9fa48("840"), [stryMutAct_9fa48("841") ? {} : (stryCov_9fa48("841"), {
          code: stryMutAct_9fa48("842") ? "" : (stryCov_9fa48("842"), "CLAIM_WITHOUT_RULE"),
          ...found
        })]);
        if (stryMutAct_9fa48("845") ? statement.fits !== true : stryMutAct_9fa48("844") ? false : stryMutAct_9fa48("843") ? true : (stryCov_9fa48("843", "844", "845"), statement.fits === (stryMutAct_9fa48("846") ? false : (stryCov_9fa48("846"), true)))) return stryMutAct_9fa48("847") ? ["Stryker was here"] : (stryCov_9fa48("847"), []);
        return (stryMutAct_9fa48("850") ? statement.fits !== false : stryMutAct_9fa48("849") ? false : stryMutAct_9fa48("848") ? true : (stryCov_9fa48("848", "849", "850"), statement.fits === (stryMutAct_9fa48("851") ? true : (stryCov_9fa48("851"), false)))) ? stryMutAct_9fa48("852") ? [] : (stryCov_9fa48("852"), [stryMutAct_9fa48("853") ? {} : (stryCov_9fa48("853"), {
          code: stryMutAct_9fa48("854") ? "" : (stryCov_9fa48("854"), "CLAIM_BROKEN"),
          ...found,
          foods: statement.breaks
        })]) : stryMutAct_9fa48("855") ? [] : (stryCov_9fa48("855"), [stryMutAct_9fa48("856") ? {} : (stryCov_9fa48("856"), {
          code: stryMutAct_9fa48("857") ? "" : (stryCov_9fa48("857"), "CLAIM_NOT_KNOWN"),
          ...found,
          foods: statement.unknown
        })]);
      }
    });
  }
}
function sessionLength({
  scaled,
  session
}: PlanToCheck): Finding[] {
  if (stryMutAct_9fa48("858")) {
    {}
  } else {
    stryCov_9fa48("858");
    const promised = scaled.bundle.plan.promisedMinutes;
    if (stryMutAct_9fa48("861") ? promised === null && session.totalMinutes <= promised : stryMutAct_9fa48("860") ? false : stryMutAct_9fa48("859") ? true : (stryCov_9fa48("859", "860", "861"), (stryMutAct_9fa48("863") ? promised !== null : stryMutAct_9fa48("862") ? false : (stryCov_9fa48("862", "863"), promised === null)) || (stryMutAct_9fa48("866") ? session.totalMinutes > promised : stryMutAct_9fa48("865") ? session.totalMinutes < promised : stryMutAct_9fa48("864") ? false : (stryCov_9fa48("864", "865", "866"), session.totalMinutes <= promised)))) return stryMutAct_9fa48("867") ? ["Stryker was here"] : (stryCov_9fa48("867"), []);
    return stryMutAct_9fa48("868") ? [] : (stryCov_9fa48("868"), [stryMutAct_9fa48("869") ? {} : (stryCov_9fa48("869"), {
      code: stryMutAct_9fa48("870") ? "" : (stryCov_9fa48("870"), "SESSION_TOO_LONG"),
      severity: stryMutAct_9fa48("871") ? "" : (stryCov_9fa48("871"), "LOOK"),
      path: stryMutAct_9fa48("872") ? [] : (stryCov_9fa48("872"), [stryMutAct_9fa48("873") ? "" : (stryCov_9fa48("873"), "promised-time")]),
      minutes: session.totalMinutes,
      promised
    })]);
  }
}

/** What readers would complain about, found before they do. In the order of the document; nothing found is an empty list. */
export function checkPlan(plan: PlanToCheck): readonly Finding[] {
  if (stryMutAct_9fa48("874")) {
    {}
  } else {
    stryCov_9fa48("874");
    return stryMutAct_9fa48("875") ? [] : (stryCov_9fa48("875"), [...claims(plan), ...sessionLength(plan), ...meals(plan), ...components(plan), ...keeping(plan), ...cautions(plan)]);
  }
}