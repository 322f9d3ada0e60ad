import { needDimension } from "../component/purchase-need.js";
import type { Component } from "../model/component.js";
import type { Food } from "../model/food.js";
import type { Meal } from "../model/plan.js";
import type { Warning } from "../problem.js";
import { inDimension, missingText } from "../quantity/convert.js";
import type { Contribution } from "../shopping/merge.js";
import type { FoodsToday } from "./review/foods-today.js";
import type { ScaledLine, ScaledPlan } from "./scaled.js";

/** Where a contribution to a shopping list comes from. */
export interface Source {
  readonly scaled: ScaledPlan;
  readonly meal: Meal | null;
  readonly component: Component | null;
  readonly line: ScaledLine;
}

/**
 * Everything a plan makes one buy, line by line, as it was frozen. What is always there is never bought.
 *
 * @param partKeeps whole days a part keeps once its piece is cut, until a meal at an hour
 */
export function contributionsOf(
  scaled: ScaledPlan,
  partKeeps: FoodsToday["partKeeps"],
): readonly Contribution<Source>[] {
  const found: Contribution<Source>[] = [];
  const keepsFor = (food: Food, name: string, meal: Meal | null): number | null => {
    const part = food.parts.find((each) => each.name === name);
    return part === undefined ? null : partKeeps(part, meal?.at);
  };
  const add = (lines: readonly ScaledLine[], meal: Meal | null, component: Component | null): void => {
    for (const line of lines) {
      const { need } = line;
      if (need === null || need.food.alwaysThere) continue;
      found.push({
        food: need.food,
        part: need.part,
        dimension: need.dimension,
        low: need.low,
        high: need.high,
        day: meal?.day ?? 0,
        keeps: need.part === null ? null : keepsFor(need.food, need.part, meal),
        open: line.line.extra || need.dimension === null,
        source: { scaled, meal, component, line },
      });
    }
  };
  for (const { meal, lines } of scaled.meals) add(lines, meal, null);
  for (const { component, lines, batches } of scaled.components) if (batches > 0) add(lines, null, component);
  return found;
}

export interface Restated {
  readonly contribution: Contribution<Source>;
  readonly warning: Warning | null;
}

/**
 * A contribution under the food it is shopped as today. Two revisions may have frozen a food when it was sold by the piece and
 * when by weight; where today's facts, or those of a publisher's own food, can turn one into the other, they go on one line.
 */
export function restated(contribution: Contribution<Source>, food: Food): Restated {
  const facts = contribution.food.owner === undefined ? food : contribution.food;
  const { dimension, low, high, source } = contribution;
  const wanted = needDimension(food);
  if (dimension === null || dimension === wanted) return { contribution: { ...contribution, food }, warning: null };
  const { line } = source.line;
  const converted = inDimension({ dimension, low, high }, wanted, facts, line.form);
  if (converted.ok) return { contribution: { ...contribution, food, ...converted.amount }, warning: null };
  const known = needDimension(contribution.food) !== dimension;
  const missing = missingText(converted.missing);
  return {
    contribution: { ...contribution, food },
    // Where its own plan could not combine it either, the plan has said so.
    warning: known ? null : { code: "NOT_COMBINED", path: ["foods", food.slug], food: food.slug, missing },
  };
}
