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
import type { Household } from "../model/household.js";
import type { Line, Swap } from "../model/line.js";
import type { DietJudge } from "../nutrition/diets.js";
import type { Path, Warning } from "../problem.js";
export interface ChosenSwap {
  readonly swap: Swap | null;
  readonly warnings: readonly Warning[];
}

/** A swap may serve a diet where its food is known to fit, or its writer says so and the food's facts do not contradict. */
const mayServe = (swap: Swap, diet: string, foods: ReadonlyMap<string, Food>, fitsDiet: DietJudge): boolean => {
  if (stryMutAct_9fa48("1121")) {
    {}
  } else {
    stryCov_9fa48("1121");
    const food = foods.get(swap.food);
    return stryMutAct_9fa48("1124") ? food !== undefined || (fitsDiet(food, diet) ?? swap.diets.includes(diet)) : stryMutAct_9fa48("1123") ? false : stryMutAct_9fa48("1122") ? true : (stryCov_9fa48("1122", "1123", "1124"), (stryMutAct_9fa48("1126") ? food === undefined : stryMutAct_9fa48("1125") ? true : (stryCov_9fa48("1125", "1126"), food !== undefined)) && (stryMutAct_9fa48("1127") ? fitsDiet(food, diet) && swap.diets.includes(diet) : (stryCov_9fa48("1127"), fitsDiet(food, diet) ?? swap.diets.includes(diet))));
  }
};
const asked = (line: Line, household: Household): Swap | null => {
  if (stryMutAct_9fa48("1128")) {
    {}
  } else {
    stryCov_9fa48("1128");
    const {
      item
    } = line;
    if (stryMutAct_9fa48("1131") ? item.kind === "FOOD" : stryMutAct_9fa48("1130") ? false : stryMutAct_9fa48("1129") ? true : (stryCov_9fa48("1129", "1130", "1131"), item.kind !== (stryMutAct_9fa48("1132") ? "" : (stryCov_9fa48("1132"), "FOOD")))) return null;
    // The reader's order decides; a wish that this line does not offer leaves room for the next.
    for (const {
      from,
      to
    } of household.swaps) {
      if (stryMutAct_9fa48("1133")) {
        {}
      } else {
        stryCov_9fa48("1133");
        const offered = (stryMutAct_9fa48("1136") ? from !== item.food : stryMutAct_9fa48("1135") ? false : stryMutAct_9fa48("1134") ? true : (stryCov_9fa48("1134", "1135", "1136"), from === item.food)) ? line.swaps.find(stryMutAct_9fa48("1137") ? () => undefined : (stryCov_9fa48("1137"), ({
          food
        }) => stryMutAct_9fa48("1140") ? food !== to : stryMutAct_9fa48("1139") ? false : stryMutAct_9fa48("1138") ? true : (stryCov_9fa48("1138", "1139", "1140"), food === to))) : undefined;
        if (stryMutAct_9fa48("1143") ? offered === undefined : stryMutAct_9fa48("1142") ? false : stryMutAct_9fa48("1141") ? true : (stryCov_9fa48("1141", "1142", "1143"), offered !== undefined)) return offered;
      }
    }
    return null;
  }
};

/**
 * Which swap a line takes for this household: the one asked for by name, else, where the line's own food is not known to fit
 * every diet, the first that may serve them all. What is not known to fit after that is a warning that names the line: a
 * writer's word for a swap is taken, but it does not make an unknown fact a known one.
 */
export function chooseSwap(line: Line, household: Household, foods: ReadonlyMap<string, Food>, fitsDiet: DietJudge, path: Path): ChosenSwap {
  if (stryMutAct_9fa48("1144")) {
    {}
  } else {
    stryCov_9fa48("1144");
    if (stryMutAct_9fa48("1147") ? line.item.kind === "FOOD" : stryMutAct_9fa48("1146") ? false : stryMutAct_9fa48("1145") ? true : (stryCov_9fa48("1145", "1146", "1147"), line.item.kind !== (stryMutAct_9fa48("1148") ? "" : (stryCov_9fa48("1148"), "FOOD")))) return stryMutAct_9fa48("1149") ? {} : (stryCov_9fa48("1149"), {
      swap: null,
      warnings: stryMutAct_9fa48("1150") ? ["Stryker was here"] : (stryCov_9fa48("1150"), [])
    });
    const own = foods.get(line.item.food);
    const fits = stryMutAct_9fa48("1151") ? household.diets.some(diet => own !== undefined && fitsDiet(own, diet) === true) : (stryCov_9fa48("1151"), household.diets.every(stryMutAct_9fa48("1152") ? () => undefined : (stryCov_9fa48("1152"), diet => stryMutAct_9fa48("1155") ? own !== undefined || fitsDiet(own, diet) === true : stryMutAct_9fa48("1154") ? false : stryMutAct_9fa48("1153") ? true : (stryCov_9fa48("1153", "1154", "1155"), (stryMutAct_9fa48("1157") ? own === undefined : stryMutAct_9fa48("1156") ? true : (stryCov_9fa48("1156", "1157"), own !== undefined)) && (stryMutAct_9fa48("1159") ? fitsDiet(own, diet) !== true : stryMutAct_9fa48("1158") ? true : (stryCov_9fa48("1158", "1159"), fitsDiet(own, diet) === (stryMutAct_9fa48("1160") ? false : (stryCov_9fa48("1160"), true))))))));
    const serving = stryMutAct_9fa48("1161") ? () => undefined : (stryCov_9fa48("1161"), (() => {
      const serving = (swap: Swap): boolean => stryMutAct_9fa48("1162") ? household.diets.some(diet => mayServe(swap, diet, foods, fitsDiet)) : (stryCov_9fa48("1162"), household.diets.every(stryMutAct_9fa48("1163") ? () => undefined : (stryCov_9fa48("1163"), diet => mayServe(swap, diet, foods, fitsDiet))));
      return serving;
    })());
    const swap = stryMutAct_9fa48("1164") ? asked(line, household) && (fits ? null : line.swaps.find(serving) ?? null) : (stryCov_9fa48("1164"), asked(line, household) ?? (fits ? null : stryMutAct_9fa48("1165") ? line.swaps.find(serving) && null : (stryCov_9fa48("1165"), line.swaps.find(serving) ?? null)));
    const food = (stryMutAct_9fa48("1168") ? swap !== null : stryMutAct_9fa48("1167") ? false : stryMutAct_9fa48("1166") ? true : (stryCov_9fa48("1166", "1167", "1168"), swap === null)) ? own : foods.get(swap.food);
    const warnings = household.diets.flatMap((diet): Warning[] => {
      if (stryMutAct_9fa48("1169")) {
        {}
      } else {
        stryCov_9fa48("1169");
        const known = (stryMutAct_9fa48("1172") ? food !== undefined : stryMutAct_9fa48("1171") ? false : stryMutAct_9fa48("1170") ? true : (stryCov_9fa48("1170", "1171", "1172"), food === undefined)) ? null : fitsDiet(food, diet);
        return (stryMutAct_9fa48("1175") ? known !== true : stryMutAct_9fa48("1174") ? false : stryMutAct_9fa48("1173") ? true : (stryCov_9fa48("1173", "1174", "1175"), known === (stryMutAct_9fa48("1176") ? false : (stryCov_9fa48("1176"), true)))) ? stryMutAct_9fa48("1177") ? ["Stryker was here"] : (stryCov_9fa48("1177"), []) : stryMutAct_9fa48("1178") ? [] : (stryCov_9fa48("1178"), [stryMutAct_9fa48("1179") ? {} : (stryCov_9fa48("1179"), {
          code: stryMutAct_9fa48("1180") ? "" : (stryCov_9fa48("1180"), "DIET_NOT_MET"),
          path,
          diet,
          item: stryMutAct_9fa48("1181") ? food?.slug && "" : (stryCov_9fa48("1181"), (stryMutAct_9fa48("1182") ? food.slug : (stryCov_9fa48("1182"), food?.slug)) ?? (stryMutAct_9fa48("1183") ? "Stryker was here!" : (stryCov_9fa48("1183"), ""))),
          known: stryMutAct_9fa48("1186") ? known !== false : stryMutAct_9fa48("1185") ? false : stryMutAct_9fa48("1184") ? true : (stryCov_9fa48("1184", "1185", "1186"), known === (stryMutAct_9fa48("1187") ? true : (stryCov_9fa48("1187"), false)))
        })]);
      }
    });
    return stryMutAct_9fa48("1188") ? {} : (stryCov_9fa48("1188"), {
      swap,
      warnings
    });
  }
}

/** Swaps a household asked for by name that no line of the plan offers. */
export function swapsNotOffered(lines: readonly Line[], household: Household): readonly Warning[] {
  if (stryMutAct_9fa48("1189")) {
    {}
  } else {
    stryCov_9fa48("1189");
    return stryMutAct_9fa48("1190") ? household.swaps.map(({
      from,
      to
    }) => ({
      code: "SWAP_NOT_OFFERED",
      path: ["household", "swaps"],
      from,
      to
    })) : (stryCov_9fa48("1190"), household.swaps.filter(stryMutAct_9fa48("1191") ? () => undefined : (stryCov_9fa48("1191"), ({
      from,
      to
    }) => stryMutAct_9fa48("1192") ? lines.some(({
      item,
      swaps
    }) => item.kind === "FOOD" && item.food === from && swaps.some(({
      food
    }) => food === to)) : (stryCov_9fa48("1192"), !(stryMutAct_9fa48("1193") ? lines.every(({
      item,
      swaps
    }) => item.kind === "FOOD" && item.food === from && swaps.some(({
      food
    }) => food === to)) : (stryCov_9fa48("1193"), lines.some(stryMutAct_9fa48("1194") ? () => undefined : (stryCov_9fa48("1194"), ({
      item,
      swaps
    }) => stryMutAct_9fa48("1197") ? item.kind === "FOOD" && item.food === from || swaps.some(({
      food
    }) => food === to) : stryMutAct_9fa48("1196") ? false : stryMutAct_9fa48("1195") ? true : (stryCov_9fa48("1195", "1196", "1197"), (stryMutAct_9fa48("1199") ? item.kind === "FOOD" || item.food === from : stryMutAct_9fa48("1198") ? true : (stryCov_9fa48("1198", "1199"), (stryMutAct_9fa48("1201") ? item.kind !== "FOOD" : stryMutAct_9fa48("1200") ? true : (stryCov_9fa48("1200", "1201"), item.kind === (stryMutAct_9fa48("1202") ? "" : (stryCov_9fa48("1202"), "FOOD")))) && (stryMutAct_9fa48("1204") ? item.food !== from : stryMutAct_9fa48("1203") ? true : (stryCov_9fa48("1203", "1204"), item.food === from)))) && (stryMutAct_9fa48("1205") ? swaps.every(({
      food
    }) => food === to) : (stryCov_9fa48("1205"), swaps.some(stryMutAct_9fa48("1206") ? () => undefined : (stryCov_9fa48("1206"), ({
      food
    }) => stryMutAct_9fa48("1209") ? food !== to : stryMutAct_9fa48("1208") ? false : stryMutAct_9fa48("1207") ? true : (stryCov_9fa48("1207", "1208", "1209"), food === to))))))))))))).map(stryMutAct_9fa48("1210") ? () => undefined : (stryCov_9fa48("1210"), ({
      from,
      to
    }) => stryMutAct_9fa48("1211") ? {} : (stryCov_9fa48("1211"), {
      code: stryMutAct_9fa48("1212") ? "" : (stryCov_9fa48("1212"), "SWAP_NOT_OFFERED"),
      path: stryMutAct_9fa48("1213") ? [] : (stryCov_9fa48("1213"), [stryMutAct_9fa48("1214") ? "" : (stryCov_9fa48("1214"), "household"), stryMutAct_9fa48("1215") ? "" : (stryCov_9fa48("1215"), "swaps")]),
      from,
      to
    }))));
  }
}