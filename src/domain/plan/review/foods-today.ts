import type { Food, FoodPart } from "../../model/food.js";
import { asStated, type DietJudge } from "../../nutrition/diets.js";
import { foodKeeps } from "../../storage/food-keeping.js";
import { partKeeps } from "../../storage/part-keeping.js";

/**
 * The catalogue as it is now, beside what a revision froze: a synonym found later joins lines of old plans, and today's
 * packs and prices are those one buys at.
 */
export interface FoodsToday {
  /** ISO date of today: what is on hand is held against it where nobody says when the session is. null: dates are not looked at. */
  readonly date: string | null;
  /** The slug under which this food is shopped: its own, or that of the food it was found to be the same as. */
  readonly canonical: (slug: string) => string;
  readonly bySlug: ReadonlyMap<string, Food>;
  /** Whether a food fits a diet by the rules of the reader's region. The same function for the same rules: plans are kept compiled by it. */
  readonly fitsDiet: DietJudge;
  /**
   * Whole days a part keeps once its piece is cut, until a meal at an hour `HH:MM` (left out: the usual one), also by the published
   * rules of today; null where nobody says.
   */
  readonly partKeeps: (part: FoodPart, at?: string) => number | null;
  /** Whole days a food keeps once it is bought, in the same way. */
  readonly foodKeeps: (food: Food, at?: string) => number | null;
}

const writersWord = { rules: [], classes: [], region: null, today: "1970-01-01", session: null };

/** Nothing newer is known than what the plans froze. */
export const asFrozen: FoodsToday = {
  date: null,
  canonical: (slug) => slug,
  bySlug: new Map(),
  fitsDiet: asStated,
  partKeeps: (part, at) => partKeeps(part, writersWord, at),
  foodKeeps: (food, at) => foodKeeps(food, writersWord, at),
};
