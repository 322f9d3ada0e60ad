import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { KeepingClass, PublishedKeepingRule } from "../../src/domain/model/keeping.js";
import { ceilingsFor } from "../../src/domain/storage/ceilings.js";
import { endOf, isPast, lastingDays, plannedSpan } from "../../src/domain/storage/keeping-window.js";
import { ask, eaten, guidanceOf, kept, ruled, says } from "../domain/storage/kept-builders.js";

/** Law 6: the stricter of two rules stands; a narrower class beats a wider one; hours count as hours. */

const today = "2026-11-29";
const classes: readonly KeepingClass[] = [
  { code: "wide", what: "", within: null, byAnalogy: false, perishable: true },
  { code: "middle", what: "", within: "wide", byAnalogy: false, perishable: true },
  { code: "narrow", what: "", within: "middle", byAnalogy: false, perishable: true },
];
const rule = fc
  .record({
    keepsAs: fc.constantFrom("wide", "middle", "narrow"),
    region: fc.constantFrom("US", "GB", "CA"),
    hours: fc.integer({ min: 0, max: 240 }),
    counts: fc.constantFrom("DAYS" as const, "HOURS" as const),
    from: fc.option(fc.integer({ min: 0, max: 100 })),
  })
  .map(({ hours, from, counts, ...facts }): PublishedKeepingRule => {
    const days = counts === "DAYS" ? Math.floor(hours / 24) : hours / 24;
    const lower = from === null ? null : counts === "DAYS" ? Math.floor((days * from) / 100) : (days * from) / 100;
    return ruled({ ...facts, counts, days, daysFrom: lower, id: JSON.stringify([facts, hours, counts, from]) });
  });
const rules = fc.array(rule, { maxLength: 6 });
const region = fc.constantFrom(null, "US", "GB", "CA", "DE");
const lasting = (each: PublishedKeepingRule): number => lastingDays(plannedSpan(each));

describe("law 6", () => {
  it("the stricter of two rules stands, of the same class and region", () => {
    fc.assert(
      fc.property(rules, rule, fc.constantFrom("US", "GB"), (others, more, where) => {
        const here = others.map((each) => ({ ...each, region: where, keepsAs: "narrow" }));
        const all = [...here, { ...more, region: where, keepsAs: "narrow" }];
        const found = guidanceOf(
          ask({ components: [kept("it", "narrow")] }, { rules: all, classes, region: where }),
          "it",
          "FRIDGE",
        );
        const ends = all.map((each) => endOf(plannedSpan(each), 0, null).clock);
        expect(endOf({ days: found.days, counts: found.counts, firstDay: 0 }, 0, null).clock).toBeCloseTo(
          Math.min(...ends),
          9,
        );
      }),
    );
  });

  it("a narrower class beats a wider one of another region: nobody is told longer than what is known of the very food", () => {
    fc.assert(
      fc.property(rules, region, (keeping, where) => {
        const found = ceilingsFor({ keeping, classes }, "narrow", "FRIDGE", {
          region: where,
          audience: "HOUSEHOLD",
          date: today,
        });
        if (keeping.length > 0) expect(found).not.toEqual([]);
        const stands = Math.min(...found.map((ceiling) => lasting(ceiling.rule)));
        // What a region itself says of a class is its word on it; else whoever speaks of the narrower one is heard.
        for (const class_ of ["narrow", "middle", "wide"]) {
          const ofClass = keeping.filter(({ keepsAs }) => keepsAs === class_);
          const own = where === null ? [] : ofClass.filter((each) => each.region === where);
          for (const each of own.length > 0 ? own : ofClass) expect(stands).toBeLessThanOrEqual(lasting(each));
          if (own.length > 0) break;
        }
      }),
    );
  });

  it("for garlic in oil too: never at room temperature, also where chilled food may stand out for four hours", () => {
    // National Center for Home Food Preservation, Freezing Garlic-in-Oil; Food Standards Agency (UK), How to chill food
    for (const where of ["US", "GB", "CA", "NZ", "DE", null]) {
      const oil = kept("oil", "garlic-in-oil", [says("ROOM", 7), says("FRIDGE", 7)]);
      const answer = ask({ components: [oil] }, { region: where });
      expect(guidanceOf(answer, "oil", "ROOM").days, String(where)).toBe(0);
    }
  });

  it("hours count as hours: a meal is late from the minute on at which they are over", () => {
    const clock = fc.integer({ min: 0, max: 1439 });
    const at = (minute: number): string =>
      `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200 }),
        clock,
        fc.nat(9),
        clock,
        fc.boolean(),
        (hours, start, day, eatenAt, told) => {
          const session = told ? { start: `2026-06-01T${at(start)}:00Z`, zone: "UTC" } : null;
          const from = told ? start : 9 * 60;
          const end = endOf({ days: hours / 24, counts: "HOURS", firstDay: 0 }, 0, session);
          const minutes = day * 1440 + eatenAt - from;
          expect(isPast({ day, at: at(eatenAt) }, end, session)).toBe(minutes > hours * 60);
        },
      ),
    );
  });

  it("and a meal without an hour is a supper at six", () => {
    const stew = kept("stew", "leftovers", [says("FRIDGE", 2.375)]);
    const late = (days: number) =>
      guidanceOf(
        ask(
          {
            components: [{ ...stew, component: { ...stew.component, keeping: [says("FRIDGE", days)] } }],
            meals: [eaten("m", 2, "stew")],
          },
          { rules: [] },
        ),
        "stew",
      ).tooLateFor;
    expect(late(2.375)).toEqual([]); // 57 hours from 09:00
    expect(late(2.37)).toEqual(["m"]);
  });
});
