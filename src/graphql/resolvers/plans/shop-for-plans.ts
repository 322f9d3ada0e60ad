import { ofPortion } from "../../../domain/plan/check/check-asked.js";
import { scalePlansInSlices } from "../../../domain/plan/scale-plan.js";
import { shopInSlices } from "../../../domain/plan/shop.js";
import { failed, ok, type Result } from "../../../domain/problem.js";
import { showFor } from "../../../exports/words/shown-amount.js";
import { inStage } from "../../../services/answer-stage.js";
import { askedServings } from "../../../services/answers/asked-servings.js";
import { checkPortionCount } from "../../../services/answers/check-portion-count.js";
import type { GivenHousehold } from "../../../services/answers/read-household.js";
import type { Deps } from "../../../services/deps.js";
import { missingPlans } from "../../../services/plans/missing-plan.js";
import { holdPlans, runInSlices } from "../../../services/time-slices.js";
import { frozenInLanguage } from "../../frozen-plan.js";
import type { PlanPortionInput } from "../../generated/resolver-types.js";
import type { Loaders } from "../../loaders.js";
import type { ShoppingListParent } from "../../parent-types.js";
import { readersSide } from "./readers-side.js";

/** One list for several plans. Problems: all that is wrong with the plans, their servings and the household. */
export async function shopForPlans(
  deps: Deps,
  loaders: Loaders,
  plans: readonly PlanPortionInput[],
  given: GivenHousehold,
): Promise<Result<ShoppingListParent>> {
  const tooMany = checkPortionCount(plans.length);
  if (tooMany.length > 0) return failed(tooMany);
  const refs = plans.map(({ publisher, slug, revision = null, servings }) => ({
    ref: { publisher, slug, revision },
    servings,
  }));
  const loaded = await Promise.all(
    refs.map(async ({ ref }) => {
      const published = await loaders.plans.load(ref);
      return published && loaders.frozen(published);
    }),
  );
  const found = loaded.flatMap((frozen, place) =>
    frozen === null
      ? []
      : [
          {
            ...{ frozen, bundle: frozen.bundle, place },
            servings: askedServings(refs[place]?.servings, given, frozen.bundle.plan),
          },
        ],
  );
  const missing = refs.flatMap(({ ref }, index) => (loaded[index] === null ? [{ ref, path: ["plans", index] }] : []));
  const unknown = missing.length === 0 ? [] : await missingPlans(deps, missing);
  const side = await readersSide(deps, loaders, found, given, (problem, at) =>
    ofPortion(problem, found[at]?.place ?? at),
  );
  const [first] = found;
  if (unknown.length > 0 || !side.ok || first === undefined)
    return failed([...unknown, ...(side.ok ? [] : side.problems)]);
  const { household, today } = side.value;
  holdPlans(
    deps,
    found.map(({ bundle }) => bundle),
  );
  const scaled = await inStage(deps, "scale", () =>
    runInSlices(deps, (work) => scalePlansInSlices(found, household, today, work)),
  );
  if (!scaled.ok) return scaled;
  const list = await inStage(deps, "shop", () =>
    runInSlices(deps, (work) => shopInSlices(scaled.value, household, today, work)),
  );
  return ok({
    list,
    plans: found.map(({ frozen }) => frozenInLanguage(frozen, household.locale)),
    show: showFor(household, first.bundle.plan),
  });
}
