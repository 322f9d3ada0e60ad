import { nutritionOfInSlices, type Nutrition, type NutritionInput, type Span } from "../../nutrition/nutrients.js";
import { inDimension } from "../../quantity/convert.js";
import { toNumber } from "../../quantity/rational.js";
import { gramsOf, isWater, partNutrients } from "./eaten-grams.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../counted-work.js";
import { eatenInSlices, type EatenMeal } from "./eaten.js";
import { lineContext } from "../compile/line-context.js";
import type { ScaledLine, ScaledMeal, ScaledPlan } from "../scaled.js";

/** Grams a line adds to the plate; null where its amount cannot be weighed. A line to taste weighs next to nothing. */
function weight(line: ScaledLine, scaled: ScaledPlan, drained: boolean): Span | null {
  if (line.amount === null) return { low: 0, high: 0 };
  const { foods, components } = lineContext(scaled.bundle);
  const { item } = line;
  const { form } = line.line;
  const eaten = line.line.eaten === undefined ? 1 : toNumber(line.line.eaten);
  if (eaten === 0) return { low: 0, high: 0 };
  const share = (grams: Span | null): Span | null => grams && { low: grams.low * eaten, high: grams.high * eaten };
  if (item.kind === "COMPONENT") {
    const component = components.get(item.component)?.component;
    const mass = component === undefined ? null : inDimension(line.amount, "MASS", component, form);
    return share(mass?.ok === true ? mass.amount : null);
  }
  const food = foods.get(item.food);
  // Nobody knows how much of drained water the food takes up.
  if (food === undefined || (drained && line.line.eaten === undefined && isWater(food))) return null;
  return share(gramsOf(line.amount, food, form));
}

/** What a meal weighs as it is put together; null unless every line can be weighed. Finishing steps are taken to lose nothing. */
function plateGrams({ meal, lines }: ScaledMeal, scaled: ScaledPlan): Span | null {
  const sum = { low: 0, high: 0 };
  const drained = meal.steps.some(({ drains }) => drains === true);
  for (const line of lines) {
    const grams = weight(line, scaled, drained);
    if (grams === null) return null;
    sum.low += grams.low;
    sum.high += grams.high;
  }
  return sum.low > 0 ? sum : null;
}

/** A part is not the whole: zest and juice have figures of their own, which the whole fruit's are not. */
const inputOf = ({ food, part, ...eaten }: EatenMeal["foods"][number]): NutritionInput => ({
  ...eaten,
  food: part === null ? food : { slug: food.slug, nutrients: partNutrients(food, part) },
});

/** Figures of one meal, or of several together. */
export interface NutritionOfMeals extends Nutrition {
  readonly mealCount: number;
}

/** Of a food, whose nutrients are added up for its meal and for the plan. */
const stepsOfInput = 4;

export interface PlanNutrition {
  readonly meals: readonly MealNutrition[];
  readonly plan: NutritionOfMeals;
}

interface MealNutrition {
  readonly meal: string;
  readonly nutrition: NutritionOfMeals;
}

/**
 * Nutrition of each meal and of one person's share of all meals together, from raw foods through the components, without what is
 * thrown or poured away. Water counts where it has figures and is passed over where it has none.
 *
 * @param servings that share each meal
 */
export const planNutrition = (scaled: ScaledPlan, servings: number): PlanNutrition =>
  runToEnd(nutritionInSlices(scaled, servings, unlimitedWork));

/** The same turn by turn. */
export function* nutritionInSlices(scaled: ScaledPlan, servings: number, work: Work): InSlices<PlanNutrition> {
  const eaten = yield* eatenInSlices(scaled, work);
  const counts = ({ food }: EatenMeal["foods"][number]): boolean => food.nutrients !== null || !isWater(food);
  const plates = scaled.meals.map((meal) => plateGrams(meal, scaled));
  const inputs: (readonly NutritionInput[])[] = [];
  for (const { foods } of eaten) {
    yield;
    inputs.push(foods.filter(counts).map(inputOf));
  }
  const whole = plates.reduce<Span | null>(
    (sum, plate) => (sum === null || plate === null ? null : { low: sum.low + plate.low, high: sum.high + plate.high }),
    { low: 0, high: 0 },
  );
  const meals: MealNutrition[] = [];
  for (const [at, { meal }] of eaten.entries()) {
    yield;
    const own = inputs[at] ?? [];
    work.step(2 * stepsOfInput * own.length);
    const found = yield* nutritionOfInSlices({ inputs: own, cookedGrams: plates[at] ?? null, servings });
    meals.push({ meal: meal.slug, nutrition: { ...found, mealCount: 1 } });
  }
  yield;
  return {
    meals,
    plan: {
      ...(yield* nutritionOfInSlices({
        inputs: inputs.flat(),
        cookedGrams: whole !== null && whole.low > 0 ? whole : null,
        servings,
      })),
      mealCount: eaten.length,
    },
  };
}
