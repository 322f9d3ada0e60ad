import type { Household } from "../../model/household.js";
import type { Warning } from "../../problem.js";
import type { CompiledPlan } from "../compile/compiled-plan.js";
import type { ScaledPlan } from "../scaled.js";
import { hourAfter, startHour } from "./session-date.js";
import type { DaySession } from "./split-session.js";

/** A meal whose hour comes before it can be ready. */
export interface LateMeal {
  readonly meal: string;
  /** Hour that its writer gives, `HH:MM`. */
  readonly at: string;
  /** When it is ready at the earliest, `HH:MM` on the clock of the session's place; null: not on that day any more. */
  readonly readyAt: string | null;
}

/** Meals of the first day whose writer gives an hour before the session begins. */
export const mealsBeforeSession = (
  { meals }: Pick<CompiledPlan, "meals">,
  household: Pick<Household, "session">,
): readonly Warning[] => {
  const start = startHour(household);
  return meals.flatMap(({ meal: { slug, day, at } }): readonly Warning[] =>
    day === 0 && at !== undefined && at < start
      ? [{ code: "MEAL_BEFORE_SESSION", path: ["meals", slug], meal: slug, at, start }]
      : [],
  );
};

/** When a meal is ready: when it is finished in the session, or else when all that goes into it is made. */
function readyMinute(meal: ScaledPlan["meals"][number], { session: { tasks } }: DaySession): number {
  const made = new Set(meal.lines.flatMap(({ item }) => (item.kind === "COMPONENT" ? [item.component] : [])));
  const own = tasks.filter(({ of }) => of.kind === "MEAL" && of.slug === meal.meal.slug);
  const all = own.length > 0 ? own : tasks.filter(({ of }) => of.kind === "COMPONENT" && made.has(of.slug));
  return Math.max(0, ...all.map(({ endMinute }) => endMinute));
}

/** Meals on the day of a session whose writer gives an hour at which they cannot be ready. */
export function lateMeals(
  session: DaySession,
  { meals }: Pick<ScaledPlan, "meals">,
  household: Pick<Household, "session">,
): readonly LateMeal[] {
  return meals.flatMap((each): readonly LateMeal[] => {
    const { slug, day, at } = each.meal;
    if (day !== session.day || at === undefined) return [];
    const readyAt = hourAfter(household, day, readyMinute(each, session));
    return readyAt !== null && readyAt <= at ? [] : [{ meal: slug, at, readyAt }];
  });
}
