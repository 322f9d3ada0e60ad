import type { UnitRow } from "./unit-row.js";

/**
 * Millilitres of one unit. us-*: NIST Handbook 44, appendix C (gallon = 231 in³). imp-*: Weights and Measures Act 1985
 * (UK), schedule 1 (gallon = 4.54609 l). metric-*, au-tbsp: NSW Health conversion chart (Standards Australia); the 15 ml
 * spoon: test kitchen table of an Australian food magazine. label-*: 21 CFR 101.9(b)(5)(viii). jp-*: Japanese practice,
 * from memory; go = 2401/13310 l.
 */
export const pouredUnits: readonly UnitRow[] = [
  ["ml", "VOLUME", "1"],
  ["cl", "VOLUME", "10"],
  ["dl", "VOLUME", "100"],
  ["l", "VOLUME", "1000"],
  ["us-tsp", "VOLUME", "4.92892159375"],
  ["us-tbsp", "VOLUME", "14.78676478125"],
  ["us-floz", "VOLUME", "29.5735295625"],
  ["us-cup", "VOLUME", "236.5882365"],
  ["us-pint", "VOLUME", "473.176473"],
  ["us-quart", "VOLUME", "946.352946"],
  ["us-gallon", "VOLUME", "3785.411784"],
  ["us-gill", "VOLUME", "118.29411825"],
  ["us-fluid-dram", "VOLUME", "3.6966911953125"],
  ["us-dry-pint", "VOLUME", "550.6104713575"],
  ["us-dry-quart", "VOLUME", "1101.220942715"],
  ["us-bushel", "VOLUME", "35239.07016688"],
  ["metric-tsp", "VOLUME", "5"],
  ["metric-tbsp", "VOLUME", "15"],
  ["metric-cup", "VOLUME", "250"],
  ["au-tbsp", "VOLUME", "20"],
  ["imp-floz", "VOLUME", "28.4130625"],
  ["imp-gill", "VOLUME", "142.0653125"],
  ["imp-pint", "VOLUME", "568.26125"],
  ["imp-quart", "VOLUME", "1136.5225"],
  ["imp-gallon", "VOLUME", "4546.09"],
  ["label-tsp", "VOLUME", "5"],
  ["label-tbsp", "VOLUME", "15"],
  ["label-floz", "VOLUME", "30"],
  ["label-cup", "VOLUME", "240"],
  ["jp-cup", "VOLUME", "200"],
  ["jp-go", "VOLUME", "2401000/13310"],
];
