import { describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import type { Household } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import type { ShoppingLine, ShoppingList } from "../../../src/domain/plan/scaled.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { bundle, component, food, household, line, made, meal, onHand, pack, plan, swap } from "../../kit/builders.js";

const listOf = (bundles: PlanBundle | readonly PlanBundle[], who: Household = household()): ShoppingList => {
  const scaled = [bundles].flat().map((each) => {
    const result = scalePlan(each, 2, who);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    return result.value;
  });
  return shop(scaled, who);
};

const only = ({ lines }: ShoppingList): ShoppingLine => {
  expect(lines.length).toBe(1);
  return lines[0]!;
};

const oneFood = (facts: Partial<Food>, amount: string | null = "100 g", extra = false): PlanBundle =>
  bundle([meal("m", [line(amount, "it", { extra })])], [], [food("it", facts)]);

describe("a line of a shopping list", () => {
  it("is there once for all uses, and each use says who took how much in whose words", () => {
    const pot = component("pot", "100 g", [line("50 g", "it", { written: "some of it" })]);
    const week = bundle([meal("m", [line("10-20 g", "it"), line("60 g", made("pot"))])], [pot]);
    const bill = only(listOf(week));
    expect(bill.need).toEqual({ dimension: "MASS", low: 80, high: 100 });
    expect(
      bill.uses.map(({ bundle: from, meal: eaten, component: cooked, part, asWritten, amount }) => [
        from.plan.slug,
        eaten?.slug ?? null,
        cooked?.slug ?? null,
        part,
        asWritten,
        amount?.high,
      ]),
    ).toEqual([
      ["plan", "m", null, null, "10-20 g it", 40],
      ["plan", null, "pot", null, "some of it", 60],
    ]);
  });

  it("is open where a use wants more than it says, and only there", () => {
    expect(only(listOf(oneFood({}))).open).toBe(false);
    expect(only(listOf(oneFood({}, "100 g", true))).open).toBe(true);
  });

  it("to taste has no amount, buys nothing and costs what nobody knows", () => {
    const list = listOf(oneFood({ packs: [pack("1 kg", "1.00")] }, null));
    expect(only(list)).toMatchObject({ need: null, onHand: null, toBuy: null, buy: [], open: true });
    expect(only(list).cost).toMatchObject({ atTill: null, unpriced: ["it"] });
    expect(list.warnings).toEqual([]);
  });

  it("is not there for what is always there", () => {
    expect(listOf(oneFood({ alwaysThere: true })).lines).toEqual([]);
  });

  it("has the packs that are bought and no others", () => {
    const packs = [pack("1 kg", "1.00"), pack("150 g", "0.40"), pack("100 g", "0.30")];
    const { buy, cost } = only(listOf(oneFood({ packs })));
    expect(buy).toEqual([{ pack: packs[2], count: 2 }]);
    expect(cost).toMatchObject({
      atTill: { amount: "0.60" },
      used: { amount: "0.60" },
      carriedOver: { amount: "0.00" },
    });
  });

  it("says where no price is known, and still which packs", () => {
    const nowhere = listOf(oneFood({}));
    expect(nowhere.warnings).toEqual([{ code: "PRICE_UNKNOWN", path: ["foods", "it"], food: "it" }]);
    const unpriced = listOf(oneFood({ packs: [pack("150 g", null)] }));
    expect(only(unpriced).buy.map(({ count }) => count)).toEqual([2]);
    expect(unpriced.warnings.map(({ code }) => code)).toEqual(["PRICE_UNKNOWN"]);
    expect(unpriced.cost.unpriced).toEqual(["it"]);
  });

  it("says once that nothing has a price, and of each food where only some have one", () => {
    const both = (first: Food["packs"], second: Food["packs"]) =>
      listOf(
        bundle(
          [meal("m", [line("100 g", "one"), line("100 g", "other")])],
          [],
          [food("one", { packs: first }), food("other", { packs: second })],
        ),
      );
    const none = both([], [pack("150 g", null)]);
    expect(none.warnings).toEqual([{ code: "PRICE_UNKNOWN", path: [], food: null }]);
    expect(none.cost.unpriced).toEqual(["one", "other"]);
    expect(both([], [pack("150 g", "1.00")]).warnings).toEqual([
      { code: "PRICE_UNKNOWN", path: ["foods", "one"], food: "one" },
    ]);
  });

  it("says which packs cannot be compared with the need", () => {
    const odd = pack("1 piece", "1.00", { name: "sack" });
    const list = listOf(oneFood({ packs: [odd, pack("1 kg", "2.00")] }));
    expect(list.warnings).toEqual([
      { code: "PACK_NOT_COMPARABLE", path: ["foods", "it"], food: "it", pack: "sack", missing: "GRAMS_OF_ONE_PIECE" },
    ]);
    expect(listOf(oneFood({ packs: [odd] })).warnings.map(({ code }) => code)).toEqual([
      "PACK_NOT_COMPARABLE",
      "PRICE_UNKNOWN",
    ]);
  });

  it("asks nothing of the shop where all is on hand", () => {
    const who = household({ onHand: [onHand("it", "200 g")] });
    const list = listOf(oneFood({}), who);
    expect(only(list)).toMatchObject({ need: { high: 200 }, onHand: { high: 200 }, toBuy: { high: 0 }, buy: [] });
    expect(list.warnings).toEqual([]);
  });
});

describe("what a list says besides", () => {
  it("names diets that are not met and swaps that no line offers, for readers of the list alone", () => {
    const milk = food("milk", { diets: [{ diet: "vegan", fits: false, source: pack("1 g", null).source }] });
    const week = bundle([meal("m", [line("100 g", "milk", { swaps: [swap("cream")] })])], [], [milk]);
    const who = household({ diets: ["vegan"], swaps: [{ from: "milk", to: "oat-drink" }] });
    const { warnings } = listOf(week, who);
    expect(warnings).toContainEqual({
      code: "DIET_NOT_MET",
      path: ["meals", "m", "lines", "l1"],
      diet: "vegan",
      item: "milk",
      known: true,
      offered: ["cream"],
    });
    expect(warnings).toContainEqual({
      code: "SWAP_NOT_OFFERED",
      path: ["household", "swaps"],
      from: "milk",
      to: "oat-drink",
    });
  });

  it("does not repeat what is said of components and their left-overs", () => {
    const pot = component("pot", "1 kg", [line("50 g", "it")], { batch: { min: "1", max: null, increment: "1" } });
    const week = bundle([meal("m", [line("60 g", made("pot"))])], [pot]);
    expect(listOf(week).warnings.map(({ code }) => code)).toEqual(["PRICE_UNKNOWN"]);
  });
});

describe("a food that two plans froze differently", () => {
  const week = (slug: string, facts: Partial<Food>): PlanBundle =>
    bundle(plan([meal("m", [line("100 g", "it")])], { slug }), [], [food("it", facts)]);
  const old = { packs: [pack("500 g", "1.00")] };
  const later = { packs: [pack("500 g", "2.00")] };

  it("is bought at one of the two, the same whatever the order of the plans", () => {
    const [one, other] = [listOf([week("a", old), week("b", later)]), listOf([week("b", later), week("a", old)])];
    expect(only(one).buy).toEqual(only(other).buy);
    expect(one.cost).toEqual(other.cost);
    expect(listOf([week("b", old), week("a", later)]).cost).toEqual(one.cost);
  });

  it("goes on two lines where one was weighed and the other counted, and the missing fact is named once", () => {
    const byPiece = bundle(
      plan([meal("m", [line("2 piece", "it")])], { slug: "b" }),
      [],
      [food("it", { shoppedBy: "COUNT", aisle: "a first in order" })],
    );
    const list = listOf([byPiece, week("a", {})]);
    expect(list.lines.map(({ need }) => need?.dimension)).toEqual(["COUNT", "MASS"]);
    expect(list.warnings.filter(({ code }) => code === "NOT_COMBINED")).toEqual([
      { code: "NOT_COMBINED", path: ["foods", "it"], food: "it", missing: "GRAMS_OF_ONE_PIECE" },
    ]);
  });
});
