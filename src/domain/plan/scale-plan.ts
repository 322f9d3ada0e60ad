import { limits, sameShare } from "../limits.js";
import type { BaseAmount } from "../model/amount.js";
import type { Household } from "../model/household.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Result, type Warning } from "../problem.js";
import { chooseRoutes, workOf, type Score } from "./choose-routes.js";
import type { CompiledComponent, CompiledLine, CompiledPlan } from "./compiled-plan.js";
import { batchGrowth, demandFor, mealGrowth, type Demand } from "./demand.js";
import { effectiveServings } from "./eaters.js";
import { servingsMore } from "./left-over.js";
import { componentsOnHand } from "./components-on-hand.js";
import { checkHousehold } from "./check-household.js";
import { moneyParts } from "../shopping/money.js";
import { asFrozen, type FoodsToday } from "./foods-today.js";
import { shop } from "./shop.js";
import type { ScaledComponent, ScaledLine, ScaledMeal, ScaledPlan } from "./scaled.js";

const grown = (line: CompiledLine, growth: number): ScaledLine => ({
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

/** made - used, in which the last digits of a double are nothing rather than a crumb. */
const rest = (made: number, used: number): number => (made - used <= made * sameShare ? 0 : made - used);

function scaledComponent(compiled: CompiledComponent, index: number, demand: Demand): ScaledComponent {
  const { dimension, low, high } = compiled.yield;
  const batches = demand.batches[index]!;
  const onHand = demand.onHand[index]!;
  const of = (from: number, to: number): BaseAmount => ({ dimension, low: from, high: to });
  const used = of(Math.max(0, demand.low[index]! - onHand), demand.high[index]! - onHand);
  const made = of(batches * low, Math.max(batches * high, used.high));
  return {
    component: compiled.component,
    route: compiled.route,
    batches,
    loads: demand.loads[index]!,
    made: of(Math.max(made.low, used.high), made.high),
    used,
    leftOver: of(rest(made.low, used.high), rest(made.high, used.low)),
    onHand: of(onHand, onHand),
    lines: compiled.lines.map((line) => grown(line, batchGrowth(line, batches))),
  };
}

function leftOverWarnings(
  plan: CompiledPlan,
  servings: number,
  onHand: Float64Array | null,
  components: readonly ScaledComponent[],
): Warning[] {
  return components.flatMap((scaled, at): Warning[] => {
    if (scaled.leftOver.low === 0) return [];
    const index = plan.makeOrder[at]!;
    const { slug } = scaled.component;
    const more = servingsMore(plan, servings, onHand, index, scaled.batches);
    return [{ code: "LEFT_OVER", path: ["components", slug], component: slug, servingsMore: more }];
  });
}

/**
 * Scales a plan for one household: meals, batches, left-overs, unrounded. Answers are values in base units; rounding and words
 * are for whoever shows them.
 *
 * @param servings how many eat each meal: a whole number from 1 to limits.servings
 * Problems: SERVINGS_OUT_OF_RANGE, BAD_HOUSEHOLD, UNKNOWN_ROUTE, and all of `checkBundle`.
 */
export function scalePlan(
  bundle: PlanBundle,
  servings: number,
  household: Household,
  today: FoodsToday = asFrozen,
): Result<ScaledPlan> {
  if (!Number.isInteger(servings) || servings < 1 || servings > limits.servings) {
    return failed([
      { code: "SERVINGS_OUT_OF_RANGE", path: ["servings"], value: servings, min: 1, max: limits.servings },
    ]);
  }
  const unfit = checkHousehold(servings, household);
  if (unfit.length > 0) return failed(unfit);
  const chosen = chooseRoutes(bundle, household, scoreBy(servings, household, today));
  return chosen.ok ? scaleCompiled(chosen.value, servings, household) : chosen;
}

/** What makes one choice of routes better than another; null where the plan is taken as written. */
function scoreBy(servings: number, household: Household, today: FoodsToday): ((plan: CompiledPlan) => Score) | null {
  const { mode } = household.routes;
  if (mode === "AS_WRITTEN") return null;
  return (plan) => {
    const scaled = scaleCompiled(plan, servings, household);
    if (!scaled.ok) return [Infinity];
    if (mode === "LEAST_WORK") return workOf(scaled.value);
    const { atTill, unpriced } = shop([scaled.value], household, today).cost;
    // A price nobody knows is not a low price: fewer of those first, then the till.
    return [unpriced.length, atTill === null ? 0 : (moneyParts(atTill.amount) ?? 0)];
  };
}

/** The same for a plan whose routes and swaps are chosen. */
export function scaleCompiled(plan: CompiledPlan, servings: number, household: Household): Result<ScaledPlan> {
  const effective = effectiveServings(servings, household);
  const stock = componentsOnHand(plan, household);
  const demand = demandFor(plan, effective, stock.amounts);
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
    ...stock.warnings,
    ...leftOverWarnings(plan, effective, stock.amounts, components),
  ];
  return ok({ bundle: plan.bundle, servings, meals, components, warnings });
}
