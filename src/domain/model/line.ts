import type { Measured, RationalText } from "./amount.js";

/**
 * How a line grows. PROPORTIONAL with the pot; PER_BATCH once each started batch; POWER with batches ** exponent
 * (in a meal: with servings / serves); TO_TASTE has no amount.
 */
export type ScalingRule = "PROPORTIONAL" | "PER_BATCH" | "POWER" | "TO_TASTE";

export type LineItem =
  | { readonly kind: "FOOD"; readonly food: string; readonly part: string | null }
  | { readonly kind: "COMPONENT"; readonly component: string };

/** Another food for a line: ratio × the line's amount, in the line's unit where the unit is standard, else by mass. */
export interface Swap {
  readonly food: string;
  readonly ratio: RationalText;
  readonly diets: readonly string[];
  readonly note: string | null;
}

export interface Line {
  /** Unique inside its component or meal, and stable: problems and uses point at it. */
  readonly id: string;
  readonly item: LineItem;
  /** The writer's own words, untouched. */
  readonly written: string;
  /** null exactly when `rule` is TO_TASTE. */
  readonly amount: Measured | null;
  /** "plus more for serving": an open extra beside the measured amount. */
  readonly extra: boolean;
  /** AS_BOUGHT: weighed before trimming. READY: weighed after; the edible portion then applies. */
  readonly measured: "AS_BOUGHT" | "READY";
  /** The form it was measured in ("chopped"), which picks the density and the edible portion; null = as bought. */
  readonly form: string | null;
  readonly preparation: string | null;
  readonly rule: ScalingRule;
  /** Only with POWER: 0 < exponent <= 1. */
  readonly exponent: number | null;
  readonly optional: boolean;
  /** Share 0..1 of it that is eaten: "0" of what is thrown away. Absent: all that is not poured away (plan/drained.ts). */
  readonly eaten?: RationalText;
  /** A short mark beside the line ("keep the liquid"). */
  readonly mark: string | null;
  readonly swaps: readonly Swap[];
}
