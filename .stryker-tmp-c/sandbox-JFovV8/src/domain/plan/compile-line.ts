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
import { purchaseNeed } from "../component/purchase-need.js";
import type { BaseAmount, Measured } from "../model/amount.js";
import type { Component } from "../model/component.js";
import type { Food, FoodPart } from "../model/food.js";
import type { Line, LineItem, Swap } from "../model/line.js";
import { failed, ok, type Path, type Problem, type Result, type Warning } from "../problem.js";
import { inDimension, missingText, toBase, toDimension, type MissingFact } from "../quantity/convert.js";
import { multiplyRationals, toNumber } from "../quantity/rational.js";
import { nearestUnits, standardUnit } from "../quantity/unit.js";
import type { CompiledLine } from "./compiled-plan.js";
import type { PurchasedNeed } from "./scaled.js";

/** What the names in a line stand for. */
export interface LineContext {
  readonly foods: ReadonlyMap<string, Food>;
  readonly components: ReadonlyMap<string, {
    readonly component: Component;
    readonly index: number;
  }>;
}
export interface CompiledWithWarnings {
  readonly line: CompiledLine;
  readonly warnings: readonly Warning[];
}
const unresolved = (missing: MissingFact, measured: Measured, item: string, to: string, path: Path): Problem => {
  if (stryMutAct_9fa48("1216")) {
    {}
  } else {
    stryCov_9fa48("1216");
    if (stryMutAct_9fa48("1219") ? missing.code !== "UNIT" : stryMutAct_9fa48("1218") ? false : stryMutAct_9fa48("1217") ? true : (stryCov_9fa48("1217", "1218", "1219"), missing.code === (stryMutAct_9fa48("1220") ? "" : (stryCov_9fa48("1220"), "UNIT")))) {
      if (stryMutAct_9fa48("1221")) {
        {}
      } else {
        stryCov_9fa48("1221");
        return stryMutAct_9fa48("1222") ? {} : (stryCov_9fa48("1222"), {
          code: stryMutAct_9fa48("1223") ? "" : (stryCov_9fa48("1223"), "UNKNOWN_UNIT"),
          path,
          unit: missing.unit,
          nearest: nearestUnits(missing.unit)
        });
      }
    }
    return stryMutAct_9fa48("1224") ? {} : (stryCov_9fa48("1224"), {
      code: stryMutAct_9fa48("1225") ? "" : (stryCov_9fa48("1225"), "NOT_CONVERTIBLE"),
      path,
      item,
      from: measured.unit,
      to,
      missing: missingText(missing)
    });
  }
};
const numbers = stryMutAct_9fa48("1226") ? () => undefined : (stryCov_9fa48("1226"), (() => {
  const numbers = (measured: Measured): NonNullable<CompiledLine["written"]> => stryMutAct_9fa48("1227") ? {} : (stryCov_9fa48("1227"), {
    low: toNumber(measured.low),
    high: toNumber(measured.high),
    unit: measured.unit
  });
  return numbers;
})());
const toTaste = stryMutAct_9fa48("1228") ? () => undefined : (stryCov_9fa48("1228"), (() => {
  const toTaste = (line: Line, item: LineItem, path: Path, component: number, need: PurchasedNeed | null): CompiledLine => stryMutAct_9fa48("1229") ? {} : (stryCov_9fa48("1229"), {
    line,
    item,
    path,
    component,
    dimension: null,
    low: 0,
    high: 0,
    written: null,
    need
  });
  return toTaste;
})());

/** A line on a component, in the dimension of the component's yield. */
function onComponent(line: Line, slug: string, path: Path, context: LineContext): Result<CompiledWithWarnings> {
  if (stryMutAct_9fa48("1230")) {
    {}
  } else {
    stryCov_9fa48("1230");
    const found = context.components.get(slug);
    if (stryMutAct_9fa48("1233") ? found !== undefined : stryMutAct_9fa48("1232") ? false : stryMutAct_9fa48("1231") ? true : (stryCov_9fa48("1231", "1232", "1233"), found === undefined)) return failed(stryMutAct_9fa48("1234") ? [] : (stryCov_9fa48("1234"), [stryMutAct_9fa48("1235") ? {} : (stryCov_9fa48("1235"), {
      code: stryMutAct_9fa48("1236") ? "" : (stryCov_9fa48("1236"), "UNKNOWN_COMPONENT"),
      path,
      component: slug
    })]));
    const {
      component,
      index
    } = found;
    if (stryMutAct_9fa48("1239") ? line.amount !== null : stryMutAct_9fa48("1238") ? false : stryMutAct_9fa48("1237") ? true : (stryCov_9fa48("1237", "1238", "1239"), line.amount === null)) return ok(stryMutAct_9fa48("1240") ? {} : (stryCov_9fa48("1240"), {
      line: toTaste(line, line.item, path, index, null),
      warnings: stryMutAct_9fa48("1241") ? ["Stryker was here"] : (stryCov_9fa48("1241"), [])
    }));
    const yields = toBase(component.yield.amount, component, null);
    // The yield itself is checked where it stands; a second report here would send the writer to the wrong line.
    if (stryMutAct_9fa48("1244") ? false : stryMutAct_9fa48("1243") ? true : stryMutAct_9fa48("1242") ? yields.ok : (stryCov_9fa48("1242", "1243", "1244"), !yields.ok)) return ok(stryMutAct_9fa48("1245") ? {} : (stryCov_9fa48("1245"), {
      line: toTaste(line, line.item, path, index, null),
      warnings: stryMutAct_9fa48("1246") ? ["Stryker was here"] : (stryCov_9fa48("1246"), [])
    }));
    const {
      dimension,
      low: lowYield
    } = yields.amount;
    const written = numbers(line.amount);
    const amount = (stryMutAct_9fa48("1249") ? line.amount.unit !== "batch" : stryMutAct_9fa48("1248") ? false : stryMutAct_9fa48("1247") ? true : (stryCov_9fa48("1247", "1248", "1249"), line.amount.unit === (stryMutAct_9fa48("1250") ? "" : (stryCov_9fa48("1250"), "batch")))) ? ok(stryMutAct_9fa48("1251") ? {} : (stryCov_9fa48("1251"), {
      dimension,
      low: stryMutAct_9fa48("1252") ? written.low / lowYield : (stryCov_9fa48("1252"), written.low * lowYield),
      high: stryMutAct_9fa48("1253") ? written.high / lowYield : (stryCov_9fa48("1253"), written.high * lowYield)
    })) : demanded(line.amount, dimension, component, line, path);
    if (stryMutAct_9fa48("1256") ? false : stryMutAct_9fa48("1255") ? true : stryMutAct_9fa48("1254") ? amount.ok : (stryCov_9fa48("1254", "1255", "1256"), !amount.ok)) return amount;
    const {
      low,
      high
    } = amount.value;
    return ok(stryMutAct_9fa48("1257") ? {} : (stryCov_9fa48("1257"), {
      line: stryMutAct_9fa48("1258") ? {} : (stryCov_9fa48("1258"), {
        line,
        item: line.item,
        path,
        component: index,
        dimension,
        low,
        high,
        written,
        need: null
      }),
      warnings: stryMutAct_9fa48("1259") ? ["Stryker was here"] : (stryCov_9fa48("1259"), [])
    }));
  }
}
function demanded(measured: Measured, dimension: BaseAmount["dimension"], component: Component, line: Line, path: Path): Result<BaseAmount> {
  if (stryMutAct_9fa48("1260")) {
    {}
  } else {
    stryCov_9fa48("1260");
    const converted = toDimension(measured, dimension, component, line.form);
    if (stryMutAct_9fa48("1262") ? false : stryMutAct_9fa48("1261") ? true : (stryCov_9fa48("1261", "1262"), converted.ok)) return ok(converted.amount);
    return failed(stryMutAct_9fa48("1263") ? [] : (stryCov_9fa48("1263"), [unresolved(converted.missing, measured, component.slug, component.yield.amount.unit, path)]));
  }
}

/** The amount of another food that stands in for a line's: in the same standard unit, else by mass. */
function swapped(line: Line, swap: Swap, from: Food, path: Path): Result<{
  measured: Measured | null;
  grams: BaseAmount | null;
}> {
  if (stryMutAct_9fa48("1264")) {
    {}
  } else {
    stryCov_9fa48("1264");
    const {
      amount
    } = line;
    if (stryMutAct_9fa48("1267") ? amount !== null : stryMutAct_9fa48("1266") ? false : stryMutAct_9fa48("1265") ? true : (stryCov_9fa48("1265", "1266", "1267"), amount === null)) return ok(stryMutAct_9fa48("1268") ? {} : (stryCov_9fa48("1268"), {
      measured: null,
      grams: null
    }));
    if (stryMutAct_9fa48("1271") ? standardUnit(amount.unit) === null : stryMutAct_9fa48("1270") ? false : stryMutAct_9fa48("1269") ? true : (stryCov_9fa48("1269", "1270", "1271"), standardUnit(amount.unit) !== null)) {
      if (stryMutAct_9fa48("1272")) {
        {}
      } else {
        stryCov_9fa48("1272");
        const low = multiplyRationals(amount.low, swap.ratio);
        const high = multiplyRationals(amount.high, swap.ratio);
        if (stryMutAct_9fa48("1275") ? low !== null || high !== null : stryMutAct_9fa48("1274") ? false : stryMutAct_9fa48("1273") ? true : (stryCov_9fa48("1273", "1274", "1275"), (stryMutAct_9fa48("1277") ? low === null : stryMutAct_9fa48("1276") ? true : (stryCov_9fa48("1276", "1277"), low !== null)) && (stryMutAct_9fa48("1279") ? high === null : stryMutAct_9fa48("1278") ? true : (stryCov_9fa48("1278", "1279"), high !== null)))) return ok(stryMutAct_9fa48("1280") ? {} : (stryCov_9fa48("1280"), {
          measured: stryMutAct_9fa48("1281") ? {} : (stryCov_9fa48("1281"), {
            low,
            high,
            unit: amount.unit
          }),
          grams: null
        }));
        return failed(stryMutAct_9fa48("1282") ? [] : (stryCov_9fa48("1282"), [stryMutAct_9fa48("1283") ? {} : (stryCov_9fa48("1283"), {
          code: stryMutAct_9fa48("1284") ? "" : (stryCov_9fa48("1284"), "BAD_AMOUNT"),
          path,
          written: swap.ratio,
          why: stryMutAct_9fa48("1285") ? "" : (stryCov_9fa48("1285"), "RATIO_TOO_FINE")
        })]));
      }
    }
    // A part has a density of its own: of a squeeze of juice, not of the whole fruit.
    const form = (stryMutAct_9fa48("1288") ? line.item.kind !== "FOOD" : stryMutAct_9fa48("1287") ? false : stryMutAct_9fa48("1286") ? true : (stryCov_9fa48("1286", "1287", "1288"), line.item.kind === (stryMutAct_9fa48("1289") ? "" : (stryCov_9fa48("1289"), "FOOD")))) ? stryMutAct_9fa48("1290") ? line.item.part && line.form : (stryCov_9fa48("1290"), line.item.part ?? line.form) : line.form;
    const base = toBase(amount, from, form);
    const mass = base.ok ? inDimension(base.amount, stryMutAct_9fa48("1291") ? "" : (stryCov_9fa48("1291"), "MASS"), from, form) : base;
    if (stryMutAct_9fa48("1294") ? false : stryMutAct_9fa48("1293") ? true : stryMutAct_9fa48("1292") ? mass.ok : (stryCov_9fa48("1292", "1293", "1294"), !mass.ok)) return failed(stryMutAct_9fa48("1295") ? [] : (stryCov_9fa48("1295"), [unresolved(mass.missing, amount, swap.food, stryMutAct_9fa48("1296") ? "" : (stryCov_9fa48("1296"), "g"), path)]));
    const ratio = toNumber(swap.ratio);
    return ok(stryMutAct_9fa48("1297") ? {} : (stryCov_9fa48("1297"), {
      measured: null,
      grams: stryMutAct_9fa48("1298") ? {} : (stryCov_9fa48("1298"), {
        dimension: stryMutAct_9fa48("1299") ? "" : (stryCov_9fa48("1299"), "MASS"),
        low: stryMutAct_9fa48("1300") ? mass.amount.low / ratio : (stryCov_9fa48("1300"), mass.amount.low * ratio),
        high: stryMutAct_9fa48("1301") ? mass.amount.high / ratio : (stryCov_9fa48("1301"), mass.amount.high * ratio)
      })
    }));
  }
}
function needWarnings(need: ReturnType<typeof purchaseNeed>, line: Line, part: FoodPart | null, food: Food, path: Path): Warning[] {
  if (stryMutAct_9fa48("1302")) {
    {}
  } else {
    stryCov_9fa48("1302");
    const warnings: Warning[] = stryMutAct_9fa48("1303") ? ["Stryker was here"] : (stryCov_9fa48("1303"), []);
    if (stryMutAct_9fa48("1306") ? need.notCombined === null : stryMutAct_9fa48("1305") ? false : stryMutAct_9fa48("1304") ? true : (stryCov_9fa48("1304", "1305", "1306"), need.notCombined !== null)) {
      if (stryMutAct_9fa48("1307")) {
        {}
      } else {
        stryCov_9fa48("1307");
        const missing = need.notCombined;
        warnings.push((stryMutAct_9fa48("1310") ? part !== null : stryMutAct_9fa48("1309") ? false : stryMutAct_9fa48("1308") ? true : (stryCov_9fa48("1308", "1309", "1310"), part === null)) ? stryMutAct_9fa48("1311") ? {} : (stryCov_9fa48("1311"), {
          code: stryMutAct_9fa48("1312") ? "" : (stryCov_9fa48("1312"), "NOT_COMBINED"),
          path,
          food: food.slug,
          missing
        }) : stryMutAct_9fa48("1313") ? {} : (stryCov_9fa48("1313"), {
          code: stryMutAct_9fa48("1314") ? "" : (stryCov_9fa48("1314"), "PART_NOT_COUNTED"),
          path,
          food: food.slug,
          part: part.name,
          missing
        }));
      }
    }
    if (stryMutAct_9fa48("1316") ? false : stryMutAct_9fa48("1315") ? true : (stryCov_9fa48("1315", "1316"), need.edibleUnknown)) warnings.push(stryMutAct_9fa48("1317") ? {} : (stryCov_9fa48("1317"), {
      code: stryMutAct_9fa48("1318") ? "" : (stryCov_9fa48("1318"), "EDIBLE_PORTION_UNKNOWN"),
      path,
      food: food.slug,
      form: line.form
    }));
    return warnings;
  }
}
function onFood(line: Line, swap: Swap | null, path: Path, context: LineContext): Result<CompiledWithWarnings> {
  if (stryMutAct_9fa48("1319")) {
    {}
  } else {
    stryCov_9fa48("1319");
    if (stryMutAct_9fa48("1322") ? line.item.kind === "FOOD" : stryMutAct_9fa48("1321") ? false : stryMutAct_9fa48("1320") ? true : (stryCov_9fa48("1320", "1321", "1322"), line.item.kind !== (stryMutAct_9fa48("1323") ? "" : (stryCov_9fa48("1323"), "FOOD")))) throw new TypeError(stryMutAct_9fa48("1324") ? "" : (stryCov_9fa48("1324"), "a component line is compiled by onComponent"));
    const original = context.foods.get(line.item.food);
    if (stryMutAct_9fa48("1327") ? original !== undefined : stryMutAct_9fa48("1326") ? false : stryMutAct_9fa48("1325") ? true : (stryCov_9fa48("1325", "1326", "1327"), original === undefined)) return failed(stryMutAct_9fa48("1328") ? [] : (stryCov_9fa48("1328"), [stryMutAct_9fa48("1329") ? {} : (stryCov_9fa48("1329"), {
      code: stryMutAct_9fa48("1330") ? "" : (stryCov_9fa48("1330"), "UNKNOWN_FOOD"),
      path,
      food: line.item.food
    })]));
    const slug = stryMutAct_9fa48("1331") ? swap?.food && line.item.food : (stryCov_9fa48("1331"), (stryMutAct_9fa48("1332") ? swap.food : (stryCov_9fa48("1332"), swap?.food)) ?? line.item.food);
    const food = context.foods.get(slug);
    if (stryMutAct_9fa48("1335") ? food !== undefined : stryMutAct_9fa48("1334") ? false : stryMutAct_9fa48("1333") ? true : (stryCov_9fa48("1333", "1334", "1335"), food === undefined)) return failed(stryMutAct_9fa48("1336") ? [] : (stryCov_9fa48("1336"), [stryMutAct_9fa48("1337") ? {} : (stryCov_9fa48("1337"), {
      code: stryMutAct_9fa48("1338") ? "" : (stryCov_9fa48("1338"), "UNKNOWN_FOOD"),
      path,
      food: slug
    })]));
    const partName = (stryMutAct_9fa48("1341") ? swap !== null : stryMutAct_9fa48("1340") ? false : stryMutAct_9fa48("1339") ? true : (stryCov_9fa48("1339", "1340", "1341"), swap === null)) ? line.item.part : null;
    const part = stryMutAct_9fa48("1342") ? food.parts.find(({
      name
    }) => name === partName) && null : (stryCov_9fa48("1342"), food.parts.find(stryMutAct_9fa48("1343") ? () => undefined : (stryCov_9fa48("1343"), ({
      name
    }) => stryMutAct_9fa48("1346") ? name !== partName : stryMutAct_9fa48("1345") ? false : stryMutAct_9fa48("1344") ? true : (stryCov_9fa48("1344", "1345", "1346"), name === partName))) ?? null);
    if (stryMutAct_9fa48("1349") ? partName !== null || part === null : stryMutAct_9fa48("1348") ? false : stryMutAct_9fa48("1347") ? true : (stryCov_9fa48("1347", "1348", "1349"), (stryMutAct_9fa48("1351") ? partName === null : stryMutAct_9fa48("1350") ? true : (stryCov_9fa48("1350", "1351"), partName !== null)) && (stryMutAct_9fa48("1353") ? part !== null : stryMutAct_9fa48("1352") ? true : (stryCov_9fa48("1352", "1353"), part === null)))) {
      if (stryMutAct_9fa48("1354")) {
        {}
      } else {
        stryCov_9fa48("1354");
        return failed(stryMutAct_9fa48("1355") ? [] : (stryCov_9fa48("1355"), [stryMutAct_9fa48("1356") ? {} : (stryCov_9fa48("1356"), {
          code: stryMutAct_9fa48("1357") ? "" : (stryCov_9fa48("1357"), "UNKNOWN_PART"),
          path,
          food: food.slug,
          part: partName,
          known: food.parts.map(stryMutAct_9fa48("1358") ? () => undefined : (stryCov_9fa48("1358"), ({
            name
          }) => name))
        })]));
      }
    }
    const item: LineItem = stryMutAct_9fa48("1359") ? {} : (stryCov_9fa48("1359"), {
      kind: stryMutAct_9fa48("1360") ? "" : (stryCov_9fa48("1360"), "FOOD"),
      food: food.slug,
      part: partName
    });
    const stands = (stryMutAct_9fa48("1363") ? swap !== null : stryMutAct_9fa48("1362") ? false : stryMutAct_9fa48("1361") ? true : (stryCov_9fa48("1361", "1362", "1363"), swap === null)) ? ok(stryMutAct_9fa48("1364") ? {} : (stryCov_9fa48("1364"), {
      measured: line.amount,
      grams: null
    })) : swapped(line, swap, original, path);
    if (stryMutAct_9fa48("1367") ? false : stryMutAct_9fa48("1366") ? true : stryMutAct_9fa48("1365") ? stands.ok : (stryCov_9fa48("1365", "1366", "1367"), !stands.ok)) return stands;
    const {
      measured,
      grams
    } = stands.value;
    const noAmount = stryMutAct_9fa48("1368") ? {} : (stryCov_9fa48("1368"), {
      food,
      part: partName,
      dimension: null,
      low: 0,
      high: 0
    });
    if (stryMutAct_9fa48("1371") ? measured === null || grams === null : stryMutAct_9fa48("1370") ? false : stryMutAct_9fa48("1369") ? true : (stryCov_9fa48("1369", "1370", "1371"), (stryMutAct_9fa48("1373") ? measured !== null : stryMutAct_9fa48("1372") ? true : (stryCov_9fa48("1372", "1373"), measured === null)) && (stryMutAct_9fa48("1375") ? grams !== null : stryMutAct_9fa48("1374") ? true : (stryCov_9fa48("1374", "1375"), grams === null)))) return ok(stryMutAct_9fa48("1376") ? {} : (stryCov_9fa48("1376"), {
      line: toTaste(line, item, path, stryMutAct_9fa48("1377") ? +1 : (stryCov_9fa48("1377"), -1), noAmount),
      warnings: stryMutAct_9fa48("1378") ? ["Stryker was here"] : (stryCov_9fa48("1378"), [])
    }));
    const base = (stryMutAct_9fa48("1381") ? measured !== null : stryMutAct_9fa48("1380") ? false : stryMutAct_9fa48("1379") ? true : (stryCov_9fa48("1379", "1380", "1381"), measured === null)) ? null : toBase(measured, food, (stryMutAct_9fa48("1384") ? part !== null : stryMutAct_9fa48("1383") ? false : stryMutAct_9fa48("1382") ? true : (stryCov_9fa48("1382", "1383", "1384"), part === null)) ? line.form : part.name);
    if (stryMutAct_9fa48("1387") ? base !== null && !base.ok || measured !== null : stryMutAct_9fa48("1386") ? false : stryMutAct_9fa48("1385") ? true : (stryCov_9fa48("1385", "1386", "1387"), (stryMutAct_9fa48("1389") ? base !== null || !base.ok : stryMutAct_9fa48("1388") ? true : (stryCov_9fa48("1388", "1389"), (stryMutAct_9fa48("1391") ? base === null : stryMutAct_9fa48("1390") ? true : (stryCov_9fa48("1390", "1391"), base !== null)) && (stryMutAct_9fa48("1392") ? base.ok : (stryCov_9fa48("1392"), !base.ok)))) && (stryMutAct_9fa48("1394") ? measured === null : stryMutAct_9fa48("1393") ? true : (stryCov_9fa48("1393", "1394"), measured !== null)))) {
      if (stryMutAct_9fa48("1395")) {
        {}
      } else {
        stryCov_9fa48("1395");
        return failed(stryMutAct_9fa48("1396") ? [] : (stryCov_9fa48("1396"), [unresolved(base.missing, measured, food.slug, food.shoppedBy, path)]));
      }
    }
    const amount = (stryMutAct_9fa48("1399") ? base?.ok !== true : stryMutAct_9fa48("1398") ? false : stryMutAct_9fa48("1397") ? true : (stryCov_9fa48("1397", "1398", "1399"), (stryMutAct_9fa48("1400") ? base.ok : (stryCov_9fa48("1400"), base?.ok)) === (stryMutAct_9fa48("1401") ? false : (stryCov_9fa48("1401"), true)))) ? base.amount : grams;
    if (stryMutAct_9fa48("1404") ? amount !== null : stryMutAct_9fa48("1403") ? false : stryMutAct_9fa48("1402") ? true : (stryCov_9fa48("1402", "1403", "1404"), amount === null)) throw new TypeError(stryMutAct_9fa48("1405") ? "" : (stryCov_9fa48("1405"), "a swapped line has grams where it has no unit"));
    const need = purchaseNeed(amount, measured, line, part, food);
    const bought: PurchasedNeed = (stryMutAct_9fa48("1408") ? need.amount !== null : stryMutAct_9fa48("1407") ? false : stryMutAct_9fa48("1406") ? true : (stryCov_9fa48("1406", "1407", "1408"), need.amount === null)) ? noAmount : stryMutAct_9fa48("1409") ? {} : (stryCov_9fa48("1409"), {
      food,
      part: partName,
      dimension: need.amount.dimension,
      low: need.amount.low,
      high: need.amount.high
    });
    const {
      dimension,
      low,
      high
    } = amount;
    return ok(stryMutAct_9fa48("1410") ? {} : (stryCov_9fa48("1410"), {
      line: stryMutAct_9fa48("1411") ? {} : (stryCov_9fa48("1411"), {
        line,
        item,
        path,
        component: stryMutAct_9fa48("1412") ? +1 : (stryCov_9fa48("1412"), -1),
        dimension,
        low,
        high,
        written: (stryMutAct_9fa48("1415") ? measured !== null : stryMutAct_9fa48("1414") ? false : stryMutAct_9fa48("1413") ? true : (stryCov_9fa48("1413", "1414", "1415"), measured === null)) ? null : numbers(measured),
        need: bought
      }),
      warnings: needWarnings(need, line, part, food, path)
    }));
  }
}

/**
 * Resolves every name, unit and fact of one line, with the swap it is to take. The amounts must be rationals already
 * (check-bundle.ts). Problems: UNKNOWN_FOOD, UNKNOWN_COMPONENT, UNKNOWN_PART, UNKNOWN_UNIT, NOT_CONVERTIBLE, BAD_AMOUNT.
 */
export function compileLine(line: Line, swap: Swap | null, path: Path, context: LineContext): Result<CompiledWithWarnings> {
  if (stryMutAct_9fa48("1416")) {
    {}
  } else {
    stryCov_9fa48("1416");
    return (stryMutAct_9fa48("1419") ? line.item.kind !== "COMPONENT" : stryMutAct_9fa48("1418") ? false : stryMutAct_9fa48("1417") ? true : (stryCov_9fa48("1417", "1418", "1419"), line.item.kind === (stryMutAct_9fa48("1420") ? "" : (stryCov_9fa48("1420"), "COMPONENT")))) ? onComponent(line, line.item.component, path, context) : onFood(line, swap, path, context);
  }
}