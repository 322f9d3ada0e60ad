// @ts-nocheck
import { describe, expect, it } from "vitest";
import { noHousehold } from "../../../src/domain/model/household.js";
import { mostRows, servingsTable, type ServingsRow } from "../../../src/domain/plan/servings-table.js";
import { bundle, component, food, line, made, meal, onHand, pack } from "../../kit/builders.js";

/** A pot of 6 portions, cooked whole, from 500 g of beans in bags of 800 g. */
const pot = component("pot", "600 g", [line("500 g", "beans"), line("6 g", "salt")], {
  batch: { min: "1", max: null, increment: "1" },
});
const beans = food("beans", { packs: [pack("800 g", "1.60")] });
const plan = bundle([meal("bowl", [line("100 g", made("pot"))])], [pot], [beans]);

const table = (from: number, to: number): readonly ServingsRow[] => {
  const result = servingsTable(plan, from, to, noHousehold);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe("the table of servings", () => {
  it("says at which numbers the plan comes out even", () => {
    const rows = table(1, 13);
    expect(rows.map(({ servings }) => servings)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13]);
    expect(rows.filter(({ even }) => even).map(({ servings }) => servings)).toEqual([6, 12]);
  });

  it("gives the share of what is made that is left over, and of what is bought that is not used", () => {
    const [three] = table(3, 3);
    expect(three!.leftOverShare).toBeCloseTo(1 / 2, 12);
    expect(three!.packWasteShare).toBeCloseTo(300 / 800, 12);
    const [seven] = table(7, 7);
    expect(seven!.leftOverShare).toBeCloseTo(500 / 1200, 12);
    expect(seven!.packWasteShare).toBeCloseTo(600 / 1600, 12);
    expect(table(6, 6)[0]!.leftOverShare).toBe(0);
  });

  it("gives the cost at the till and of a serving: 500 of 800 g at 1.60 are 1.00", () => {
    const [four] = table(4, 4);
    expect(four!.atTill).toEqual({ amount: "1.60", currency: "XTS" });
    expect(four!.perServing).toEqual({ amount: "0.25", currency: "XTS" });
  });

  it("counts nothing as wasted where nothing is bought or made", () => {
    const stocked = { ...noHousehold, onHand: [onHand("beans", "1 kg"), onHand("salt", "1 kg")] };
    const result = servingsTable(plan, 6, 6, stocked);
    expect(result.ok && result.value[0]!.packWasteShare).toBe(0);
    const potThere = {
      ...noHousehold,
      onHand: [onHand("pot", "600 g", { item: { kind: "COMPONENT", component: "pot" } })],
    };
    const nothing = servingsTable(plan, 6, 6, potThere);
    expect(nothing.ok && nothing.value[0]).toMatchObject({ leftOverShare: 0, packWasteShare: 0, even: true });
  });

  it("refuses servings it cannot scale to, and more rows than anybody reads", () => {
    expect(servingsTable(plan, 0, 4, noHousehold)).toMatchObject({
      ok: false,
      problems: [{ code: "SERVINGS_OUT_OF_RANGE", path: ["from"], value: 0 }],
    });
    expect(servingsTable(plan, 1, 2.5, noHousehold)).toMatchObject({ problems: [{ path: ["to"], value: 2.5 }] });
    expect(servingsTable(plan, 1, 1_000_001, noHousehold)).toMatchObject({ problems: [{ path: ["to"] }] });
    expect(servingsTable(plan, 1, mostRows + 1, noHousehold)).toMatchObject({
      problems: [{ code: "TOO_LARGE", path: ["to"], what: "rows", size: mostRows + 1, limit: mostRows }],
    });
    const last = servingsTable(plan, 1, mostRows, noHousehold);
    expect(last.ok && last.value.length).toBe(mostRows);
  });

  it("goes to the most servings there are", () => {
    const most = servingsTable(plan, 1_000_000, 1_000_000, noHousehold);
    expect(most.ok && most.value.map(({ servings }) => servings)).toEqual([1_000_000]);
  });

  it("averages over components, and over foods bought in packs", () => {
    const half = { ...pot, slug: "half", batch: { min: "1/2", max: null, increment: "1/2" } };
    const both = bundle(
      [meal("bowl", [line("100 g", made("pot")), line("100 g", made("half"))])],
      [pot, half],
      [beans, food("salt", { packs: [pack("10 g", "0.10")] })],
    );
    const result = servingsTable(both, 3, 3, noHousehold);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    // A whole pot and half of one for six portions: 750 g of beans from one bag, 9 g of salt from one box.
    expect(result.value[0]!.leftOverShare).toBeCloseTo((1 / 2 + 0) / 2, 12);
    expect(result.value[0]!.packWasteShare).toBeCloseTo((50 / 800 + 1 / 10) / 2, 12);
  });

  it("passes on what is wrong with the plan", () => {
    const broken = bundle([meal("bowl", [line("1 g", made("nothing"))])]);
    expect(servingsTable(broken, 1, 2, noHousehold)).toMatchObject({
      ok: false,
      problems: [{ code: "UNKNOWN_COMPONENT" }],
    });
  });

  it("is empty where it ends before it begins", () => {
    expect(servingsTable(plan, 5, 4, noHousehold)).toEqual({ ok: true, value: [] });
  });
});
