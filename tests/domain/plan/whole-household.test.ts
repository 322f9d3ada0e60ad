import fc from "fast-check";
import { Fraction } from "fraction.js";
import { describe, expect, it } from "vitest";
import type { Household } from "../../../src/domain/model/household.js";
import type { Line } from "../../../src/domain/model/line.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { bundleOf } from "../../../src/domain/plan/compile/plan-bundle.js";
import { scalePlan, scalePlans } from "../../../src/domain/plan/scale-plan.js";
import type { ScaledPlan, ShoppingList } from "../../../src/domain/plan/scaled.js";
import { shop } from "../../../src/domain/plan/shop.js";
import type { Cost } from "../../../src/domain/shopping/cost.js";
import { moneyParts } from "../../../src/domain/shopping/money.js";
import {
  arbitraryCase,
  arbitraryHousehold,
  arbitraryPlan,
  arbitraryPlans,
  everyRun,
  madeUpHousehold,
} from "../../kit/arbitrary/arbitrary-plan.js";

const scaledBy = (bundle: PlanBundle, servings: number, at: Household): ScaledPlan => {
  const result = scalePlan(bundle, servings, at);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

/** The plan as its writer would have written it with these swaps and routes in the first place. */
function rewritten({ plan, components, foods }: PlanBundle, at: Household): PlanBundle {
  const withSwap = (line: Line): Line => {
    const { item, amount } = line;
    if (item.kind !== "FOOD") return line;
    const wish = at.swaps.find(({ from, to }) => from === item.food && line.swaps.some(({ food }) => food === to));
    const swap = line.swaps.find(({ food }) => food === wish?.to);
    if (swap === undefined) return { ...line, swaps: [] };
    const times = (text: string): string => new Fraction(text).mul(new Fraction(swap.ratio)).toFraction();
    return {
      ...line,
      item: { kind: "FOOD", food: swap.food, part: null },
      amount: amount === null ? null : { ...amount, low: times(amount.low), high: times(amount.high) },
      swaps: [],
    };
  };
  return bundleOf(
    { ...plan, meals: plan.meals.map((meal) => ({ ...meal, lines: meal.lines.map(withSwap) })) },
    components.map((component) => {
      const wanted = at.routes.byName.find((each) => each.component === component.slug)?.route;
      const route = component.routes.find(({ name }) => name === wanted);
      return { ...component, lines: (route?.lines ?? component.lines).map(withSwap), routes: [] };
    }),
    foods,
  );
}

const figures = (scaled: ScaledPlan, list: ShoppingList) => ({
  components: scaled.components
    .map(({ component: { slug }, batches, loads, made, used, leftOver, onHand }) => ({
      slug,
      batches,
      loads,
      made,
      used,
      leftOver,
      onHand,
    }))
    .toSorted((a, b) => (a.slug < b.slug ? -1 : 1)),
  lines: list.lines.map(({ food, need, onHand, toBuy, buy, cost, uses }) => ({
    food: food.slug,
    need,
    onHand,
    toBuy,
    buy: buy.map(({ pack, count }) => [pack.id, count]),
    cost,
    uses: uses.map(({ meal, component, part, amount }) => ({ from: meal?.slug ?? component?.slug, part, amount })),
  })),
  cost: list.cost,
});

/** Doubles that were added up in another order differ in their last digits. */
const rounded = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_key, each: unknown) => (typeof each === "number" ? Number(each.toPrecision(9)) : each)),
  );

const parts = (money: Cost["atTill"]): number => moneyParts(money?.amount ?? "none") ?? Number.NaN;

describe("what a household wishes", () => {
  it("is computed whole: as if the plan had been written with these swaps and routes", () => {
    fc.assert(
      fc.property(arbitraryCase(), ({ bundle, at, servings }) => {
        const plainly = { ...at, swaps: [], routes: { mode: "AS_WRITTEN" as const, byName: [] } };
        const [asked, written] = [scaledBy(bundle, servings, at), scaledBy(rewritten(bundle, at), servings, plainly)];
        expect(rounded(figures(asked, shop([asked], at)))).toEqual(rounded(figures(written, shop([written], plainly))));
      }),
      { ...everyRun, numRuns: 60 },
    );
  });

  it("never takes more off a need than is needed or there, and never leaves a crumb to buy", () => {
    fc.assert(
      fc.property(arbitraryCase(), ({ bundle, at, servings }) => {
        const bare = { ...at, onHand: [] };
        const [list, without] = [
          shop([scaledBy(bundle, servings, at)], at),
          shop(
            [
              scaledBy(bundle, servings, {
                ...bare,
                onHand: at.onHand.filter(({ item }) => item.kind === "COMPONENT"),
              }),
            ],
            bare,
          ),
        ];
        for (const [index, { need, onHand, toBuy }] of list.lines.entries()) {
          if (need === null) continue;
          expect(need).toEqual(without.lines[index]?.need);
          expect(onHand?.high).toBeGreaterThanOrEqual(0);
          expect(onHand?.high).toBeLessThanOrEqual(need.high);
          const left = toBuy?.high ?? Number.NaN;
          expect(left === 0 || left > need.high * 1e-9).toBe(true);
        }
      }),
      { ...everyRun, numRuns: 60 },
    );
  });
});

describe("what a list costs", () => {
  it("is at the till exactly what is eaten and what is carried over, line by line and in all", () => {
    let priced = 0;
    fc.assert(
      fc.property(arbitraryPlans(), fc.integer({ min: 1, max: 30 }), (bundles, servings) => {
        const [first] = bundles;
        if (first === undefined) return;
        const at = {
          ...madeUpHousehold(first, servings),
          swaps: [],
          routes: { mode: "AS_WRITTEN" as const, byName: [] },
        };
        const result = scalePlans(
          bundles.map((bundle) => ({ bundle, servings })),
          at,
        );
        if (!result.ok) throw new Error(JSON.stringify(result.problems));
        const { lines, cost } = shop(result.value, at);
        const known = lines.filter((line) => line.cost.atTill !== null);
        for (const line of known) {
          priced += 1;
          expect(parts(line.cost.used) + parts(line.cost.carriedOver)).toBe(parts(line.cost.atTill));
          expect(parts(line.cost.used)).toBeGreaterThanOrEqual(0);
          const till = line.buy.reduce((sum, { pack, count }) => sum + count * parts(pack.price), 0);
          expect(parts(line.cost.atTill)).toBe(till);
        }
        const unknown = lines.flatMap(({ cost: { atTill }, food }) => (atTill === null ? [food.slug] : []));
        expect(cost.unpriced).toEqual([...new Set(unknown)]);
        if (known.length === 0) return;
        for (const share of ["atTill", "used", "carriedOver"] as const) {
          expect(known.reduce((sum, line) => sum + parts(line.cost[share]), 0)).toBe(parts(cost[share]));
        }
        const people = servings * bundles.length;
        expect(Math.abs(parts(cost.perServing) * people - parts(cost.used))).toBeLessThanOrEqual(50 * people);
      }),
      { ...everyRun, numRuns: 60 },
    );
    expect(priced).toBeGreaterThan(100);
  });

  it("is never more on the cheapest routes than on any other choice of them", () => {
    let compared = 0;
    fc.assert(
      fc.property(
        arbitraryPlan().chain((bundle) => fc.tuple(fc.constant(bundle), arbitraryHousehold(bundle))),
        fc.integer({ min: 1, max: 30 }),
        ([bundle, somebody], servings) => {
          const routed = bundle.components.filter(({ routes }) => routes.length > 0).map(({ slug }) => slug);
          if (routed.length === 0 || routed.length > 4) return;
          const by = (mode: "AS_WRITTEN" | "CHEAPEST", chosen: readonly string[]): readonly [number, number] => {
            const byName = chosen.map((component) => ({ component, route: "bought" }));
            const at = { ...somebody, routes: { mode, byName } };
            const { unpriced, atTill } = shop([scaledBy(bundle, servings, at)], at).cost;
            return [unpriced.length, atTill === null ? 0 : parts(atTill)];
          };
          const [unknown, till] = by("CHEAPEST", []);
          for (let choice = 0; choice < 2 ** routed.length; choice++) {
            const [otherUnknown, otherTill] = by(
              "AS_WRITTEN",
              routed.filter((_, at) => (choice >> at) % 2 === 1),
            );
            expect(unknown).toBeLessThanOrEqual(otherUnknown);
            if (unknown === otherUnknown) expect(till).toBeLessThanOrEqual(otherTill);
            compared += 1;
          }
        },
      ),
      { ...everyRun, numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(50);
  });
});
