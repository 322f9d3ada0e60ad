import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Household } from "../../src/domain/model/household.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { shop } from "../../src/domain/plan/shop.js";
import { readHousehold, type GivenHousehold } from "../../src/services/answers/read-household.js";
import { arbitraryCase, everyRun } from "../kit/arbitrary/arbitrary-plan.js";

const rules = ["vegan", "vegetarian", "gluten-free"].map((code) => ({ code }));

/** The household as its reader would send it. */
const sentBy = (at: Household, diets: readonly string[]): GivenHousehold => ({
  region: at.region,
  currency: at.currency,
  diets,
  swaps: at.swaps,
  routes: at.routes,
  onHand: at.onHand.map(({ item, ...rest }) => ({
    ...rest,
    ...(item.kind === "FOOD" ? { food: item.food } : { component: item.component }),
  })),
  sessionStart: at.session === null ? null : { instant: at.session.start, zone: at.session.zone },
});

const readOf = (given: GivenHousehold, bundle: PlanBundle): Household => {
  const read = readHousehold(given, [bundle], rules);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};

const doubled = <T>(entries: readonly T[] | null | undefined, often: number): readonly T[] =>
  Array.from({ length: often }, () => entries ?? []).flat();

/** A plan's scaled parts and its list, as text: all that is said. */
const answerFor = (bundle: PlanBundle, servings: number, household: Household): string => {
  const scaled = scalePlan(bundle, servings, household);
  if (!scaled.ok) return JSON.stringify(scaled.problems);
  return JSON.stringify([scaled.value, shop([scaled.value], household)]);
};

const asked = fc.record({
  at: arbitraryCase(),
  diets: fc.subarray(rules.map(({ code }) => code)),
  often: fc.integer({ min: 2, max: 4 }),
});

describe("what a household says twice", () => {
  it("changes nothing where it is a set: diets, swaps, routes", () => {
    fc.assert(
      fc.property(asked, ({ at: { bundle, at, servings }, diets, often }) => {
        const once = sentBy(at, diets);
        const again: GivenHousehold = {
          ...once,
          diets: doubled(once.diets, often),
          swaps: doubled(once.swaps, often),
          routes: { ...once.routes, byName: doubled(once.routes?.byName, often) },
        };
        expect(readOf(again, bundle)).toEqual(readOf(once, bundle));
        expect(answerFor(bundle, servings, readOf(again, bundle))).toBe(
          answerFor(bundle, servings, readOf(once, bundle)),
        );
      }),
      { ...everyRun, numRuns: 60 },
    );
  });

  it("is twice as much where it is an amount: things on hand are read as one line with their sum", () => {
    fc.assert(
      fc.property(asked, ({ at: { bundle, at, servings }, diets, often }) => {
        const once = sentBy(at, diets);
        const lines = once.onHand ?? [];
        fc.pre(lines.every(({ amount }) => /^\d+$/.test(amount)));
        const sums = lines.map((line) => ({ ...line, amount: String(Number(line.amount) * often) }));
        const read = readOf({ ...once, onHand: doubled(lines, often) }, bundle);
        expect(read.onHand).toEqual(readOf({ ...once, onHand: sums }, bundle).onHand);
        expect(answerFor(bundle, servings, read)).toBe(
          answerFor(bundle, servings, readOf({ ...once, onHand: sums }, bundle)),
        );
      }),
      { ...everyRun, numRuns: 60 },
    );
  });
});

describe("what a household says twice and cannot be taken once", () => {
  const oneLine = { food: "carrot", unit: "g" };

  it("stands for itself: other amounts below nothing, days, units and forms", () => {
    const read = readHousehold(
      {
        onHand: [
          { ...oneLine, amount: "500" },
          { ...oneLine, amount: "1/4" },
          { ...oneLine, amount: "500", useBy: "2026-04-01" },
          { ...oneLine, amount: "500", unit: "kg" },
          { ...oneLine, amount: "500", asOtherForm: true },
          { component: "carrot", unit: "g", amount: "500" },
          { ...oneLine, amount: "1/4" },
        ],
      },
      [],
      rules,
    );
    const lines = read.ok ? read.value.onHand : [];
    // The places are those of what was written: warnings name them.
    expect(lines.map(({ amount, place }) => [amount, place])).toEqual([
      ["1001/2", undefined],
      ["500", 2],
      ["500", 3],
      ["500", 4],
      ["500", 5],
    ]);
  });
});
