import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { noHousehold, type Household } from "../../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { scaledSession } from "../../../../src/domain/plan/session/scaled-session.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { dayOfWork } from "../../../../src/domain/plan/session/session-length.js";
import { splitSession } from "../../../../src/domain/plan/session/split-session.js";
import { planPrepSessions } from "../../../../src/services/answers/plan-prep-session.js";
import { demo } from "../../../graphql/open-test-app.js";
import { bundle, component, food, line, made, meal, part, of, step } from "../../../kit/builders.js";
import { shippedRules } from "../../../kit/answer-of.js";

const { classes } = shippedRules.safety;

function scaledOf(written: PlanBundle, servings: number, household: Household = noHousehold) {
  const scaled = scalePlan(written, servings, household);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return scaled.value;
}

const sessionsOf = (written: PlanBundle, servings: number, facts: Partial<Household> = {}) => {
  const household = { ...noHousehold, ...facts };
  return planPrepSessions(scaledOf(written, servings, household), household, shippedRules);
};

const cut = (id: string, minutes: number) => step(id, minutes, { grows: "PER_BATCH", growthStated: true });
/** Two components of four hours of work each. */
const long = (dayOfSecond: number, at?: string): PlanBundle =>
  bundle(
    [
      meal("first", [line("1 kg", made("one"))]),
      meal("second", [line("1 kg", made("two"))], { day: dayOfSecond, ...(at === undefined ? {} : { at }) }),
    ],
    [
      component("one", "1 kg", [line("1 kg", "leek")], { steps: [cut("a", 240)], keepsAs: "cooked-vegetable" }),
      component("two", "1 kg", [line("1 kg", "carrot")], { steps: [cut("b", 240)], keepsAs: "cooked-vegetable" }),
    ],
  );

describe("The sessions of a plan", () => {
  it("are just the one where it is no more than a day's work", () => {
    const { whole, days } = sessionsOf(demo.bundles[0]!, 4);
    expect(days.map(({ day, session }) => [day, whole.ok && whole.value === session])).toEqual([[0, true]]);
  });

  it("are two where the work passes six hours a cook, and what is eaten later is made later", () => {
    const { whole, days } = sessionsOf(long(2), 1);
    expect(whole.ok && whole.value.handsOnMinutes).toBe(480);
    expect(days.map(({ day, components }) => [day, components.map(({ slug }) => slug)])).toEqual([
      [0, ["one"]],
      [2, ["two"]],
    ]);
    expect(sessionsOf(long(2), 1, { kitchen: { cooks: 2, appliances: {} } }).days).toHaveLength(1);
  });

  it("are not divided where all of it is eaten on the first day", () => {
    const { whole, days } = sessionsOf(long(0), 1);
    expect(whole.ok && whole.value.handsOnMinutes).toBe(480);
    expect(days.map(({ day }) => day)).toEqual([0]);
  });

  it("are done before the meal of their day", () => {
    // From 09:00 four hours are too long for a meal at noon, and not for one at two.
    expect(sessionsOf(long(1, "12:00"), 1).days.map(({ day }) => day)).toEqual([0]);
    expect(sessionsOf(long(1, "14:00"), 1).days.map(({ day }) => day)).toEqual([0, 1]);
    const late = { session: { start: "2026-03-01T12:00:00Z", zone: "UTC" } };
    expect(sessionsOf(long(1, "14:00"), 1, late).days.map(({ day }) => day)).toEqual([0]);
  });

  it("begin at the same hour of the clock, also over the night in which clocks change", () => {
    const session = { start: "2026-03-28T09:00:00+01:00", zone: "Europe/Berlin" };
    const { days } = sessionsOf(long(2), 1, { session });
    expect(days.map((each) => each.session.tasks[0]?.startsAt)).toEqual([
      expect.stringMatching(/^2026-03-28T09:00:00\+01:00/),
      expect.stringMatching(/^2026-03-30T09:00:00\+02:00/),
    ]);
  });

  it("cut a fruit whose parts go into two things on one day", () => {
    const lemon = food("lemon", { parts: [part("zest", "5 g"), part("juice", "40 g", ["zest"])], shoppedBy: "COUNT" });
    const written = bundle(
      [meal("first", [line("1 kg", made("one"))]), meal("second", [line("1 kg", made("two"))], { day: 2 })],
      [
        component("one", "1 kg", [line("40 g", of("lemon", "juice"))], { steps: [cut("a", 240)] }),
        component("two", "1 kg", [line("5 g", of("lemon", "zest"))], { steps: [cut("b", 240)] }),
      ],
      [lemon],
    );
    expect(sessionsOf(written, 1).days.map(({ day }) => day)).toEqual([0]);
  });

  it("leave raw meat no longer than a day until it is cooked", () => {
    const written = bundle(
      [
        meal("first", [line("1 kg", made("one"))]),
        meal("second", [line("1 kg", made("two"))], { day: 1 }),
        meal("third", [line("1 kg", made("two"))], { day: 4 }),
      ],
      [
        component("one", "1 kg", [line("1 kg", "leek")], { steps: [cut("a", 240)] }),
        component("two", "1 kg", [line("1 kg", "mince")], { steps: [cut("b", 100)], keepsAs: "meat-leftovers" }),
      ],
      [food("mince", { keepsAs: "raw-mince" })],
    );
    for (const servings of [1, 2, 3])
      for (const { day, components } of sessionsOf(written, servings).days)
        if (components.some(({ slug }) => slug === "two")) expect(day).toBeLessThanOrEqual(1);
  });
});

describe("Where the work is much more than a day's", () => {
  it.each([30, 40, 70])(
    "still divides every demo plan, so that no day is longer than four fifths of the whole: %i",
    (servings) => {
      for (const written of demo.bundles) {
        const { whole, days } = sessionsOf(written, servings);
        const longest = Math.max(...days.map(({ session }) => session.handsOnMinutes));
        if (!whole.ok || whole.value.handsOnMinutes <= dayOfWork) continue;
        expect(days.length, written.plan.slug).toBeGreaterThan(1);
        expect(longest, written.plan.slug).toBeLessThan(whole.value.handsOnMinutes * 0.8);
      }
    },
  );

  it.each([24, 29, 34, 39])("puts all of it into one order too, whatever way that takes: %i", (servings) => {
    for (const written of demo.bundles) {
      const { whole } = sessionsOf(written, servings);
      expect(whole.ok ? [] : whole.problems, written.plan.slug).toEqual([]);
    }
  });

  it("makes later what takes the same part of other pieces", () => {
    const lemon = food("lemon", { parts: [part("zest", "5 g"), part("juice", "40 g", ["zest"])], shoppedBy: "COUNT" });
    const written = bundle(
      [meal("first", [line("1 kg", made("one"))]), meal("second", [line("1 kg", made("two"))], { day: 2 })],
      [
        component("one", "1 kg", [line("5 g", of("lemon", "zest"))], { steps: [cut("a", 240)] }),
        component("two", "1 kg", [line("5 g", of("lemon", "zest"))], { steps: [cut("b", 240)] }),
      ],
      [lemon],
    );
    expect(sessionsOf(written, 1).days.map(({ day }) => day)).toEqual([0, 2]);
  });
});

describe("What cannot be done in one session", () => {
  /** Three meals, 60 minutes of work on raw mince for each: within two hours only in parts. */
  const kneaded = (days: readonly number[]): PlanBundle =>
    bundle(
      days.map((day, at) => meal(`m${at}`, [line("1 kg", made("loaf"))], { day })),
      [
        component("loaf", "1 kg", [line("1 kg", "mince")], {
          steps: [cut("knead", 60), step("fry", 20, { appliance: "hob-ring", after: ["knead"] })],
          keepsAs: "meat-leftovers",
        }),
      ],
      [food("mince", { keepsAs: "raw-mince" })],
    );

  it("is divided over days where each keeps its limits", () => {
    const { whole, days } = sessionsOf(kneaded([0, 0, 1]), 1);
    expect(whole.ok ? [] : whole.problems.map(({ code }) => code)).toEqual(["WAITS_CANNOT_BE_KEPT"]);
    expect(days.map(({ day, components }) => [day, components.map(({ batches }) => batches)])).toEqual([
      [0, [2]],
      [1, [1]],
    ]);
  });

  it("says why where no division does", () => {
    const { whole, days } = sessionsOf(kneaded([0, 0, 0]), 1);
    expect(whole.ok ? [] : whole.problems.map(({ code }) => code)).toEqual(["WAITS_CANNOT_BE_KEPT"]);
    expect(days).toEqual([]);
  });
});

describe("Over the demo plans, for 1 to 60 people", () => {
  it("make as much as one session would, nothing later than it is eaten, and no day longer than the whole", () => {
    fc.assert(
      fc.property(fc.constantFrom(...demo.bundles), fc.integer({ min: 1, max: 60 }), (written, servings) => {
        const scaled = scaledOf(written, servings);
        const budget = { conflictLimit: 200 };
        const whole = scaledSession(scaled, noHousehold, classes, budget);
        const lighterThan = whole.ok ? whole.value.handsOnMinutes : Infinity;
        const days = splitSession({ scaled, household: noHousehold, classes, from: "09:00" }, lighterThan, budget);
        if (days.length === 0) return;
        for (const { component: each, batches } of scaled.components) {
          const makings = days.flatMap(({ day, components }) =>
            components.filter(({ slug }) => slug === each.slug).map((size) => ({ day, batches: size.batches })),
          );
          expect(makings.reduce((sum, making) => sum + making.batches, 0)).toBeCloseTo(batches, 9);
          for (const { meal: eaten, lines } of scaled.meals)
            if (lines.some(({ item }) => item.kind === "COMPONENT" && item.component === each.slug) && batches > 0)
              expect(Math.min(...makings.map(({ day }) => day))).toBeLessThanOrEqual(eaten.day);
        }
        for (const { session } of days) expect(session.handsOnMinutes).toBeLessThan(lighterThan);
      }),
      { numRuns: 15, examples: [[demo.bundles[0]!, 40]] },
    );
  });

  it("keep each day within six hours of hands where 30 cook for the four plans", () => {
    for (const written of demo.bundles) {
      const { days } = sessionsOf(written, 30);
      expect(Math.max(...days.map(({ session }) => session.handsOnMinutes))).toBeLessThanOrEqual(dayOfWork);
    }
  });
});
