import type { Household } from "../../domain/model/household.js";
import type { AskedPortion } from "../../domain/plan/check/check-asked.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { FoodsToday } from "../../domain/plan/review/foods-today.js";
import type { Publication, Reader } from "../../domain/plan/plan-answer.js";
import { scalePlanInSlices } from "../../domain/plan/scale-plan.js";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import { ok, type Problem, type Result } from "../../domain/problem.js";
import type { Deps, PublishedRevision, RevisionRef } from "../deps.js";
import { findFoods } from "../foods/find-foods.js";
import { rulesToday, type KnownRules } from "../rules/find-rules.js";
import { findSynonyms, foodsToday } from "../foods/foods-today.js";
import { askedServings } from "./asked-servings.js";
import { findKeepingRules, keepingQuestion } from "./guide-storage.js";
import { findPlans } from "../plans/find-plans.js";
import { loadPlan } from "../plans/load-plan.js";
import type { GivenHousehold } from "./read-household.js";
import { readHouseholdOf } from "./read-readers-household.js";
import { publisherReader, resolveRegion } from "./resolve-region.js";
import { showFor } from "../../exports/words/shown-amount.js";
import { runInSlices } from "../time-slices.js";
import { inStage } from "../answer-stage.js";

/** A household, and for how many; `servings` null: `askedServings`. */
export interface Asked {
  readonly servings: number | null;
  readonly household: GivenHousehold;
}

/** A published plan scaled for one household, and what everything else about it is computed from. */
export interface ScaledForReader {
  readonly publication: Publication;
  readonly household: Household;
  readonly reader: Reader;
  /** In force today. */
  readonly rules: KnownRules;
  readonly today: FoodsToday;
  readonly scaled: ScaledPlan;
}

/** Reads what is known today of the foods of some plans and of what is on hand. */
export const readToday = (
  deps: Deps,
  bundles: readonly PlanBundle[],
  household: Household,
  { allergens }: KnownRules,
): Promise<FoodsToday> =>
  inStage(deps, "gather", () =>
    foodsToday(bundles, household, allergens.diets, deps.clock, {
      readFoods: (slugs) => findFoods(deps, slugs),
      readSynonyms: (slugs) => findSynonyms(deps, slugs),
      readQuestion: () => keepingQuestion(household, deps.clock, (date) => findKeepingRules(deps, date)),
    }),
  );

/** A household as a plan is computed for it, with the rules in force and the foods as known today. Problems: those of `readReadersHousehold`. */
export async function readAskedHousehold(
  deps: Deps,
  portion: AskedPortion,
  given: GivenHousehold,
): Promise<Result<Pick<ScaledForReader, "household" | "rules" | "today">>> {
  const rules = await rulesToday(deps);
  const bundles = [portion.bundle];
  const read = await readHouseholdOf(deps, given, [portion], rules.allergens.diets);
  if (!read.ok) return read;
  const household = await resolveRegion(read.value, bundles, rules, publisherReader(deps));
  return ok({ household, rules, today: await readToday(deps, bundles, household, rules) });
}

/** Problems: those of `readHousehold` and of `scalePlan`. */
export async function scaleForReader(
  deps: Deps,
  published: PublishedRevision,
  asked: Asked,
): Promise<Result<ScaledForReader>> {
  const { bundle } = published;
  const servings = askedServings(asked.servings, asked.household, bundle.plan);
  const read = await readAskedHousehold(deps, { bundle, servings }, asked.household);
  if (!read.ok) return read;
  const { household, rules, today } = read.value;
  const scaled = await inStage(deps, "scale", () =>
    runInSlices(deps, (work) => scalePlanInSlices(bundle, servings, household, today, work)),
  );
  if (!scaled.ok) return scaled;
  return ok({
    publication: await publicationOf(deps, published),
    household,
    reader: showFor(household, bundle.plan),
    rules,
    today,
    scaled: scaled.value,
  });
}

/** What is wrong with what is asked of this plan, without computing anything; nothing where there is no such plan. */
export async function householdProblems(
  deps: Deps,
  ref: RevisionRef,
  { servings, household }: Asked,
): Promise<readonly Problem[]> {
  const published = await loadPlan(deps, ref);
  if (published === null) return [];
  const { diets } = (await rulesToday(deps)).allergens;
  const read = await readHouseholdOf(deps, household, [{ bundle: published.bundle, servings }], diets);
  return read.ok ? [] : read.problems;
}

/** Which revision it is, and whose. */
export async function publicationOf(deps: Deps, published: PublishedRevision): Promise<Publication> {
  const [publisher] = await deps.data.publishers.bySlugs([published.publisher]);
  if (!publisher) throw new Error(`revision ${published.id} has no publisher`);
  const { slug, revision, publishedAt, withdrawnAt, withdrawnBecause, changeNote, checksum } = published;
  const of = { publisher: published.publisher, slug };
  const [first, newest] = await findPlans(deps, [
    { ...of, revision: 1 },
    { ...of, revision: null },
  ]);
  return {
    publisher: { slug: publisher.slug, name: publisher.name },
    slug,
    revision,
    // Of a draft that is previewed nothing may be published yet.
    planId: (first ?? published).id,
    firstPublishedAt: (first ?? published).publishedAt,
    updatedAt: newest?.publishedAt ?? withdrawnAt ?? publishedAt,
    publishedAt,
    withdrawnAt,
    withdrawnBecause,
    changeNote,
    checksum,
  };
}
