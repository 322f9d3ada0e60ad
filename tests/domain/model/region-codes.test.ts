import { describe, expect, it } from "vitest";
import {
  assignedRegions,
  isCountryCode,
  isRegionCode,
  nearestRegions,
  regionCode,
  regionInstead,
} from "../../../src/domain/model/region-codes.js";

const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
const pairs = letters.flatMap((first) => letters.map((second) => first + second));

/**
 * Source: the Unicode CLDR that ships with Node (names of territories), which knows every code ISO 3166-1 assigns, and beside them
 * those below: reserved, withdrawn, or left to its users.
 */
const cldr = new Intl.DisplayNames("en", { type: "region", fallback: "none" });
const notAssigned = new Set(
  "AC AN BU CP CQ CS DD DG DY EA EU EZ FX HV IC NH QO RH SU TA TP UK UN VD XA XB XK YD YU ZR ZZ".split(" "),
);

describe("the codes of ISO 3166-1", () => {
  it("are the 249 that are assigned, each once", () => {
    expect(assignedRegions).toHaveLength(249);
    expect(new Set(assignedRegions).size).toBe(249);
  });

  it("are the territories that CLDR names, without those that are reserved or withdrawn", () => {
    expect(assignedRegions.filter((code) => cldr.of(code) === undefined)).toEqual([]);
    const named = pairs.filter((code) => cldr.of(code) !== undefined && !notAssigned.has(code));
    expect(named.filter((code) => !assignedRegions.includes(code))).toEqual([]);
  });

  it("leave 42 codes to their users (ISO 3166-1, clause on user-assigned code elements)", () => {
    const own = pairs.filter((code) => isCountryCode(code) && !assignedRegions.includes(code));
    expect(own).toEqual(pairs.filter((code) => /^(AA|Q[M-Z]|X.|ZZ)$/.test(code)));
    expect(own).toHaveLength(42);
  });
});

describe("a region", () => {
  it.each([
    ["GB", "GB"],
    ["gb", "GB"],
    [" us-wa ", "US-WA"],
    ["GB-SCT", "GB-SCT"],
    ["XA", "XA"],
    ["XA-9", "XA-9"],
  ])("%s is read as %s", (given, code) => expect(regionCode(given)).toBe(code));

  it.each([
    ...["", "G", "UK", "EU", "ANZ", "INT", "QA-", "US-WASH", "US_WA", "GBR", "Atlantis", "\u0000\u0000", "İT", "gb gb"],
    ...["EN", "SU", "YU", "QL", "YY", "US-wa-x", "GB\u0000"],
  ])("%j is none", (given) => expect(regionCode(given)).toBeNull());

  it.each([
    ["UK", ["GB"]],
    ["uk", ["GB"]],
    ["U.K.", ["GB"]],
    ["UK-SCT", ["GB-SCT"]],
    ["USA", ["US"]],
    ["US_WA", ["US-WA"]],
    ["US-WASH", ["US"]],
    ["en-GB", ["GB"]],
    ["DEU", ["DE"]],
    ["EU", ["DE", "FR", "IE"]],
    ["GBB", ["GB", "BB"]],
    ["Atlantis", []],
  ])("%s may have meant %j", (given, nearest) => {
    expect(nearestRegions(given).toSorted()).toEqual(nearest.toSorted());
    expect(nearest.every(isRegionCode)).toBe(true);
    for (const code of nearest) expect(regionInstead(given)).toContain(code);
  });
});

/** Every code of two letters, asked of every door: the doors themselves are tried in their own suites. */
it("is one for 291 of the 676 pairs of letters", () => {
  expect(pairs.filter(isRegionCode)).toHaveLength(249 + 42);
});
