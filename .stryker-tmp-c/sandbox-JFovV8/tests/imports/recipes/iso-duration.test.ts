// @ts-nocheck
import fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { isoDurationMinutes, longestDuration } from "../../../src/imports/recipes/iso-duration.js";

describe("ISO 8601 durations", () => {
  // Case O-36; decimals of the last part: ISO 8601-1:2019, 5.5.2.
  it.each([
    ["PT15M", 15],
    ["PT1.5H", 90],
    ["PT1,5H", 90],
    ["P0DT1H45M", 105],
    ["PT90M", 90],
    ["P1D", 1440],
    ["P1W", 10_080],
    ["PT30S", 0.5],
    ["PT0M", 0],
  ])("%s is %d minutes", (text, minutes) => {
    expect(isoDurationMinutes(text)).toBe(minutes);
  });

  it.each([
    "90 minutes",
    "PT24",
    "1:30",
    "",
    "P",
    "PT",
    "P1DT",
    "P1M",
    "P1Y",
    "PT1.5H30M",
    "-PT5M",
    "PT5M ago",
    "pt5m",
    "P9999D",
  ])("%j is none", (text) => {
    expect(isoDurationMinutes(text)).toBeNull();
  });

  it("agrees with Temporal wherever Temporal reads days, hours, minutes and seconds", () => {
    const part = fc.integer({ min: 0, max: 300 });
    fc.assert(
      fc.property(part, part, part, part, (days, hours, minutes, seconds) => {
        const text = `P${days}DT${hours}H${minutes}M${seconds}S`;
        const total = Temporal.Duration.from(text).total({ unit: "minutes", relativeTo: "2026-01-01" });
        const read = isoDurationMinutes(text);
        if (total > longestDuration) expect(read).toBeNull();
        else expect(read).toBeCloseTo(total, 6);
      }),
    );
  });
});
