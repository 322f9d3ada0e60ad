import type { Food } from "../../model/food.js";
import { memoize } from "../../memoize.js";
import type { CompiledLine, CompiledPlan } from "../compile/compiled-plan.js";
import { lineContext } from "../compile/line-context.js";

/** Every food that goes into a dish, through its components, each once; with swaps and routes as they were taken. */
interface FoodsEaten {
  readonly plan: readonly Food[];
  /** By slug of the meal. */
  readonly meals: ReadonlyMap<string, readonly Food[]>;
}

/** Foods are eaten whatever their amount is, so they are the same for every number of servings. */
export const foodsEaten = memoize((plan: CompiledPlan): FoodsEaten => {
  const { foods } = lineContext(plan.bundle);
  const ofComponent = new Map<string, readonly Food[]>();
  const eatenIn = (lines: readonly CompiledLine[]): readonly Food[] => [
    ...new Set(
      lines.flatMap(({ item }) =>
        item.kind === "FOOD" ? (foods.get(item.food) ?? []) : (ofComponent.get(item.component) ?? []),
      ),
    ),
  ];
  // Inputs come before what uses them, so every component a line takes is there already.
  for (const index of plan.makeOrder) {
    const { component, lines } = plan.components[index]!;
    ofComponent.set(component.slug, eatenIn(lines));
  }
  const meals = new Map(plan.meals.map(({ meal, lines }) => [meal.slug, eatenIn(lines)]));
  return { plan: [...new Set([...meals.values()].flat())], meals };
});

/** Those of one meal, by its slug; null: of the whole plan. */
export function foodsOfDish(plan: CompiledPlan, meal: string | null): readonly Food[] {
  const eaten = foodsEaten(plan);
  const found = meal === null ? eaten.plan : eaten.meals.get(meal);
  if (found === undefined) throw new RangeError(`the plan has no meal ${meal ?? ""}`);
  return found;
}
