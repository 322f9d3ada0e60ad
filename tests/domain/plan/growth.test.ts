import { describe, expect, it } from "vitest";
import { limits } from "../../../src/domain/engine-limits.js";
import type { Line } from "../../../src/domain/model/line.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import type { ScaledPlan } from "../../../src/domain/plan/scaled.js";
import { bundle, component, household, line, made, meal } from "../../kit/builders.js";

const scaled = (of: PlanBundle, servings: number): ScaledPlan => {
  const result = scalePlan(of, servings, household());
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

const rules: readonly Partial<Line>[] = [
  {},
  { rule: "PER_BATCH" },
  { rule: "POWER", exponent: 0.5 },
  { rule: "POWER", exponent: 1 },
];
const ruled = (item: Parameters<typeof line>[1]): readonly Line[] => [
  ...rules.map((rule) => line("10 g", item, rule)),
  line(null, item),
];

describe("how a line grows", () => {
  it("in a meal: with servings over serves, once, or with their power; to taste it has no amount", () => {
    const [eaten] = scaled(bundle([meal("soup", ruled("salt"), { serves: 4 })]), 64).meals;
    expect(eaten!.factor).toBe(16);
    expect(eaten!.lines.map(({ amount }) => amount?.high ?? null)).toEqual([160, 10, 40, 160, null]);
    expect(eaten!.lines.map(({ inUnit }) => inUnit)).toEqual([
      { low: 160, high: 160, unit: "g" },
      { low: 10, high: 10, unit: "g" },
      { low: 40, high: 40, unit: "g" },
      { low: 160, high: 160, unit: "g" },
      null,
    ]);
  });

  it("in a component: with batches, once for every batch begun, or with their power", () => {
    const pot = component("pot", "100 g", ruled("salt"));
    const plan = bundle([meal("soup", [line("225 g", made("pot"))])], [pot]);
    const grown = (servings: number): (number | null)[] =>
      scaled(plan, servings).components[0]!.lines.map(({ amount }) => amount?.high ?? null);
    expect(grown(1)).toEqual([22.5, 30, 15, 22.5, null]);
    expect(grown(4)).toEqual([90, 90, 30, 90, null]);
  });

  it("on another component, just so, at both ends of a range", () => {
    const base = component("base", "100 g", [line("100 g", "beans")]);
    const pot = component("pot", "100 g", [
      line("8-10 g", made("base")),
      line("3-4 g", made("base"), { rule: "PER_BATCH" }),
      line("2 g", made("base"), { rule: "POWER", exponent: 0.5 }),
      line(null, made("base")),
    ]);
    const plan = bundle(
      [
        meal("soup", [line("900 g", made("pot"))], { serves: 4 }),
        meal("toast", [line("6 g", made("base"), { rule: "PER_BATCH" }), line(null, made("base"))], { serves: 2 }),
        meal("dip", [line("5 g", made("base"), { rule: "POWER", exponent: 0.5 })], { serves: 2 }),
      ],
      [base, pot],
    );
    const [made2, made9] = [1, 4].map((servings) =>
      scaled(plan, servings).components.find((each) => each.component.slug === "base")!,
    ) as [ScaledPlan["components"][number], ScaledPlan["components"][number]];
    // 2.25 batches of the pot: three begun, the square root 1.5. The meals: 6 g, and 5 g by the root of a half.
    expect(made2.used.low).toBeCloseTo(8 * 2.25 + 3 * 3 + 2 * 1.5 + 6 + 5 * Math.SQRT1_2, 12);
    expect(made2.used.high).toBeCloseTo(10 * 2.25 + 4 * 3 + 2 * 1.5 + 6 + 5 * Math.SQRT1_2, 12);
    expect(made9.used.low).toBeCloseTo(8 * 9 + 3 * 9 + 2 * 3 + 6 + 5 * Math.SQRT2, 12);
  });

  it("not at all where nothing is made", () => {
    const pot = component("pot", "100 g", ruled("salt"));
    const plan = bundle([meal("soup", [line("0 g", made("pot"))])], [pot]);
    const [none] = scaled(plan, 4).components;
    expect(none).toMatchObject({ batches: 0, loads: 0, made: { high: 0 }, leftOver: { high: 0 } });
    expect(none!.lines.map(({ amount }) => amount?.high ?? null)).toEqual([0, 0, 0, 0, null]);
  });
});

describe("what is made", () => {
  it("covers the upper end of a demand, counting on the least that a batch gives", () => {
    const pot = component("pot", "80-100 g", [line("50 g", "beans")]);
    const [{ batches, made: got, used, leftOver }] = scaled(
      bundle([meal("soup", [line("100-160 g", made("pot"))])], [pot]),
      2,
    ).components as [ScaledPlan["components"][number]];
    expect(batches).toBe(4);
    expect(got).toEqual({ dimension: "MASS", low: 320, high: 400 });
    expect(used).toEqual({ dimension: "MASS", low: 200, high: 320 });
    expect(leftOver).toEqual({ dimension: "MASS", low: 0, high: 200 });
  });

  it("is refused beyond what anybody can make, and not one batch before", () => {
    const pot = component("pot", "1 g", [line("1 g", "beans")]);
    const plan = (grams: number): PlanBundle => bundle([meal("soup", [line(`${grams} g`, made("pot"))])], [pot]);
    const most = limits.batches / 10;
    expect(scaled(plan(most), 10).components[0]!.batches).toBe(limits.batches);
    expect(scalePlan(plan(most + 1), 10, household())).toEqual({
      ok: false,
      problems: [
        {
          code: "AMOUNT_OUT_OF_RANGE",
          path: ["components", "pot"],
          value: String(limits.batches + 10),
          min: 0,
          max: limits.batches,
        },
      ],
    });
  });
});

describe("the servings asked for", () => {
  const plan = bundle([meal("soup", [line("1 g", "salt")])]);

  it("may be any whole number from one to a million", () => {
    expect(scaled(plan, 1).meals[0]!.lines[0]!.amount!.high).toBe(1);
    expect(scaled(plan, limits.servings).servings).toBe(1_000_000);
  });

  it.each([0, -1, 1.5, NaN, Infinity, -Infinity, 1_000_001, 1e9])("are not %s", (servings) => {
    expect(scalePlan(plan, servings, household())).toEqual({
      ok: false,
      problems: [{ code: "SERVINGS_OUT_OF_RANGE", path: ["servings"], value: servings, min: 1, max: 1_000_000 }],
    });
  });

  it("are held against who eats", () => {
    const eaters = [
      { count: 2, portion: "1" },
      { count: 1, portion: "1/2" },
    ];
    const result = scalePlan(plan, 3, household({ eaters }));
    expect(result.ok && result.value).toMatchObject({ servings: 3, meals: [{ factor: 2.5 }] });
    expect(scalePlan(plan, 4, household({ eaters }))).toMatchObject({
      ok: false,
      problems: [{ code: "BAD_HOUSEHOLD", what: "EATERS_ARE_NOT_THE_SERVINGS" }],
    });
  });
});
