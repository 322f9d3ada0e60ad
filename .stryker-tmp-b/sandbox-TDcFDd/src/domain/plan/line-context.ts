// @ts-nocheck
import type { PlanBundle } from "../model/plan.js";
import type { LineContext } from "./compile-line.js";

const known = new WeakMap<PlanBundle, LineContext>();

/** Look-up of a bundle's foods and components by slug; remembered as long as the bundle lives. */
export function lineContext(bundle: PlanBundle): LineContext {
  const found = known.get(bundle);
  if (found !== undefined) return found;
  const context: LineContext = {
    foods: new Map(bundle.foods.map((food) => [food.slug, food])),
    components: new Map(bundle.components.map((component, index) => [component.slug, { component, index }])),
  };
  known.set(bundle, context);
  return context;
}
