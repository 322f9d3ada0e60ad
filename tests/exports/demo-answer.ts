import { readRulesFolder } from "../../src/app/setup/read-rules-folder.js";
import { readSeeds } from "../../src/app/setup/read-seeds.js";
import { inForceOn } from "../../src/domain/model/region.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { PlanAnswer, Publication } from "../../src/domain/plan/plan-answer.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { shop } from "../../src/domain/plan/shop.js";
import type { Addresses } from "../../src/exports/addresses.js";
import { rulesInLanguage } from "../../src/exports/sentences/rules-in-language.js";
import { guideStorage } from "../../src/services/answers/guide-storage.js";
import { readHousehold, type GivenHousehold } from "../../src/services/answers/read-household.js";
import { planPrepSessions } from "../../src/services/answers/plan-prep-session.js";
import { showFor } from "../../src/exports/words/shown-amount.js";
import { findCautions, stateContents, stateNutrition } from "../../src/services/answers/state-contents.js";

export const demo = await readSeeds("seeds");
export const rules = await readRulesFolder("seeds/rules");

const clock = () => new Date("2026-02-27T10:00:00Z");

export const addresses: Addresses = {
  plan: "https://plans.example/v1/plans/third-gate-allotments/plan",
  revision: "https://plans.example/v1/plans/third-gate-allotments/plan?revision=3",
  publisher: "https://plans.example/third-gate-allotments",
  list: "https://plans.example/v1/plans/third-gate-allotments/plan/list",
  calendar: "https://plans.example/v1/plans/third-gate-allotments/plan.ics?servings=7&zone=Europe%2FLondon",
};

export const publication: Publication = {
  publisher: demo.publisher,
  slug: "plan",
  revision: 3,
  planId: "7d3f7f4e-0000-4000-8000-000000000001",
  firstPublishedAt: new Date("2026-01-10T06:30:00Z"),
  updatedAt: new Date("2026-02-20T06:30:00Z"),
  publishedAt: new Date("2026-02-20T06:30:00Z"),
  withdrawnAt: null,
  withdrawnBecause: null,
  changeNote: null,
  checksum: "0".repeat(64),
};

/** The household of the golden files: a Sunday morning where the demo's prices hold. */
export const sundayHousehold: GivenHousehold = {
  region: "XA",
  currency: "XTS",
  sessionStart: { instant: "2026-03-01T09:00:00Z", zone: "Europe/London" },
};

export function demoBundle(slug: string): PlanBundle {
  const found = demo.bundles.find(({ plan }) => plan.slug === slug);
  if (found === undefined) throw new Error(`the demo has no plan ${slug}`);
  return found;
}

/** Everything about a plan for one household, computed as the service does but for the database. */
export async function answerOf(
  bundle: PlanBundle,
  servings: number,
  given: GivenHousehold = {},
  facts: Partial<Publication> = {},
): Promise<PlanAnswer> {
  const read = readHousehold(given, [bundle], rules.allergens.diets);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const household = read.value;
  const computed = scalePlan(bundle, servings, household);
  if (!computed.ok) throw new Error(JSON.stringify(computed.problems));
  const scaled = computed.value;
  const { whole: session, days } = planPrepSessions(scaled, household, rules);
  return rulesInLanguage({
    publication: { ...publication, slug: bundle.plan.slug, ...facts },
    household,
    reader: showFor(household, bundle.plan),
    scaled,
    list: shop([scaled], household),
    session: session.ok ? session.value : null,
    sessionProblems: session.ok ? [] : session.problems,
    sessions: days,
    storage: await guideStorage(scaled, household, { clock }, (date) =>
      Promise.resolve({ ...rules.safety, keeping: rules.safety.keeping.filter((rule) => inForceOn(rule, date)) }),
    ),
    contents: stateContents(scaled, household, rules, clock),
    nutrition: stateNutrition(scaled, household),
    cautions: findCautions(scaled, household, rules),
  });
}
