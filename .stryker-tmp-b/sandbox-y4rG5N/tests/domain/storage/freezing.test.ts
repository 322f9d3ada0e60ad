// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { remainingAfterFreezing } from "../../../src/domain/storage/freezing.js";
import { rules } from "./kept-builders.js";

const rule = (id: string) => {
  const found = rules.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no rule ${id}`);
  return found;
};
const retail = rule("fc-date-7");
const leftovers = rule("leftovers-fridge");

const zone = "America/New_York";
const on = (date: string, time = "12:00:00-04:00"): string => `${date}T${time}`;
const october = { made: on("2026-10-01"), frozen: on("2026-10-03"), thawed: on("2026-10-10"), zone };

describe("a food that was frozen and thawed", () => {
  it("goes on with what was left (O-28: cooked 1 October, frozen 3, thawed 10, 7 days: last day 14 October)", () => {
    // North Carolina date-marking sheet: 1 and 2 October are used, 10 October is day 3.
    expect(remainingAfterFreezing(october, retail, null)).toEqual({
      ok: true,
      used: 2,
      remaining: 4,
      lastDay: "2026-10-14",
      until: "2026-10-15T03:59:59Z",
      decidedBy: "PAUSED",
    });
  });

  it("keeps by the rule for thawed food where that is shorter (O-28, UK: 24 hours after defrosting)", () => {
    const uk = remainingAfterFreezing({ ...october, zone: "Europe/London" }, leftovers, rule("uk-thawed"));
    expect(uk).toMatchObject({ ok: true, decidedBy: "THAWED", until: "2026-10-11T16:00:00Z", lastDay: "2026-10-11" });
  });

  it("keeps by what was left where that is shorter (O-28, home rule: 3 to 4 days after thawing)", () => {
    // Four days from 1 October, two used: two are left, which is less than the four after thawing.
    expect(remainingAfterFreezing(october, leftovers, rule("us-thawed"))).toMatchObject({
      ok: true,
      decidedBy: "PAUSED",
      lastDay: "2026-10-12",
    });
    // Frozen on the day it was cooked, both give four days.
    const fresh = { ...october, frozen: on("2026-10-01", "20:00:00-04:00") };
    expect(remainingAfterFreezing(fresh, leftovers, rule("us-thawed"))).toMatchObject({ lastDay: "2026-10-14" });
  });

  it("is not saved by the freezer when its time was over before", () => {
    const late = { ...october, frozen: on("2026-10-06") };
    expect(remainingAfterFreezing(late, leftovers, null)).toEqual({ ok: false, why: "TOO_OLD_WHEN_FROZEN" });
  });

  it("cannot be thawed before it was frozen", () => {
    const wrong = { ...october, thawed: on("2026-10-02") };
    expect(remainingAfterFreezing(wrong, leftovers, null)).toEqual({ ok: false, why: "OUT_OF_ORDER" });
  });

  it("counts hours as hours: 48 hours, 20 used, 28 left", () => {
    const uk = { made: "2026-10-01T10:00:00Z", frozen: "2026-10-02T06:00:00Z", thawed: "2026-12-01T10:00:00Z", zone };
    expect(remainingAfterFreezing(uk, rule("uk-leftovers"), null)).toMatchObject({ until: "2026-12-02T14:00:00Z" });
  });

  it("never keeps longer than a fresh one from the day it thawed, and time in the freezer does not matter", () => {
    const day = 86_400_000;
    const at = (milliseconds: number): string => new Date(milliseconds).toISOString();
    fc.assert(
      fc.property(
        fc.integer({ min: Date.UTC(2025, 0, 1), max: Date.UTC(2027, 0, 1) }),
        fc.integer({ min: 0, max: 5 * day }),
        fc.integer({ min: 0, max: 400 }),
        fc.constantFrom(retail, leftovers, rule("uk-leftovers")),
        fc.constantFrom("UTC", "Asia/Kolkata", "Australia/Adelaide"),
        (made, kept, frozenDays, keeps, where) => {
          const frozen = made + kept;
          const food = { made: at(made), frozen: at(frozen), thawed: at(frozen + frozenDays * day), zone: where };
          const found = remainingAfterFreezing(food, keeps, null);
          const reset = remainingAfterFreezing({ ...food, made: food.thawed, frozen: food.thawed }, keeps, null);
          const notFrozen = remainingAfterFreezing({ ...food, thawed: food.frozen }, keeps, null);
          expect(found.ok).toBe(notFrozen.ok);
          if (!found.ok || !notFrozen.ok || !reset.ok) return;
          expect(found.remaining).toBe(notFrozen.remaining);
          expect(found.until <= reset.until).toBe(true);
        },
      ),
    );
  });
});
