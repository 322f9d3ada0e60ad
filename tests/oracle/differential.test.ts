import fc from "fast-check";
import { Fraction } from "fraction.js";
import { describe, expect, it } from "vitest";
import type { BaseAmount } from "../../src/domain/model/amount.js";
import { noHousehold, type Household, type OnHand } from "../../src/domain/model/household.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { checkBundle } from "../../src/domain/plan/check/check-bundle.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import type { ScaledPlan, ShoppingList } from "../../src/domain/plan/scaled.js";
import { shop } from "../../src/domain/plan/shop.js";
import { arbitraryBundle, arbitraryStock } from "../kit/arbitrary/arbitrary-bundle.js";
import { asWritten, converted, exactly, zero } from "./exact-amounts.js";
import { exactList } from "./exact-list.js";
import { exactPlan, type ExactPlan } from "./exact-plan.js";

/** Nine digits of the larger of the value and the size it was subtracted from. */
const agrees = (got: number, want: Fraction, what: string, size = Math.abs(want.valueOf())): void => {
  if (Number.isFinite(got) && Math.abs(got - want.valueOf()) <= 1e-9 * Math.max(size, 1e-6)) return;
  expect.fail(`${what}: engine ${got}, oracle ${want.valueOf()} (${want.toFraction()})`);
};

const agreesAmount = (got: BaseAmount, low: Fraction, high: Fraction, what: string): void => {
  agrees(got.low, low, `${what}, low`);
  agrees(got.high, high, `${what}, high`);
};

const scaledBy = (bundle: PlanBundle, servings: number, household: Household): ScaledPlan => {
  const result = scalePlan(bundle, servings, household);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

function comparePlans(got: ScaledPlan, want: ExactPlan): void {
  expect(got.components.map(({ component }) => component.slug).toSorted()).toEqual([...want.components.keys()].sort());
  for (const { component, batches, loads, used, made, leftOver, lines } of got.components) {
    const expected = want.components.get(component.slug)!;
    agrees(batches, expected.batches, `batches of ${component.slug}`);
    expect(loads, `loads of ${component.slug}`).toBe(expected.loads);
    agreesAmount(used, expected.usedLow, expected.usedHigh, `used of ${component.slug}`);
    agreesAmount(made, expected.madeLow, expected.madeHigh, `made of ${component.slug}`);
    const size = made.high;
    agrees(leftOver.low, expected.madeLow.sub(expected.usedHigh), `least left of ${component.slug}`, size);
    agrees(leftOver.high, expected.madeHigh.sub(expected.usedLow), `most left of ${component.slug}`, size);
    for (const { line, amount } of lines) {
      const use = want.uses.find((each) => each.component?.slug === component.slug && each.line.id === line.id)!;
      if (amount === null) expect(use.amount).toBeNull();
      else agreesAmount(amount, use.amount!.low, use.amount!.high, `${component.slug}, ${line.written}`);
    }
  }
  for (const { meal, lines } of got.meals) {
    for (const { line, amount } of lines) {
      const use = want.uses.find((each) => each.meal?.slug === meal.slug && each.line.id === line.id)!;
      if (amount === null) expect(use.amount).toBeNull();
      else agreesAmount(amount, use.amount!.low, use.amount!.high, `${meal.slug}, ${line.written}`);
    }
  }
}

function compareLists(got: ShoppingList, want: ReturnType<typeof exactList>): void {
  const key = ({ food, dimension }: { food: string; dimension: string | null }): string =>
    `${food} ${dimension ?? "-"}`;
  const keys = got.lines.map(({ food, need }) => key({ food: food.slug, dimension: need?.dimension ?? null }));
  expect(keys.toSorted()).toEqual(want.map(key).toSorted());
  got.lines.forEach(({ need, onHand, toBuy, uses }, at) => {
    const expected = want.find((each) => key(each) === keys[at])!;
    expect(uses.length, `uses of ${keys[at]}`).toBe(expected.uses);
    if (need === null || onHand === null || toBuy === null) return;
    agreesAmount(need, expected.low, expected.high, `need of ${keys[at]}`);
    agrees(onHand.high, expected.onHand, `on hand of ${keys[at]}`, need.high);
    agrees(toBuy.high, expected.toBuy, `to buy of ${keys[at]}`, need.high);
  });
}

const foodStock = (stock: readonly OnHand[]): { food: string; amount: string; unit: string }[] =>
  stock.flatMap(({ item, amount, unit }) => (item.kind === "FOOD" ? [{ food: item.food, amount, unit }] : []));

const servings = fc.oneof(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 1_000_000 }));

describe("the engine against a slow and exact reading of the design", () => {
  it("agrees on every figure of a plan and of its list", () => {
    fc.assert(
      fc.property(
        arbitraryBundle({ components: 12, meals: 4, linesEach: 5, smooth: false }),
        servings,
        arbitraryStock,
        (bundle, count, stock) => {
          expect(checkBundle(bundle)).toEqual([]);
          const household = { ...noHousehold, onHand: stock };
          const got = scaledBy(bundle, count, household);
          const plan = exactPlan(bundle, new Fraction(count), new Map());
          comparePlans(got, plan);
          compareLists(shop([got], household), exactList([{ bundle, plan }], foodStock(stock)));
        },
      ),
      { numRuns: 150 },
    );
  });

  it("agrees on one list over a dozen plans, and on graphs of sixty components", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            arbitraryBundle({ components: 60, meals: 3, linesEach: 3, smooth: false }),
            fc.integer({ min: 1, max: 40 }),
          ),
          { minLength: 2, maxLength: 12 },
        ),
        (portions) => {
          const plans = portions.map(([bundle, count]) => {
            const got = scaledBy(bundle, count, noHousehold);
            const plan = exactPlan(bundle, new Fraction(count), new Map());
            comparePlans(got, plan);
            return { bundle, got, plan };
          });
          compareLists(
            shop(
              plans.map(({ got }) => got),
              noHousehold,
            ),
            exactList(plans, []),
          );
        },
      ),
      { numRuns: 12 },
    );
  });

  it("agrees when eaters eat shares of a serving", () => {
    fc.assert(
      fc.property(
        arbitraryBundle({ components: 6, meals: 3, linesEach: 4, smooth: false }),
        fc.array(
          fc.record({
            count: fc.integer({ min: 1, max: 5 }),
            portion: fc.constantFrom("1", "1/2", "3/2", "2/3", "3/4"),
          }),
          { minLength: 1, maxLength: 3 },
        ),
        (bundle, eaters) => {
          const people = eaters.reduce((sum, { count }) => sum + count, 0);
          const eaten = eaters.reduce((sum, { count, portion }) => sum.add(exactly(portion).mul(count)), zero);
          comparePlans(scaledBy(bundle, people, { ...noHousehold, eaters }), exactPlan(bundle, eaten, new Map()));
        },
      ),
      { numRuns: 50 },
    );
  });

  it("agrees when components are there already", () => {
    fc.assert(
      fc.property(
        arbitraryBundle({ components: 8, meals: 3, linesEach: 3, smooth: false }),
        fc.integer({ min: 1, max: 30 }),
        fc.array(fc.tuple(fc.nat(7), fc.integer({ min: 1, max: 90 }), fc.constantFrom("g", "ml", "us-cup", "piece")), {
          maxLength: 4,
        }),
        (bundle, count, stock) => {
          const entries = stock.flatMap(([nth, amount, unit]) => {
            const component = bundle.components[nth];
            return component === undefined ? [] : [{ component, amount: String(amount), unit }];
          });
          const exact = new Map<string, Fraction>();
          for (const { component, amount, unit } of entries) {
            const { dimension } = asWritten(component.yield.amount, component, null)!;
            const base = asWritten({ low: amount, high: amount, unit }, component, dimension)!;
            const { low } = converted(base, dimension, component, null)!;
            exact.set(component.slug, (exact.get(component.slug) ?? zero).add(low));
          }
          const onHand = entries.map(({ component, amount, unit }): OnHand => ({
            item: { kind: "COMPONENT", component: component.slug },
            amount,
            unit,
            useBy: null,
            asOtherForm: false,
          }));
          comparePlans(
            scaledBy(bundle, count, { ...noHousehold, onHand }),
            exactPlan(bundle, new Fraction(count), exact),
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
