import type { Measured, RationalText } from "./amount.js";

/**
 * How a line grows. PROPORTIONAL with the pot; PER_BATCH once each started batch; POWER with batches ** exponent
 * (in a meal: with servings / serves); TO_TASTE has no amount.
 */
export type ScalingRule = "PROPORTIONAL" | "PER_BATCH" | "POWER" | "TO_TASTE";

export type LineItem =
  | { readonly kind: "FOOD"; readonly food: string; readonly part: string | null }
  | { readonly kind: "COMPONENT"; readonly component: string };

/** What is otherwise with a swap than with the food it stands in for. What it does not say stays. */
export interface SwapOwn {
  /** How this food is prepared. The other's preparation never goes along. */
  readonly preparation?: string;
  /** The form it is measured in. */
  readonly form?: string;
  /** What one batch of the component then gives, by the writer's word. */
  readonly yield?: Measured;
  /** Class of published keeping ceilings of the component, or of the route, that is then made. */
  readonly keepsAs?: string;
  /** Words and minutes of steps, by their ids. */
  readonly steps?: readonly {
    readonly id: string;
    readonly text?: string;
    readonly said?: string;
    readonly minutes?: number;
  }[];
}

/** Another food for a line: ratio × the line's amount, in the line's unit where the unit is standard, else by mass. */
export interface Swap {
  readonly food: string;
  readonly ratio: RationalText;
  readonly diets: readonly string[];
  readonly note: string | null;
  readonly own?: SwapOwn;
}

export interface Line {
  /** Unique inside its component or meal, and stable: problems and uses point at it. */
  readonly id: string;
  readonly item: LineItem;
  /** The writer's own words, untouched. */
  readonly written: string;
  /** null exactly when `rule` is TO_TASTE. */
  readonly amount: Measured | null;
  /** What one of the pieces weighs that `amount` counts: "4 potatoes of 6 oz". Absent: what one of the food usually does. */
  readonly each?: Measured;
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
