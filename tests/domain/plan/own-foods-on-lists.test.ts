import { describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { asFrozen, type FoodsToday } from "../../../src/domain/plan/review/foods-today.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { bundle, food, household, line, meal, onHand, pack, plan } from "../../kit/builders.js";

const kale = food("kale", { packs: [pack("200 g", "1.00", { id: "bag" })] });

const ofPublisher = (owner: string, slug: string, extended: string | null, facts: Partial<Food> = {}): Food => ({
  ...food(slug, facts),
  owner,
  ...(extended === null
    ? {}
    : { extends: { food: extended, sameIngredients: false, packs: (facts.packs ?? []).map(({ id }) => id) } }),
});

const planOf = (publisher: string, grams: number, eaten: Food): PlanBundle =>
  bundle(plan([meal("soup", [line(`${grams} g`, eaten.slug)])], { publisher, slug: `of-${publisher}` }), [], [eaten]);

function list(bundles: readonly PlanBundle[], today: FoodsToday = asFrozen, given = household()) {
  const plans = bundles.map((each) => {
    const scaled = scalePlan(each, each.plan.serves, given);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    return scaled.value;
  });
  return shop(plans, given, today).lines.map((each) => ({
    slug: each.food.slug,
    need: each.need?.high,
    packs: each.food.packs.map(({ id }) => id),
    onHand: each.onHand?.high,
  }));
}

const bothWays = (bundles: readonly PlanBundle[], today?: FoodsToday) => {
  const there = list(bundles, today);
  expect(list(bundles.toReversed(), today)).toEqual(there);
  return there;
};

describe("own foods of several publishers on one list", () => {
  it("are one where they build on the same food, with the packs of both", () => {
    const a = ofPublisher("a", "kale", "kale", { packs: [pack("1 kg", "4.00", { id: "crate" })] });
    const b = ofPublisher("b", "curly-kale", "kale", { packs: [pack("500 g", "2.00", { id: "sack" })] });
    const today = { ...asFrozen, bySlug: new Map([["kale", kale]]) };
    expect(bothWays([planOf("a", 300, a), planOf("b", 100, b)], today)).toEqual([
      { slug: "kale", need: 400, packs: ["bag", "crate", "sack"], onHand: 0 },
    ]);
    expect(bothWays([planOf("a", 300, a), planOf("c", 50, kale)])).toMatchObject([
      { slug: "kale", need: 350, packs: ["bag", "crate"] },
    ]);
  });

  it("have the packs of both where both call one of theirs the same", () => {
    const crateOf = (owner: string, price: string) =>
      ofPublisher(owner, "kale", "kale", { packs: [pack("1 kg", price, { id: "crate" })] });
    const today = { ...asFrozen, bySlug: new Map([["kale", kale]]) };
    const [a, b] = [planOf("a", 300, crateOf("a", "4.00")), planOf("b", 100, crateOf("b", "3.00"))];
    expect(bothWays([a, b], today)).toMatchObject([{ packs: ["bag", "crate", "crate-b"] }]);
    const same = planOf("b", 100, crateOf("b", "4.00"));
    expect(bothWays([a, same], today)).toMatchObject([{ packs: ["bag", "crate"] }]);
  });

  it("are two where they only share a name", () => {
    const found = bothWays([
      planOf("a", 300, ofPublisher("a", "soya-cream", null)),
      planOf("b", 100, ofPublisher("b", "soya-cream", null)),
      planOf("c", 50, food("soya-cream")),
    ]);
    expect(found.map(({ slug, need }) => [slug, need])).toEqual([
      ["soya-cream", 50],
      ["soya-cream", 300],
      ["soya-cream", 100],
    ]);
  });

  it("are two where one contains an allergen that its base does not", () => {
    const plain = ofPublisher("a", "yoghurt", "yoghurt");
    const soya = ofPublisher("b", "soya-yoghurt", "yoghurt");
    const added: Food = { ...soya, extends: { food: "yoghurt", sameIngredients: false, adds: ["soya"] } };
    expect(
      bothWays([planOf("a", 300, plain), planOf("b", 100, added)])
        .map(({ need }) => need)
        .toSorted(),
    ).toEqual([100, 300]);
  });

  it("take the prices of today for packs of their base, and their own for their own", () => {
    const frozen = ofPublisher("a", "kale", "kale", { packs: [pack("1 kg", "4.00", { id: "crate" })] });
    const withBase = { ...frozen, packs: [...frozen.packs, ...kale.packs] };
    const dearer = { ...kale, packs: [pack("200 g", "1.50", { id: "bag" })] };
    const given = household();
    const scaled = scalePlan(planOf("a", 100, withBase), 4, given);
    if (!scaled.ok) throw new Error("not scaled");
    const [only] = shop([scaled.value], given, { ...asFrozen, bySlug: new Map([["kale", dearer]]) }).lines;
    expect(only?.food.packs.map(({ id, price }) => [id, price?.amount])).toEqual([
      ["bag", "1.50"],
      ["crate", "4.00"],
    ]);
  });

  it("are covered by what is on hand under the name of their base", () => {
    const b = ofPublisher("b", "curly-kale", "kale");
    const today = { ...asFrozen, bySlug: new Map([["kale", kale]]) };
    const given = household({ onHand: [onHand("kale", "60 g")] });
    expect(list([planOf("b", 100, b)], today, given)).toMatchObject([{ slug: "curly-kale", onHand: 60 }]);
  });
});
