import type { PlanBundle } from "../../model/plan.js";
import type { Component } from "../../model/component.js";
import type { Food } from "../../model/food.js";

/** What the names in a line stand for. */
export interface LineContext {
  readonly foods: ReadonlyMap<string, Food>;
  readonly components: ReadonlyMap<string, { readonly component: Component; readonly index: number }>;
}

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
