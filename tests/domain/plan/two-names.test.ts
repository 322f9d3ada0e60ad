import { describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { asFrozen, type FoodsToday } from "../../../src/domain/plan/review/foods-today.js";
import { scalePlans } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { bundle, food, household, line, meal, onHand, own, pack, plan } from "../../kit/builders.js";

const today = (names: Readonly<Record<string, string>>, foods: readonly Food[]): FoodsToday => ({
  ...asFrozen,
  canonical: (slug) => names[slug] ?? slug,
  bySlug: new Map(foods.map((each) => [each.slug, each])),
});

function listOf(bundles: readonly PlanBundle[], now: FoodsToday, at = household()) {
  const scaled = scalePlans(
    bundles.map((each) => ({ bundle: each, servings: 1 })),
    at,
    now,
  );
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return shop(scaled.value, at, now);
}

const week = (slug: string, amount: string, of: string, foods: readonly Food[] = []): PlanBundle =>
  bundle(plan([meal("m", [line(amount, of)])], { slug }), [], foods);

describe("O-21: one food under two names", () => {
  const pairs = [
    ["garbanzo-beans", "1 own:tin", "chickpeas", "2 own:tin", "COUNT", 3],
    ["scallions", "3 piece", "spring-onions", "2 piece", "COUNT", 5],
    ["rocket", "100 g", "arugula", "50 g", "MASS", 150],
    ["aubergine", "1 piece", "eggplant", "1 piece", "COUNT", 2],
  ] as const;

  it.each(pairs)("%s and the other name are one line", (name, amount, other, more, shoppedBy, total) => {
    const tin = own("tin", { pieces: 1 });
    const [a, b] = [food(name, { shoppedBy, measures: [tin] }), food(other, { shoppedBy, measures: [tin] })];
    const plans = [week("one", amount, name, [a]), week("two", more, other, [b])];
    expect(listOf(plans, asFrozen).lines).toHaveLength(2);
    for (const order of [plans, plans.toReversed()]) {
      const { lines, warnings } = listOf(order, today({ [other]: name }, [a]));
      expect(lines.map(({ food: { slug }, need }) => [slug, need?.high])).toEqual([[name, total]]);
      expect(lines[0]?.uses).toHaveLength(2);
      expect(warnings.filter(({ code }) => code === "NOT_COMBINED")).toEqual([]);
    }
  });

  it("joins a plan that froze it by the piece and one that froze it by weight, where today's facts can", () => {
    const byPiece = week("one", "2 piece", "eggplant", [food("eggplant", { shoppedBy: "COUNT" })]);
    const byWeight = week("two", "300 g", "aubergine", [food("aubergine")]);
    const now = food("aubergine", { measures: [own("piece", { grams: 250 })], packs: [pack("400 g", "1.00")] });
    const joined = listOf([byPiece, byWeight], today({ eggplant: "aubergine" }, [now]));
    expect(joined.lines.map(({ need, buy }) => [need?.high, buy[0]?.count])).toEqual([[800, 2]]);
    const apart = listOf([byPiece, byWeight], today({ eggplant: "aubergine" }, [food("aubergine")]));
    expect(apart.lines.map(({ need }) => need?.dimension)).toEqual(["COUNT", "MASS"]);
    expect(apart.warnings).toContainEqual(
      expect.objectContaining({ code: "NOT_COMBINED", food: "aubergine", missing: "GRAMS_OF_ONE_PIECE" }),
    );
  });

  it("takes what is on hand under either name", () => {
    const now = today({ arugula: "rocket" }, [food("rocket")]);
    for (const name of ["rocket", "arugula"]) {
      const { lines } = listOf([week("one", "100 g", "arugula")], now, household({ onHand: [onHand(name, "30 g")] }));
      expect(lines.map(({ food: { slug }, toBuy }) => [slug, toBuy?.high])).toEqual([["rocket", 70]]);
    }
  });

  it("buys at today's packs, and at the frozen ones where today knows none", () => {
    const frozen = food("oats", { packs: [pack("500 g", "1.00")] });
    const now = food("oats", { packs: [pack("400 g", "0.90")] });
    const [before, after] = [
      listOf([week("one", "400 g", "oats", [frozen])], asFrozen),
      listOf([week("one", "400 g", "oats", [frozen])], today({}, [now])),
    ];
    expect(before.cost.atTill?.amount).toBe("1.00");
    expect(after.cost.atTill?.amount).toBe("0.90");
  });

  it("asks the same of two plans that froze one food differently, in whatever order they come", () => {
    const frozen = (price: string) => food("oats", { packs: [pack("500 g", price)] });
    const plans = [week("one", "100 g", "oats", [frozen("1.00")]), week("two", "100 g", "oats", [frozen("2.00")])];
    const costs = [plans, plans.toReversed()].map((order) => listOf(order, asFrozen).cost.atTill);
    expect(costs[0]).toEqual(costs[1]);
  });
});
