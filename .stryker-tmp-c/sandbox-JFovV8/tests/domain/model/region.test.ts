// @ts-nocheck
import { describe, expect, it } from "vitest";
import { inForceOn, regionCovers } from "../../../src/domain/model/region.js";

describe("a rule's region", () => {
  it.each([
    ["INT", "XA", true],
    ["US", "US", true],
    ["US", "US-WA", true],
    ["US-WA", "US", false],
    ["US-WA", "US-OR", false],
    ["EU", "FR", true],
    ["EU", "GB", false],
    ["EU", "EU", true],
    ["ANZ", "NZ", true],
    ["ANZ", "AU-SA", true],
    ["ANZ", "US", false],
    ["GB", "US", false],
  ])("%s holds in %s: %s", (rule, asked, holds) => expect(regionCovers(rule, asked)).toBe(holds));

  it("EU holds in 27 states", () => {
    const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
    const codes = letters.flatMap((first) => letters.map((second) => first + second)).filter((code) => code !== "EU");
    expect(codes.filter((code) => regionCovers("EU", code))).toHaveLength(27);
  });
});

describe("a dated rule", () => {
  it("holds from its first day up to, not on, the day it was superseded", () => {
    const rule = { inForceFrom: "2020-01-01", inForceTo: "2021-01-01" };
    const days = ["2019-12-31", "2020-01-01", "2020-12-31", "2021-01-01"];
    expect(days.map((day) => inForceOn(rule, day))).toEqual([false, true, true, false]);
    expect(inForceOn({ inForceFrom: null, inForceTo: null }, "1900-01-01")).toBe(true);
  });
});
