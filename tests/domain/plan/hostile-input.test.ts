import { describe, expect, it } from "vitest";
import { limits } from "../../../src/domain/engine-limits.js";
import type { Component } from "../../../src/domain/model/component.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { checkBundle } from "../../../src/domain/plan/check/check-bundle.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import {
  bundle,
  component,
  density,
  edible,
  food,
  household,
  line,
  made,
  meal,
  own,
  pack,
  part,
  plan,
} from "../../kit/builders.js";

const simple = bundle(
  [meal("lunch", [line("1 batch", made("dal"))])],
  [component("dal", "1 kg", [line("500 g", "lentils")])],
);

/** Every number anywhere in an answer. */
function numbersIn(value: unknown, found: number[] = []): readonly number[] {
  const open: unknown[] = [value];
  const seen = new Set<unknown>();
  for (let next = open.pop(); open.length > 0 || next !== undefined; next = open.pop()) {
    if (typeof next === "number") found.push(next);
    if (typeof next !== "object" || next === null || seen.has(next)) continue;
    seen.add(next);
    open.push(...Object.values(next));
  }
  return found;
}

function answerOf(
  whole: PlanBundle,
  servings: number,
): { readonly refused: readonly string[] } | { readonly numbers: readonly number[] } {
  const result = scalePlan(whole, servings, noHousehold);
  if (!result.ok) return { refused: result.problems.map(({ code }) => code) };
  const list = shop([result.value], noHousehold);
  return {
    numbers: numbersIn([
      result.value.components.map(({ batches, loads, made: all, used, leftOver, lines }) => [
        batches,
        loads,
        all,
        used,
        leftOver,
        lines.map(({ amount, need }) => [amount, need?.high]),
      ]),
      list.lines.map(({ need, onHand, toBuy, buy }) => [need, onHand, toBuy, buy.map(({ count }) => count)]),
    ]),
  };
}

const within = (seconds: number, work: () => void): void => {
  const start = performance.now();
  work();
  expect((performance.now() - start) / 1000).toBeLessThan(seconds);
};

/** `count` components, each made from the one before. */
const chain = (count: number, facts: Partial<Component> = {}): PlanBundle =>
  bundle(
    [meal("lunch", [line("1/2 batch", made(`c${count - 1}`))])],
    Array.from({ length: count }, (_, at) =>
      component(
        `c${at}`,
        "1 kg",
        at === 0 ? [line("1 kg", "flour")] : [line("7/8 batch", made(`c${at - 1}`)), line("1 g", "salt")],
        facts,
      ),
    ),
  );

describe("servings nobody can mean", () => {
  it.each([0, -1, 1.5, Number.NaN, Infinity, -Infinity, 1e9, limits.servings + 1])("refuses %s", (servings) => {
    expect(scalePlan(simple, servings, noHousehold)).toEqual({
      ok: false,
      problems: [{ code: "SERVINGS_OUT_OF_RANGE", path: ["servings"], value: servings, min: 1, max: limits.servings }],
    });
  });

  it("answers one serving and the most it takes", () => {
    for (const servings of [1, limits.servings]) expect(scalePlan(simple, servings, noHousehold).ok).toBe(true);
  });
});

describe("numbers at the edge of what a double holds", () => {
  it("stay finite and not negative, or are refused with a code", () => {
    const edge = food("edge", {
      densities: [density(1e-6)],
      measures: [own("piece", { grams: 1e9 }), own("grain", { grams: 1e-6, pieces: 1e-6 })],
      parts: [part("drop", "1/1000000 g"), part("sea", "1000000000 l")],
      edible: [edible(0.001)],
      packs: [pack("1 g", "0.01"), pack("1000000000 kg", "999999999.9999")],
    });
    const amounts = ["1000000000 kg", "1/9007199254740991 g", "1000000000 own:grain", "1000000000 us-gallon"];
    for (const amount of amounts) {
      for (const item of ["edge", "plain"]) {
        const whole = bundle(
          [
            meal(
              "m",
              [
                line(amount.startsWith("1000000000 own") && item === "plain" ? "1 g" : amount, item, {
                  measured: "READY",
                }),
                line("1 batch", made("c")),
              ],
              { serves: 1 },
            ),
          ],
          [component("c", "1/1000 g", [line(amount.replace("own:grain", "g"), item)])],
          [edge],
        );
        for (const servings of [1, limits.servings]) {
          const answer = answerOf(whole, servings);
          if ("refused" in answer) expect(answer.refused).toContain("AMOUNT_OUT_OF_RANGE");
          else
            for (const value of answer.numbers)
              expect(Number.isFinite(value) && value >= 0, `${amount} ${item} ${value}`).toBe(true);
        }
      }
    }
  });

  it("refuses more batches than can be made, and names the component", () => {
    const crumbs = bundle([meal("m", [line("1 kg", made("c"))])], [component("c", "1/100000 g", [line("1 g", "x")])]);
    expect(scalePlan(crumbs, 1_000, noHousehold)).toMatchObject({
      ok: false,
      problems: [{ code: "AMOUNT_OUT_OF_RANGE", path: ["components", "c"], min: 0, max: limits.batches }],
    });
  });

  it("refuses a chain of components that grows beyond every bound", () => {
    const exploding = bundle(
      [meal("m", [line("1 batch", made("c40"))])],
      Array.from({ length: 41 }, (_, at) =>
        component(`c${at}`, "1 kg", at === 0 ? [line("1 kg", "x")] : [line("1000000 batch", made(`c${at - 1}`))]),
      ),
    );
    expect(answerOf(exploding, 1)).toEqual({ refused: ["AMOUNT_OUT_OF_RANGE"] });
  });
});

describe("very large plans", () => {
  it("are answered in bounded time: two thousand components in a chain, each in whole batches", () => {
    within(5, () => {
      const whole = chain(2_000, { batch: { min: "1", max: null, increment: "1" } });
      const answer = answerOf(whole, 7);
      expect("numbers" in answer && answer.numbers.length).toBeGreaterThan(10_000);
    });
  });

  it("are answered in bounded time: ten thousand lines on a hundred foods", () => {
    within(5, () => {
      const lines = Array.from({ length: 10_000 }, (_, at) => line("5 g", `food-${at % 100}`));
      const result = scalePlan(bundle([meal("m", lines)]), 12, noHousehold);
      if (!result.ok) throw new Error("refused");
      const list = shop([result.value], noHousehold);
      expect(list.lines).toHaveLength(100);
      expect(list.lines[0]?.need?.high).toBeCloseTo(6_000, 6);
    });
  });

  it("are refused beyond the limits, before anything is computed", () => {
    const sizes = (whole: PlanBundle) =>
      checkBundle(whole).map((problem) => (problem.code === "TOO_LARGE" ? [problem.what, problem.size] : problem.code));
    const flour = food("flour");
    const lines = Array.from({ length: limits.lines + 1 }, () => line("1 g", "flour"));
    expect(sizes({ plan: plan([meal("m", lines)]), components: [], foods: [flour] })).toEqual([
      ["lines", limits.lines + 1],
    ]);
    const meals = Array.from({ length: limits.meals + 1 }, (_, at) => meal(`m${at}`, []));
    expect(sizes({ plan: plan(meals), components: [], foods: [] })).toEqual([["meals", limits.meals + 1]]);
    const foods = Array.from({ length: limits.foods + 1 }, (_, at) => ({ ...flour, slug: `f${at}` }));
    expect(sizes({ plan: plan([meal("m", [])]), components: [], foods })).toEqual([["foods", limits.foods + 1]]);
    const dal = component("dal", "1 kg", []);
    const components = Array.from({ length: limits.components + 1 }, (_, at) => ({ ...dal, slug: `c${at}` }));
    expect(sizes({ plan: plan([meal("m", [])]), components, foods: [] })).toEqual([
      ["components", limits.components + 1],
    ]);
    const packs = Array.from({ length: 1_001 }, (_, at) => pack("1 g", "1.00", { id: `p${at}` }));
    expect(sizes(bundle([meal("m", [line("1 g", "flour")])], [], [food("flour", { packs })]))).toEqual([
      ["packs", 1_001],
    ]);
  });

  it("are checked in bounded time when everything leads back to everything", () => {
    within(10, () => {
      const size = 300;
      const knot = bundle(
        [meal("m", [line("1 batch", made("c0"))])],
        Array.from({ length: size }, (_, at) =>
          component(
            `c${at}`,
            "1 kg",
            Array.from({ length: 60 }, (_unused, to) => line("1 batch", made(`c${(at + to + 1) % size}`))),
          ),
        ),
      );
      const cycles = checkBundle(knot);
      expect(cycles.length).toBeGreaterThan(0);
      expect(JSON.stringify(cycles).length).toBeLessThan(50_000_000);
    });
  });
});

describe("very long texts", () => {
  const long = "x".repeat(1_000_000);
  it("are refused with their size, and never repeated in full", () => {
    within(5, () => {
      const faulty: readonly PlanBundle[] = [
        bundle(plan([meal("m", [line("1 g", "flour")])], { title: long })),
        bundle([meal(long, [line("1 g", "flour")])]),
        bundle([meal("m", [line("1 g", "flour", { id: long })])]),
        bundle([meal("m", [line("1 g", "flour", { written: long })])]),
        bundle(
          [meal("m", [line("1 g", "flour")])],
          [],
          [food("flour", { names: [{ language: "en", region: null, one: long, many: "x", also: [] }] })],
        ),
        bundle([meal("m", [line("1 g", long)])]),
        bundle([meal("m", [line("1 batch", made(long))])], [component(long, "1 kg", [])]),
      ];
      for (const whole of faulty) {
        const problems = checkBundle(whole);
        expect(problems).toContainEqual(expect.objectContaining({ code: "TOO_LARGE", size: long.length }));
        expect(JSON.stringify(problems).length).toBeLessThan(10_000);
      }
      const unit = bundle([meal("m", [{ ...line("1 g", "flour"), amount: { low: "1", high: "1", unit: long } }])]);
      expect(checkBundle(unit)).toMatchObject([{ code: "UNKNOWN_UNIT" }]);
      expect(JSON.stringify(checkBundle(unit)).length).toBeLessThan(10_000);
      const amount = bundle([
        meal("m", [{ ...line("1 g", "flour"), amount: { low: "9".repeat(1e6), high: "1", unit: "g" } }]),
      ]);
      expect(checkBundle(amount)).toMatchObject([{ code: "BAD_AMOUNT", why: "NOT_A_NUMBER" }]);
    });
  });
});

describe("households nobody has", () => {
  it("are refused before anything is computed", () => {
    expect(scalePlan(simple, 2, household({ session: { start: "soon", zone: "here" } })).ok).toBe(false);
    const entries = Array.from({ length: 1_001 }, () => ({ from: "a", to: "b" }));
    expect(scalePlan(simple, 2, household({ swaps: entries }))).toMatchObject({
      ok: false,
      problems: [{ code: "TOO_LARGE" }],
    });
  });
});
