import { describe, expect, it } from "vitest";
import { planned, session, step, taskOf, timesOf, unattended, work } from "./builders.js";

const beans = (soakMinutes: number, rest: { readonly maxWait?: number } = {}) =>
  work("beans", [
    unattended("soak", soakMinutes, { eveningBefore: true }),
    step("rinse", 3, { after: ["soak"], appliance: "sink", ...rest }),
    unattended("boil", 60, { after: ["rinse"], appliance: "hob-ring" }),
  ]);

describe("A soak across midnight and a clock change (O-29)", () => {
  it("ends at 09:00 EST when it starts at 22:00 EDT and takes twelve hours", () => {
    const plan = planned(
      session([beans(720)], {
        start: { instant: "2026-11-01T14:00:00Z", zone: "America/New_York" },
        evening: { from: "22:00", to: "22:00" },
      }),
    );
    expect(taskOf(plan, "beans/soak")).toMatchObject({
      startsAt: "2026-10-31T22:00:00-04:00",
      endsAt: "2026-11-01T09:00:00-05:00",
      eveningBefore: true,
      startMinute: -720,
    });
    expect(taskOf(plan, "beans/rinse").startsAt).toBe("2026-11-01T09:00:00-05:00");
    expect(plan.totalMinutes).toBe(63);
    expect(plan.eveningBefore).toEqual(["beans/soak"]);
  });

  it("ends an hour later by the clock in the night when the clocks go forward", () => {
    const plan = planned(
      session([beans(720)], {
        start: { instant: "2026-03-29T08:00:00Z", zone: "Europe/Lisbon" },
        evening: { from: "20:00", to: "22:00" },
      }),
    );
    expect(taskOf(plan, "beans/soak")).toMatchObject({
      startsAt: "2026-03-28T20:00:00+00:00",
      endsAt: "2026-03-29T09:00:00+01:00",
    });
    expect(taskOf(plan, "beans/rinse").startsAt).toBe("2026-03-29T09:00:00+01:00");
  });

  it.each([
    ["UTC", "2026-06-07T09:00:00Z", "2026-06-06T20:00:00+00:00", "2026-06-07T08:00:00+00:00"],
    ["Asia/Kolkata", "2026-06-07T03:30:00Z", "2026-06-06T20:00:00+05:30", "2026-06-07T08:00:00+05:30"],
    ["Australia/Lord_Howe", "2026-04-05T00:00:00Z", "2026-04-04T20:00:00+11:00", "2026-04-05T07:30:00+10:30"],
  ])("keeps elapsed time in %s", (zone, instant, startsAt, endsAt) => {
    const plan = planned(session([beans(720)], { start: { instant, zone } }));
    expect(taskOf(plan, "beans/soak")).toMatchObject({ startsAt, endsAt });
  });

  it("holds the session up when the night is too short for the soak", () => {
    const plan = planned(
      session([beans(720)], {
        start: { instant: "2026-06-07T05:00:00Z", zone: "UTC" },
        evening: { from: "20:00", to: "22:00" },
      }),
    );
    expect(timesOf(plan, "beans/rinse")).toEqual([180, 183]);
  });
});

describe("The evening before", () => {
  it("is used without a start too, with the soak done when the session begins", () => {
    const plan = planned(session([beans(720)]));
    expect(taskOf(plan, "beans/soak").endMinute).toBeLessThanOrEqual(0);
    expect(taskOf(plan, "beans/soak").startsAt).toBeNull();
    expect(plan.totalMinutes).toBe(63);
  });

  it("takes the steps that come before a soak along", () => {
    const lentils = work("lentils", [
      step("pick-over", 10),
      unattended("soak", 480, { after: ["pick-over"], eveningBefore: true }),
      unattended("boil", 20, { after: ["soak"] }),
    ]);
    const plan = planned(session([lentils]));
    expect(plan.eveningBefore).toEqual(["lentils/pick-over", "lentils/soak"]);
    expect(plan.totalMinutes).toBe(20);
    expect(plan.handsOnMinutes).toBe(10);
  });

  it("starts a soak late enough for its greatest wait", () => {
    const plan = planned(
      session([beans(600, { maxWait: 90 })], { start: { instant: "2026-06-07T09:00:00Z", zone: "UTC" } }),
    );
    const [, soaked] = timesOf(plan, "beans/soak");
    const [rinsed] = timesOf(plan, "beans/rinse");
    expect(rinsed - soaked).toBeLessThanOrEqual(90);
    expect(taskOf(plan, "beans/soak").startMinute).toBeLessThanOrEqual(-660);
  });

  it("is not used when the wait after the soak would be too long; the soak is then part of the session", () => {
    const plan = planned(
      session([beans(60, { maxWait: 30 })], { start: { instant: "2026-06-07T09:00:00Z", zone: "UTC" } }),
    );
    expect(plan.eveningBefore).toEqual([]);
    expect(plan.totalMinutes).toBe(123);
  });
});
