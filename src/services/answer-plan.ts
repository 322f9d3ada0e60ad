import type { PlanAnswer, Publication } from "../domain/plan/plan-answer.js";
import { scalePlan } from "../domain/plan/scale-plan.js";
import { shop } from "../domain/plan/shop.js";
import { ok, type Result } from "../domain/problem.js";
import type { Deps, PublishedRevision, RevisionRef } from "./deps.js";
import { findFoods } from "./find-foods.js";
import { findSynonyms, foodsToday } from "./foods-today.js";
import { rulesToday } from "./find-rules.js";
import { findKeepingRules, guideStorage } from "./guide-storage.js";
import { loadPlan } from "./load-plan.js";
import { planPrepSession } from "./plan-prep-session.js";
import { readHousehold, type GivenHousehold } from "./read-household.js";
import { showFor } from "./show-amount.js";
import { findCautions, stateContents, stateNutrition } from "./state-contents.js";

export type { PlanAnswer, Publication, Reader } from "../domain/plan/plan-answer.js";

/** A household, and for how many; `servings` null: as many as the plan is written for. */
export interface Asked {
  readonly servings: number | null;
  readonly household: GivenHousehold;
}

/** Everything about one published plan for one household; null: there is none of that name or number. */
export async function answerPlan(deps: Deps, ref: RevisionRef, asked: Asked): Promise<Result<PlanAnswer> | null> {
  const published = await loadPlan(deps, ref);
  return published === null ? null : answerFor(deps, published, asked);
}

/** The same for a revision that is loaded already. */
export async function answerFor(deps: Deps, published: PublishedRevision, asked: Asked): Promise<Result<PlanAnswer>> {
  const { bundle } = published;
  const rules = await rulesToday(deps);
  const { diets } = rules.allergens;
  const read = readHousehold(asked.household, [bundle], diets);
  if (!read.ok) return read;
  const household = read.value;
  const today = await foodsToday([bundle], household, diets, {
    readFoods: (slugs) => findFoods(deps, slugs),
    readSynonyms: (slugs) => findSynonyms(deps, slugs),
  });
  const computed = scalePlan(bundle, asked.servings ?? bundle.plan.serves, household, today);
  if (!computed.ok) return computed;
  const scaled = computed.value;
  const session = planPrepSession(scaled, household, deps.clock);
  return ok({
    publication: await publicationOf(deps, published),
    household,
    reader: showFor(household, bundle.plan),
    scaled,
    list: shop([scaled], household, today),
    session: session.ok ? session.value : null,
    sessionProblems: session.ok ? [] : session.problems,
    storage: await guideStorage(scaled, household, deps.clock, (date) => findKeepingRules(deps, date)),
    contents: stateContents(scaled, household, rules, deps.clock),
    nutrition: stateNutrition(scaled, household),
    cautions: findCautions(scaled, rules),
  });
}

async function publicationOf(deps: Deps, published: PublishedRevision): Promise<Publication> {
  const [publisher] = await deps.data.publishers.bySlugs([published.publisher]);
  if (!publisher) throw new Error(`revision ${published.id} has no publisher`);
  const { slug, revision, publishedAt, withdrawnAt, checksum } = published;
  return {
    publisher: { slug: publisher.slug, name: publisher.name },
    slug,
    revision,
    publishedAt,
    withdrawnAt,
    checksum,
  };
}
