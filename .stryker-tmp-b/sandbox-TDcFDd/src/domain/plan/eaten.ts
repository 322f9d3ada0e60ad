// @ts-nocheck
import { edibleShare } from "../component/edible.js";
import type { BaseAmount } from "../model/amount.js";
import type { Food } from "../model/food.js";
import type { Meal } from "../model/plan.js";
import { inDimension, toBase } from "../quantity/convert.js";
import { lineContext } from "./line-context.js";
import type { ScaledComponent, ScaledLine, ScaledPlan } from "./scaled.js";

/** Grams of a food's edible portion, raw, that are eaten of it; null where nobody can say how much. */
export interface EatenFood {
  readonly food: Food;
  readonly part: string | null;
  readonly optional: boolean;
  readonly grams: { readonly low: number; readonly high: number } | null;
}

export interface EatenMeal {
  readonly meal: Meal;
  /** Of all its servings together. One entry for each food and part, in no particular order. */
  readonly foods: readonly EatenFood[];
}

type Grams = EatenFood["grams"];

const plus = (a: Grams, b: Grams): Grams =>
  a === null || b === null ? null : { low: a.low + b.low, high: a.high + b.high };

/** Grams of a whole food's edible portion in an amount of it: what was weighed ready is eaten, of what was bought a share. */
function edibleGrams(amount: BaseAmount, line: ScaledLine, food: Food): Grams {
  const mass = inDimension(amount, "MASS", food, line.line.form);
  if (!mass.ok) return null;
  const { low, high } = mass.amount;
  // A food nobody gives an edible portion for is eaten as it is bought: flour, oil, lentils.
  const ready = line.line.measured === "READY" && amount.dimension !== "COUNT";
  const share = ready ? 1 : (edibleShare(food, line.line.form) ?? 1);
  return { low: low * share, high: high * share };
}

/** Grams of a part: by weight as it is, by the piece through what one piece gives. */
function partGrams(amount: BaseAmount, partName: string, food: Food): Grams {
  const mass = inDimension(amount, "MASS", food, partName);
  if (amount.dimension !== "COUNT") return mass.ok ? { low: mass.amount.low, high: mass.amount.high } : null;
  const part = food.parts.find(({ name }) => name === partName);
  const gives = part === undefined ? null : toBase(part.perPiece, food, partName);
  if (gives === null || !gives.ok) return null;
  const one = inDimension(gives.amount, "MASS", food, partName);
  return one.ok ? { low: one.amount.low * amount.low, high: one.amount.high * amount.high } : null;
}

function gramsOf(line: ScaledLine, food: Food, part: string | null): Grams {
  if (line.amount === null) return null;
  return part === null ? edibleGrams(line.amount, line, food) : partGrams(line.amount, part, food);
}

class Tally {
  private readonly byKey = new Map<string, EatenFood>();

  add({ food, part, optional, grams }: EatenFood): void {
    const key = JSON.stringify([food.slug, part]);
    const known = this.byKey.get(key);
    this.byKey.set(
      key,
      known === undefined
        ? { food, part, optional, grams }
        : { food, part, optional: known.optional && optional, grams: plus(known.grams, grams) },
    );
  }

  foods(): readonly EatenFood[] {
    return [...this.byKey.values()];
  }
}

/** What share of a component's batches an amount of it is. Both ends; null when none of it was made (all was on hand). */
function shareOf(amount: BaseAmount | null, made: BaseAmount): Grams {
  if (amount === null || !(made.low > 0)) return null;
  return { low: amount.low / made.high, high: amount.high / made.low };
}

const times = (grams: Grams, share: Grams): Grams =>
  grams === null || share === null ? null : { low: grams.low * share.low, high: grams.high * share.high };

/**
 * What the eaters of each meal eat, as raw food: through every component down to the foods, in the share of the
 * component that the meal takes. What is left over is not eaten. Foods without an amount are there all the same.
 */
export function eatenFoods(scaled: ScaledPlan): readonly EatenMeal[] {
  const { foods } = lineContext(scaled.bundle);
  const ofComponent = new Map<string, { scaled: ScaledComponent; foods: readonly EatenFood[] }>();
  const tally = (lines: readonly ScaledLine[]): readonly EatenFood[] => {
    const sum = new Tally();
    for (const line of lines) {
      const { item } = line;
      const { optional } = line.line;
      if (item.kind === "FOOD") {
        const food = foods.get(item.food);
        if (food !== undefined) sum.add({ food, part: item.part, optional, grams: gramsOf(line, food, item.part) });
        continue;
      }
      const taken = ofComponent.get(item.component);
      if (taken === undefined) continue;
      const share = shareOf(line.amount, taken.scaled.made);
      for (const each of taken.foods) {
        sum.add({ ...each, optional: optional || each.optional, grams: times(each.grams, share) });
      }
    }
    return sum.foods();
  };
  // Inputs come before what uses them, so every component a line takes is there already.
  for (const each of scaled.components) {
    ofComponent.set(each.component.slug, { scaled: each, foods: tally(each.lines) });
  }
  return scaled.meals.map(({ meal, lines }) => ({ meal, foods: tally(lines) }));
}
