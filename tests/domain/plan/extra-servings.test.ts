import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BatchRule } from "../../../src/domain/model/component.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { arbitraryPlan, everyRun } from "../../kit/arbitrary/arbitrary-plan.js";
import { bundle, component, line, made, meal } from "../../kit/builders.js";

const whole: BatchRule = { min: "1", max: null, increment: "1" };

const scaled = (of: PlanBundle, servings: number) => {
  const result = scalePlan(of, servings, noHousehold);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const left = (of: PlanBundle, servings: number) =>
  scaled(of, servings).warnings.flatMap((each) =>
    each.code === "LEFT_OVER" ? [[each.component, each.servingsMore]] : [],
  );

/** 100 g a head, in batches of so many grams. */
const pots = (...grams: readonly number[]): PlanBundle =>
  bundle(
    [
      meal(
        "m",
        grams.map((_, at) => line("100 g", made(`pot-${at}`))),
      ),
    ],
    grams.map((each, at) => component(`pot-${at}`, `${each} g`, [line("1 g", "salt")], { batch: whole })),
  );

describe("what is left over of a component", () => {
  it("is said with the number of servings it would still feed, each component with its own", () => {
    expect(left(pots(1_000, 600, 250, 100), 3)).toEqual([
      ["pot-0", 7],
      ["pot-1", 3],
      ["pot-2", 2],
    ]);
  });

  it("is said without a number where it does not feed one more", () => {
    expect(left(pots(350), 3)).toEqual([["pot-0", null]]);
  });

  it("is nothing to speak of where nothing is left", () => {
    expect(left(pots(300, 100), 3)).toEqual([]);
  });

  it("has no number where more servings never need more of it", () => {
    const fixed = bundle(
      [meal("m", [line("100 g", made("pot"), { rule: "PER_BATCH" })])],
      [component("pot", "1 kg", [line("1 g", "salt")], { batch: whole })],
    );
    expect(left(fixed, 3)).toEqual([["pot", null]]);
  });

  it("counts far beyond the next power of two", () => {
    expect(left(pots(100_100), 1)).toEqual([["pot-0", 1_000]]);
    expect(left(pots(102_300), 1)).toEqual([["pot-0", 1_022]]);
    expect(left(pots(102_400), 1)).toEqual([["pot-0", 1_023]]);
  });

  it("feeds so many more and not one more, in any plan", () => {
    fc.assert(
      fc.property(arbitraryPlan(), fc.integer({ min: 1, max: 20 }), (of, servings) => {
        const { components, warnings } = scaled(of, servings);
        const batchesAt = (count: number, slug: string): number =>
          scaled(of, count).components.find((each) => each.component.slug === slug)?.batches ?? Number.NaN;
        for (const warning of warnings.filter(({ code }) => code === "LEFT_OVER").slice(0, 3)) {
          if (warning.code !== "LEFT_OVER") continue;
          const now = components.find(({ component: { slug } }) => slug === warning.component)?.batches ?? Number.NaN;
          const next = servings + (warning.servingsMore ?? 0);
          expect(batchesAt(next, warning.component)).toBeLessThanOrEqual(now * (1 + 1e-9));
          if (warning.servingsMore !== null || batchesAt(next + 1_000, warning.component) > now * (1 + 1e-9)) {
            expect(batchesAt(next + 1, warning.component)).toBeGreaterThan(now);
          }
        }
      }),
      { ...everyRun, numRuns: 60 },
    );
  });
});
