// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changePan, type GivenPan } from "../../src/services/change-pan.js";

const factor = (from: GivenPan, to: GivenPan): number => {
  const change = changePan(from, to);
  if (!change.ok) throw new Error(JSON.stringify(change.problems));
  return change.value.factor;
};

describe("O-13: a change of pan", () => {
  // Areas: a published answer on substituting pans by area, and a published table of pan sizes (64 and 117 square inches).
  it("from 9 in round to 8 in square changes nothing worth changing", () => {
    expect(factor({ diameter: 9 }, { length: 8, width: 8 })).toBeCloseTo(1.006, 3);
    expect(changePan({ diameter: 9 }, { length: 8, width: 8 })).toMatchObject({ value: { leaveAsIs: true } });
  });

  it("from 8 by 8 to 9 by 13 goes by the area", () => {
    expect(factor({ length: 8, width: 8 }, { length: 9, width: 13 })).toBeCloseTo(1.828, 3);
    expect(changePan({ length: 8, width: 8 }, { length: 9, width: 13 })).toMatchObject({ value: { leaveAsIs: false } });
  });

  it("goes there and back, whatever the unit of length", () => {
    const size = fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (diameter, length, width) => {
        const there = factor({ diameter }, { length, width });
        expect(there * factor({ length, width }, { diameter })).toBeCloseTo(1, 9);
        const inches = factor({ diameter: diameter / 2.54 }, { length: length / 2.54, width: width / 2.54 });
        expect(inches / there).toBeCloseTo(1, 9);
      }),
    );
  });

  it.each([
    [{}, { diameter: 9 }, "BAD_SHAPE from"],
    [{ diameter: 9, width: 2 }, { diameter: 9 }, "BAD_SHAPE from"],
    [{ diameter: 9 }, { length: 8 }, "BAD_SHAPE to"],
    [{ diameter: 0 }, { diameter: 9 }, "AMOUNT_OUT_OF_RANGE from"],
    [{ diameter: 9 }, { length: -8, width: 8 }, "AMOUNT_OUT_OF_RANGE to"],
    [{ diameter: Number.NaN }, { diameter: 9 }, "AMOUNT_OUT_OF_RANGE from"],
    [{ diameter: 1e308 }, { diameter: 9 }, "AMOUNT_OUT_OF_RANGE from"],
  ])("%j to %j is refused as %s", (from, to, expected) => {
    const change = changePan(from, to);
    expect(change.ok ? [] : change.problems.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual([expected]);
  });
});
