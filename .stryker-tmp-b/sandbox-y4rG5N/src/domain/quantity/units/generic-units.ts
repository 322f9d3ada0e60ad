// @ts-nocheck
import type { MeasureSystem, UnitRef } from "../../model/amount.js";

/** Unit words whose size depends on who writes them. */
export type GenericUnit = "cup" | "tbsp" | "tsp" | "floz" | "pint" | "quart" | "gallon" | "gill";

type ByMeasure = Readonly<Record<GenericUnit, readonly UnitRef[]>>;

/** Liquid measures that no metric kitchen has a size of its own for: US or imperial, and only the writer knows. */
const foreignLiquid = {
  floz: ["us-floz", "imp-floz"],
  pint: ["us-pint", "imp-pint", "us-dry-pint"],
  quart: ["us-quart", "imp-quart", "us-dry-quart"],
  gallon: ["us-gallon", "imp-gallon"],
  gill: ["us-gill", "imp-gill"],
} as const;

/** More than one candidate: the word is ambiguous there, and nobody guesses. */
export const genericUnits: Readonly<Record<MeasureSystem, ByMeasure>> = {
  US_CUSTOMARY: {
    cup: ["us-cup"],
    tbsp: ["us-tbsp"],
    tsp: ["us-tsp"],
    floz: ["us-floz"],
    pint: ["us-pint", "us-dry-pint"],
    quart: ["us-quart"],
    gallon: ["us-gallon"],
    gill: ["us-gill"],
  },
  METRIC_CUP: { cup: ["metric-cup"], tbsp: ["metric-tbsp"], tsp: ["metric-tsp"], ...foreignLiquid },
  AUSTRALIAN: { cup: ["metric-cup"], tbsp: ["au-tbsp"], tsp: ["metric-tsp"], ...foreignLiquid },
  UK_IMPERIAL: {
    cup: ["metric-cup", "us-cup"],
    tbsp: ["metric-tbsp"],
    tsp: ["metric-tsp"],
    floz: ["imp-floz"],
    pint: ["imp-pint"],
    quart: ["imp-quart"],
    gallon: ["imp-gallon"],
    gill: ["imp-gill"],
  },
  METRIC: { cup: ["metric-cup", "us-cup"], tbsp: ["metric-tbsp"], tsp: ["metric-tsp"], ...foreignLiquid },
};

/** Only the US sells dry goods (berries, small tomatoes) by measures of their own. */
export const dryForm: Readonly<Partial<Record<UnitRef, UnitRef>>> = {
  "us-pint": "us-dry-pint",
  "us-quart": "us-dry-quart",
};
