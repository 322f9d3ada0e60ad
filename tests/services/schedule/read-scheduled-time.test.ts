import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { readScheduledTime } from "../../../src/services/schedule/read-scheduled-time.js";

const now = new Date("2026-03-01T09:00:00Z");
const read = (at: string, zone: string) => readScheduledTime({ at, zone }, now, ["input"]);
const instant = (at: string, zone: string): string => {
  const time = read(at, zone);
  return time.ok ? time.value.dueAt.toISOString() : time.problems.map(problemText).join(" ");
};
const refusal = (at: string, zone: string) => {
  const time = read(at, zone);
  if (time.ok) throw new Error(`${at} in ${zone} was read`);
  expect(time.problems).toHaveLength(1);
  return time.problems[0] as { why: string; offers: readonly string[]; path: readonly string[] };
};

/** Offsets and changes of 2026. Source: IANA time zone database, release 2025b, files europe, northamerica, australasia, asia. */
describe("the time of something scheduled", () => {
  it("is that of the clocks of its place, in summer and in winter", () => {
    expect(instant("2026-12-24T06:00", "Europe/Berlin")).toBe("2026-12-24T05:00:00.000Z");
    expect(instant("2026-07-24T06:00", "Europe/Berlin")).toBe("2026-07-24T04:00:00.000Z");
    expect(instant("2026-12-24 06:00", "America/New_York")).toBe("2026-12-24T11:00:00.000Z");
    expect(instant("2026-12-24T06:00:30", "Asia/Kathmandu")).toBe("2026-12-24T00:15:30.000Z");
    expect(instant("2026-12-24T06:00Z", "UTC")).toBe("2026-12-24T06:00:00.000Z");
    expect(instant("2026-12-24T06:00+01:00", "Europe/Warsaw")).toBe("2026-12-24T05:00:00.000Z");
    expect(instant("2026-12-24T06:00", "europe/berlin")).toBe("2026-12-24T05:00:00.000Z");
  });

  it("is refused where the clocks skip it, with the times on both sides", () => {
    expect(refusal("2026-03-29T02:30", "Europe/Berlin")).toMatchObject({
      why: "SKIPPED",
      path: ["input", "at"],
      offers: ["2026-03-29T01:30", "2026-03-29T03:30"],
    });
    expect(refusal("2026-03-08T02:00", "America/New_York").why).toBe("SKIPPED");
    // By half an hour only.
    expect(refusal("2026-10-04T02:15", "Australia/Lord_Howe")).toMatchObject({
      why: "SKIPPED",
      offers: ["2026-10-04T01:45", "2026-10-04T02:45"],
    });
    expect(instant("2026-03-29T01:59", "Europe/Berlin")).toBe("2026-03-29T00:59:00.000Z");
    expect(instant("2026-03-29T03:00", "Europe/Berlin")).toBe("2026-03-29T01:00:00.000Z");
  });

  it("is asked for with its offset where it comes twice", () => {
    const offers = ["2026-10-25T02:30+02:00", "2026-10-25T02:30+01:00"];
    expect(refusal("2026-10-25T02:30", "Europe/Berlin")).toMatchObject({ why: "REPEATED", offers });
    expect(offers.map((at) => instant(at, "Europe/Berlin"))).toEqual([
      "2026-10-25T00:30:00.000Z",
      "2026-10-25T01:30:00.000Z",
    ]);
    expect(refusal("2026-10-25T02:30+03:00", "Europe/Berlin")).toMatchObject({ why: "OTHER_OFFSET", offers });
    expect(refusal("2026-12-24T06:00Z", "Europe/Berlin")).toMatchObject({
      why: "OTHER_OFFSET",
      offers: ["2026-12-24T06:00+01:00"],
    });
  });

  it("is refused where it is over, far ahead, or no time", () => {
    expect(refusal("2026-03-01T10:00", "Europe/Berlin").why).toBe("PAST");
    expect(instant("2026-03-01T10:01", "Europe/Berlin")).toBe("2026-03-01T09:01:00.000Z");
    expect(refusal("2062-12-24T06:00", "UTC").why).toBe("TOO_FAR");
    for (const at of ["", "tomorrow", "2026-02-30T06:00", "24.12.2026 06:00", "2026-12-24", "2026-12-24T25:00", "\0"])
      expect([at, refusal(at, "UTC").why]).toEqual([at, "UNREADABLE"]);
  });

  it("names the nearest zone for a slip of the finger, a city, and the names of other languages", () => {
    for (const [zone, meant] of [
      ["Europe/Berln", "Europe/Berlin"],
      ["Europa/Berlin", "Europe/Berlin"],
      ["Berlin", "Europe/Berlin"],
      ["Europa/Wien", "Europe/Vienna"],
      ["Europe/Varsovie", "Europe/Warsaw"],
      ["Europa/Lizbona", "Europe/Lisbon"],
      ["América/Sao Paulo", "America/Sao_Paulo"],
      ["Ameryka/Nowy Jork", "America/New_York"],
      ["Zürich", "Europe/Zurich"],
    ] as const) {
      const { why, offers, path } = refusal("2026-12-24T06:00", zone);
      expect([zone, why, path, offers[0]]).toEqual([zone, "UNKNOWN_ZONE", ["input", "zone"], meant]);
    }
    for (const zone of ["", "+01:00", "GMT+1:00", "nowhere at all", "x".repeat(5_000)])
      expect([zone.slice(0, 20), refusal("2026-12-24T06:00", zone).why]).toEqual([zone.slice(0, 20), "UNKNOWN_ZONE"]);
  });

  it("says in words what to write instead", () => {
    expect(instant("2026-03-29T02:30", "Europe/Berlin")).toBe(
      "input > at: 2026-03-29T02:30 does not exist in Europe/Berlin: the clocks are put forward over it. Write 2026-03-29T01:30 or 2026-03-29T03:30.",
    );
    expect(instant("2026-12-24T06:00", "Berlin")).toBe(
      'input > zone: There is no time zone "Berlin". Did you mean Europe/Berlin?',
    );
  });
});
