import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { laterTrips } from "../../../src/domain/storage/later-trips.js";

const days = (keeps: number, ...list: readonly number[]) => list.map((day) => ({ day, keeps }));

describe("later trips to the shop", () => {
  it("serve meals that lie no further apart than the food keeps", () => {
    expect(laterTrips(days(3, 6, 4))).toEqual([{ meals: days(3, 4, 6), notBefore: 3 }]);
    // Bought on day 5 for the last meal it would miss the first: two trips.
    expect(laterTrips(days(2, 3, 7))).toEqual([
      { meals: days(2, 3), notBefore: 1 },
      { meals: days(2, 7), notBefore: 5 },
    ]);
    expect(laterTrips([])).toEqual([]);
  });

  it("are in time for each meal, bring nothing that is too old, and none could be left out", () => {
    const late = fc.array(fc.record({ day: fc.integer({ min: 1, max: 40 }), keeps: fc.integer({ min: 0, max: 9 }) }), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(late, (meals) => {
        const tooLate = meals.filter(({ day, keeps }) => day > keeps);
        const trips = laterTrips(tooLate);
        expect(trips.flatMap((trip) => trip.meals)).toHaveLength(tooLate.length);
        for (const { meals: served, notBefore } of trips) {
          for (const { day, keeps } of served) {
            expect(day).toBeGreaterThanOrEqual(notBefore);
            expect(day - notBefore).toBeLessThanOrEqual(keeps);
          }
        }
        // Whatever is bought by the day of the most urgent meal of a trip is too old for some meal of the next.
        trips.slice(1).forEach((trip, at) => {
          const urgent = trips[at]?.meals[0]?.day ?? 0;
          expect(Math.max(...trip.meals.map(({ day, keeps }) => day - keeps))).toBeGreaterThan(urgent);
        });
      }),
    );
  });
});
