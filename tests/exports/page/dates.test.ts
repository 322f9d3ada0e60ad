import { describe, expect, it } from "vitest";
import { clockText, dateOfDay, whenText } from "../../../src/exports/page/dates.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

// Clocks in Lisbon went forward on 29 March 2026 at 01:00 (EU Directive 2000/84/EC, last Sunday of March).
const session = { start: "2026-03-29T00:30:00Z", zone: "Europe/Lisbon" };

describe("times on the wall clock", () => {
  it("skip the hour that the clocks skip", () => {
    expect([0, 29, 30, 90].map((minute) => clockText(minute, session))).toEqual(["00:30", "00:59", "02:00", "03:00"]);
    expect(clockText(-60, session)).toBe("23:30");
  });

  it("count from the start where no start is known", () => {
    expect([0, 5, 65, -690].map((minute) => clockText(minute, null))).toEqual(["0:00", "0:05", "1:05", "−11:30"]);
  });

  it("are dates of the zone", () => {
    expect(dateOfDay(2, { start: "2026-03-01T23:30:00Z", zone: "Asia/Tokyo" })).toBe("2026-03-04");
    expect(dateOfDay(2, null)).toBeNull();
    const book = { reader: { measures: "METRIC", locale: "en-GB", converts: false }, words: wordsFor("en") } as const;
    expect(whenText("2026-03-01T23:30:00Z", "Asia/Tokyo", book)).toBe("Mon, 2 Mar, 08:30");
  });
});
