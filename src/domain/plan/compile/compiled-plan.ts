import type { BatchSizes } from "../../component/batch.js";
import type { Dimension } from "../../model/amount.js";
import type { Component, Route } from "../../model/component.js";
import type { Line, LineItem } from "../../model/line.js";
import type { Meal, PlanBundle } from "../../model/plan.js";
import type { Warning } from "../../problem.js";
import type { PurchasedNeed } from "../purchased-need.js";

/** A line with every name, unit and fact resolved: from here on scaling only multiplies. */
export interface CompiledLine {
  readonly line: Line;
  /** After swaps. */
  readonly item: LineItem;
  readonly path: readonly (string | number)[];
  /** Index of the component it takes, or -1. */
  readonly component: number;
  /** Base units at factor 1, in the dimension it is written in (of a component: of its yield). null: TO_TASTE. */
  readonly dimension: Dimension | null;
  readonly low: number;
  readonly high: number;
  /** The writer's numbers and unit; null where a swap had to go by mass, and for TO_TASTE. */
  readonly written: { readonly low: number; readonly high: number; readonly unit: string } | null;
  readonly need: PurchasedNeed | null;
}

export interface CompiledMeal {
  readonly meal: Meal;
  readonly lines: readonly CompiledLine[];
  /** Those lines that take a component. */
  readonly takes: readonly CompiledLine[];
}

export interface CompiledComponent {
  readonly component: Component;
  readonly route: Route | null;
  readonly lines: readonly CompiledLine[];
  readonly takes: readonly CompiledLine[];
  readonly sizes: BatchSizes;
  /** Of one batch, in base units. A range counts on its low end. */
  readonly yield: { readonly dimension: Dimension; readonly low: number; readonly high: number };
}

export interface CompiledPlan {
  readonly bundle: PlanBundle;
  readonly meals: readonly CompiledMeal[];
  readonly components: readonly CompiledComponent[];
  /** Indexes into `components`, inputs before what uses them. */
  readonly makeOrder: readonly number[];
  /** True of the plan whatever the servings: facts that are missing, diets that are not met. */
  readonly warnings: readonly Warning[];
}
