// @ts-nocheck
import { Fraction } from "fraction.js";
import type { Component } from "../../src/domain/model/component.js";
import type { Food } from "../../src/domain/model/food.js";
import type { Line } from "../../src/domain/model/line.js";
import type { Meal, PlanBundle } from "../../src/domain/model/plan.js";
import { asWritten, converted, exactly, zero, type Exact } from "./exact-amounts.js";

export interface ExactComponent {
  readonly slug: string;
  readonly batches: Fraction;
  readonly loads: number;
  readonly usedLow: Fraction;
  readonly usedHigh: Fraction;
  readonly madeLow: Fraction;
  readonly madeHigh: Fraction;
}

/** One line's amount in base units of what it is written in, and what it grew by. */
export interface ExactUse {
  readonly meal: Meal | null;
  readonly component: Component | null;
  readonly line: Line;
  readonly amount: Exact | null;
  readonly growth: Fraction;
}

export interface ExactPlan {
  readonly components: ReadonlyMap<string, ExactComponent>;
  readonly uses: readonly ExactUse[];
}

const nineDigits = exactly("0.000000001");

/** Next whole number; nine equal digits count as whole, as DESIGN.md lets computed amounts agree to 1e-9. */
export function wholeUp(value: Fraction, give: Fraction = value.abs().mul(nineDigits)): Fraction {
  const nearest = value.round();
  return value.sub(nearest).abs().compare(give) <= 0 ? nearest : value.ceil();
}

const raised = (base: Fraction, exponent: number): Fraction => exactly(base.valueOf() ** exponent);

/** Tries more and more loads (from as many as could not do), and in each the smallest lattice size that covers the demand. */
export function exactBatches(demand: Fraction, rule: Component["batch"]): { batches: Fraction; loads: number } {
  if (demand.compare(0) <= 0) return { batches: zero, loads: 0 };
  const min = exactly(rule.min);
  const step = rule.increment === null ? null : exactly(rule.increment);
  const tooFew = rule.max === null ? 0 : Math.max(0, demand.div(exactly(rule.max)).floor().valueOf() - 1);
  for (let loads = tooFew + 1; ; loads++) {
    const least = min.mul(loads);
    const above = demand.sub(least);
    const size =
      above.compare(0) <= 0
        ? least
        : step === null
          ? demand
          : least.add(step.mul(wholeUp(above.div(step), demand.div(step).mul(nineDigits))));
    if (rule.max === null) return { batches: size, loads };
    const room = exactly(rule.max).sub(min);
    const top = step === null ? min.add(room) : min.add(step.mul(room.div(step).floor()));
    if (size.compare(top.mul(loads).mul(exactly("1.000000001"))) <= 0) return { batches: size, loads };
  }
}

export function exactPlan(bundle: PlanBundle, servings: Fraction, onHand: ReadonlyMap<string, Fraction>): ExactPlan {
  const components = new Map(bundle.components.map((each) => [each.slug, each]));
  const foods = new Map<string, Food>(bundle.foods.map((each) => [each.slug, each]));

  const yieldOf = (component: Component): Exact => {
    const found = asWritten(component.yield.amount, component, null);
    if (found === null) throw new Error(`no yield: ${component.slug}`);
    return found;
  };

  const amountOf = (line: Line): Exact | null => {
    if (line.amount === null) return null;
    if (line.item.kind === "FOOD") return asWritten(line.amount, foods.get(line.item.food)!, null);
    const component = components.get(line.item.component)!;
    const perBatch = yieldOf(component);
    if (line.amount.unit === "batch") {
      const { dimension, low } = perBatch;
      return { dimension, low: low.mul(exactly(line.amount.low)), high: low.mul(exactly(line.amount.high)) };
    }
    const written = asWritten(line.amount, component, perBatch.dimension);
    return written === null ? null : converted(written, perBatch.dimension, component, line.form);
  };

  const mealGrowth = (meal: Meal, line: Line): Fraction => {
    const factor = servings.div(exactly(meal.serves));
    if (line.rule === "PROPORTIONAL") return factor;
    if (line.rule === "PER_BATCH") return new Fraction(1);
    return line.rule === "POWER" ? raised(factor, line.exponent!) : zero;
  };

  const batchGrowth = (component: Component, line: Line): Fraction => {
    const { batches } = computed(component.slug);
    if (line.rule === "PROPORTIONAL") return batches;
    if (line.rule === "PER_BATCH") return wholeUp(batches);
    return line.rule === "POWER" && batches.compare(0) > 0 ? raised(batches, line.exponent!) : zero;
  };

  const takes = (line: Line, slug: string): boolean => line.item.kind === "COMPONENT" && line.item.component === slug;

  const known = new Map<string, ExactComponent>();
  function computed(slug: string): ExactComponent {
    const before = known.get(slug);
    if (before !== undefined) return before;
    let [low, high] = [zero, zero];
    const add = (line: Line, growth: () => Fraction): void => {
      if (!takes(line, slug)) return;
      const amount = amountOf(line);
      if (amount === null) return;
      const by = growth();
      low = low.add(amount.low.mul(by));
      high = high.add(amount.high.mul(by));
    };
    for (const meal of bundle.plan.meals) for (const line of meal.lines) add(line, () => mealGrowth(meal, line));
    for (const user of bundle.components) for (const line of user.lines) add(line, () => batchGrowth(user, line));
    const component = components.get(slug)!;
    const perBatch = yieldOf(component);
    const have = onHand.get(slug) ?? zero;
    const usedHigh = high.compare(have) > 0 ? high.sub(have) : zero;
    const usedLow = low.compare(have) > 0 ? low.sub(have) : zero;
    const { batches, loads } = exactBatches(usedHigh.div(perBatch.low), component.batch);
    const madeLow = batches.mul(perBatch.low);
    const madeHigh = batches.mul(perBatch.high);
    const result = { slug, batches, loads, usedLow, usedHigh, madeLow, madeHigh };
    known.set(slug, result);
    return result;
  }

  const all = new Map(bundle.components.map(({ slug }) => [slug, computed(slug)]));
  const grown = (line: Line, growth: Fraction): Pick<ExactUse, "line" | "amount" | "growth"> => {
    const amount = amountOf(line);
    if (amount === null) return { line, amount, growth };
    return { line, growth, amount: { ...amount, low: amount.low.mul(growth), high: amount.high.mul(growth) } };
  };
  const uses: ExactUse[] = [
    ...bundle.plan.meals.flatMap((meal) =>
      meal.lines.map((line) => ({ meal, component: null, ...grown(line, mealGrowth(meal, line)) })),
    ),
    ...bundle.components.flatMap((component) =>
      component.lines.map((line) => ({ meal: null, component, ...grown(line, batchGrowth(component, line)) })),
    ),
  ];
  return { components: all, uses };
}
