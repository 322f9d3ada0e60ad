import type { Dimension } from "../model/amount.js";
import type { Food } from "../model/food.js";

/** As purchased, in the dimension the food's needs are added up in. `dimension` null: nobody can say how much. */
export interface PurchasedNeed {
  readonly food: Food;
  readonly part: string | null;
  readonly dimension: Dimension | null;
  readonly low: number;
  readonly high: number;
}
