import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endOf, lastingDays, writerSpan } from "../../../src/domain/storage/keeping-window.js";
import { ask, guidanceOf, kept } from "./kept-builders.js";

const days = (count: number, firstDay: 0 | 1 = 0) => ({ days: count, counts: "DAYS", firstDay }) as const;
const hours = (count: number) => ({ days: count / 24, counts: "HOURS", firstDay: 0 }) as const;

/** Calendar arithmetic that leans on Intl and UTC dates only, never on the library under test. */
const localDate = (instant: string, zone: string): string =>
  new Intl.DateTimeFormat("en-CA", { timeZone: zone, year: "numeric", month: "2-digit", day: "2-digit" }).format(
    new Date(instant),
  );
const localTime = (instant: string, zone: string): string =>
  new Intl.DateTimeFormat("en-GB", { timeZone: zone, timeStyle: "medium" }).format(new Date(instant));
const plusDays = (date: string, count: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + count * 86_400_000).toISOString().slice(0, 10);

describe("the end of a keeping time", () => {
  it("counts the day of making as day 1 where a retail rule does (O-26: 7 days from 1 April end on 7 April)", () => {
    // Southern Nevada Health District, How long can I keep TCS food
    const answer = ask(
      { components: [kept("salad", "chilled-ready-to-eat")] },
      {
        audience: "FOOD_SERVICE",
        session: { start: "2026-04-01T15:00:00Z", zone: "America/Los_Angeles" },
        today: "2026-04-01",
      },
    );
    const found = guidanceOf(answer, "salad");
    expect(found.lastDay).toBe("2026-04-07");
    expect(found.days).toBe(6);
    expect(found.basis.find(({ decides }) => decides)).toMatchObject({
      rule: "fc-date-7",
      counted: { days: 7, firstDay: 1, in: "DAYS" },
    });
  });

  it("counts it as day 0 where household advice does (O-26: 4 days from Thursday 23 November end on Monday 27)", () => {
    // a food-safety news report of the USDA leftovers rule
    const session = { start: "2023-11-23T23:00:00Z", zone: "America/New_York" };
    expect(endOf(days(4), 0, session).lastDay).toBe("2023-11-27");
    // Its source prints 3 to 4 days: the plan goes by 3.
    const found = guidanceOf(ask({ components: [kept("stew", "leftovers")] }, { session }), "stew");
    expect(found).toMatchObject({ lastDay: "2023-11-26", days: 3, upToDays: 4 });
    expect(found.basis.find(({ decides }) => decides)).toMatchObject({
      rule: "leftovers-fridge",
      counted: { days: 4, firstDay: 0, in: "DAYS" },
    });
  });

  it("goes by the calendar of the kitchen, not by that of Greenwich", () => {
    // 20:00 UTC on the 1st is already the 2nd in Kolkata and Adelaide.
    const start = "2026-06-01T20:00:00Z";
    expect(endOf(days(2), 0, { start, zone: "UTC" }).lastDay).toBe("2026-06-03");
    expect(endOf(days(2), 0, { start, zone: "Asia/Kolkata" }).lastDay).toBe("2026-06-04");
    expect(endOf(days(2), 0, { start, zone: "Australia/Adelaide" })).toEqual({
      day: 2,
      clock: 2 + 86_399 / 86_400,
      lastDay: "2026-06-04",
      until: "2026-06-04T14:29:59Z", // midnight at +09:30
    });
    expect(endOf(days(2), 0, { start, zone: "America/Los_Angeles" }).lastDay).toBe("2026-06-03");
  });

  it("gives a day of 25 hours all its hours, and hours no more than their number", () => {
    // Clocks go back in New York on 1 November 2026 at 06:00 UTC.
    const evening = { start: "2026-10-31T22:00:00-04:00", zone: "America/New_York" };
    expect(endOf(days(1), 0, evening).until).toBe("2026-11-02T04:59:59Z");
    expect(endOf(hours(24), 0, evening).until).toBe("2026-11-02T02:00:00Z"); // 21:00 by the new clock
    // They go forward in Adelaide on 4 October 2026.
    const adelaide = { start: "2026-10-03T12:00:00+09:30", zone: "Australia/Adelaide" };
    expect(endOf(days(1), 0, adelaide).until).toBe("2026-10-04T13:29:59Z"); // midnight at +10:30
    expect(endOf(hours(24), 0, adelaide).until).toBe("2026-10-04T02:30:00Z");
    // In Cairo the clocks go forward at midnight: the day after has no 00:00.
    const cairo = { start: "2026-04-22T09:00:00Z", zone: "Africa/Cairo" };
    expect(localDate(endOf(days(1), 0, cairo).until ?? "", "Africa/Cairo")).toBe("2026-04-23");
  });

  it("takes a writer's half day as hours, and never rounds a length up", () => {
    expect(writerSpan({ days: 0.5 })).toEqual(hours(12));
    expect(endOf(writerSpan({ days: 1.5 }), 0, null)).toMatchObject({ day: 1.5 });
    expect(endOf({ days: 2.9, counts: "DAYS", firstDay: 0 }, 0, null).day).toBe(2);
    expect(lastingDays(days(0, 1))).toBe(0);
  });

  it("refuses a zone that does not exist", () => {
    expect(() => endOf(days(1), 0, { start: "2026-01-01T00:00:00Z", zone: "Mars/Olympus" })).toThrow(RangeError);
    expect(() => endOf(days(1), 0, { start: "yesterday", zone: "UTC" })).toThrow(RangeError);
  });
});

describe("the end of a keeping time, anywhere at any time", () => {
  const zones = [
    "UTC",
    "Asia/Kolkata",
    "Australia/Adelaide",
    "America/St_Johns",
    "Australia/Lord_Howe",
    "Pacific/Apia",
  ];
  const session = fc.record({
    start: fc
      .integer({ min: Date.UTC(2024, 0, 1) / 1000, max: Date.UTC(2028, 0, 1) / 1000 })
      .map((seconds) => new Date(seconds * 1000).toISOString()),
    zone: fc.constantFrom(...zones),
  });

  it("is the last second of the local day that many days on", () => {
    fc.assert(
      fc.property(
        session,
        fc.integer({ min: 0, max: 40 }),
        fc.constantFrom(0 as const, 1 as const),
        (at, count, first) => {
          const end = endOf(days(count, first), 0, at);
          const expected = plusDays(localDate(at.start, at.zone), Math.max(0, count - first));
          expect(end.lastDay).toBe(expected);
          expect(localDate(end.until ?? "", at.zone)).toBe(expected);
          expect(localTime(end.until ?? "", at.zone)).toBe("23:59:59");
        },
      ),
    );
  });

  it("is exactly so many hours on where hours count", () => {
    fc.assert(
      fc.property(session, fc.integer({ min: 0, max: 200 }), (at, count) => {
        const end = endOf(hours(count), 0, at);
        expect(Date.parse(end.until ?? "") - Date.parse(at.start)).toBe(count * 3_600_000);
        expect(end.lastDay).toBe(localDate(end.until ?? "", at.zone));
      }),
    );
  });
});

describe("the zone of the machine", () => {
  const script = fileURLToPath(new URL("print-ends.ts", import.meta.url));
  const answerIn = async (zone: string): Promise<unknown> => {
    const env = { ...process.env, TZ: zone };
    const { stdout } = await promisify(execFile)(process.execPath, ["--import", "tsx", script], { env });
    return JSON.parse(stdout);
  };

  it.concurrent.each([
    ["UTC", 0],
    ["Asia/Kolkata", -330],
    ["America/New_York", 240],
    ["Pacific/Kiritimati", -840],
  ])("changes nothing: %s", async (zone, offset) => {
    expect(await answerIn(zone)).toEqual({
      days: { day: 4, clock: 4 + 86_399 / 86_400, lastDay: "2026-11-04", until: "2026-11-05T04:59:59Z" },
      hours: { day: 2, clock: 2.875, lastDay: "2026-11-02", until: "2026-11-03T02:00:00Z" },
      offset,
    });
  });
});
