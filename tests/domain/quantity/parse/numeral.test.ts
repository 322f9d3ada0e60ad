import { describe, expect, it } from "vitest";
import { parseLine } from "../../../../src/domain/quantity/parse.js";
import { AMOUNT_MAX, DENOMINATOR_MAX } from "../../../../src/domain/quantity/parse/limits.js";

const read = (raw: string, locale: string | null = "en") => parseLine(raw, { locale, measures: "METRIC" });

/** The Unicode character database: numeric values of the vulgar fractions U+00BC to U+00BE, U+2150 to U+215E, U+2189. */
const glyphs = [
  ["¼", "1/4"],
  ["½", "1/2"],
  ["¾", "3/4"],
  ["⅐", "1/7"],
  ["⅑", "1/9"],
  ["⅒", "1/10"],
  ["⅓", "1/3"],
  ["⅔", "2/3"],
  ["⅕", "1/5"],
  ["⅖", "2/5"],
  ["⅗", "3/5"],
  ["⅘", "4/5"],
  ["⅙", "1/6"],
  ["⅚", "5/6"],
  ["⅛", "1/8"],
  ["⅜", "3/8"],
  ["⅝", "5/8"],
  ["⅞", "7/8"],
] as const;

describe("vulgar fractions", () => {
  it.each(glyphs)("%s is %s", (glyph, value) => {
    expect(read(`${glyph} g salt`)).toMatchObject({ amount: { low: value, high: value, unit: "g" }, food: "salt" });
  });

  it.each([
    ["1\u00a01/2 g salt", "3/2"],
    ["1\u20091/2 g salt", "3/2"],
    ["1\u202f1/2 g salt", "3/2"],
    ["1 and 1/2 g salt", "3/2"],
    ["1 & ½ g salt", "3/2"],
    ["1–½ g salt", "3/2"],
    ["1 ⅟2 g salt", "3/2"],
    ["1⅟3 g salt", "4/3"],
    ["¹⁄₇ g salt", "1/7"],
    ["²⁰⁄₃ g salt", "20/3"],
  ])("%j is %s", (raw, value) => {
    expect(read(raw)).toMatchObject({ amount: { low: value, high: value, unit: "g" }, food: "salt" });
  });
});

describe("limits of numbers", () => {
  const code = (raw: string) => read(raw).reasons.map((reason) => reason.code);

  it.each([
    [`1/${DENOMINATOR_MAX} g salt`, []],
    [`1/${DENOMINATOR_MAX + 1} g salt`, ["BAD_NUMBER"]],
    [`${AMOUNT_MAX}/1 g salt`, []],
    [`${AMOUNT_MAX + 1}/1 g salt`, ["BAD_NUMBER"]],
    [`${AMOUNT_MAX} g salt`, []],
    [`${AMOUNT_MAX}.0 g salt`, []],
    [`${AMOUNT_MAX}.1 g salt`, ["BAD_NUMBER"]],
    [`${AMOUNT_MAX + 1} g salt`, ["BAD_NUMBER"]],
    ["0.000001 g salt", []],
    ["0.0000010 g salt", []],
    ["0.000001000 g salt", []],
    ["0.0000001 g salt", ["BAD_NUMBER"]],
  ])("%s: %j", (raw, codes) => {
    expect(code(raw)).toEqual(codes);
  });
});
