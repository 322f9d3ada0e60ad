import { describe, expect, it } from "vitest";
import type { Food, Pack } from "../../../src/domain/model/food.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { takenText } from "../../../src/exports/words/packs-text.js";
import { bundle, density, food, line, meal, measured, own, pack } from "../../kit/builders.js";

const loose = (content: string, price: string | null, facts: Partial<Pack> = {}): Pack =>
  pack(content, price, { id: "loose", name: "loose", loose: { step: null }, ...facts });

/** The only line of a list for so many servings of a plan whose one meal, for one, takes this much of the food. */
function bought(of: Food, amount: string, servings = 1, currency: string | null = "XTS") {
  const plan = bundle([meal("supper", [line(amount, of.slug)])], [], [of]);
  const scaled = scalePlan(plan, servings, { ...noHousehold, currency });
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const [found] = shop([scaled.value], { ...noHousehold, currency }).lines;
  if (found === undefined) throw new Error("nothing on the list");
  return found;
}

const metric = { measures: "METRIC", locale: "en", converts: false } as const;
const onion = (...packs: readonly Pack[]): Food =>
  food("onion", { packs, measures: [own("piece", { grams: 150, pieces: 1 })] });

describe("what is sold loose", () => {
  it.each([
    ["837 g", "850 g", "1.53"],
    ["3 g", "10 g", "0.02"],
    ["500 g", "500 g", "0.90"],
    ["1200 g", "1.2 kg", "2.16"],
    ["1234 g", "1.25 kg", "2.25"],
  ])("is weighed: %s needed, %s bought", (need, take, price) => {
    const found = bought(onion(loose("1 kg", "1.80")), need);
    expect(takenText(found, metric)).toBe(take);
    expect(found.cost.atTill?.amount).toBe(price);
  });

  it.each([
    ["200 g", "8 oz", "1.50"],
    ["600 g", "1½ lb", "4.49"],
  ])("by the ounce and the quarter of a pound, where the price is for a pound: %s", (need, take, price) => {
    const found = bought(onion(loose("1 lb", "2.99")), need);
    const [one] = found.buy;
    expect(takenText(found, metric)).toBe(take);
    expect(one?.pack.price?.amount).toBe(price);
  });

  it("is one weight with its price, and says the price it is weighed out at", () => {
    const asked = loose("1 kg", "1.80");
    const { buy, cost } = bought(onion(asked), "800 g");
    expect(buy).toEqual([
      {
        count: 1,
        pack: { ...asked, content: measured("800 g"), price: { amount: "1.44", currency: "XTS" } },
        weighedFrom: asked,
      },
    ]);
    expect(cost).toMatchObject({
      atTill: { amount: "1.44" },
      used: { amount: "1.44" },
      carriedOver: { amount: "0.00" },
    });
  });

  it("leaves over nothing but what a step is too much, for one as for forty", () => {
    for (const [servings, take, over] of [
      [1, "190 g", "0.01"],
      [40, "7.4 kg", "0.00"],
    ] as const) {
      const found = bought(onion(loose("1 kg", "1.80")), "185 g", servings);
      expect([takenText(found, metric), found.cost.carriedOver?.amount]).toEqual([take, over]);
    }
  });

  it("is taken beside packs where that costs least", () => {
    const of = onion(loose("1 kg", "1.80"), pack("1 kg", "1.20", { id: "net", name: "net" }));
    expect(takenText(bought(of, "1300 g"), metric)).toBe("300 g + 1 × net of 1 kg");
    expect(takenText(bought(of, "300 g"), metric)).toBe("300 g");
    expect(takenText(bought(of, "950 g"), metric)).toBe("1 × net of 1 kg");
  });

  it("stays whole pieces where the food is bought by the piece, at what they weigh", () => {
    const names = [{ language: "en", region: null, one: "onion", many: "onions", also: [] }];
    const of: Food = { ...onion(loose("1 kg", "1.80")), shoppedBy: "COUNT", names };
    const found = bought(of, "7/2 piece");
    expect(takenText(found, metric)).toBe("4 onions");
    // Four of 150 g are 600 g.
    expect(found.cost.atTill?.amount).toBe("1.08");
  });

  it("says which fact is missing where pieces have no weight", () => {
    const of = food("onion", { packs: [loose("1 kg", "1.80")], shoppedBy: "COUNT" });
    expect(bought(of, "2 piece").buy).toEqual([]);
  });

  it("is poured by volume, and weighed where the need is poured", () => {
    const oil = food("oil", { packs: [loose("1 l", "4.00")], shoppedBy: "VOLUME" });
    expect(takenText(bought(oil, "85 ml"), metric)).toBe("90 ml");
    const honey = food("honey", { packs: [loose("100 g", "0.95")], shoppedBy: "VOLUME", densities: [density(1.4)] });
    const found = bought(honey, "100 ml");
    expect([takenText(found, metric), found.cost.atTill?.amount]).toEqual(["140 g", "1.33"]);
  });

  it("is weighed also where nobody knows its price, or only in another currency", () => {
    expect(takenText(bought(onion(loose("1 kg", null)), "437 g", 1, null), metric)).toBe("440 g");
    const found = bought(onion(loose("1 kg", "1.80")), "437 g", 1, "EUR");
    expect([takenText(found, metric), found.buy[0]?.pack.price, found.cost.unpriced]).toEqual([
      "440 g",
      null,
      ["onion"],
    ]);
  });

  it("is rounded to the coin of its currency", () => {
    const yen = loose("1 kg", null, { price: { amount: "333", currency: "JPY" } });
    expect(bought(onion(yen), "500 g", 1, "JPY").cost.atTill?.amount).toBe("167");
  });
});
