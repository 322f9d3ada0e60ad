// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/domain/model/component.js";
import { planSession } from "../../../src/domain/prep-session/schedule.js";
import type { SessionInput, SessionWork } from "../../../src/domain/prep-session/session.js";
import { planned, step, work } from "./builders.js";
import { leastSession } from "./least-session.js";
import { sessionFaults } from "./session-faults.js";

const appliances = ["oven-shelf", "hob-ring", "blender"];

const stepAt = (index: number, waits: boolean): fc.Arbitrary<Step> =>
  fc
    .record({
      minutes: fc.integer({ min: 1, max: 12 }),
      attention: fc.constantFrom("HANDS_ON" as const, "UNATTENDED" as const),
      appliance: fc.option(fc.constantFrom(...appliances), { nil: null }),
      temperature: fc.constantFrom(160, 200),
      after: fc.subarray(Array.from({ length: index }, (_, k) => `s${k}`)),
      grows: waits
        ? fc.constantFrom("FIXED" as const, "PER_BATCH" as const, "PER_LOAD" as const)
        : fc.constant("FIXED" as const),
      minWait: fc.nat(3),
      slack: fc.option(fc.integer({ min: 15, max: 40 }), { nil: null, freq: 3 }),
      wash: waits ? fc.option(fc.integer({ min: 1, max: 3 }), { nil: 0 }) : fc.constant(0),
      evening: waits ? fc.boolean() : fc.constant(false),
    })
    .map(({ temperature, slack, wash, evening, minWait, ...rest }) =>
      step(`s${index}`, rest.minutes, {
        ...rest,
        temperatureC: rest.appliance === "oven-shelf" ? temperature : null,
        loadBatches: rest.grows === "PER_LOAD" ? "1" : null,
        minWait: waits ? minWait : 0,
        maxWait: waits && slack !== null ? minWait + slack : null,
        eveningBefore: evening && rest.attention === "UNATTENDED",
        ...(wash > 0 && rest.appliance === "blender" ? { washMinutes: wash } : {}),
      }),
    );

const workOf = (slug: string, most: number, waits: boolean): fc.Arbitrary<SessionWork> =>
  fc
    .integer({ min: 1, max: most })
    .chain((count) =>
      fc.record({
        steps: fc.tuple(...Array.from({ length: count }, (_, k) => stepAt(k, waits))),
        batches: waits ? fc.constantFrom(0.5, 1, 2, 3) : fc.constant(1),
      }),
    )
    .map(({ steps, batches }) => work(slug, steps, { batches }));

const sessions = (works: number, most: number, waits: boolean): fc.Arbitrary<SessionInput> =>
  fc
    .record({
      work: fc.tuple(...Array.from({ length: works }, (_, k) => workOf(`c${k}`, most, waits))),
      usesFirst: fc.boolean(),
      cooks: fc.integer({ min: 1, max: 2 }),
      shelves: fc.integer({ min: 1, max: 2 }),
    })
    .map(({ work: all, usesFirst, cooks, shelves }) => ({
      work: all.map((one, k) => (k === 1 && usesFirst ? { ...one, uses: [{ line: "l1", component: "c0" }] } : one)),
      kitchen: { cooks, appliances: { "oven-shelf": shelves, "hob-ring": 2, blender: 1 } },
      start: { instant: "2026-11-01T14:00:00Z", zone: "America/New_York" },
      evening: null,
      extraOrder: [],
    }));

describe("Random sessions", () => {
  it("break no rule of the kitchen, or say which waits cannot be kept", () => {
    let possible = 0;
    fc.assert(
      fc.property(sessions(4, 4, true), (input) => {
        const result = planSession(input, { conflictLimit: 2000 });
        if (!result.ok) {
          expect(result.problems.map(({ code }) => code)).toEqual(["WAITS_CANNOT_BE_KEPT"]);
          return;
        }
        possible += 1;
        expect(sessionFaults(input, result.value)).toEqual([]);
        expect(result.value.lowerBoundMinutes).toBeLessThanOrEqual(result.value.totalMinutes);
      }),
      { numRuns: 120 },
    );
    expect(possible).toBeGreaterThan(60);
  });

  it("of up to eight tasks are as short, and free the hands as early, as an exhaustive search makes them", () => {
    fc.assert(
      fc.property(sessions(3, 2, false), (input) => {
        const plan = planned(input);
        expect(sessionFaults(input, plan)).toEqual([]);
        const least = leastSession(input);
        expect([plan.totalMinutes, plan.handsFreeMinute]).toEqual([least.total, least.handsFree]);
        expect(plan.optimal && plan.handsFreeOptimal).toBe(true);
      }),
      { numRuns: 150 },
    );
    fc.assert(
      fc.property(sessions(2, 4, false), (input) => {
        const plan = planned(input);
        const least = leastSession(input);
        expect([plan.totalMinutes, plan.handsFreeMinute]).toEqual([least.total, least.handsFree]);
      }),
      { numRuns: 40 },
    );
  });

  it("explain every start on the longest chain down to the beginning", () => {
    fc.assert(
      fc.property(sessions(3, 4, false), (input) => {
        const plan = planned(input);
        const [first] = plan.criticalPath;
        expect(first?.because.kind).toBe("BEGINNING");
        const last = plan.tasks.find(({ id }) => id === plan.criticalPath.at(-1)?.task);
        expect(last?.endMinute).toBe(plan.totalMinutes);
      }),
      { numRuns: 100 },
    );
  });
});
