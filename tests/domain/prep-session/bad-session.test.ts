import { describe, expect, it } from "vitest";
import { planSession } from "../../../src/domain/prep-session/schedule.js";
import type { SessionInput } from "../../../src/domain/prep-session/session.js";
import { session, step, unattended, work } from "./builders.js";

function problemsOf(input: SessionInput) {
  const result = planSession(input);
  if (result.ok) throw new Error("planned");
  return result.problems;
}

describe("A session that cannot be planned", () => {
  it("says which steps wait for one another in a circle", () => {
    const dal = work("dal", [step("a", 5, { after: ["b"] }), step("b", 5, { after: ["a"] })]);
    expect(problemsOf(session([dal]))).toEqual([
      {
        code: "STEPS_IN_A_CIRCLE",
        path: expect.arrayContaining(["components", "dal"]) as unknown,
        steps: expect.arrayContaining(["dal/a", "dal/b"]) as unknown,
      },
    ]);
  });

  it("says which greatest wait cannot be kept", () => {
    const rice = work("rice", [
      unattended("boil", 10),
      step("stir", 20, { after: ["boil"], maxWait: 5 }),
      step("fold", 20, { after: ["boil"], maxWait: 5 }),
    ]);
    expect(problemsOf(session([rice]))).toMatchObject([
      { code: "WAITS_CANNOT_BE_KEPT", steps: ["rice/boil", "rice/stir", "rice/fold"] },
    ]);
  });

  it("names the step and the field of each broken value", () => {
    const bad = work("dal", [step("a", -1), step("b", 5, { after: ["nowhere"], minWait: 9, maxWait: 3 })], {
      batches: 0,
    });
    expect(problemsOf(session([bad])).map(({ code, path }) => [code, path.join(".")])).toEqual([
      ["BAD_SHAPE", "components.dal.batches"],
      ["BAD_SHAPE", "components.dal.steps.a.minutes"],
      ["BAD_SHAPE", "components.dal.steps.b.maxWait"],
      ["BAD_SHAPE", "components.dal.steps.b.after"],
    ]);
  });

  it("names unknown components, double ids, an empty kitchen and an order of steps that are not there", () => {
    const input = session(
      [
        work("dal", [step("a", 1), step("a", 2)], { uses: [{ line: "l1", component: "stock" }] }),
        work("oil", [step("warm", 2, { appliance: "hob-ring" })]),
      ],
      {
        kitchen: { cooks: 0, appliances: { "hob-ring": 0 } },
        extraOrder: [
          { before: { kind: "COMPONENT", slug: "dal", step: "a" }, after: { kind: "MEAL", slug: "bowl", step: "x" } },
        ],
      },
    );
    expect(problemsOf(input).map(({ code, path }) => [code, path.join(".")])).toEqual([
      ["UNKNOWN_COMPONENT", "components.dal.lines.l1"],
      ["DUPLICATE", "components.dal.steps"],
      ["BAD_SHAPE", "kitchen.cooks"],
      ["KITCHEN_WITHOUT", "household.kitchen.appliances.hob-ring"],
      ["BAD_SHAPE", "extraOrder.0.after"],
    ]);
  });

  it("names a start, a zone and an evening that are none", () => {
    const input = session([], {
      start: { instant: "tomorrow", zone: "Europe/Nowhere" },
      evening: { from: "22:00", to: "20:00" },
    });
    expect(problemsOf(input).map(({ path }) => path.join("."))).toEqual(["start.instant", "start.zone", "evening.to"]);
    expect(
      problemsOf({ ...input, start: null, evening: { from: "8 pm", to: "25:00" } }).map(({ path }) => path.join(".")),
    ).toEqual(["evening.from", "evening.to"]);
  });

  it("refuses more work than five weeks in a row", () => {
    const dal = work("dal", [step("stir", 60, { grows: "PER_BATCH" })], { batches: 10_000 });
    expect(problemsOf(session([dal]))).toMatchObject([{ code: "TOO_LARGE", size: 600_000 }]);
  });

  it("assumes one of an appliance that the kitchen does not list, and says so", () => {
    const result = planSession(session([work("a", [step("press", 5, { appliance: "press" })])]));
    expect(result).toMatchObject({ ok: true, value: { assumedAppliances: ["press"], totalMinutes: 5 } });
  });

  it("plans nothing in no time", () => {
    expect(planSession(session([]))).toMatchObject({ ok: true, value: { totalMinutes: 0, tasks: [], optimal: true } });
  });
});
