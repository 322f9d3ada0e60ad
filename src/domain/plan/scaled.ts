import type { PurchasedNeed } from "./purchased-need.js";
import type { BaseAmount } from "../model/amount.js";
import type { Component, Route } from "../model/component.js";
import type { Food } from "../model/food.js";
import type { Line, LineItem } from "../model/line.js";
import type { Meal, PlanBundle } from "../model/plan.js";
import type { Warning } from "../problem.js";
import type { Cost, PackCount } from "../shopping/cost.js";
import type { PartOver } from "../shopping/merge.js";
import type { CompiledPlan } from "./compile/compiled-plan.js";

/** One line after scaling and swapping. */
export interface ScaledLine {
  readonly line: Line;
  /** What is used, which differs from `line.item` after a swap. */
  readonly item: LineItem;
  /** null for TO_TASTE. In the dimension the line was written in, unrounded. */
  readonly amount: BaseAmount | null;
  /** The same in the writer's own unit, unrounded; null for TO_TASTE, and for a swap that had to go by mass. */
  readonly inUnit: { readonly low: number; readonly high: number; readonly unit: string } | null;
  /** What it makes one buy, as purchased; null for a line that takes a component. */
  readonly need: PurchasedNeed | null;
}

export interface ScaledMeal {
  readonly meal: Meal;
  /** servings / meal.serves */
  readonly factor: number;
  readonly lines: readonly ScaledLine[];
}

/** made - used = leftOver >= 0, all in the dimension of the component's yield. Ranges: used.high is what is made for. */
export interface ScaledComponent {
  readonly component: Component;
  /** null: made as written. */
  readonly route: Route | null;
  readonly batches: number;
  /** Pots or trays it is made in; each holds at most batch.max. */
  readonly loads: number;
  readonly made: BaseAmount;
  readonly used: BaseAmount;
  readonly leftOver: BaseAmount;
  readonly onHand: BaseAmount;
  readonly lines: readonly ScaledLine[];
}

export interface ScaledPlan {
  readonly bundle: PlanBundle;
  /** What it was scaled from: whatever hangs on no amount is the same for all who share it. */
  readonly compiled: CompiledPlan;
  readonly servings: number;
  readonly meals: readonly ScaledMeal[];
  /** In an order in which they can be made: a component comes after those it uses. */
  readonly components: readonly ScaledComponent[];
  readonly warnings: readonly Warning[];
}

/** Who took how much. For a part, `amount` counts the pieces of the food it takes. */
export interface Use {
  readonly bundle: PlanBundle;
  readonly meal: Meal | null;
  readonly component: Component | null;
  readonly part: string | null;
  readonly asWritten: string;
  readonly amount: BaseAmount | null;
  /** Its line may be left out. */
  readonly optional: boolean;
}

export interface ShoppingLine {
  readonly food: Food;
  /** As purchased: after edible portions, before on hand and packs. Equals the whole uses + the largest of the part sums, as far as parts keep. */
  readonly need: BaseAmount | null;
  readonly onHand: BaseAmount | null;
  /** need.high - onHand, never negative: the amount the packs must cover. */
  readonly toBuy: BaseAmount | null;
  readonly buy: readonly PackCount[];
  readonly cost: Cost;
  readonly uses: readonly Use[];
  /** Parts of the pieces needed that no use takes (the yolks of a meringue); empty where no part is used. */
  readonly partsOver: readonly PartOver[];
  /** Some use asks for an open extra or for an amount to taste. */
  readonly open: boolean;
}

export interface ShoppingList {
  readonly lines: readonly ShoppingLine[];
  readonly cost: Cost;
  readonly warnings: readonly Warning[];
}
