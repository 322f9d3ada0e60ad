/** An exact rational as text in lowest terms: `"3"`, `"1/3"`. Never a decimal, so thirds survive storage. */
export type RationalText = string;

/** What a number measures. Mass is held in grams, volume in millilitres, count in pieces. */
export type Dimension = "MASS" | "VOLUME" | "COUNT";

/**
 * A standard unit's id (`"g"`, `"us-cup"`, `"piece"`, see quantity/unit.ts), `"batch"` (lines on a component only),
 * or a measure of the line's own food or component written `"own:clove"`.
 */
export type UnitRef = string;

/** A number somebody wrote down, kept exactly. `low` equals `high` unless it is a range. */
export interface Measured {
  readonly low: RationalText;
  readonly high: RationalText;
  readonly unit: UnitRef;
}

/** A computed amount in base units of one dimension (g, ml or pieces). `low` equals `high` unless a range. */
export interface BaseAmount {
  readonly dimension: Dimension;
  readonly low: number;
  readonly high: number;
}

/** The measures a plan is written in, or a reader cooks in. `METRIC` has no cups; the others name their cup and spoons. */
export type MeasureSystem = "US_CUSTOMARY" | "METRIC_CUP" | "AUSTRALIAN" | "UK_IMPERIAL" | "METRIC";

/** All of them, in the order forms offer them. */
export const measureSystems: readonly MeasureSystem[] = [
  "US_CUSTOMARY",
  "METRIC_CUP",
  "AUSTRALIAN",
  "UK_IMPERIAL",
  "METRIC",
];

/** A decimal string and an ISO 4217 code. Never a float. */
export interface Money {
  readonly amount: string;
  readonly currency: string;
}
