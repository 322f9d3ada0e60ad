import type { Warning } from "../../problem.js";
import type { LeftOut } from "../apply-swap.js";
import type { CompiledComponent, CompiledMeal } from "./compiled-plan.js";

/** A food that stays in a meal, or in what is made of a component, although it is not liked. */
export interface Staying {
  /** Index of the component; null: a meal. */
  readonly component: number | null;
  readonly meal: string | null;
  readonly item: string;
}

interface Made {
  readonly meals: readonly CompiledMeal[];
  readonly components: readonly CompiledComponent[];
}

/** What is said of foods that are not liked: each food once, with the meals that it stays in or was left out of. */
export function dislikeWarnings(
  staying: readonly Staying[],
  leftOut: readonly LeftOut[],
  made: Made,
): readonly Warning[] {
  if (staying.length === 0 && leftOut.length === 0) return [];
  const takers = mealsByComponent(made);
  const gone = leftOut.flatMap(({ kind, slug, route, item }): readonly Staying[] => {
    if (kind === "MEAL") return [{ component: null, meal: slug, item }];
    const component = made.components.findIndex(
      (each) => each.component.slug === slug && (each.route?.name ?? null) === route,
    );
    return component < 0 ? [] : [{ component, meal: null, item }];
  });
  return [
    ...gathered("DISLIKE_NOT_AVOIDED", staying, takers, made.meals),
    ...gathered("DISLIKE_LEFT_OUT", gone, takers, made.meals),
  ];
}

function gathered(
  code: "DISLIKE_NOT_AVOIDED" | "DISLIKE_LEFT_OUT",
  found: readonly Staying[],
  takers: ReadonlyMap<number, ReadonlySet<string>>,
  all: readonly CompiledMeal[],
): readonly Warning[] {
  const byFood = new Map<string, Set<string>>();
  for (const { component, meal, item } of found) {
    const meals = byFood.get(item) ?? new Set();
    byFood.set(item, meals);
    if (meal !== null) meals.add(meal);
    for (const taker of (component === null ? undefined : takers.get(component)) ?? []) meals.add(taker);
  }
  return [...byFood].flatMap(([item, taken]): readonly Warning[] => {
    // In the order in which they are eaten.
    const meals = all.flatMap(({ meal }) => (taken.has(meal.slug) ? [meal.slug] : []));
    // A component that no meal comes to by the routes taken is not made.
    return meals.length === 0 ? [] : [{ code, path: ["household", "dislikes"], item, meals }];
  });
}

/** Slugs of the meals that what is made of each component goes into, over other components too. */
function mealsByComponent({ meals, components }: Made): ReadonlyMap<number, ReadonlySet<string>> {
  const takers = new Map<number, Set<string>>();
  for (const { meal, takes } of meals) {
    const open = takes.map(({ component }) => component);
    for (let index = open.pop(); index !== undefined; index = open.pop()) {
      const known = takers.get(index) ?? new Set();
      if (known.has(meal.slug)) continue;
      takers.set(index, known.add(meal.slug));
      open.push(...(components[index]?.takes ?? []).map(({ component }) => component));
    }
  }
  return takers;
}
