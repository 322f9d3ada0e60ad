import { describe, expect, it } from "vitest";
import { noHousehold } from "../../../src/domain/model/household.js";
import { demo } from "../../graphql/open-test-app.js";
import {
  longestHouseholdList,
  readHousehold,
  type GivenHousehold,
} from "../../../src/services/answers/read-household.js";

const diets = [{ code: "vegan" }, { code: "gluten-free" }];

const codesOf = (given: GivenHousehold): readonly string[] => {
  const read = readHousehold(given, [], diets);
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
};

describe("reading a household", () => {
  it("knows the diets there is a rule for, and names them where another is asked for", () => {
    expect(codesOf({ diets: ["vegan", "gluten-free"] })).toEqual([]);
    const read = readHousehold({ diets: ["vegan", "low-fodmap"] }, [], diets);
    expect(read).toEqual({
      ok: false,
      problems: [
        {
          code: "BAD_HOUSEHOLD",
          path: ["household", "diets", 1],
          what: "one of vegan, gluten-free",
          value: "low-fodmap",
        },
      ],
    });
  });

  it("reads the reader's own kitchen, and names the appliance that a misspelt one may mean", () => {
    const { bundles } = demo;
    const read = (appliance: string) =>
      readHousehold({ kitchen: { cooks: 2, appliances: [{ appliance, count: 1 }] } }, bundles, diets);
    expect(read("oven-shelf")).toMatchObject({
      ok: true,
      value: { kitchen: { cooks: 2, appliances: { "oven-shelf": 1 } } },
    });
    expect(read("oven-shelv")).toEqual({
      ok: false,
      problems: [
        {
          code: "BAD_HOUSEHOLD",
          path: ["household", "kitchen", "appliances", 0, "appliance"],
          what: "one of oven-shelf",
          value: "oven-shelv",
        },
      ],
    });
  });

  // Tags as browsers send them. Source: BCP 47 (RFC 5646), appendix A, and the registry's `gsw`.
  it.each(["en", "en-GB", "de-CH-1996", "zh-Hant-TW", "es-419", "sr-Latn-RS", "ca-valencia", "gsw", "de-u-co-phonebk"])(
    "takes a locale of a language that there is: %s",
    (locale) => {
      expect(codesOf({ locale })).toEqual([]);
    },
  );

  it.each([
    ["english", "near it: en"],
    ["Deutsch", "near it: de"],
    ["xq", "such as en-GB"],
    ["xq-GB", "such as en-GB"],
    ["en-Ltan", "such as en-GB"],
    ["en-AC-", "such as en-GB"],
    ["français", "near it: fr"],
    ["", "such as en-GB"],
  ])("refuses a locale of none, with the one that is meant: %s", (locale, near) => {
    const read = readHousehold({ locale }, [], diets);
    expect(read.ok ? [] : read.problems).toMatchObject([{ path: ["household", "locale"], value: locale }]);
    expect(JSON.stringify(read)).toContain(near);
  });

  it("takes nothing at all as nobody in particular", () => {
    expect(readHousehold({}, [], diets)).toEqual({ ok: true, value: noHousehold });
  });

  it("completes what is given, codes in any case", () => {
    const read = readHousehold(
      {
        eaters: [
          { count: 2, portion: "1" },
          { count: 1, portion: "1/2" },
        ],
        region: "xa",
        currency: "xts",
        locale: "EN-gb",
        measures: "AUSTRALIAN",
        onHand: [{ food: "rice", amount: "1 1/2", unit: "cups" }],
        sessionStart: { local: "2026-03-01T10:00", zone: "Europe/Lisbon" },
      },
      [],
      diets,
    );
    expect(read).toMatchObject({
      ok: true,
      value: {
        eaters: [
          { count: 2, portion: "1" },
          { count: 1, portion: "1/2" },
        ],
        region: "XA",
        currency: "XTS",
        locale: "en-GB",
        onHand: [{ item: { kind: "FOOD", food: "rice" }, amount: "3/2", useBy: null }],
        session: { start: "2026-03-01T10:00:00Z", zone: "Europe/Lisbon" },
      },
    });
  });

  it.each([
    ["UK", "GB"],
    ["USA", "US"],
    ["EU", "DE or FR or IE"],
    ["US-WASH", "US"],
  ])("refuses %s, which is no code of ISO 3166-1, and names %s", (region, nearest) => {
    const read = readHousehold({ region }, [], []);
    expect(read).toMatchObject({
      ok: false,
      problems: [{ code: "BAD_HOUSEHOLD", path: ["household", "region"], value: region }],
    });
    expect(JSON.stringify(read)).toContain(`the nearest is ${nearest}`);
  });

  it("lists every problem with its place", () => {
    expect(
      codesOf({
        region: "Europe",
        currency: "€",
        locale: "no such tag",
        onHand: [
          { food: "rice", amount: "2", unit: "bucketful" },
          { amount: "2", unit: "g" },
          { food: "rice", component: "dal", amount: "2", unit: "g" },
          { food: "rice", amount: "-2", unit: "g" },
          { food: "rice", amount: "1-2", unit: "g" },
        ],
        sessionStart: { local: "2026-02-30T10:00", zone: "Europe/Lisbon" },
      }),
    ).toEqual([
      "BAD_HOUSEHOLD household.region",
      "BAD_HOUSEHOLD household.currency",
      "BAD_HOUSEHOLD household.locale",
      "UNKNOWN_UNIT household.onHand.0.unit",
      "BAD_SHAPE household.onHand.1",
      "BAD_SHAPE household.onHand.2",
      "AMOUNT_OUT_OF_RANGE household.onHand.3.amount",
      "BAD_SHAPE household.onHand.4.amount",
      "BAD_HOUSEHOLD household.sessionStart.local",
    ]);
  });

  it.each([
    [{ zone: "Europe/Lisbon" }, "BAD_SHAPE household.sessionStart"],
    [{ instant: "2026-03-01T10:00:00Z", local: "2026-03-01T10:00", zone: "UTC" }, "BAD_SHAPE household.sessionStart"],
    [{ local: "2026-03-01T10:00", zone: "Mars/Olympus" }, "BAD_HOUSEHOLD household.sessionStart.zone"],
    [{ local: "2026-03-01T10:00", zone: "+01:00" }, "BAD_HOUSEHOLD household.sessionStart.zone"],
    [{ local: "2026-03-01T10:00Z", zone: "UTC" }, "BAD_HOUSEHOLD household.sessionStart.local"],
  ])("refuses the session start %j", (sessionStart, expected) => {
    expect(codesOf({ sessionStart })).toEqual([expected]);
  });

  it("reads an hour the clocks skip as the one after it, and one they repeat as its first", () => {
    // Central European zones skipped 02:00-03:00 on 2026-03-29 and repeat it on 2026-10-25 (IANA tz database).
    const startOf = (local: string): string | undefined => {
      const read = readHousehold({ sessionStart: { local, zone: "Europe/Berlin" } }, [], diets);
      return read.ok ? read.value.session?.start : undefined;
    };
    expect(startOf("2026-03-29T02:30")).toBe("2026-03-29T01:30:00Z");
    expect(startOf("2026-10-25T02:30")).toBe("2026-10-25T00:30:00Z");
  });

  it("takes lists up to their limit and refuses one more", () => {
    const diets = (length: number) => ({ diets: Array.from({ length }, () => "vegan") });
    expect(codesOf(diets(longestHouseholdList))).toEqual([]);
    expect(codesOf(diets(longestHouseholdList + 1))).toEqual(["TOO_LARGE household.diets"]);
  });
});
