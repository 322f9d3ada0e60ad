import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Household } from "../../../src/domain/model/household.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { planStorage } from "../../../src/domain/plan/plan-storage.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import type { KeepingQuestion } from "../../../src/domain/storage/guidance.js";
import { storageGuidance } from "../../../src/domain/storage/storage-guidance.js";
import { demo, rules } from "../../graphql/open-test-app.js";

const sessions: readonly Household["session"][] = [
  null,
  { start: "2026-03-07T09:00:00Z", zone: "Europe/Lisbon" },
  // The clocks go forward in the night after it.
  { start: "2026-03-28T17:00:00Z", zone: "Europe/Berlin" },
];

const households = fc.record({
  region: fc.constantFrom(null, "XA", "US", "GB"),
  session: fc.constantFrom(...sessions),
  onHand: fc.constant([]),
  routes: fc.record({ mode: fc.constantFrom("AS_WRITTEN" as const, "LEAST_WORK" as const), byName: fc.constant([]) }),
});

/** Every meal so many days later, so that portions have to be frozen. */
const later = (bundle: PlanBundle, days: number): PlanBundle => ({
  ...bundle,
  plan: { ...bundle.plan, meals: bundle.plan.meals.map((meal) => ({ ...meal, day: meal.day + days })) },
});

describe("how long a plan keeps", () => {
  it("is for each household what the guidance says of its own amounts, whoever asked before", () => {
    const bundles = demo.bundles.flatMap((bundle) => [bundle, later(bundle, 6)]);
    const frozen = { portions: 0 };
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...bundles), fc.integer({ min: 1, max: 40 }), households), { minLength: 5 }),
        (asked) => {
          for (const [bundle, servings, given] of asked) {
            const household = { ...noHousehold, ...given };
            const scaled = scalePlan(bundle, servings, household);
            if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
            const { session, region } = household;
            const question: KeepingQuestion = {
              rules: rules.safety.keeping,
              classes: rules.safety.classes,
              region,
              today: "2026-03-01",
              session,
            };
            const { components, meals } = scaled.value;
            const answer = planStorage(scaled.value, question);
            expect(answer).toEqual(storageGuidance({ components, meals, foods: bundle.foods }, question));
            frozen.portions += answer.guidance.filter(({ advice }) =>
              advice.some(({ code }) => code === "FREEZE"),
            ).length;
          }
        },
      ),
      { numRuns: 15 },
    );
    expect(frozen.portions).toBeGreaterThan(0);
  });
});
