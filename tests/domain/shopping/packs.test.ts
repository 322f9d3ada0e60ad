import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { choosePacks, type PackChoice, type PackOption } from "../../../src/domain/shopping/packs.js";
import { coverSlack } from "../../../src/domain/shopping/packs-search.js";
import { diceFrom } from "../../kit/arbitrary/dice.js";
import { bruteForceCover } from "./packs-brute-force.js";
import { shelf } from "./shelf.js";

const chosen = (need: number, options: readonly PackOption[]): PackChoice => {
  const choice = choosePacks(need, options);
  if (choice === null) throw new Error("nothing to choose from");
  return choice;
};

const packCount = ({ counts }: PackChoice): number => counts.reduce((sum, count) => sum + count, 0);

describe("choosing packs", () => {
  it("buys two tins for 1.8 tins, whoever needs what share of them (O-23)", () => {
    const choice = chosen(0.6 + 0.7 + 0.5, shelf([1, 80]));
    expect(choice).toEqual({ counts: [2], content: 2, price: 160, proved: true });
    expect(choice.content - (0.6 + 0.7 + 0.5)).toBeCloseTo(0.2, 12);
  });

  it("takes the tray where it is cheaper than the tins, and tins for the rest", () => {
    expect(chosen(2800, shelf([400, 80], [2400, 420])).counts).toEqual([1, 1]);
    expect(chosen(2000, shelf([400, 80], [2400, 420])).counts).toEqual([5, 0]);
    expect(chosen(2400, shelf([400, 80], [2400, 420])).counts).toEqual([0, 1]);
  });

  it("buys too much when that is cheaper", () => {
    expect(chosen(300, shelf([100, 60], [1000, 150]))).toMatchObject({ counts: [0, 1], price: 150, content: 1000 });
  });

  it("leaves the best value for something that fits when the need is small", () => {
    expect(chosen(90, shelf([1000, 500], [100, 60])).counts).toEqual([0, 1]);
  });

  it("at one price wastes least, and only then carries fewest", () => {
    // 700 g: 500 + 250 (300) wastes 50 g; two of 400 (300) waste 100 g.
    expect(chosen(700, shelf([400, 150], [500, 200], [250, 100])).counts).toEqual([0, 1, 1]);
    // 600 g: three of 200, or 400 + 200, at the same price and waste.
    expect(chosen(600, shelf([200, 50], [400, 100])).counts).toEqual([1, 1]);
    // Less waste beats fewer packs.
    expect(chosen(600, shelf([200, 100], [700, 300])).counts).toEqual([3, 0]);
  });

  it("decides by the packs, not by their order on the shelf", () => {
    // 600 + 400 and 500 + 500: nothing to choose between them, so the larger pack.
    expect(chosen(1000, shelf([400, 40], [500, 50], [600, 60])).counts).toEqual([1, 0, 1]);
    expect(chosen(1000, shelf([600, 60], [500, 50], [400, 40])).counts).toEqual([1, 0, 1]);
    expect(chosen(1000, shelf([500, 50], [600, 60], [400, 40])).counts).toEqual([0, 1, 1]);
  });

  it("takes the first of twins", () => {
    expect(chosen(900, shelf([400, 80], [400, 80], [400, 90])).counts).toEqual([3, 0, 0]);
  });

  it("forgives the last digits of a double, but no real shortfall", () => {
    const tins = shelf([400, 80]);
    expect(chosen(800.0000000001, tins).counts).toEqual([2]);
    expect(chosen(800 * (1 + 0.9e-9), tins).counts).toEqual([2]);
    expect(chosen(800 * (1 + 1.1e-9), tins).counts).toEqual([3]);
    expect(chosen(0.1 + 0.2, shelf([0.1, 10])).counts).toEqual([3]);
  });

  it("forgives a large need no more than a hundredth of a gram", () => {
    expect(coverSlack(1000)).toBeCloseTo(1e-6, 18);
    expect(coverSlack(1e9)).toBe(0.01);
    expect(chosen(1e9, shelf([999_999_999.5, 10], [1e9, 20])).counts).toEqual([0, 1]);
  });

  it("is exact for contents that are no whole grams", () => {
    // 15-oz tins and pounds: 425.24 g and 453.59237 g (NIST Handbook 44, Appendix C: 1 lb = 453.59237 g).
    const choice = chosen(3 * 453.59237 + 425.24, shelf([425.24, 95], [453.59237, 100]));
    expect(choice.counts).toEqual([1, 3]);
    expect(choice.price).toBe(395);
    expect(chosen(453.59237 / 3, shelf([453.59237 / 3, 40], [453.59237, 110])).counts).toEqual([1, 0]);
    expect(chosen((453.59237 / 3) * 3, shelf([453.59237 / 3, 40], [453.59237, 110])).counts).toEqual([0, 1]);
    expect(chosen((453.59237 / 3) * 4, shelf([453.59237 / 3, 40], [453.59237, 120])).counts).toEqual([1, 1]);
  });

  it("covers a thousand tonnes from two tins as fast as one meal", () => {
    // The last 800 g of a million kilograms: the tray at 0.175 a gram, then tins at 0.2.
    expect(chosen(1e9, shelf([400, 80], [2400, 420]))).toMatchObject({
      counts: [4, 416_666],
      content: 1e9,
      price: 416_666 * 420 + 4 * 80,
      proved: true,
    });
  });

  it("takes packs without a price only where no pack has one", () => {
    expect(chosen(100, shelf([100, null], [1000, 500]))).toMatchObject({ counts: [0, 1], price: 500 });
    expect(chosen(100, shelf([100, null], [30, null]))).toMatchObject({ counts: [1, 0], price: null });
    expect(chosen(1010, shelf([500, null], [30, null]))).toMatchObject({ counts: [1, 17], price: null, content: 1010 });
  });

  it("takes what is free before what costs, and no more of it than it must", () => {
    expect(chosen(700, shelf([1000, 0], [400, 0], [100, 5]))).toMatchObject({ counts: [0, 2, 0], price: 0 });
    expect(chosen(700, shelf([350, 0], [700, 0]))).toMatchObject({ counts: [0, 1], price: 0 });
  });

  it("buys nothing for nothing, and has no answer without packs", () => {
    expect(chosen(0, shelf([400, 80]))).toEqual({ counts: [0], content: 0, price: 0, proved: true });
    expect(chosen(-5, shelf([400, 80], [5, null])).counts).toEqual([0, 0]);
    expect(choosePacks(5, [])).toBeNull();
    expect(choosePacks(0, [])).toBeNull();
    expect(choosePacks(5, shelf([0, 10], [NaN, 1], [Infinity, 1], [-1, 1]))).toBeNull();
  });

  it("passes over packs with no usable content and still answers in the order given", () => {
    expect(chosen(500, shelf([0, 1], [400, 80], [NaN, 1], [2400, 420])).counts).toEqual([0, 2, 0, 0]);
  });

  it.each([NaN, Infinity, -Infinity])("refuses to buy %d", (need) => {
    expect(() => choosePacks(need, shelf([400, 80]))).toThrow(RangeError);
  });

  it("does not change what it is given", () => {
    const options = Object.freeze(shelf([400, 80], [2400, 420]).map((option) => Object.freeze(option)));
    expect(chosen(3000, options).counts).toEqual([2, 1]);
  });
});

const options = (most: number, maxContent: number, maxPrice: number): fc.Arbitrary<readonly PackOption[]> =>
  fc
    .array(fc.tuple(fc.integer({ min: 1, max: maxContent }), fc.integer({ min: 0, max: maxPrice })), {
      minLength: 1,
      maxLength: most,
    })
    .map((packs) => shelf(...packs));

describe("the chosen packs", () => {
  it("are the best of all there are, by price, then waste, then number", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), options(4, 25, 12), (need, packs) => {
        const choice = chosen(need, packs);
        const { price, content } = choice;
        expect({ price, content, packs: packCount(choice) }).toEqual(bruteForceCover(need, packs));
        expect(choice.proved).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });

  it("are the best of all there are on two hundred fixed shelves, half of them priced by content so that many covers tie", () => {
    const dice = diceFrom(7);
    for (let round = 0; round < 200; round += 1) {
      const packs = shelf(
        ...Array.from({ length: 2 + dice.roll(3) }, (): [number, number] => {
          const content = 1 + dice.roll(25);
          return [content, round % 2 === 0 ? 2 * content : dice.roll(13)];
        }),
      );
      const need = 1 + dice.roll(60);
      const choice = chosen(need, packs);
      const found = { price: choice.price, content: choice.content, packs: packCount(choice) };
      expect(found, JSON.stringify({ need, packs })).toEqual(bruteForceCover(need, packs));
    }
  });

  it("waste least where no price is known", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), options(4, 25, 12), (need, priced) => {
        const packs = priced.map((option) => ({ ...option, price: null }));
        const choice = chosen(need, packs);
        const best = bruteForceCover(need, packs);
        expect([choice.content, packCount(choice)]).toEqual([best.content, best.packs]);
        expect(choice.price).toBeNull();
      }),
      { numRuns: 300 },
    );
  });

  const anyContent = fc.oneof(
    fc.integer({ min: 1, max: 5000 }),
    fc.integer({ min: 1, max: 500_000 }).map((hundredths) => hundredths / 100),
    fc.constantFrom(425.24, 453.59237, 28.349523125, 236.5882365, 453.59237 / 3, 500 / 7),
  );
  const realShelf = fc
    .array(fc.tuple(anyContent, fc.integer({ min: 1, max: 5000 })), { minLength: 1, maxLength: 50 })
    .map((packs) => shelf(...packs));
  const realNeed = fc.oneof(
    fc.double({ min: 0.01, max: 1e4, noNaN: true }),
    fc.double({ min: 1, max: 1e9, noNaN: true }),
  );

  it("cover the need, add up, and leave no pack out that could stay on the shelf", () => {
    fc.assert(
      fc.property(realNeed, realShelf, (need, packs) => {
        const choice = chosen(need, packs);
        const slack = coverSlack(need);
        const content = packs.reduce((sum, pack, at) => sum + choice.counts[at]! * pack.content, 0);
        expect(Math.abs(choice.content - content)).toBeLessThanOrEqual(content * 1e-12);
        expect(choice.price).toBe(packs.reduce((sum, pack, at) => sum + choice.counts[at]! * (pack.price ?? 0), 0));
        expect(content).toBeGreaterThanOrEqual(need - slack * 1.001);
        packs.forEach((pack, at) => {
          expect(Number.isInteger(choice.counts[at]) && choice.counts[at]! >= 0).toBe(true);
          if (choice.counts[at]! > 0) expect(content - pack.content).toBeLessThan(need);
        });
      }),
      { numRuns: 300 },
    );
  });

  it("never cost less for more", () => {
    fc.assert(
      fc.property(realNeed, fc.double({ min: 1, max: 3, noNaN: true }), realShelf, (need, factor, packs) => {
        expect(chosen(need * factor, packs).price).toBeGreaterThanOrEqual(chosen(need, packs).price!);
      }),
      { numRuns: 200 },
    );
  });

  it("never cost less when a pack is gone", () => {
    fc.assert(
      fc.property(realNeed, realShelf, fc.nat(), (need, packs, which) => {
        fc.pre(packs.length > 1);
        const fewer = packs.filter((_, at) => at !== which % packs.length);
        expect(chosen(need, fewer).price).toBeGreaterThanOrEqual(chosen(need, packs).price!);
      }),
      { numRuns: 200 },
    );
  });

  it("are the same packs in whatever order the shelf is written", () => {
    const byPack = (packs: readonly PackOption[], { counts }: PackChoice): ReadonlyMap<string, number> => {
      const found = new Map<string, number>();
      packs.forEach(({ content, price }, at) => {
        const key = `${content} at ${price}`;
        found.set(key, (found.get(key) ?? 0) + counts[at]!);
      });
      return found;
    };
    fc.assert(
      fc.property(realNeed, realShelf, (need, packs) => {
        const reversed = packs.toReversed();
        expect(byPack(reversed, chosen(need, reversed))).toEqual(new Map([...byPack(packs, chosen(need, packs))]));
      }),
      { numRuns: 200 },
    );
  });

  it("never cost more than one pack, repeated", () => {
    fc.assert(
      fc.property(realNeed, realShelf, (need, packs) => {
        const alone = packs.map(({ content, price }) => Math.ceil((need * (1 - 1e-12)) / content) * price!);
        expect(chosen(need, packs).price).toBeLessThanOrEqual(Math.min(...alone));
      }),
    );
  });
});

describe("a shelf made to be hard", () => {
  const dice = diceFrom(20);
  const hard = (price: (content: number) => number, content: () => number): readonly PackOption[] =>
    shelf(
      ...Array.from({ length: 50 }, (): [number, number] => {
        const size = content();
        return [size, price(size)];
      }),
    );
  const grams = (): number => 1 + dice.roll(5000);
  const hundredths = (): number => (1 + dice.roll(500_000)) / 100;

  it.each([
    ["prices that follow whole contents", hard((content) => content * 20, grams)],
    [
      "prices that follow contents up to a cent",
      hard((content) => Math.max(1, Math.round(content * 0.2)) * 100, hundredths),
    ],
    ["prices of content plus a deposit", hard((content) => (content + 50) * 100, grams)],
    ["prices all alike", hard(() => 100, grams)],
    ["prices of any size", hard(() => 100 * (1 + dice.roll(1000)), hundredths)],
  ])("is settled and proved for any need: %s", (_, packs) => {
    for (const need of [1, 803, 5000, 123_456.78, 1e9]) {
      const choice = chosen(need, packs);
      expect(choice.proved).toBe(true);
      expect(choice.content).toBeGreaterThanOrEqual(need - coverSlack(need) * 1.001);
    }
  });

  it("that is too hard still gives a cover, within a thousandth of the best value, and says that it is not proved", () => {
    const packs = hard(
      (content) => Math.round(content * 2e6),
      () => 100 + (dice.roll(2 ** 30) / 2 ** 30) * 5000,
    );
    const need = 123_456;
    const choice = chosen(need, packs);
    const bestValue = Math.min(...packs.map(({ content, price }) => price! / content));
    expect(choice.proved).toBe(false);
    expect(choice.content).toBeGreaterThanOrEqual(need - coverSlack(need) * 1.001);
    expect(choice.price! / (need * bestValue)).toBeLessThan(1.001);
  });
});
