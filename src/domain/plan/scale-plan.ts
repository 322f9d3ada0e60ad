import type { Food } from "../model/food.js";
import type { Household } from "../model/household.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Problem, type Result } from "../problem.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import { moneyParts } from "../shopping/money.js";
import { checkAsked, ofPortion } from "./check/check-asked.js";
import { chooseRoutesInSlices, type Score } from "./choose-routes.js";
import type { CompiledPlan } from "./compile/compiled-plan.js";
import { inLanguage } from "./translate/in-language.js";
import { mergeCurrentFacts } from "./review/merge-current-facts.js";
import { asFrozen, type FoodsToday } from "./review/foods-today.js";
import { allLeft, scaleCompiled, type ScaledWithRest } from "./scale-compiled.js";
import type { ScaledPlan } from "./scaled.js";
import { sharedSlug } from "../shopping/shopped-as.js";
import { shopInSlices } from "./shop.js";
import { workOf } from "./session/work-of.js";

/** A plan and how many it is cooked for. */
interface PlanPortion {
  readonly bundle: PlanBundle;
  readonly servings: number;
}

/** What makes one choice of routes better than another; null where the plan is taken as written. */
function scoreBy(
  servings: number,
  household: Household,
  today: FoodsToday,
  left: readonly number[],
  work: Work,
): ((plan: CompiledPlan) => InSlices<Score>) | null {
  const { mode } = household.routes;
  if (mode === "AS_WRITTEN") return null;
  return function* (plan) {
    const result = scaleCompiled(plan, servings, household, left, today.date, work);
    if (!result.ok) return [Infinity];
    const { scaled } = result.value;
    if (mode === "LEAST_WORK") return workOf(scaled);
    const { atTill, unpriced } = (yield* shopInSlices([scaled], household, today, work)).cost;
    // A price nobody knows is not a low price: fewer of those first, then the till.
    return [unpriced.length, atTill === null ? 0 : (moneyParts(atTill.amount) ?? 0)];
  };
}

/** The household with what it does not like as the plan's own foods: its publisher may have a name of its own for the same food. */
function dislikedHere({ foods }: PlanBundle, household: Household, { canonical }: FoodsToday): Household {
  if (household.dislikes.length === 0) return household;
  const disliked = new Set(household.dislikes.map(canonical));
  const isDisliked = (food: Food): boolean => {
    const shared = sharedSlug(food);
    return household.dislikes.includes(food.slug) || (shared !== null && disliked.has(canonical(shared)));
  };
  return { ...household, dislikes: foods.filter(isDisliked).map(({ slug }) => slug) };
}

function* scaleOne(
  { bundle: frozen, servings }: PlanPortion,
  household: Household,
  today: FoodsToday,
  left: readonly number[],
  work: Work,
): InSlices<Result<ScaledWithRest>> {
  const unfit = checkAsked([{ bundle: frozen, servings }], household);
  if (unfit.length > 0) return failed(unfit);
  const bundle = inLanguage(mergeCurrentFacts(frozen, today), household.locale);
  const score = scoreBy(servings, household, today, left, work);
  const wishes = dislikedHere(bundle, household, today);
  const chosen = yield* chooseRoutesInSlices(bundle, wishes, score, today.fitsDiet, work);
  yield;
  return chosen.ok ? scaleCompiled(chosen.value, servings, household, left, today.date, work) : chosen;
}

/**
 * Scales a plan for one household: meals, batches, left-overs, unrounded. Answers are values in base units; rounding and words
 * are for whoever shows them. What is said today of the allergens and diets of its foods counts beside what the plan froze.
 *
 * @param servings how many eat each meal: a whole number from 1 to limits.servings
 * Problems: SERVINGS_OUT_OF_RANGE, BAD_HOUSEHOLD, UNKNOWN_ROUTE, AMOUNT_OUT_OF_RANGE, and all of `checkBundle`.
 */
export const scalePlan = (
  bundle: PlanBundle,
  servings: number,
  household: Household,
  today: FoodsToday = asFrozen,
): Result<ScaledPlan> => runToEnd(scalePlanInSlices(bundle, servings, household, today, unlimitedWork));

/** The same turn by turn. */
export function* scalePlanInSlices(
  bundle: PlanBundle,
  servings: number,
  household: Household,
  today: FoodsToday,
  work: Work,
): InSlices<Result<ScaledPlan>> {
  const result = yield* scaleOne({ bundle, servings }, household, today, allLeft(household), work);
  return result.ok ? ok(result.value.scaled) : result;
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Whose turn it is to take from what is on hand, whatever order a reader names the plans in. */
const inTurn = (a: PlanPortion, b: PlanPortion): number =>
  compare(a.bundle.plan.publisher, b.bundle.plan.publisher) ||
  compare(a.bundle.plan.slug, b.bundle.plan.slug) ||
  a.servings - b.servings;

/**
 * Scales several plans for one household, for one list: what one plan takes of a component on hand is not there for the next.
 * Answers come in the order asked; problems of one plan carry its index: `["plans", 2, "servings"]`.
 */
export const scalePlans = (
  portions: readonly PlanPortion[],
  household: Household,
  today: FoodsToday = asFrozen,
): Result<readonly ScaledPlan[]> => runToEnd(scalePlansInSlices(portions, household, today, unlimitedWork));

/** The same turn by turn. */
export function* scalePlansInSlices(
  portions: readonly PlanPortion[],
  household: Household,
  today: FoodsToday,
  work: Work,
): InSlices<Result<readonly ScaledPlan[]>> {
  const unfit = checkAsked(portions, household, ofPortion);
  if (unfit.length > 0) return failed(unfit);
  const problems: Problem[] = [];
  const scaled: ScaledPlan[] = [];
  let left = allLeft(household);
  const turns = portions.map((portion, at) => ({ portion, at })).toSorted((a, b) => inTurn(a.portion, b.portion));
  for (const { portion, at } of turns) {
    yield;
    const result = yield* scaleOne(portion, household, today, left, work);
    if (!result.ok) {
      problems.push(...result.problems.map((problem) => ofPortion(problem, at)));
      continue;
    }
    scaled[at] = result.value.scaled;
    left = result.value.left;
  }
  return problems.length > 0 ? failed(problems) : ok(scaled.map((each) => neededSomewhere(each, portions)));
}

/** A component on hand that one plan does not use is no news where another of them does. */
function neededSomewhere(scaled: ScaledPlan, portions: readonly PlanPortion[]): ScaledPlan {
  const known = new Set(portions.flatMap(({ bundle }) => bundle.components.map(({ slug }) => slug)));
  const warnings = scaled.warnings.filter((each) => each.code !== "ON_HAND_NOT_NEEDED" || !known.has(each.item));
  return { ...scaled, warnings };
}
