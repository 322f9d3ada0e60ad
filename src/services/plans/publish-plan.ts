import type { PlanBundle } from "../../domain/model/plan.js";
import { checkBundleInSlices } from "../../domain/plan/check/check-bundle.js";
import { stopping, type NamedFinding } from "../../domain/plan/check/finding.js";
import { failed, ok, type Result } from "../../domain/problem.js";
import { checkPublishedPlan } from "../drafts/check/check-plan.js";
import type { Deps, RevisionSummary } from "../deps.js";
import { rulesToday } from "../rules/find-rules.js";
import { findKeepingRules } from "../answers/guide-storage.js";
import { freezeImages } from "../images/freeze-images.js";
import { runInSlices } from "../time-slices.js";
import { noHousehold, publisherReader, resolveRegion } from "../answers/resolve-region.js";
import { saveFacts } from "./listing/save-facts.js";
import { inheritFacts } from "../foods/inherit-facts.js";

interface Published {
  readonly summary: RevisionSummary;
  /** false: the newest revision already said exactly this. */
  readonly created: boolean;
  /** What readers may complain about all the same; none of it stops publishing. */
  readonly findings: readonly NamedFinding[];
}

/** What is frozen of a plan: all that it says and refers to, with its pictures, and with what its foods inherit today. */
export async function frozenFrom(deps: Pick<Deps, "data">, written: PlanBundle): Promise<Result<PlanBundle>> {
  const pictured = await freezeImages(deps.data, written);
  if (!pictured.ok) return pictured;
  return ok({ ...pictured.value, foods: await inheritFacts(deps, written.foods) });
}

/**
 * Checks a plan with all it refers to, and with what its foods inherit from the open food table, against the published
 * rules of today and freezes it as the next revision. Nothing is stored if a check fails, if the plan cannot be computed
 * at its own servings, or if the writer's check finds what stops publishing, such as a claim that the foods contradict.
 */
export async function publishPlan(
  deps: Deps,
  written: PlanBundle,
  changeNote: string | null = null,
): Promise<Result<Published>> {
  const frozen = await frozenFrom(deps, written);
  return frozen.ok ? publishFrozen(deps, frozen.value, changeNote) : frozen;
}

/** The same of a plan as it is to be frozen. */
export async function publishFrozen(
  deps: Deps,
  bundle: PlanBundle,
  changeNote: string | null,
): Promise<Result<Published>> {
  const checked = await checkForPublishing(deps, bundle);
  if (!checked.ok) return checked;
  const { findings, ruleSet } = checked.value;
  const published = await deps.data.revisions.publish(bundle, deps.clock(), changeNote, ruleSet);
  if (published.created) await saveFacts(deps, { revisionId: published.summary.id, due: 1 }, bundle);
  const own = bundle.foods.filter(({ owner }) => owner !== undefined);
  if (own.length > 0) {
    await deps.data.publisherFoods.notePublished(bundle.plan.publisher, own);
    await deps.data.publisherPacks.notePublished(bundle.plan.publisher, own);
  }
  return ok({ ...published, findings });
}

interface Publishable {
  readonly findings: readonly NamedFinding[];
  /** Id of the rules that it was checked against. */
  readonly ruleSet: string;
}

/** All that may keep a plan, as it is to be frozen, from being published. */
export async function checkForPublishing(deps: Deps, bundle: PlanBundle): Promise<Result<Publishable>> {
  const problems = await runInSlices(deps, () => checkBundleInSlices(bundle));
  if (problems.length > 0) return failed(problems);
  const rules = await rulesToday(deps);
  const household = await resolveRegion(noHousehold, [bundle], rules, publisherReader(deps));
  const checked = await checkPublishedPlan(bundle, household, rules, deps, (date) => findKeepingRules(deps, date));
  if (!checked.ok) return checked;
  const stops = stopping(checked.value);
  return stops.length > 0 ? failed(stops) : ok({ findings: checked.value, ruleSet: rules.id });
}
