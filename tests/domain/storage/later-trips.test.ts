import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { laterTrips } from "../../../src/domain/storage/later-trips.js";

const days = (...list: readonly number[]) => list.map((day) => ({ day }));

describe("later trips to the shop", () => {
  it("serve meals that lie no further apart than the food keeps", () => {
    expect(laterTrips(days(6, 4), 3)).toEqual([{ meals: days(4, 6), notBefore: 3 }]);
    // Bought on day 5 for the last meal it would miss the first: two trips.
    expect(laterTrips(days(3, 7), 2)).toEqual([
      { meals: days(3), notBefore: 1 },
      { meals: days(7), notBefore: 5 },
    ]);
    expect(laterTrips([], 2)).toEqual([]);
  });

  it("are in time for each meal, bring nothing that is too old, and none could be left out", () => {
    const late = fc.array(fc.record({ day: fc.integer({ min: 1, max: 40 }) }), { maxLength: 12 });
    fc.assert(
      fc.property(late, fc.integer({ min: 0, max: 9 }), (meals, keeps) => {
        const tooLate = meals.filter(({ day }) => day > keeps);
        const trips = laterTrips(tooLate, keeps);
        expect(trips.flatMap((trip) => trip.meals)).toHaveLength(tooLate.length);
        for (const { meals: served, notBefore } of trips) {
          for (const { day } of served) {
            expect(day).toBeGreaterThanOrEqual(notBefore);
            expect(day - notBefore).toBeLessThanOrEqual(keeps);
          }
        }
        // The first meals of any two trips lie too far apart for one.
        trips.slice(1).forEach((trip, at) => {
          expect((trip.meals[0]?.day ?? 0) - (trips[at]?.meals[0]?.day ?? 0)).toBeGreaterThan(keeps);
        });
      }),
    );
  });
});
