import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Household } from "../../src/domain/model/household.js";
import { noHousehold } from "../../src/domain/model/household.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { scaledSession } from "../../src/domain/plan/scaled-session.js";
import { planPrepSession } from "../../src/services/plan-prep-session.js";
import { demo, demoBundle } from "../graphql/open-test-app.js";
import { shippedRules } from "../kit/answer-of.js";

const clock = (): Date => new Date("2026-03-01T09:00:00Z");

const households = fc.record({
  session: fc.constantFrom(
    null,
    { start: "2026-03-07T09:00:00Z", zone: "Europe/Lisbon" },
    // At the same hour of another day, and after a night in which the clocks go forward.
    { start: "2026-03-14T09:00:00Z", zone: "Europe/Lisbon" },
    { start: "2026-03-29T07:00:00Z", zone: "Europe/Berlin" },
  ),
  region: fc.constantFrom(null, "XA"),
  kitchen: fc.constantFrom(null, { cooks: 2, appliances: { "oven-shelf": 1 } }),
  routes: fc.record({ mode: fc.constantFrom("AS_WRITTEN" as const, "LEAST_WORK" as const), byName: fc.constant([]) }),
  eaters: fc.constantFrom(null, [{ count: 1, portion: "5/2" }]),
});

describe("the session of a household", () => {
  it("is the one its own work gives, whoever asked before", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...demo.bundles), fc.constantFrom(1, 2, 4, 7, 12), households), {
          minLength: 4,
          maxLength: 12,
        }),
        (asked) => {
          for (const [bundle, count, given] of asked) {
            const household: Household = { ...noHousehold, ...given };
            const scaled = scalePlan(bundle, given.eaters === null ? count : 1, household);
            if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
            expect(planPrepSession(scaled.value, household, shippedRules, clock)).toEqual(
              scaledSession(scaled.value, household, shippedRules.safety.classes),
            );
          }
        },
      ),
      { numRuns: 10 },
    );
  });

  it("is thought about anew where the last search was cut short", () => {
    const scaled = scalePlan(demoBundle("eggs-and-oats"), 60, noHousehold);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    let late = 0;
    // Each look at this clock finds two seconds gone.
    const hurried = (): Date => new Date((late += 2_000));
    const first = planPrepSession(scaled.value, noHousehold, shippedRules, hurried);
    const then = planPrepSession(scaled.value, noHousehold, shippedRules, clock);
    expect(then).toEqual(scaledSession(scaled.value, noHousehold, shippedRules.safety.classes));
    expect(first.ok && then.ok && !first.value.optimal && first.value.totalMinutes >= then.value.totalMinutes).toBe(
      true,
    );
  });

  it("is not thought about again within the minute, whether it was cut short or fits no order", () => {
    // Each look at this clock finds a tenth of a second gone: the search ends after a few.
    for (const servings of [40, 60, 400]) {
      const scaled = scalePlan(demoBundle("eggs-and-oats"), servings, noHousehold);
      if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
      let looks = 0;
      const hurried = (): Date => new Date(1_700_000_040_000 + 100 * (looks += 1));
      const first = planPrepSession(scaled.value, noHousehold, shippedRules, hurried);
      const afterFirst = looks;
      expect(planPrepSession(scaled.value, noHousehold, shippedRules, hurried), String(servings)).toBe(first);
      expect(looks - afterFirst, String(servings)).toBeLessThanOrEqual(1);
    }
  });
});
