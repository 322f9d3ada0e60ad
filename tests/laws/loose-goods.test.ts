import fc from "fast-check";
import { Fraction } from "fraction.js";
import { beforeAll, describe, expect, it } from "vitest";
import { packShelf } from "../../src/domain/shopping/pack-options.js";
import { choosePacks } from "../../src/domain/shopping/packs.js";
import { food, measured, pack } from "../kit/builders.js";
import { openIntegerProgram, type IntegerProgram } from "../kit/cover-by-integer-program.js";

let program: IntegerProgram;
beforeAll(async () => {
  program = await openIntegerProgram();
});

/** Over the counter: 10 g up to 500 g, then 50 g (common practice, no source). */
const stepFor = (need: number): number => (need <= 500 ? 10 : 50);

const cents = fc.integer({ min: 1, max: 900 });
const money = (inCents: number): string => (inCents / 100).toFixed(2);

const shelves = fc.record({
  packs: fc.array(fc.record({ grams: fc.integer({ min: 30, max: 2500 }), cents }), { maxLength: 5 }),
  loose: fc.array(fc.record({ per: fc.constantFrom(100, 250, 500, 1000), cents }), { minLength: 1, maxLength: 2 }),
});
/** From one person's pinch to a supper for forty, as often below 500 g as beyond. */
const needs = fc.oneof(fc.integer({ min: 1, max: 700 }), fc.integer({ min: 501, max: 12_000 }));

const shelfOf = ({ packs, loose }: typeof shelves extends fc.Arbitrary<infer T> ? T : never) => {
  const sold = [
    ...packs.map((each, at) => pack(`${each.grams} g`, money(each.cents), { id: `pack-${at}`, name: `pack-${at}` })),
    ...loose.map((each, at) =>
      pack(`${each.per} g`, money(each.cents), { id: `loose-${at}`, name: `loose-${at}`, loose: { step: null } }),
    ),
  ];
  return packShelf(food("onion", { packs: sold }), "MASS", { region: null, currency: "XTS" });
};

describe("packs and loose goods", () => {
  it("are the least-cost cover, then the least waste, of an integer program with a variable for every step", () => {
    fc.assert(
      fc.property(shelves, needs, (shelf, need) => {
        const step = stepFor(need);
        // In hundredths of a thousandth all are whole: what a step costs is a share of a cent.
        const whole = [
          ...shelf.packs.map(({ grams, cents: price }) => ({ content: grams, price: price * 1000 })),
          ...shelf.loose.map(({ per, cents: price }) => ({ content: step, price: (price * 1000 * step) / per })),
        ];
        const best = program.best(need, whole);
        const { options } = shelfOf(shelf);
        const choice = choosePacks(need, options)!;
        const counts = choice.counts.map((count, at) => (at < shelf.packs.length ? count : (count * 10) / step));
        expect(counts.every(Number.isInteger)).toBe(true);
        expect(choice.proved).toBe(true);
        expect({
          price: counts.reduce((sum, count, at) => sum + count * whole[at]!.price, 0),
          content: choice.content,
        }).toEqual({ price: best.price, content: best.content });
      }),
      { numRuns: 150 },
    );
  });

  it("cost what the exact prices add up to, each weight rounded once to a coin, half upwards", () => {
    fc.assert(
      fc.property(shelves, needs, (shelf, need) => {
        const choice = choosePacks(need, shelfOf(shelf).options)!;
        const parts = choice.counts.map((count, at) => {
          const one = shelf.packs[at];
          if (one !== undefined) return count * one.cents * 100;
          const { per, cents: price } = shelf.loose[at - shelf.packs.length]!;
          const exact = new Fraction(count * 10 * price, per);
          return Number(exact.add(new Fraction(1, 2)).floor().valueOf()) * 100;
        });
        expect(choice.price).toBe(parts.reduce((sum, each) => sum + each, 0));
      }),
    );
  });

  it("cover the need, and by weight alone never more than a step too much", () => {
    fc.assert(
      fc.property(cents, needs, (price, need) => {
        const shelf = shelfOf({ packs: [], loose: [{ per: 1000, cents: price }] });
        const { content } = choosePacks(need, shelf.options)!;
        expect(content).toBeGreaterThanOrEqual(need);
        expect(content - need).toBeLessThan(stepFor(need));
      }),
    );
  });

  it("never cost less, nor weigh less, for more", () => {
    fc.assert(
      fc.property(shelves, needs, fc.integer({ min: 0, max: 3000 }), (shelf, need, more) => {
        const { options } = shelfOf(shelf);
        const [less, all] = [choosePacks(need, options)!, choosePacks(need + more, options)!];
        // Each weight is rounded to a coin by itself: so much may two ways of buying differ by.
        const coins = (shelf.loose.length + 1) * 100;
        expect(all.price! + coins).toBeGreaterThanOrEqual(less.price!);
        const [one] = shelf.loose;
        const alone = shelfOf({ packs: [], loose: [one!] }).options;
        expect(choosePacks(need + more, alone)!.content).toBeGreaterThanOrEqual(choosePacks(need, alone)!.content);
      }),
    );
  });

  it("are weighed out by the step that somebody wrote", () => {
    const steps = fc.constantFrom("25 g", "1/4 lb", "5 g", "1 kg");
    fc.assert(
      fc.property(steps, cents, needs, (step, price, need) => {
        const sold = pack("1 kg", money(price), { loose: { step: measured(step) } });
        const { options } = packShelf(food("onion", { packs: [sold] }), "MASS", { region: null, currency: "XTS" });
        const grams = { "25 g": 25, "1/4 lb": 113.3980925, "5 g": 5, "1 kg": 1000 }[step]!;
        const [count] = choosePacks(need, options)!.counts;
        // Beyond a thousand steps ten are taken at a time.
        const atATime = need > 1000 * grams ? 10 : 1;
        expect(count).toBe(Math.ceil(need / (grams * atATime) - 1e-9) * atATime);
      }),
    );
  });
});
