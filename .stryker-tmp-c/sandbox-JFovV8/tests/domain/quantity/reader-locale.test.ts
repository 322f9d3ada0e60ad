// @ts-nocheck
import { describe, expect, it } from "vitest";
import { readerLocale } from "../../../src/domain/quantity/reader-locale.js";

// Formats are remembered by tag, so every example has a tag of its own.
describe("a reader's locale", () => {
  it.each([
    ["de-LU", "de", "0,13"],
    ["fr-BE", "fr", "0,13"],
    ["es-ES", "es", "0,13"],
    ["pl-PL", "pl", "0,13"],
    ["en-IE", "en", "0.13"],
    ["de", "de", "0,13"],
  ])("%s speaks %s and writes its numbers: %s", (tag, language, eighth) => {
    const locale = readerLocale(tag);
    expect(locale.language).toBe(language);
    expect(locale.decimal(0.125, 2)).toBe(eighth);
  });

  it("has English words and its own numbers where there are no words of its language", () => {
    const italian = readerLocale("it-IT");
    expect(italian.language).toBe("en");
    expect(italian.decimal(1.5, 1)).toBe("1,5");
    expect([1, 2, 5].map(italian.plural)).toEqual(["one", "other", "other"]);
  });

  it("has as many decimals as asked for, from none to three, and two figures beyond", () => {
    const { decimal } = readerLocale("en-NZ");
    expect([0, 1, 2, 3].map((places) => decimal(1.23456, places))).toEqual(["1", "1.2", "1.23", "1.235"]);
    expect(decimal(0.00123456, 4)).toBe("0.0012");
  });

  it("counts as its language does (CLDR plural rules)", () => {
    expect([1, 2, 5, 1.5].map(readerLocale("pl").plural)).toEqual(["one", "few", "many", "other"]);
    expect([0, 1, 1.5, 2].map(readerLocale("fr-CH").plural)).toEqual(["one", "one", "one", "other"]);
  });

  it("writes Latin digits whatever the tag asks for", () => {
    expect(readerLocale("en-u-nu-deva").decimal(1.5, 1)).toBe("1.5");
    const egyptian = readerLocale("ar-EG");
    expect(egyptian.decimal(25, 0)).toBe("25");
    expect(egyptian.decimal(0.0025, 4)).toMatch(/^[^٠-٩]*0025$/);
  });

  it("is English where the tag is none", () => {
    const locale = readerLocale("no tag!");
    expect([locale.language, locale.decimal(1.5, 1)]).toEqual(["en", "1.5"]);
  });

  it("is remembered, and two hundred of them at most", () => {
    expect(readerLocale("en-ZA")).toBe(readerLocale("en-ZA"));
    const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
    for (const first of letters.slice(0, 8)) for (const second of letters) readerLocale(`en-${first}${second}`);
    expect(readerLocale("en-ZZ")).not.toBe(readerLocale("en-ZZ"));
    expect(readerLocale("en-ZA")).toBe(readerLocale("en-ZA"));
  });
});
