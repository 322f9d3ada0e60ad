// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  minorParts,
  moneyOf,
  moneyParts,
  partsPerUnit,
  roundedTo,
  roundedTogether,
} from "../../../src/domain/shopping/money.js";

describe("reading money", () => {
  it.each([
    ["0", 0],
    ["3", 30_000],
    ["3.2", 32_000],
    ["3.20", 32_000],
    ["0.0001", 1],
    ["0.0333", 333],
    ["007.05", 70_500],
    ["9999999999.9999", 99_999_999_999_999],
  ])("takes %s for %i parts", (text, parts) => {
    expect(moneyParts(text)).toBe(parts);
  });

  it.each(["", ".5", "5.", "-1", "+1", "1e3", "1,20", "0.00001", "12345678901", " 1", "1 ", "NaN", "1.2.3"])(
    "does not guess at %j",
    (text) => {
      expect(moneyParts(text)).toBeNull();
    },
  );
});

describe("writing money", () => {
  it.each([
    [0, "XTS", "0.00"],
    [32_000, "XTS", "3.20"],
    [1, "XTS", "0.0001"],
    [333, "XTS", "0.0333"],
    [12_340, "XTS", "1.234"],
    [99_999_999_999_999, "XTS", "9999999999.9999"],
    // Smallest coins as ISO 4217 lists them: yen has none, the Bahraini dinar has thousandths.
    [3_200_000, "JPY", "320"],
    [32_500, "JPY", "3.25"],
    [32_000, "BHD", "3.200"],
    [32_005, "BHD", "3.2005"],
    [32_000, "not a code", "3.20"],
    // Three letters are a code; neither yen nor dinars stand in a longer word.
    [3_200_000, "JPYX", "320.00"],
    [3_200_000, "XJPY", "320.00"],
  ])("shows %i parts of %s as %s", (parts, currency, amount) => {
    expect(moneyOf(parts, currency)).toEqual({ amount, currency });
  });

  it("comes back as it was", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10 ** 10 * partsPerUnit - 1 }),
        fc.constantFrom("XTS", "JPY", "BHD"),
        (parts, currency) => {
          expect(moneyParts(moneyOf(parts, currency).amount)).toBe(parts);
        },
      ),
    );
  });

  it("knows the smallest coin", () => {
    expect(["XTS", "JPY", "BHD"].map(minorParts)).toEqual([100, 10_000, 10]);
    expect(minorParts("XTS")).toBe(100);
  });
});

describe("rounding money", () => {
  it.each([
    [0, 0],
    [149, 100],
    [150, 200],
    [250, 300],
    [22_400.000000000004, 22_400],
    [149.99999999999997, 200],
    [149.9, 100],
  ])("takes %d parts to %i, halves upwards", (parts, rounded) => {
    expect(roundedTo(100, parts)).toBe(rounded);
  });

  it("gives what is left over to the largest remainders", () => {
    // Thirds of 1.00: 0.33 + 0.33 + 0.34 however they are shared out, and never 0.99.
    const third = { paid: 10_000, share: 1 / 3 };
    expect(roundedTogether(100, [third, third, third])).toEqual([3400, 3300, 3300]);
    expect(
      roundedTogether(100, [
        { paid: 100_000, share: 0.00103 },
        { paid: 100_000, share: 0.00108 },
        { paid: 100_000, share: 0.00109 },
      ]),
    ).toEqual([100, 100, 100]);
    expect(
      roundedTogether(100, [
        { paid: 100_000, share: 0.0014 },
        { paid: 100_000, share: 0.0016 },
        { paid: 100_000, share: 0.001 },
      ]),
    ).toEqual([100, 200, 100]);
  });

  it("prefers the remainder to the size, and the first of equals", () => {
    // 90.004, 0.006 and 0.09: the cent that rounding down loses goes to 0.6 of a cent, not to 0.4 of one beside much.
    const paid = 1_000_000;
    const of = (share: number) => ({ paid, share });
    expect(roundedTogether(100, [of(0.90004), of(0.00006), of(0.0009)])).toEqual([900_000, 100, 900]);
    expect(roundedTogether(100, [of(0.00005), of(0.00005), of(0.00005), of(0.00005)])).toEqual([100, 100, 0, 0]);
  });

  it("does not lose a cent to the last digits of a share", () => {
    // 0.29 of 100.00 is 28.999999999999996 in doubles; the other line has a true remainder and must not get that cent.
    expect(
      roundedTogether(100, [
        { paid: 1_000_000, share: 0.29 - 5e-17 },
        { paid: 1_000_000, share: 0.00004 },
      ]),
    ).toEqual([290_000, 0]);
  });

  it("takes nothing from a line that was used whole", () => {
    expect(
      roundedTogether(100, [
        { paid: 8000, share: 1 },
        { paid: 8000, share: 0.99999 },
      ]),
    ).toEqual([8000, 8000]);
  });

  it("never makes a share larger than what was paid", () => {
    expect(roundedTogether(100, [{ paid: 50, share: 1 }])).toEqual([0]);
    expect(
      roundedTogether(100, [
        { paid: 150, share: 1 },
        { paid: 250, share: 0.62 },
      ]),
    ).toEqual([100, 200]);
  });

  it("leaves an empty list empty", () => {
    expect(roundedTogether(100, [])).toEqual([]);
  });

  it("adds up to the rounded sum, each within one coin of its own share", () => {
    const amounts = fc.array(
      fc.record({
        paid: fc.integer({ min: 0, max: 1e6 }).map((cents) => cents * 100),
        share: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(amounts, (shares) => {
        const rounded = roundedTogether(100, shares);
        const exact = shares.reduce((sum, { paid, share }) => sum + paid * share, 0);
        expect(rounded.reduce((sum, each) => sum + each, 0)).toBe(roundedTo(100, exact));
        shares.forEach(({ paid, share }, at) => {
          expect(Math.abs(rounded[at]! - paid * share)).toBeLessThan(100.001);
          expect(rounded[at]).toBeLessThanOrEqual(paid);
          expect(rounded[at]! % 100).toBe(0);
        });
      }),
    );
  });
});
