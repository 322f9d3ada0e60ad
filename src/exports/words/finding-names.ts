import type { PlanBundle } from "../../domain/model/plan.js";
import type { FindingNames } from "../../domain/plan/check/finding.js";
import { foodWords } from "./food-words.js";

/** How a plan's writer knows its meals, components and foods. */
export const findingNames = ({ plan, components, foods }: PlanBundle): FindingNames =>
  new Map([
    ...plan.meals.map(({ slug, title }) => [`meals/${slug}`, title] as const),
    ...components.map(({ slug, title }) => [`components/${slug}`, title] as const),
    ...foods.map((food) => [`foods/${food.slug}`, foodWords(food, plan.locale).one] as const),
  ]);
