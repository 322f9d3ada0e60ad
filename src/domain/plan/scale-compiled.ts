import { mealsBeforeSession } from "./session/late-meals.js";
import { limits, restOf } from "../engine-limits.js";
import type { BaseAmount } from "../model/amount.js";
import type { Household } from "../model/household.js";
import { unlimitedWork, type Work } from "../counted-work.js";
import { failed, ok, type Result, type Warning } from "../problem.js";
import type { CompiledComponent, CompiledLine, CompiledPlan } from "./compile/compiled-plan.js";
import { componentsNotInTime, componentsOnHand, type ComponentsOnHand } from "./components-on-hand.js";
import { batchGrowth, demandFor, mealGrowth, type Demand } from "./demand.js";
import { effectiveServings } from "./contents/eaters.js";
import { extraServings } from "./extra-servings.js";
import type { ScaledComponent, ScaledLine, ScaledMeal, ScaledPlan } from "./scaled.js";

/** A line grown so many times. */
export const grown = (line: CompiledLine, growth: number): ScaledLine => ({
  line: line.line,
  item: line.item,
  amount:
    line.dimension === null ? null : { dimension: line.dimension, low: line.low * growth, high: line.high * growth },
  inUnit:
    line.written === null
      ? null
      : { low: line.written.low * growth, high: line.written.high * growth, unit: line.written.unit },
  need: line.need === null ? null : { ...line.need, low: line.need.low * growth, high: line.need.high * growth },
});

function scaledComponent(compiled: CompiledComponent, index: number, demand: Demand): ScaledComponent {
  const { dimension, low, high } = compiled.yield;
  const batches = demand.batches[index]!;
  const onHand = demand.onHand[index]!;
  const of = (from: number, to: number): BaseAmount => ({ dimension, low: from, high: to });
  const used = of(restOf(demand.low[index]!, onHand), restOf(demand.high[index]!, onHand));
  const made = of(batches * low, Math.max(batches * high, used.high));
  return {
    component: compiled.component,
    route: compiled.route,
    batches,
    loads: demand.loads[index]!,
    made: of(Math.max(made.low, used.high), made.high),
    used,
    leftOver: of(restOf(made.low, used.high), restOf(made.high, used.low)),
    onHand: of(onHand, onHand),
    lines: compiled.lines.map((line) => grown(line, batchGrowth(line, batches))),
  };
}

/** Lines are grown once, and counted some twenty times to find what is left over. */
const stepsOf = ({ meals, components }: CompiledPlan, { onHand }: Household): number =>
  onHand.length +
  components.length +
  [...meals, ...components].reduce((sum, { lines, takes }) => sum + 2 * (lines.length + takes.length), 0);

function leftOverWarnings(
  plan: CompiledPlan,
  servings: number,
  stocks: ComponentsOnHand["stocks"],
  demand: Demand,
  components: readonly ScaledComponent[],
): Warning[] {
  const left = components.flatMap(({ leftOver, component: { slug } }, at) =>
    leftOver.low > 0 ? [{ slug, index: plan.makeOrder[at]! }] : [],
  );
  if (left.length === 0) return [];
  const indexes = left.map(({ index }) => index);
  const more = extraServings(plan, servings, stocks, demand, indexes);
  return left.map(({ slug, index }) => ({
    code: "LEFT_OVER",
    path: ["components", slug],
    component: slug,
    servingsMore: more.get(index) ?? null,
  }));
}

export interface ScaledWithRest {
  readonly scaled: ScaledPlan;
  /** Share of each entry of `household.onHand` that the plan's components leave. */
  readonly left: readonly number[];
}

/** Nothing on hand is taken yet. */
export const allLeft = ({ onHand }: Household): readonly number[] => onHand.map(() => 1);

function leftAfter(left: readonly number[], { stocks }: ComponentsOnHand, { taken }: Demand): readonly number[] {
  const after = [...left];
  for (const [index, stock] of stocks) {
    stock.forEach(({ amount, entry }, at) => {
      if (amount > 0) after[entry]! *= restOf(amount, taken.get(index)![at]!) / amount;
    });
  }
  return after;
}

/**
 * Scales a plan whose routes and swaps are chosen.
 *
 * @param left share of each entry of `household.onHand` that is still there
 * @param date ISO date of today: what is on hand is held against it where the household has no session
 * Problems: AMOUNT_OUT_OF_RANGE where a component would take more batches than anybody can make.
 */
export function scaleCompiled(
  plan: CompiledPlan,
  servings: number,
  household: Household,
  left: readonly number[],
  date: string | null,
  work: Work = unlimitedWork,
): Result<ScaledWithRest> {
  work.step(stepsOf(plan, household));
  const effective = effectiveServings(servings, household);
  const onHand = componentsOnHand(plan, household, left, date);
  const demand = demandFor(plan, effective, onHand.stocks);
  const tooMany = plan.makeOrder.find((index) => !(demand.batches[index]! <= limits.batches));
  if (tooMany !== undefined) {
    const slug = plan.components[tooMany]!.component.slug;
    const value = String(demand.batches[tooMany]);
    return failed([{ code: "AMOUNT_OUT_OF_RANGE", path: ["components", slug], value, min: 0, max: limits.batches }]);
  }
  const meals = plan.meals.map(({ meal, lines }): ScaledMeal => {
    const factor = effective / meal.serves;
    return { meal, factor, lines: lines.map((line) => grown(line, mealGrowth(line, factor))) };
  });
  const components = plan.makeOrder.map((index) => scaledComponent(plan.components[index]!, index, demand));
  const warnings = [
    ...plan.warnings,
    ...onHand.warnings,
    ...componentsNotInTime(plan, household, onHand, demand),
    ...mealsBeforeSession(plan, household),
    ...leftOverWarnings(plan, effective, onHand.stocks, demand, components),
  ];
  return ok({
    scaled: { bundle: plan.bundle, compiled: plan, servings, meals, components, warnings },
    left: leftAfter(left, onHand, demand),
  });
}
