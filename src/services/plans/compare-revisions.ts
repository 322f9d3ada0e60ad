import { noHousehold } from "../../domain/model/household.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { comparePlans, type PlanDifference } from "../../domain/plan/review/compare-plans.js";
import type { ComputedPlan } from "../../domain/plan/compile/plan-facts.js";
import { asFrozen } from "../../domain/plan/review/foods-today.js";
import { scalePlanInSlices } from "../../domain/plan/scale-plan.js";
import { shopInSlices } from "../../domain/plan/shop.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { requireScope, type Actor } from "../access/actor.js";
import type { Deps, OwnedSlug } from "../deps.js";
import { rulesToday } from "../rules/find-rules.js";
import { gatherPlan, placesIn } from "./gather-plan.js";
import { findKeepingRules, guideStorage } from "../answers/guide-storage.js";
import { loadPlan } from "./load-plan.js";
import { runInSlices } from "../time-slices.js";
import { publisherReader, resolveRegion } from "../answers/resolve-region.js";
import { stateContentsInSlices } from "../answers/state-contents.js";

/** Which two states: revisions by number. `from` null: the newest in force; `to` null: the draft. */
interface Compared extends OwnedSlug {
  readonly from: number | null;
  readonly to: number | null;
}

/**
 * What changes for readers between two revisions of a plan, or from one to the draft, which the actor must be allowed to
 * read. Both are computed at their own servings by the rules of today. @throws NotAllowed
 */
export async function compareRevisions(
  deps: Deps,
  actor: Actor,
  { publisher, slug, from, to }: Compared,
): Promise<Result<readonly PlanDifference[]>> {
  if (to === null) requireScope(actor, "READ_DRAFTS", publisher);
  const before = await revisionOf(deps, { publisher, slug }, from, ["from"]);
  const after =
    to === null ? await draftOf(deps, { publisher, slug }) : await revisionOf(deps, { publisher, slug }, to, ["to"]);
  if (before.ok && after.ok) return ok(comparePlans(before.value, after.value));
  return failed([before, after].flatMap((read): readonly Problem[] => (read.ok ? [] : read.problems)));
}

async function revisionOf(
  deps: Deps,
  { publisher, slug }: OwnedSlug,
  revision: number | null,
  path: Path,
): Promise<Result<ComputedPlan>> {
  const found = await loadPlan(deps, { publisher, slug, revision });
  if (found === null) return failed([{ code: "UNKNOWN_PLAN", path, publisher, plan: slug, revision }]);
  return computePlan(deps, found.bundle);
}

async function draftOf(deps: Deps, name: OwnedSlug): Promise<Result<ComputedPlan>> {
  const gathered = await gatherPlan(deps.data, name);
  if (gathered === null) return failed([{ code: "UNKNOWN_DRAFT", path: ["slug"], draft: "PLAN", slug: name.slug }]);
  const draft = await computePlan(deps, gathered.bundle);
  return draft.ok ? draft : failed(draft.problems.map((await placesIn(deps, gathered)).problem));
}

/** A plan at its own servings, by the rules of today, for a reader who gives no region. */
export async function computePlan(deps: Deps, bundle: PlanBundle): Promise<Result<ComputedPlan>> {
  const rules = await rulesToday(deps);
  const household = await resolveRegion(noHousehold, [bundle], rules, publisherReader(deps));
  const scaled = await runInSlices(deps, (work) =>
    scalePlanInSlices(bundle, bundle.plan.serves, household, asFrozen, work),
  );
  if (!scaled.ok) return scaled;
  return ok({
    scaled: scaled.value,
    list: await runInSlices(deps, (work) => shopInSlices([scaled.value], household, asFrozen, work)),
    storage: await guideStorage(scaled.value, household, deps, (date) => findKeepingRules(deps, date)),
    contents: await runInSlices(deps, (work) =>
      stateContentsInSlices(scaled.value, household, rules, deps.clock, work),
    ),
  });
}
