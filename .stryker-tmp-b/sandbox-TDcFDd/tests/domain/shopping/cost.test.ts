// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { noHousehold } from "../../../src/domain/model/household.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import type { ShoppingList } from "../../../src/domain/plan/scaled.js";
import { costsOf, type LineCost } from "../../../src/domain/shopping/cost.js";
import { moneyParts } from "../../../src/domain/shopping/money.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { bundle, edible, food, line, meal, pack } from "../../kit/builders.js";

const xts = (amount: string) => ({ amount, currency: "XTS" });
const parts = (money: { readonly amount: string } | null): number => moneyParts(money?.amount ?? "") ?? NaN;

const listFor = (of: PlanBundle, servings: number): ShoppingList => {
  const scaled = scalePlan(of, servings, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return shop([scaled.value], noHousehold);
};

describe("what a list costs", () => {
  it("counts the peel: three pounds of peeled apples out of a ten-pound bag at 5.60 (O-32)", () => {
    // Yield 75 %: 3 lb ready are 4 lb bought, 0.4 of the bag. A college learning-centre handout on recipe costing gives
    // 7.465 for ten edible pounds; 3 of them are 2.24.
    const apples = food("apple", { packs: [pack("10 lb", "5.60")], edible: [edible(0.75, "peeled")] });
    const pie = meal("pie", [line("3 lb", "apple", { measured: "READY", form: "peeled" })]);
    const { lines, cost } = listFor(bundle([pie], [], [apples]), 1);
    expect(cost).toEqual({
      currency: "XTS",
      atTill: xts("5.60"),
      used: xts("2.24"),
      carriedOver: xts("3.36"),
      perServing: xts("2.24"),
      unpriced: [],
    });
    expect(lines.map((each) => each.cost)).toEqual([cost]);
  });

  it("names a food without a price and leaves it out of every sum", () => {
    const foods = [food("leek", { packs: [pack("500 g", "1.50")] }), food("truffle", { packs: [pack("10 g", null)] })];
    const soup = meal("soup", [line("250 g", "leek"), line("5 g", "truffle"), line("3 g", "saffron")]);
    const { lines, cost, warnings } = listFor(bundle([soup], [], foods), 2);
    expect(cost).toMatchObject({ atTill: xts("1.50"), used: xts("1.50"), perServing: xts("0.75") });
    expect(cost.unpriced).toEqual(["saffron", "truffle"]);
    expect(warnings.filter(({ code }) => code === "PRICE_UNKNOWN")).toHaveLength(2);
    const truffle = lines.find((each) => each.food.slug === "truffle")!;
    expect(truffle.buy.map(({ count }) => count)).toEqual([1]);
    expect(truffle.cost).toMatchObject({ atTill: null, used: null, carriedOver: null, perServing: null });
  });
});

describe("costs of lines", () => {
  it("are no money at all where no price is known", () => {
    const { list } = costsOf([{ food: "leek", atTill: null, usedShare: 0 }], 4, null);
    expect(list).toEqual({
      currency: null,
      atTill: null,
      used: null,
      carriedOver: null,
      perServing: null,
      unpriced: ["leek"],
    });
    expect(costsOf([{ food: "leek", atTill: null, usedShare: 0 }], 4, "XTS").list.atTill).toBeNull();
  });

  it("are nothing for a list on which nothing must be bought", () => {
    expect(costsOf([], 4, "XTS").list).toMatchObject({ atTill: xts("0.00"), used: xts("0.00"), unpriced: [] });
    const atHome = costsOf([{ food: "leek", atTill: 0, usedShare: 0 }], 4, "XTS");
    expect(atHome.list.perServing).toEqual(xts("0.00"));
  });

  it("name a food on two lines once", () => {
    const unknown = { food: "leek", atTill: null, usedShare: 0 };
    const known = { food: "kale", atTill: 100, usedShare: 1 };
    const { list, lines } = costsOf([unknown, known, unknown], 1, "XTS");
    expect(list.unpriced).toEqual(["leek"]);
    expect(list.atTill).toEqual(xts("0.01"));
    expect(lines.map(({ unpriced }) => unpriced)).toEqual([["leek"], [], ["leek"]]);
  });

  it("have no share of a serving where nobody eats", () => {
    expect(costsOf([{ food: "leek", atTill: 100, usedShare: 1 }], 0, "XTS").list.perServing).toBeNull();
  });

  it("round to the coins of the currency", () => {
    const third = { food: "rice", atTill: 1_000_000, usedShare: 1 / 3 };
    expect(costsOf([third], 2, "JPY").list).toMatchObject({
      atTill: { amount: "100" },
      used: { amount: "33" },
      carriedOver: { amount: "67" },
      perServing: { amount: "17" },
    });
    expect(costsOf([third], 2, "BHD").list).toMatchObject({
      used: { amount: "33.333" },
      perServing: { amount: "16.667" },
    });
  });

  const someLines = fc.array(
    fc.record<LineCost>({
      food: fc.constantFrom("leek", "kale", "rice", "oats"),
      atTill: fc.option(fc.integer({ min: 0, max: 1e7 }), { nil: null, freq: 6 }),
      usedShare: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    { maxLength: 30 },
  );

  it("add up to the list, and used and carried over to the till, to the last digit", () => {
    fc.assert(
      fc.property(someLines, fc.integer({ min: 1, max: 50 }), (given, servings) => {
        const { lines, list } = costsOf(given, servings, "XTS");
        for (const cost of [list, ...lines]) {
          if (cost.atTill === null) continue;
          expect(parts(cost.used) + parts(cost.carriedOver)).toBe(parts(cost.atTill));
        }
        const known = lines.filter(({ atTill }) => atTill !== null);
        fc.pre(known.length > 0);
        for (const key of ["atTill", "used", "carriedOver"] as const) {
          expect(known.reduce((sum, cost) => sum + parts(cost[key]), 0)).toBe(parts(list[key]));
        }
        expect(new Set(list.unpriced)).toEqual(
          new Set(given.flatMap((each) => (each.atTill === null ? [each.food] : []))),
        );
      }),
    );
  });

  it("for one serving are within half a coin of used over servings", () => {
    fc.assert(
      fc.property(someLines, fc.integer({ min: 1, max: 50 }), (given, servings) => {
        const { list } = costsOf(given, servings, "XTS");
        fc.pre(list.used !== null);
        expect(Math.abs(parts(list.perServing) - parts(list.used) / servings)).toBeLessThanOrEqual(50.001);
      }),
    );
  });
});
