import { describe, expect, it } from "vitest";
import type { Food, Pack } from "../../../src/domain/model/food.js";
import { packsText, takenText, toBuyText } from "../../../src/exports/words/packs-text.js";
import { demo } from "../demo-answer.js";

const reader = { measures: "METRIC", locale: "en", converts: false } as const;

const food = (slug: string): Food => {
  const found = demo.bundles.flatMap(({ foods }) => foods).find((each) => each.slug === slug);
  if (found === undefined) throw new Error(`the demo has no ${slug}`);
  return found;
};

const pack = (name: string, amount: string, unit: string): Pack => ({
  id: name,
  name,
  content: { low: amount, high: amount, unit },
  price: null,
  region: null,
  seen: "2026-03-02",
  source: { kind: "INVENTED", title: "a test", section: null },
});

const bought = (slug: string, count: number, sold: Pack) =>
  packsText({ food: food(slug), buy: [{ pack: sold, count }] }, reader);

describe("what to take from the shelf", () => {
  it("counts what is sold singly, weighs what is loose, and names packs", () => {
    expect(bought("garlic", 1, pack("head", "1", "piece"))).toBe("1 head");
    expect(bought("lemon", 3, pack("piece", "1", "piece"))).toBe("3 lemons");
    expect(bought("carrot", 5, pack("pound", "1", "lb"))).toBe("5 lb");
    expect(bought("carrot", 3, pack("kilo", "1", "kg"))).toBe("3 kg");
    expect(bought("carrot", 2, pack("bag", "1", "kg"))).toBe("2 × bag of 1 kg");
    // A label is not rounded: a No. 300 can holds 414 ml.
    expect(bought("milk", 2, pack("can", "414", "ml"))).toBe("2 × can of 414 ml");
  });

  it("is never a share of a piece, also where only the amount is told", () => {
    const told = (slug: string, dimension: "COUNT" | "MASS", high: number): string =>
      toBuyText({ dimension, low: high / 2, high }, food(slug), reader);
    expect(told("lemon", "COUNT", 1.75)).toBe("2 lemons");
    expect(told("lemon", "COUNT", 2 + 1e-12)).toBe("2 lemons");
    expect(told("lemon", "COUNT", 0)).toBe("0 lemons");
  });

  it("is whole pieces where no pack is known, and nothing where enough is there", () => {
    const without = (slug: string, dimension: "COUNT" | "MASS", amount: number): string | null =>
      takenText({ food: food(slug), buy: [], toBuy: { dimension, low: amount, high: amount } }, reader);
    expect(without("lemon", "COUNT", 2.39)).toBe("3 lemons");
    expect(without("lemon", "COUNT", 2.0000000001)).toBe("2 lemons");
    expect(without("garlic", "COUNT", 0.119)).toBe("1 head");
    expect(without("carrot", "MASS", 291)).toBe("290 g");
    expect(without("carrot", "MASS", 0)).toBeNull();
    expect(takenText({ food: food("carrot"), buy: [], toBuy: null }, reader)).toBeNull();
  });

  it("is in the reader's words", () => {
    const german = { ...reader, locale: "de-DE" };
    expect(packsText({ food: food("egg"), buy: [{ pack: pack("piece", "1", "piece"), count: 7 }] }, german)).toBe(
      "7 Eier",
    );
  });
});
