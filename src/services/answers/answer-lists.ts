import type { Household } from "../../domain/model/household.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { scalePlansInSlices } from "../../domain/plan/scale-plan.js";
import type { ScaledPlan, ShoppingList } from "../../domain/plan/scaled.js";
import { shopInSlices } from "../../domain/plan/shop.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { failed, ok, type Result } from "../../domain/problem.js";
import { ofPortion } from "../../domain/plan/check/check-asked.js";
import { askedServings } from "./asked-servings.js";
import { checkPortionCount } from "./check-portion-count.js";
import type { Deps, RevisionRef } from "../deps.js";
import { rulesToday, type KnownRules } from "../rules/find-rules.js";
import { loadPlan } from "../plans/load-plan.js";
import { missingPlans } from "../plans/missing-plan.js";
import type { GivenHousehold } from "./read-household.js";
import { readHouseholdOf } from "./read-readers-household.js";
import { readToday } from "./scale-for-reader.js";
import { publisherReader, resolveRegion } from "./resolve-region.js";
import { holdPlans, runInSlices } from "../time-slices.js";
import { inStage } from "../answer-stage.js";
import { showFor } from "../../exports/words/shown-amount.js";

interface GivenPortion extends RevisionRef {
  /** null: `askedServings`. */
  readonly servings: number | null;
}

/** One list for several plans, and which revisions they are. */
export interface ListsAnswer {
  readonly plans: readonly { readonly bundle: PlanBundle; readonly revision: number; readonly servings: number }[];
  readonly list: ShoppingList;
  readonly reader: Reader;
}

/** The same with what it was computed from. */
export interface ComputedLists extends ListsAnswer {
  readonly household: Household;
  /** In the order of the plans. */
  readonly scaled: readonly ScaledPlan[];
  /** In force today. */
  readonly rules: KnownRules;
}

/** One shopping list for several plans, each at its own servings. Problems carry the index of their plan. */
export async function answerLists(
  deps: Deps,
  portions: readonly GivenPortion[],
  given: GivenHousehold,
): Promise<Result<ComputedLists>> {
  const tooMany = checkPortionCount(portions.length);
  if (tooMany.length > 0) return failed(tooMany);
  const loaded = await Promise.all(portions.map((portion) => loadPlan(deps, portion)));
  const plans = loaded.flatMap((published, at) =>
    published === null
      ? []
      : [
          {
            ...{ bundle: published.bundle, revision: published.revision },
            servings: askedServings(portions[at]?.servings, given, published.bundle.plan),
          },
        ],
  );
  const missing = portions.flatMap(({ publisher, slug, revision }, index) =>
    loaded[index] === null ? [{ ref: { publisher, slug, revision }, path: ["plans", index] }] : [],
  );
  const unknown = missing.length === 0 ? [] : await missingPlans(deps, missing);
  const bundles = plans.map(({ bundle }) => bundle);
  const rules = await rulesToday(deps);
  const places = portions.flatMap((_, at) => (loaded[at] === null ? [] : [at]));
  const read = await readHouseholdOf(deps, given, plans, rules.allergens.diets, (problem, at) =>
    ofPortion(problem, places[at] ?? at),
  );
  const wrong = [...unknown, ...(read.ok ? [] : read.problems)];
  const first = bundles[0];
  if (wrong.length > 0 || !read.ok || first === undefined) return failed(wrong);
  const household = await resolveRegion(read.value, bundles, rules, publisherReader(deps));
  const today = await readToday(deps, bundles, household, rules);
  holdPlans(deps, bundles);
  const scaled = await inStage(deps, "scale", () =>
    runInSlices(deps, (work) => scalePlansInSlices(plans, household, today, work)),
  );
  if (!scaled.ok) return scaled;
  const list = await inStage(deps, "shop", () =>
    runInSlices(deps, (work) => shopInSlices(scaled.value, household, today, work)),
  );
  const shown = plans.map((plan, at) => ({ ...plan, bundle: scaled.value[at]?.bundle ?? plan.bundle }));
  return ok({ plans: shown, list, reader: showFor(household, first.plan), household, scaled: scaled.value, rules });
}
