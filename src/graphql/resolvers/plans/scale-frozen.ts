import { scalePlanInSlices } from "../../../domain/plan/scale-plan.js";
import { ok, type Result } from "../../../domain/problem.js";
import { showFor } from "../../../exports/words/shown-amount.js";
import { inStage } from "../../../services/answer-stage.js";
import { askedServings } from "../../../services/answers/asked-servings.js";
import { guideStorage } from "../../../services/answers/guide-storage.js";
import type { GivenHousehold } from "../../../services/answers/read-household.js";
import { stateNutritionInSlices } from "../../../services/answers/state-contents.js";
import type { Deps } from "../../../services/deps.js";
import { holdPlans, runInSlices } from "../../../services/time-slices.js";
import { frozenInLanguage, type FrozenPlan } from "../../frozen-plan.js";
import type { Loaders } from "../../loaders.js";
import type { ScaledPlanParent } from "../../parent-types.js";
import { readersSide } from "./readers-side.js";

/** A plan computed for one household. Problems: all that is wrong with what is asked. */
export async function scaleFrozen(
  deps: Deps,
  loaders: Loaders,
  written: FrozenPlan,
  asked: number | null | undefined,
  given: GivenHousehold,
): Promise<Result<ScaledPlanParent>> {
  const { bundle } = written;
  const servings = askedServings(asked, given, bundle.plan);
  const side = await readersSide(deps, loaders, [{ bundle, servings }], given);
  if (!side.ok) return side;
  const { household, rules, today } = side.value;
  holdPlans(deps, [bundle]);
  const computed = await inStage(deps, "scale", () =>
    // Many aliases get here at once, when what they all wait for has been read.
    runInSlices(deps, (work) => scalePlanInSlices(bundle, servings, household, today, work)),
  );
  if (!computed.ok) return computed;
  const scaled = computed.value;
  return ok({
    scaled,
    household,
    frozen: frozenInLanguage(written, household.locale),
    show: showFor(household, bundle.plan),
    today,
    keeping: once(() => guideStorage(scaled, household, deps, loaders.readRules)),
    rules,
    nutrition: once(() => runInSlices(deps, (work) => stateNutritionInSlices(scaled, household, work))),
  });
}

/** Computed when first asked for, and once. */
function once<T>(compute: () => T): () => T {
  let known: { readonly value: T } | undefined;
  return () => (known ??= { value: compute() }).value;
}
