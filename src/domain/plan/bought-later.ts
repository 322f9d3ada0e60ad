import type { Warning } from "../problem.js";
import type { MergedNeed } from "../shopping/merge.js";
import { laterTrips } from "../storage/later-trips.js";
import type { Source } from "./contributions.js";
import type { FoodsToday } from "./review/foods-today.js";
import type { ScaledPlan } from "./scaled.js";

/**
 * Shares of a line that would not keep until their meals if they were bought for the session: on which later trip to buy them. The
 * line itself holds the whole need.
 */
export function boughtLater(
  { food, contributions }: MergedNeed<Source>,
  plans: readonly ScaledPlan[],
  foodKeeps: FoodsToday["foodKeeps"],
): readonly Warning[] {
  const waiting = contributions.flatMap(({ day, source: { meal, scaled } }) =>
    meal === null || day <= 0 ? [] : [{ slug: meal.slug, day, at: meal.at, plan: plans.indexOf(scaled) }],
  );
  if (waiting.length === 0 || food.alwaysThere || food.shelfStable === true) return [];
  const late = waiting.flatMap(({ at, ...meal }) => {
    const keeps = foodKeeps(food, at);
    return keeps !== null && meal.day > keeps ? [{ ...meal, keeps }] : [];
  });
  // Days count from each plan's own session, so trips are not shared between plans.
  return [...new Set(late.map(({ plan }) => plan))].flatMap((plan) => {
    const meals = new Map(late.filter((each) => each.plan === plan).map((each) => [each.slug, each]));
    return laterTrips([...meals.values()]).map((trip): Warning => ({
      code: "BUY_LATER",
      path: [...(plans.length > 1 ? ["plans", plan] : []), "foods", food.slug],
      food: food.slug,
      meals: trip.meals.map(({ slug }) => slug),
      notBefore: trip.notBefore,
      days: Math.min(...trip.meals.map(({ keeps }) => keeps)),
    }));
  });
}
