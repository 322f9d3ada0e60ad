import type { PlacedFinding } from "../../../domain/plan/check/finding.js";
import { checkBundleInSlices } from "../../../domain/plan/check/check-bundle.js";
import { ok, type Problem, type Result } from "../../../domain/problem.js";
import { requireScope, type Actor } from "../../access/actor.js";
import { checkPublishedPlan } from "./check-plan.js";
import type { Deps, OwnedSlug } from "../../deps.js";
import { listsOfToday } from "../load-references.js";
import { gatherPlan, placesIn, unknownCodesIn, type GatheredPlan } from "../../plans/gather-plan.js";
import { rulesToday } from "../../rules/find-rules.js";
import { findKeepingRules } from "../../answers/guide-storage.js";
import { runInSlices } from "../../time-slices.js";
import { readRegion } from "../../answers/read-region.js";
import { noHousehold, publisherReader, resolveRegion } from "../../answers/resolve-region.js";

/** What publishing a draft now would meet. */
export interface DraftCheck {
  readonly version: number;
  /** Why it cannot be computed. Then nothing is found yet. */
  readonly problems: readonly Problem[];
  readonly findings: readonly PlacedFinding[];
}

/**
 * The writer's check of a draft plan with its component drafts and the foods of today; null: there is none. By the rules
 * of a region (`region`), or else of the plan or its publisher. @throws NotAllowed
 */
export async function checkDraft(
  deps: Deps,
  actor: Actor,
  name: OwnedSlug,
  region: string | null = null,
): Promise<Result<DraftCheck | null>> {
  requireScope(actor, "READ_DRAFTS", name.publisher);
  const asked = readRegion(region, ["region"]);
  if (!asked.ok) return asked;
  const gathered = await gatherPlan(deps.data, name);
  return ok(gathered === null ? null : await checkGathered(deps, gathered, asked.value));
}

/** The same of a draft that is gathered already. */
export async function checkGathered(deps: Deps, gathered: GatheredPlan, region: string | null): Promise<DraftCheck> {
  const { draft, bundle } = gathered;
  const places = await placesIn(deps, gathered);
  const refused = (problems: readonly Problem[]): DraftCheck => ({
    version: draft.version,
    problems: problems.map(places.problem),
    findings: [],
  });
  const unknown = await unknownCodesIn(deps, gathered, await listsOfToday(deps, []));
  // These have their places already.
  if (unknown.length > 0) return { version: draft.version, problems: unknown, findings: [] };
  const problems = await runInSlices(deps, () => checkBundleInSlices(bundle));
  if (problems.length > 0) return refused(problems);
  const rules = await rulesToday(deps);
  const household = await resolveRegion({ ...noHousehold, region }, [bundle], rules, publisherReader(deps));
  const checked = await checkPublishedPlan(bundle, household, rules, deps, (date) => findKeepingRules(deps, date));
  return checked.ok
    ? { version: draft.version, problems: [], findings: checked.value.map(places.finding) }
    : refused(checked.problems);
}
