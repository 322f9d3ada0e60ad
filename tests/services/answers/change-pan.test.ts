import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changePan } from "../../../src/services/answers/change-pan.js";

const size = fc.oneof(
  fc.double({ noNaN: false }),
  fc.double({ min: 0.01, max: 10_000 }),
  fc.constantFrom(1e-308, Number.MIN_VALUE, 0, -1, 10_001, Infinity),
);
const pan = fc.oneof(fc.record({ diameter: size }), fc.record({ length: size, width: size }));

describe("a change of pan", () => {
  it("is a finite factor above zero, or refused with the bounds", () => {
    fc.assert(
      fc.property(pan, pan, (from, to) => {
        const changed = changePan(from, to);
        if (changed.ok) {
          expect(Number.isFinite(changed.value.factor)).toBe(true);
          expect(changed.value.factor).toBeGreaterThan(0);
        } else {
          expect(changed.problems.every(({ code }) => code === "AMOUNT_OUT_OF_RANGE")).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
    expect(changePan({ diameter: 1e-308 }, { diameter: 24 }).ok).toBe(false);
    expect(changePan({ diameter: 20 }, { diameter: 24 })).toMatchObject({ ok: true });
  });
});
