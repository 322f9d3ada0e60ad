import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Household } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import type { ScaledPlan } from "../../../src/domain/plan/scaled.js";
import { runToEnd, CountedWork, WorkStopped } from "../../../src/domain/counted-work.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { scaledSession } from "../../../src/domain/plan/session/scaled-session.js";
import {
  mostSessionSteps,
  planPrepSession,
  prepSessionInSlices,
  prepSessionsInSlices,
} from "../../../src/services/answers/plan-prep-session.js";
import { demo, demoBundle } from "../../graphql/open-test-app.js";
import { shippedRules } from "../../kit/answer-of.js";

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
            expect(planPrepSession(scaled.value, household, shippedRules)).toEqual(
              scaledSession(scaled.value, household, shippedRules.safety.classes),
            );
          }
        },
      ),
      { numRuns: 10 },
    );
  });

  it("takes so many steps and no more, however many it is for, and is the same for who asks again, for none", () => {
    for (const bundle of demo.bundles) {
      for (const servings of [40, 61, 400]) {
        const scaled = scaledFor(bundle, servings);
        const first = new CountedWork();
        const found = runToEnd(prepSessionsInSlices(scaled, noHousehold, shippedRules, first));
        // Two searches; what lies between two looks at the steps that are left, and a last schedule for each attempt, come on top.
        expect(first.steps, `${bundle.plan.slug} for ${servings}`).toBeLessThan(2 * 1.5 * mostSessionSteps);
        const again = new CountedWork();
        const then = runToEnd(prepSessionsInSlices(scaled, noHousehold, shippedRules, again));
        expect(then.whole).toBe(found.whole);
        expect(then.days).toEqual(found.days);
        expect(again.steps, `${bundle.plan.slug} for ${servings}`).toBe(0);
      }
    }
  });

  it("is cut into turns of a few steps each", () => {
    const work = new CountedWork();
    const turns = prepSessionsInSlices(scaledFor(demoBundle("bean-night"), 77), noHousehold, shippedRules, work);
    let before = 0;
    for (let turn = turns.next(); turn.done !== true; turn = turns.next()) {
      expect(work.steps - before).toBeLessThan(2_000);
      before = work.steps;
    }
    expect(work.steps).toBeGreaterThan(50_000);
  });

  it("is ended when it is told to stop, and nobody is given what was found by then", () => {
    const scaled = scaledFor(demoBundle("eggs-and-oats"), 44);
    let looks = 0;
    const hurried = new CountedWork(() => (looks += 1) > 2);
    expect(() => runToEnd(prepSessionInSlices(scaled, noHousehold, shippedRules, hurried))).toThrow(WorkStopped);
    expect(planPrepSession(scaled, noHousehold, shippedRules)).toEqual(
      planPrepSession(scaledFor({ ...demoBundle("eggs-and-oats") }, 44), noHousehold, shippedRules),
    );
  });
});

function scaledFor(bundle: PlanBundle, servings: number): ScaledPlan {
  const scaled = scalePlan(bundle, servings, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return scaled.value;
}
