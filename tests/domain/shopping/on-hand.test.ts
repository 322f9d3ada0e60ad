import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { takeFromStock } from "../../../src/domain/shopping/on-hand.js";

const stock = (amount: number, lastDay: number | null = null) => ({ amount, lastDay });
/** What each day needs, from day 0 on. */
const daily =
  (...needs: readonly number[]) =>
  (day: number): number =>
    needs.slice(0, day + 1).reduce((sum, each) => sum + each, 0);

describe("what is on hand", () => {
  it("covers no more than is needed, and no more than is there", () => {
    expect(takeFromStock(500, [stock(200)], daily(500))).toEqual([200]);
    expect(takeFromStock(500, [stock(800)], daily(500))).toEqual([500]);
    expect(takeFromStock(500, [], daily(500))).toEqual([]);
    expect(takeFromStock(0, [stock(800)], daily(0))).toEqual([0]);
  });

  it("is used up in the order in which it goes off, what has no date last", () => {
    const need = daily(100, 100, 100);
    expect(takeFromStock(300, [stock(150), stock(100, 2), stock(100, 0)], need)).toEqual([100, 100, 100]);
  });

  it("covers only what is eaten up to its date", () => {
    expect(takeFromStock(300, [stock(250, 1)], daily(100, 50, 150))).toEqual([150]);
    expect(takeFromStock(300, [stock(250, 0), stock(100, 1)], daily(100, 50, 150))).toEqual([100, 50]);
  });

  it("leaves to what keeps longer what goes off too soon for it", () => {
    expect(takeFromStock(300, [stock(100, 0), stock(100, 2), stock(100)], daily(50, 0, 250))).toEqual([50, 100, 100]);
  });

  it("covers as much as any way of handing it out could", () => {
    const needs = fc.array(fc.nat(50), { minLength: 1, maxLength: 5 });
    const stocks = fc.array(fc.record({ amount: fc.nat(80), lastDay: fc.option(fc.nat(5)) }), { maxLength: 5 });
    fc.assert(
      fc.property(needs, stocks, (eaten, there) => {
        const until = daily(...eaten);
        const need = until(eaten.length - 1);
        const taken = takeFromStock(need, there, until);
        // A flow is as large as its smallest cut: what is needed up to a day, and whatever keeps longer than that.
        const after = (day: number): number =>
          there.reduce((sum, { amount, lastDay }) => (lastDay === null || lastDay > day ? sum + amount : sum), 0);
        const cuts = [-1, 0, 1, 2, 3, 4, 5].map((day) => until(day) + after(day));
        expect(taken.reduce((sum, each) => sum + each, 0)).toBe(Math.min(need, ...cuts));
        taken.forEach((each, at) => expect(each >= 0 && each <= there[at]!.amount).toBe(true));
      }),
    );
  });
});
