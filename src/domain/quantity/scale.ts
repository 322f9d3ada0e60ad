import type { UnitRef } from "../model/amount.js";
import type { Grid } from "./round.js";
import { standardUnit } from "./unit.js";

/** A smaller unit shown beside the main one: so many of the rest's counts make one of it. */
export interface RestUnit {
  readonly unit: UnitRef;
  readonly counts: number;
}

/** One unit a cook measures with, and how fine. */
export interface Scale {
  readonly unit: UnitRef;
  /** Base units of one. */
  readonly size: number;
  /** From this many on, the next scale is used. */
  readonly until: number;
  readonly grids: readonly Grid[];
  /** Vulgar fractions, or decimals with at most so many places. */
  readonly style: "FRACTION" | { readonly places: number };
  /** Largest first. */
  readonly rest: readonly RestUnit[];
  readonly joiner: string;
}

/** Base units of one. */
export const sizeOf = (id: UnitRef): number => standardUnit(id)?.factor ?? 1;

/** Vulgar fractions of a unit. */
export const scale = (
  unit: UnitRef,
  until: number,
  grids: readonly Grid[],
  rest: readonly RestUnit[] = [],
  joiner = " + ",
): Scale => ({ unit, size: sizeOf(unit), until, grids, style: "FRACTION", rest, joiner });

/** Decimals of a unit. */
export const decimal = (unit: UnitRef, until: number, places: number, grids: readonly Grid[]): Scale => ({
  ...scale(unit, until, grids),
  style: { places },
});
