import { nutritionOf, type Nutrition, type NutritionInput, type Span } from "../nutrition/nutrients.js";
import { inDimension } from "../quantity/convert.js";
import { eatenFoods, type EatenMeal } from "./eaten.js";
import { lineContext } from "./line-context.js";
import type { ScaledLine, ScaledPlan } from "./scaled.js";

/** Grams a line adds to the plate; null where its amount cannot be weighed. A line to taste weighs next to nothing. */
function weight(line: ScaledLine, scaled: ScaledPlan): Span | null {
  if (line.amount === null) return { low: 0, high: 0 };
  const { foods, components } = lineContext(scaled.bundle);
  const { item } = line;
  const facts = item.kind === "FOOD" ? foods.get(item.food) : components.get(item.component)?.component;
  const mass = facts === undefined ? null : inDimension(line.amount, "MASS", facts, line.line.form);
  return mass?.ok === true ? { low: mass.amount.low, high: mass.amount.high } : null;
}

/** What a meal weighs as it is put together; null unless every line can be weighed. Finishing steps are taken to lose nothing. */
function plateGrams(lines: readonly ScaledLine[], scaled: ScaledPlan): Span | null {
  const sum = { low: 0, high: 0 };
  for (const line of lines) {
    const grams = weight(line, scaled);
    if (grams === null) return null;
    sum.low += grams.low;
    sum.high += grams.high;
  }
  return sum.low > 0 ? sum : null;
}

/** A part is not the whole: zest and juice have figures of their own, which the whole fruit's are not. */
const inputOf = ({ food, part, grams }: EatenMeal["foods"][number]): NutritionInput => ({
  food: part === null ? food : { slug: food.slug, nutrients: null },
  grams,
});

export interface MealNutrition {
  readonly meal: string;
  readonly nutrition: Nutrition;
}

/**
 * Nutrition of each meal and of one serving of all meals together, from raw foods through the components. Water and other
 * things that are always there count where they have figures and are passed over where they have none.
 *
 * @param servings that share each meal
 */
export function planNutrition(
  scaled: ScaledPlan,
  servings: number,
): { readonly meals: readonly MealNutrition[]; readonly plan: Nutrition } {
  const eaten = eatenFoods(scaled);
  const counts = ({ food }: EatenMeal["foods"][number]): boolean => !food.alwaysThere || food.nutrients !== null;
  const plates = scaled.meals.map(({ lines }) => plateGrams(lines, scaled));
  const inputs = eaten.map(({ foods }) => foods.filter(counts).map(inputOf));
  const whole = plates.reduce<Span | null>(
    (sum, plate) => (sum === null || plate === null ? null : { low: sum.low + plate.low, high: sum.high + plate.high }),
    { low: 0, high: 0 },
  );
  return {
    meals: eaten.map(({ meal }, at) => ({
      meal: meal.slug,
      nutrition: nutritionOf({ inputs: inputs[at] ?? [], cookedGrams: plates[at] ?? null, servings }),
    })),
    plan: nutritionOf({ inputs: inputs.flat(), cookedGrams: whole !== null && whole.low > 0 ? whole : null, servings }),
  };
}
