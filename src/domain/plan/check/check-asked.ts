import { limits } from "../../engine-limits.js";
import type { Household } from "../../model/household.js";
import type { PlanBundle } from "../../model/plan.js";
import type { Problem } from "../../problem.js";
import { unknownRoutes } from "../choose-routes.js";
import { checkHousehold } from "./check-household.js";

/** A plan and how many it is asked for; null: that is not known yet. */
export interface AskedPortion {
  readonly bundle: PlanBundle;
  readonly servings: number | null;
}

/** A problem of one of several plans, with the place of the plan; what is wrong with the household is wrong for all of them. */
export const ofPortion = (problem: Problem, at: number): Problem =>
  problem.path[0] === "household" ? problem : { ...problem, path: ["plans", at, ...problem.path] };

/** Everything that is wrong with what a reader asks of some plans, before anything is computed: each fault once, whichever plans it is one for. */
export function checkAsked(
  portions: readonly AskedPortion[],
  household: Household,
  placed: (problem: Problem, at: number) => Problem = (problem) => problem,
): readonly Problem[] {
  const servings = portions.flatMap(({ servings: value }, at) =>
    value === null || isServings(value)
      ? []
      : [placed({ code: "SERVINGS_OUT_OF_RANGE", path: ["servings"], value, min: 1, max: limits.servings }, at)],
  );
  // How many eat is held against each number of servings; all else is the same for all of them.
  const asked = new Set(portions.flatMap(({ servings: value }) => (value !== null && isServings(value) ? value : [])));
  const [first = null, ...others] = asked;
  const eaters = { ...noEntries(household), eaters: household.eaters };
  return once([
    ...servings,
    ...checkHousehold(first, household),
    ...others.flatMap((value) => checkHousehold(value, eaters)),
    ...portions.flatMap(({ bundle }) => unknownRoutes(bundle, household)),
  ]);
}

const isServings = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= limits.servings;

const noEntries = (household: Household): Household => ({
  ...household,
  onHand: [],
  session: null,
  kitchen: null,
});

function once(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length < 2) return problems;
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}
