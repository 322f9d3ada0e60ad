import { describe, expect, it } from "vitest";
import { compileFoodNames, type NamedFood } from "../../../src/domain/quantity/food-name.js";
import { readLine } from "../../../src/domain/quantity/read-line.js";
import { findUnit } from "../../../src/domain/quantity/unit.js";
import { unitWords } from "../../../src/domain/quantity/units/unit-words.js";
import { foodCalled } from "../../../src/imports/documents/lines/line-names.js";

/** Languages that begin with the letters of another (ISO 639-2 and 639-3): Slave, Yupik, North Frisian, Palikúr. */
const pairs = [
  ["den", "de", "2 EL Salz"],
  ["esu", "es", "2 cucharadas de sal"],
  ["frr", "fr", "2 cuillères à soupe de sel"],
  ["plu", "pl", "2 łyżki soli"],
] as const;

const named = (slug: string, language: string, one: string): NamedFood => ({
  slug,
  names: [{ language, region: null, one, many: one, also: [] }],
});
const options = (locale: string) => ({ locale, measures: "METRIC", region: null, context: null }) as const;

describe.each(pairs)("a text in %s is not read as if it were in %s:", (locale, other, line) => {
  const salt = { de: "Salz", es: "sal", fr: "sel", pl: "soli" }[other];
  const foods = compileFoodNames([
    named("salt", other, salt),
    named("own", locale, "naalt"),
    named("not", other, "naalt"),
  ]);

  it("its units", () => {
    for (const word of unitWords[other]?.keys() ?? [])
      expect(findUnit(word, options(locale)), word).toEqual(findUnit(word, options("fi")));
  });

  it("its lines", () => {
    expect(readLine(line, { ...options(other), foods }).match).toEqual({ kind: "FOUND", slug: "salt" });
    expect(readLine(line, { ...options(`${locale}-CA`), foods }).line.amount).toEqual(
      readLine(line, { ...options("fi"), foods }).line.amount,
    );
  });

  it("its names of foods", () => {
    expect(readLine("200 g naalt", { ...options(locale), foods }).match).toEqual({ kind: "FOUND", slug: "own" });
    expect(foodCalled(foods, "naalt", { locale: locale.toUpperCase(), region: null })).toBe("own");
  });
});
