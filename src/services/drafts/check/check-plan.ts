import type { Household } from "../../../domain/model/household.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import { dietStatementsInSlices } from "../../../domain/nutrition/diets.js";
import { checkPlan, type PlanToCheck } from "../../../domain/plan/check/check-plan.js";
import type { NamedFinding } from "../../../domain/plan/check/finding.js";
import { foodsEaten } from "../../../domain/plan/contents/foods-eaten.js";
import type { RuleSet } from "../../../domain/plan/compile/rule-set.js";
import { asFrozen } from "../../../domain/plan/review/foods-today.js";
import { scalePlanInSlices } from "../../../domain/plan/scale-plan.js";
import { failed, ok, type Result } from "../../../domain/problem.js";
import { temperatureUnit } from "../../../domain/quantity/temperature.js";
import { findingNames } from "../../../exports/words/finding-names.js";
import type { Deps } from "../../deps.js";
import { guideStorage, type RuleReader } from "../../answers/guide-storage.js";
import { runInSlices } from "../../time-slices.js";
import { prepSessionInSlices } from "../../answers/plan-prep-session.js";
import { findCautionsInSlices } from "../../answers/state-contents.js";
import { utcDay } from "../../../domain/utc-day.js";

/**
 * The writer's check of a plan at its own servings, by the rules of the household's region. Fails where it cannot be computed at
 * all.
 */
export async function checkPublishedPlan(
  bundle: PlanBundle,
  household: Household,
  rules: RuleSet,
  deps: Pick<Deps, "clock" | "work">,
  readRules: RuleReader,
): Promise<Result<readonly NamedFinding[]>> {
  const { clock } = deps;
  const servings = Math.max(1, Math.round(bundle.plan.serves));
  const scaled = await runInSlices(deps, (work) => scalePlanInSlices(bundle, servings, household, asFrozen, work));
  if (!scaled.ok) return scaled;
  const session = await runInSlices(deps, (work) => prepSessionInSlices(scaled.value, household, rules, work));
  if (!session.ok) return failed(session.problems);
  const eaten = foodsEaten(scaled.value.compiled).plan;
  const diets = await runInSlices(deps, (work) =>
    dietStatementsInSlices(eaten, rules.allergens, household.region, work),
  );
  const known: PlanToCheck = {
    scaled: scaled.value,
    storage: await guideStorage(scaled.value, household, deps, readRules),
    cautions: await runInSlices(deps, (work) => findCautionsInSlices(scaled.value, household, rules, work)),
    session: session.value,
    diets,
    rules: rules.safety,
    today: utcDay(clock()),
  };
  const names = findingNames(bundle);
  const degrees = temperatureUnit(household.region);
  return ok(checkPlan(known).map((finding) => ({ ...finding, names, degrees })));
}
