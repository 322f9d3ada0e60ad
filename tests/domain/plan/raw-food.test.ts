import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/domain/model/component.js";
import type { Food } from "../../../src/domain/model/food.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { scaledSession } from "../../../src/domain/plan/session/scaled-session.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import type { PrepSession } from "../../../src/domain/prep-session/session.js";
import type { Result } from "../../../src/domain/problem.js";
import { bundle, component, food, line, made, meal, step } from "../../kit/builders.js";
import { shippedRules } from "../../kit/answer-of.js";

// Raw meat, poultry and fish are out of the cold for two hours at most: USDA FSIS, Danger Zone (40 °F to 140 °F).

const oven = (id: string, minutes: number, after: string[]): Step =>
  step(id, minutes, { attention: "UNATTENDED", appliance: "oven-shelf", temperatureC: 220, after });

const roast = (steps: readonly Step[], facts: Partial<Food> = { keepsAs: "raw-poultry" }): PlanBundle =>
  bundle(
    [meal("m", [line("1 kg", made("thighs"))], { day: 1 })],
    [
      component("thighs", "1 kg", [line("1500 g", "thigh"), line("10 g", "herb")], {
        steps: [...steps],
        keepsAs: "cooked-poultry",
        batch: { min: "1/2", max: "1", increment: null },
      }),
    ],
    [food("thigh", facts), food("herb")],
  );

function sessionOf(written: PlanBundle, servings: number, shelves: number): Result<PrepSession> {
  const household = { ...noHousehold, kitchen: { cooks: 1, appliances: { "oven-shelf": shelves } } };
  const scaled = scalePlan(written, servings, household);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return scaledSession(scaled.value, household, shippedRules.safety.classes, { conflictLimit: 300 });
}

/** Longest time, over all loads, from the start of a step on it to the start of its roasting. */
function out(session: PrepSession, id: string): number {
  const share = ({ load }: PrepSession["tasks"][number]) =>
    load === null ? [0, 1] : [(load.first - 1) / load.of, load.last / load.of];
  const waits = session.tasks
    .filter((task) => task.step === id)
    .flatMap((task) =>
      session.tasks
        .filter((other) => other.step === "roast")
        .filter((other) => share(other)[0]! < share(task)[1]! - 1e-9 && share(task)[0]! < share(other)[1]! - 1e-9)
        .map((other) => other.startMinute - task.startMinute),
    );
  return Math.max(...waits);
}

const preheat = step("heat", 15, { attention: "UNATTENDED", appliance: "oven-shelf", temperatureC: 220 });
const trim = step("trim", 10, { lines: ["l1"] });
const box = step("box", 4, { after: ["roast"] });

describe("Raw meat, poultry and fish", () => {
  it.each([
    ["a class of its own", { keepsAs: "raw-poultry" }],
    ["minced", { keepsAs: "raw-mince" }],
    ["fish", { keepsAs: "raw-fish" }],
    ["no class, from the meat counter", { keepsAs: null, aisle: "meat" }],
    ["no class, from a counter of both", { keepsAs: null, aisle: "meat-and-fish" }],
  ])("is worked on load by load, close before the oven: %s", (_, facts) => {
    for (const shelves of [1, 2]) {
      const found = sessionOf(roast([preheat, trim, oven("roast", 40, ["heat", "trim"]), box], facts), 10, shelves);
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      expect(out(found.value, "trim")).toBeLessThanOrEqual(120);
      // Dividing the work makes no more and no less of it.
      const minutes = found.value.tasks.filter((task) => task.step === "trim").map((t) => t.endMinute - t.startMinute);
      expect(minutes.reduce((sum, each) => sum + each, 0)).toBe(100);
    }
  });

  it("counts from the first of several steps by hand, also where a later one names no ingredient", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), fc.integer({ min: 1, max: 3 }), (servings, shelves) => {
        const tie = step("tie", 5, { after: ["trim"] });
        const found = sessionOf(
          roast([preheat, trim, tie, oven("roast", 40, ["heat", "tie"]), box]),
          servings,
          shelves,
        );
        if (!found.ok) throw new Error(JSON.stringify(found.problems));
        expect(out(found.value, "trim")).toBeLessThanOrEqual(120);
      }),
      { numRuns: 10 },
    );
  });

  it("counts no night in a marinade as time out of the cold", () => {
    const marinate = step("marinate", 480, { attention: "UNATTENDED", after: ["trim"] });
    const found = sessionOf(roast([preheat, trim, marinate, oven("roast", 40, ["heat", "marinate"]), box]), 1, 2);
    expect(found.ok).toBe(true);
  });

  it("leaves work on what is cooked already, and on what needs no cold, as it was", () => {
    const pull = step("pull", 6, { after: ["roast"] });
    const steps = [preheat, trim, oven("roast", 40, ["heat", "trim"]), pull, oven("crisp", 10, ["pull"])];
    const roots = sessionOf(roast(steps, { keepsAs: "raw-roots", aisle: "vegetables" }), 10, 2);
    if (!roots.ok) throw new Error(JSON.stringify(roots.problems));
    expect(roots.value.tasks.filter((task) => task.step === "trim")).toHaveLength(1);
  });

  it("is refused where one load takes longer than that", () => {
    const long = { ...trim, minutes: 150 };
    const found = sessionOf(roast([preheat, long, oven("roast", 40, ["heat", "trim"]), box]), 1, 1);
    expect(found.ok ? [] : found.problems.map(({ code }) => code)).toEqual(["WAITS_CANNOT_BE_KEPT"]);
  });
});
