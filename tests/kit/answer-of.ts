import { noHousehold, type Household } from "../../src/domain/model/household.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { PlanAnswer } from "../../src/domain/plan/plan-answer.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { shop } from "../../src/domain/plan/shop.js";
import { storageGuidance } from "../../src/domain/storage/storage-guidance.js";
import { readRulesFolder } from "../../src/app/setup/read-rules-folder.js";
import { planPrepSessions } from "../../src/services/answers/plan-prep-session.js";
import { showFor } from "../../src/exports/words/shown-amount.js";
import { findCautions, stateContents, stateNutrition } from "../../src/services/answers/state-contents.js";

export const shippedRules = await readRulesFolder("seeds/rules");

const clock = (): Date => new Date("2026-03-01T09:00:00Z");

/** Everything about a plan for a household, without a database: the rules that ship, and foods as the plan froze them. */
export function answerOf(bundle: PlanBundle, servings: number, given: Partial<Household> = {}): PlanAnswer {
  const household = { ...noHousehold, ...given };
  const computed = scalePlan(bundle, servings, household);
  if (!computed.ok) throw new Error(JSON.stringify(computed.problems));
  const scaled = computed.value;
  const { whole: session, days } = planPrepSessions(scaled, household, shippedRules);
  return {
    publication: {
      publisher: { slug: bundle.plan.publisher, name: "The Third Gate Allotment Society" },
      slug: bundle.plan.slug,
      planId: "7d3f7f4e-0000-4000-8000-000000000001",
      firstPublishedAt: new Date(0),
      updatedAt: new Date(0),
      revision: 3,
      publishedAt: clock(),
      withdrawnAt: null,
      withdrawnBecause: null,
      changeNote: null,
      checksum: "0".repeat(64),
    },
    household,
    reader: showFor(household, bundle.plan),
    scaled,
    list: shop([scaled], household),
    session: session.ok ? session.value : null,
    sessionProblems: session.ok ? [] : session.problems,
    sessions: days,
    storage: storageGuidance(
      { components: scaled.components, meals: scaled.meals, foods: bundle.foods },
      {
        rules: shippedRules.safety.keeping,
        classes: shippedRules.safety.classes,
        region: household.region,
        today: "2026-03-01",
        session: household.session,
      },
    ),
    contents: stateContents(scaled, household, shippedRules, clock),
    nutrition: stateNutrition(scaled, household),
    cautions: findCautions(scaled, household, shippedRules),
  };
}
