import { describe, expect, it } from "vitest";
import type { Step } from "../../../../src/domain/model/component.js";
import { checkOvens } from "../../../../src/domain/plan/check/check-ovens.js";
import { isPreheating } from "../../../../src/domain/prep-session/heating.js";
import { step } from "../../../kit/builders.js";

const heat = (facts: Partial<Step> = {}): Step =>
  step("heat", 15, { appliance: "oven", attention: "UNATTENDED", temperatureC: 200, ...facts });
const bake = (facts: Partial<Step> = {}): Step =>
  step("bake", 30, { appliance: "oven-shelf", temperatureC: 200, lines: ["l1"], ...facts });
const look = (steps: readonly Step[], preheated: readonly number[] = []) =>
  checkOvens(steps, "roots", ["components", "roots"], new Set(preheated));

describe("heating an oven", () => {
  it.each([
    ["has nothing in it", { lines: ["l1"] }],
    ["wants nobody's hands", { attention: "HANDS_ON" }],
    ["waits for nothing", { after: ["peel"] }],
    ["is done in an oven", { appliance: "hob-ring" }],
    ["is done in something", { appliance: null }],
  ] as const)("%s", (_, otherwise) => {
    expect(isPreheating(heat())).toBe(true);
    expect(isPreheating(heat({ appliance: "oven-shelf" }))).toBe(true);
    expect(isPreheating(heat(otherwise))).toBe(false);
  });
});

describe("a step in the oven", () => {
  const cold = {
    code: "OVEN_NOT_PREHEATED",
    severity: "LOOK",
    path: ["components", "roots", "steps", "bake"],
    component: "roots",
    step: "bake",
    temperatureC: 200,
  };

  it("needs a temperature before anything else", () => {
    expect(look([heat(), bake({ temperatureC: null, after: ["heat"] })])).toEqual([
      {
        code: "OVEN_WITHOUT_TEMPERATURE",
        severity: "LOOK",
        path: ["components", "roots", "steps", "bake"],
        component: "roots",
        step: "bake",
      },
    ]);
  });

  it("needs an oven that was lit before, at its temperature", () => {
    expect(look([bake()])).toEqual([cold]);
    expect(look([heat(), bake()])).toEqual([cold]);
    expect(look([heat(), bake({ after: ["heat"] })])).toEqual([]);
    expect(look([heat({ temperatureC: 180 }), bake({ after: ["heat"] })])).toEqual([cold]);
  });

  it("finds the lighting through the steps between, also where they run in a ring or name nobody", () => {
    const between = step("turn", 1, { after: ["heat"] });
    expect(look([heat(), between, bake({ after: ["turn"] })])).toEqual([]);
    const ring = [step("a", 1, { after: ["b", "nobody"] }), step("b", 1, { after: ["a"] })];
    expect(look([...ring, bake({ after: ["a"] })])).toEqual([cold]);
  });

  it("may use an oven that another lit at the same temperature", () => {
    expect(look([bake()], [200])).toEqual([]);
    expect(look([bake()], [220])).toEqual([cold]);
  });

  it("is no step on the hob, by hand, or of heating", () => {
    expect(look([bake({ appliance: "hob-ring", temperatureC: null }), bake({ appliance: null }), heat()])).toEqual([]);
  });
});
