import fc from "fast-check";
import { Fraction } from "fraction.js";
import { describe, expect, it } from "vitest";
import { sharedPieces, type PartUses } from "../../../src/domain/shopping/shared-pieces.js";
import { exactPieces } from "../../oracle/exact-pieces.js";

const uses = (keeps: number | null, ...byDay: readonly (readonly [day: number, pieces: number])[]): PartUses => ({
  keeps,
  byDay: new Map(byDay),
});

const arbitraryUses: fc.Arbitrary<PartUses> = fc
  .tuple(
    fc.oneof(fc.constant(null), fc.nat(6)),
    fc.array(
      fc.tuple(
        fc.nat(12),
        fc.integer({ min: 0, max: 20 }).map((eighths) => eighths / 8),
      ),
      { maxLength: 8 },
    ),
  )
  .map(([keeps, byDay]) => uses(keeps, ...byDay));

describe("pieces that parts share", () => {
  it("are as many as the most wanted part takes where all keep", () => {
    expect(sharedPieces([uses(null, [0, 2]), uses(null, [6, 3])])).toBe(3);
    expect(sharedPieces([uses(0, [0, 2]), uses(6, [6, 3])])).toBe(3);
    expect(sharedPieces([uses(0, [4, 2]), uses(0, [4, 3])])).toBe(3);
    expect(sharedPieces([])).toBe(0);
  });

  it("are cut anew for a part that does not keep", () => {
    expect(sharedPieces([uses(9, [0, 2]), uses(5, [6, 3])])).toBe(5);
    // Two of the three come from those cut on day 4, the third from one of its own.
    expect(sharedPieces([uses(9, [0, 2], [4, 2]), uses(2, [6, 3])])).toBe(5);
    expect(sharedPieces([uses(9, [0, 2], [4, 2]), uses(2, [6, 2])])).toBe(4);
  });

  it.each([
    ["to the last day", 6, 3],
    ["a day short of it", 5, 5],
  ])("that keep %s are bought %i", (_, keeps, pieces) => {
    expect(sharedPieces([uses(null, [2, 2]), uses(keeps, [8, 3])])).toBe(pieces);
  });

  it("are the least that will do: an exact computation from the other side agrees", () => {
    fc.assert(
      fc.property(fc.array(arbitraryUses, { maxLength: 4 }), (parts) => {
        const takings = parts.flatMap(({ keeps, byDay }, at) =>
          [...byDay].map(([day, pieces]) => ({ part: String(at), day, pieces: new Fraction(pieces), keeps })),
        );
        expect(sharedPieces(parts)).toBeCloseTo(exactPieces(takings).valueOf(), 9);
      }),
      { numRuns: 500 },
    );
  });

  it("never grow fewer when more is used or when a part keeps for less long", () => {
    fc.assert(
      fc.property(fc.array(arbitraryUses, { minLength: 1, maxLength: 3 }), arbitraryUses, (parts, more) => {
        const least = sharedPieces(parts);
        expect(sharedPieces([...parts, more])).toBeGreaterThanOrEqual(least - 1e-9);
        const shorter = parts.map((part) => ({ ...part, keeps: Math.max(0, (part.keeps ?? 20) - 1) }));
        expect(sharedPieces(shorter)).toBeGreaterThanOrEqual(least - 1e-9);
      }),
    );
  });
});
