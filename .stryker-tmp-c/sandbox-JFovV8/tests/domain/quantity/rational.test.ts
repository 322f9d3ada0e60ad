// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addRationals,
  compareRationals,
  divideRationals,
  multiplyRationals,
  nearestFraction,
  parseRational,
  rationalText,
  toNumber,
} from "../../../src/domain/quantity/rational.js";

const part = fc.integer({ min: 1, max: 100_000 });

describe("rational texts", () => {
  it("are written in lowest terms, whole numbers without a denominator", () => {
    expect(rationalText(6, 4)).toBe("3/2");
    expect(rationalText(8, 4)).toBe("2");
    expect(rationalText(0, 7)).toBe("0");
  });

  it.each([
    [1, 0],
    [-1, 2],
    [0.5, 1],
    [1, 1.5],
    [Number.NaN, 1],
    [Infinity, 1],
    [2 ** 53, 1],
  ])("refuse %s/%s", (n, d) => {
    expect(() => rationalText(n, d)).toThrow(RangeError);
  });

  it.each(["", "-1", "1.5", "1/0", "01", "1/", "/2", " 1", "1e3", "NaN", "Infinity", "1/2/3", "9007199254740993"])(
    "%j is no rational",
    (text) => {
      expect(parseRational(text)).toBeNull();
      expect(() => toNumber(text)).toThrow(RangeError);
    },
  );

  it("are read in lowest terms", () => {
    expect(parseRational("6/4")).toEqual({ n: 3, d: 2 });
    expect(parseRational("0")).toEqual({ n: 0, d: 1 });
  });

  it("become the nearest double", () => {
    expect(toNumber("1/3")).toBe(1 / 3);
    expect(toNumber("12")).toBe(12);
  });

  it("survive writing and reading", () => {
    fc.assert(
      fc.property(part, part, (n, d) => {
        const read = parseRational(rationalText(n, d));
        expect(read === null ? 0 : read.n * d).toBe((read?.d ?? 0) * n);
      }),
    );
  });
});

describe("rational arithmetic", () => {
  it("O-12 b: a third, three times, is exactly one", () => {
    expect(multiplyRationals("1/3", "3")).toBe("1");
  });

  it("O-12 c: two thirds, one and a half times, is exactly one", () => {
    expect(multiplyRationals("2/3", "3/2")).toBe("1");
  });

  it("adds, divides and orders exactly", () => {
    expect(addRationals("1/3", "1/6")).toBe("1/2");
    expect(divideRationals("3/2", "1/4")).toBe("6");
    expect(compareRationals("1/3", "333/1000")).toBe(1);
    expect(compareRationals("1/3", "2/6")).toBe(0);
    expect(compareRationals("0", "1")).toBe(-1);
  });

  it("gives null instead of an inexact answer", () => {
    expect(divideRationals("1", "0")).toBeNull();
    expect(multiplyRationals("9007199254740991", "2")).toBeNull();
    expect(addRationals("9007199254740991", "1")).toBeNull();
    expect(divideRationals("1/9007199254740991", "2")).toBeNull();
  });

  it("undoes a product by a quotient", () => {
    fc.assert(
      fc.property(part, part, part, part, (a, b, c, d) => {
        const [x, y] = [rationalText(a, b), rationalText(c, d)];
        const product = multiplyRationals(x, y);
        expect(product === null ? null : divideRationals(product, y)).toBe(product === null ? null : x);
      }),
    );
  });
});

describe("the nearest fraction of a computed double", () => {
  it.each([
    [0.333333333333, 1, 3],
    [0.1 + 0.2, 3, 10],
    [2 / 3, 2, 3],
    [4, 4, 1],
    [0, 0, 1],
    [1.0625, 17, 16],
    [0.999999999999999, 1, 1],
    [1e9 + 0.5, 2_000_000_001, 2],
  ])("of %s is %s/%s", (value, n, d) => {
    expect(nearestFraction(value, 1000, 1e-11)).toEqual({ n, d });
  });

  it("O-12: takes a written 0.333 for what it is, not for a third", () => {
    expect(nearestFraction(0.333, 1000, 1e-11)).toEqual({ n: 333, d: 1000 });
  });

  it.each([Math.PI, Number.NaN, Infinity, -0.5, 1e300])("is null for %s", (value) => {
    expect(nearestFraction(value, 1000, 1e-11)).toBeNull();
  });

  it("is null when only a larger denominator would fit", () => {
    expect(nearestFraction(1 / 7, 6, 1e-9)).toBeNull();
    expect(nearestFraction(1 / 7, 7, 1e-9)).toEqual({ n: 1, d: 7 });
  });

  it("prefers the smallest denominator inside the tolerance", () => {
    expect(nearestFraction(0.26, 100, 0.05)).toEqual({ n: 1, d: 4 });
  });

  it("finds any fraction of a small denominator again", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50_000 }), fc.integer({ min: 1, max: 1000 }), (n, d) => {
        const found = nearestFraction(n / d, 1000, 1e-11);
        expect(found === null ? "" : rationalText(found.n, found.d)).toBe(rationalText(n, d));
      }),
    );
  });
});
