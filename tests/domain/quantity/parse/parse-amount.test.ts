import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MeasureSystem } from "../../../../src/domain/model/amount.js";
import type { OwnMeasure } from "../../../../src/domain/model/food.js";
import { parseAmount } from "../../../../src/domain/quantity/parse.js";
import { AMOUNT_MAX, AMOUNT_TEXT_MAX } from "../../../../src/domain/quantity/parse/limits.js";
import { parseRational } from "../../../../src/domain/quantity/rational.js";
import { measure } from "../facts.js";

const path = ["lines", 3];

const parse = (
  text: string,
  locale: string | null = null,
  measures: MeasureSystem = "US_CUSTOMARY",
  own: readonly OwnMeasure[] = [],
) => parseAmount(text, { locale, measures, own, path });

const value = (low: string, unit: string, high = low) => ({ ok: true, value: { low, high, unit } });
const problem = (facts: object) => ({ ok: false, problems: [{ path, ...facts }] });
const bad = (written: string, why: string) => problem({ code: "BAD_AMOUNT", written, why });

describe("structured amounts", () => {
  it.each([
    ["1 1/2 us-cup", "3/2", "us-cup"],
    ["600 g", "600", "g"],
    ["250g", "250", "g"],
    ["  1/3 cup ", "1/3", "us-cup"],
    ["½ tsp", "1/2", "us-tsp"],
    ["1½ tsp", "3/2", "us-tsp"],
    ["1 ½ tsp", "3/2", "us-tsp"],
    ["1⁄2 tsp", "1/2", "us-tsp"],
    ["1∕2 tsp", "1/2", "us-tsp"],
    ["1-1/2 lb", "3/2", "lb"],
    ["1 and 1/2 lb", "3/2", "lb"],
    ["⅞ cup", "7/8", "us-cup"],
    ["2 fl. oz.", "2", "us-floz"],
    ["3", "3", "piece"],
    ["0 g", "0", "g"],
    ["0.125 kg", "1/8", "kg"],
    ["1.50 kg", "3/2", "kg"],
    ["1000000000 g", "1000000000", "g"],
    ["007 g", "7", "g"],
  ])("%j is %s %s", (text, low, unit) => {
    expect(parse(text)).toEqual(value(low, unit));
  });

  it.each([
    ["2-3 tbsp", "2", "3", "us-tbsp"],
    ["½–1 tsp", "1/2", "1", "us-tsp"],
    ["3 to 3 ½ lb", "3", "7/2", "lb"],
    ["1—2 g", "1", "2", "g"],
    ["1 - 2 g", "1", "2", "g"],
    ["2-2 g", "2", "2", "g"],
    ["1/2-3/4 cup", "1/2", "3/4", "us-cup"],
    ["1-1 1/2 cup", "1", "3/2", "us-cup"],
  ])("%j is a range from %s to %s", (text, low, high, unit) => {
    expect(parse(text)).toEqual(value(low, unit, high));
  });

  it("O-34: reads one character by the locale, and never guesses without one", () => {
    expect(parse("1,5 dl", "de")).toEqual(value("3/2", "dl"));
    expect(parse("1,000 g", "en")).toEqual(value("1000", "g"));
    expect(parse("1.000 g", "de")).toEqual(value("1000", "g"));
    expect(parse("1,000 g")).toEqual(bad("1,000 g", "AMBIGUOUS_SEPARATOR"));
    expect(parse("1.000 g")).toEqual(bad("1.000 g", "AMBIGUOUS_SEPARATOR"));
    expect(parse("1.000 g", "no such tag")).toEqual(bad("1.000 g", "AMBIGUOUS_SEPARATOR"));
  });

  it.each([
    ["1\u202f000 g", "fr", "1000"],
    ["1\u00a0000 g", "fr", "1000"],
    ["1 000 g", "fr", "1000"],
    ["12\u2009345 g", null, "12345"],
    ["1\u202f000 g", null, "1000"],
    ["1\u202f000,5 g", "fr", "2001/2"],
    ["1.234,5 g", "de", "2469/2"],
    ["1.234,5 g", null, "2469/2"],
    ["1,234.5 g", "de", "2469/2"],
    ["1,234,567 g", null, "1234567"],
    ["1'000 g", "de-CH", "1000"],
    ["1’000 g", "de-CH", "1000"],
    ["1.5 g", "de-CH", "3/2"],
    ["1.5 g", "de", "3/2"],
    ["1,5 g", "en", "3/2"],
    ["1,5 g", null, "3/2"],
    ["0,125 g", null, "1/8"],
    ["0.125 g", "de", "1/8"],
    ["1,000 g", "es-MX", "1000"],
    ["1.000 g", "es-MX", "1"],
    ["1.000 g", "en", "1"],
    ["1234,5 g", "pl", "2469/2"],
    ["12.3456 g", null, "7716/625"],
  ])("%j in %s is %s", (text, locale, low) => {
    expect(parse(text, locale)).toEqual(value(low, "g"));
  });

  it.each([
    ["", "EMPTY"],
    ["   ", "EMPTY"],
    ["NaN", "NO_NUMBER"],
    ["Infinity g", "NO_NUMBER"],
    ["some salt", "NO_NUMBER"],
    ["/2 g", "NO_NUMBER"],
    ["1e308 g", "EXPONENT_NOTATION"],
    ["1E3", "EXPONENT_NOTATION"],
    ["1e-5 g", "EXPONENT_NOTATION"],
    ["1/0 cup", "DIVISION_BY_ZERO"],
    ["2 1/0 cup", "DIVISION_BY_ZERO"],
    ["1/999999 cup", "DENOMINATOR_TOO_LARGE"],
    ["3-2 g", "RANGE_REVERSED"],
    ["1.2.3 g", "BAD_GROUPING"],
    ["1,23,456 g", "BAD_GROUPING"],
    ["1.234.567,891,2 g", "BAD_GROUPING"],
    ["1'23 g", "BAD_GROUPING"],
    ["0,123,456 g", "BAD_GROUPING"],
    ["0.1234567 g", "TOO_MANY_DECIMALS"],
  ])("refuses %j: %s", (text, why) => {
    expect(parse(text)).toEqual(bad(text, why));
  });

  it.each(["-5 g", "−½ g", "- 5 g", "1000000001 g", "999999999999999999999999 g", "1000000000.5 g", "99999999999/2 g"])(
    "refuses %s as out of range",
    (text) => {
      expect(parse(text)).toEqual(problem({ code: "AMOUNT_OUT_OF_RANGE", value: text, min: 0, max: AMOUNT_MAX }));
    },
  );

  it("refuses a text that is too long, unread", () => {
    const text = "1".repeat(1_000_000);
    expect(parse(text)).toEqual(
      problem({ code: "TOO_LARGE", what: "amount", size: 1_000_000, limit: AMOUNT_TEXT_MAX }),
    );
    expect(parse(`1 ${" ".repeat(AMOUNT_TEXT_MAX - 3)}g`).ok).toBe(true);
    expect(parse(`1 ${" ".repeat(AMOUNT_TEXT_MAX - 2)}g`).ok).toBe(false);
  });

  it("names the nearest unit for an unknown one", () => {
    expect(parse("2 cupps")).toEqual(problem({ code: "UNKNOWN_UNIT", unit: "cupps", nearest: ["us-cup"] }));
    expect(parse("1 own:tin")).toEqual(problem({ code: "UNKNOWN_UNIT", unit: "own:tin", nearest: [] }));
  });

  it("asks which one where a unit's size is open", () => {
    const candidates = ["us-pint", "us-dry-pint"];
    expect(parse("1 pint")).toEqual(problem({ code: "AMBIGUOUS_UNIT", unit: "pint", candidates }));
    expect(parseAmount("1 pint", { locale: "en", measures: "US_CUSTOMARY", own: [], path, form: "dry" })).toEqual(
      value("1", "us-dry-pint"),
    );
    expect(parse("1 cup", "en", "METRIC")).toEqual(
      problem({ code: "AMBIGUOUS_UNIT", unit: "cup", candidates: ["metric-cup", "us-cup"] }),
    );
  });

  it("O-09: gives 'tbsp' the size of the plan's measures", () => {
    expect(parse("2 tbsp", "en-AU", "AUSTRALIAN")).toEqual(value("2", "au-tbsp"));
    expect(parse("2 tbsp", "en-NZ", "METRIC_CUP")).toEqual(value("2", "metric-tbsp"));
  });

  it("knows the food's own measures by any of their words, before the standard units", () => {
    const own = [
      measure("clove", { one: "clove", many: "cloves", grams: 3 }),
      measure("cup", { one: "cup", many: "cups", grams: 120 }),
      measure("piece", { one: "head", many: "heads", grams: 60 }),
    ];
    expect(parse("2 cloves", null, "METRIC", own)).toEqual(value("2", "own:clove"));
    expect(parse("2 own:clove", null, "METRIC", own)).toEqual(value("2", "own:clove"));
    expect(parse("1 Cup", null, "METRIC", own)).toEqual(value("1", "own:cup"));
    expect(parse("1 us-cup", null, "METRIC", own)).toEqual(value("1", "us-cup"));
    expect(parse("2 heads", null, "METRIC", own)).toEqual(value("2", "piece"));
    expect(parse("2 cloev", null, "METRIC", own)).toEqual(
      problem({ code: "UNKNOWN_UNIT", unit: "cloev", nearest: ["own:clove"] }),
    );
  });

  it.each([
    ["2 c. à s.", "fr", "2", "us-tbsp"],
    ["1 Esslöffel", "de", "1", "us-tbsp"],
    ["2 cucharaditas", "es", "2", "us-tsp"],
    ["5 łyżek", "pl", "5", "us-tbsp"],
  ])("reads %s in %s", (text, locale, low, unit) => {
    expect(parse(text, locale)).toEqual(value(low, unit));
  });

  it("never throws, and gives only well-formed rationals", () => {
    const pieces = fc.constantFrom(
      ..."0123456789 ½⅓/⁄.,-–'eg to cup NaN + (x)\u202f\u00a0".split(""),
      "1/2",
      "own:",
      "us-cup",
    );
    fc.assert(
      fc.property(
        fc.array(pieces, { maxLength: 14 }),
        fc.constantFrom(null, "en", "de", "fr", "??"),
        (parts, locale) => {
          const result = parse(parts.join(""), locale);
          if (!result.ok) return;
          const [low, high] = [parseRational(result.value.low), parseRational(result.value.high)];
          expect(low).not.toBeNull();
          expect(high).not.toBeNull();
          expect((low?.n ?? 1) / (low?.d ?? 1)).toBeLessThanOrEqual((high?.n ?? 0) / (high?.d ?? 1));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it("reads back every decimal that a locale writes", () => {
    const locales = fc.constantFrom("en", "de", "fr", "es", "pl", "de-CH", "es-MX");
    fc.assert(
      fc.property(
        locales,
        fc.integer({ min: 0, max: 999_999_999 }),
        fc.integer({ min: 0, max: 3 }),
        (locale, n, places) => {
          const number = n / 10 ** places;
          const written = new Intl.NumberFormat(locale, { maximumFractionDigits: 3 }).format(number);
          const result = parse(`${written} g`, locale);
          const read = result.ok ? parseRational(result.value.low) : null;
          expect((read?.n ?? Number.NaN) / (read?.d ?? 1), written).toBe(number);
        },
      ),
    );
  });
});
