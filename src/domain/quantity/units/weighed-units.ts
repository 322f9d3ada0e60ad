import type { UnitRow } from "./unit-row.js";

/**
 * Grams of one unit. lb, oz: 1959 agreement (NIST Handbook 44, appendix C). stone: Weights and Measures Act 1985 (UK).
 * label-oz: 21 CFR 101.9(b)(5)(viii). stick-butter: USDA SR 28, weight file, NDB 01145 (rounded there; a quarter
 * pound is 113.398 g). metric-pound, the 500 g of "ein Pfund" and "une livre": common practice, from memory.
 */
export const weighedUnits: readonly UnitRow[] = [
  ["g", "MASS", "1"],
  ["kg", "MASS", "1000"],
  ["mg", "MASS", "0.001"],
  ["dag", "MASS", "10"],
  ["oz", "MASS", "28.349523125"],
  ["lb", "MASS", "453.59237"],
  ["stone", "MASS", "6350.29318"],
  ["metric-pound", "MASS", "500"],
  ["label-oz", "MASS", "28"],
  ["stick-butter", "MASS", "113"],
];
