import type { Component } from "../../model/component.js";
import type { Food } from "../../model/food.js";
import type { Line } from "../../model/line.js";
import type { Plan, PlanBundle } from "../../model/plan.js";

/** The lines of a component and of its routes. */
export const linesOfComponent = ({ lines, routes }: Component): readonly Line[] => [
  ...lines,
  ...routes.flatMap((route) => route.lines),
];

/** Slugs of the components that lines name. */
export const componentsIn = (lines: readonly Line[]): readonly string[] =>
  lines.flatMap(({ item }) => (item.kind === "COMPONENT" ? [item.component] : []));

/** Slugs of the foods that lines and their swaps name. */
export const foodsIn = (lines: readonly Line[]): readonly string[] =>
  lines.flatMap(({ item, swaps }) => [...(item.kind === "FOOD" ? [item.food] : []), ...swaps.map(({ food }) => food)]);

/**
 * The plan with those of the components and foods that its lines, routes and swaps lead to, in the order given.
 * What is named but not given is left out; `checkBundle` says so. A cycle ends where it began.
 */
export function bundleOf(plan: Plan, components: readonly Component[], foods: readonly Food[]): PlanBundle {
  const bySlug = new Map(components.map((component) => [component.slug, component]));
  const mealLines = plan.meals.flatMap(({ lines }) => lines);
  const reached = new Set<string>();
  const open = [...componentsIn(mealLines)];
  for (let slug = open.pop(); slug !== undefined; slug = open.pop()) {
    const component = bySlug.get(slug);
    if (component === undefined || reached.has(slug)) continue;
    reached.add(slug);
    open.push(...componentsIn(linesOfComponent(component)));
  }
  const used = components.filter(({ slug }) => reached.has(slug));
  const named = new Set(foodsIn([...mealLines, ...used.flatMap(linesOfComponent)]));
  return { plan, components: used, foods: foods.filter(({ slug }) => named.has(slug)) };
}

/** How many lines a plan has, whatever is chosen of its routes. */
export const lineCount = ({ plan, components }: PlanBundle): number =>
  plan.meals.reduce((sum, { lines }) => sum + lines.length, 0) +
  components.reduce((sum, component) => sum + linesOfComponent(component).length, 0);
