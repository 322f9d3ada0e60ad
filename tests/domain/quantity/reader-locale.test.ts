import { describe, expect, it } from "vitest";
import { readerLocale } from "../../../src/domain/quantity/reader-locale.js";

describe("numbers of a locale", () => {
  // Source: CLDR, as this Node's Intl carries it.
  it.each(["en", "de-CH", "fr", "es-MX", "pl", "hi", "ar-EG", "fa", "mr-IN", "my", "ne"])(
    "are those of Intl in %s, whole or not",
    (locale) => {
      const { decimal } = readerLocale(locale);
      for (const places of [0, 1, 2, 3]) {
        const format = new Intl.NumberFormat(locale, { maximumFractionDigits: places, numberingSystem: "latn" });
        for (let value = 0; value < 2_000; value += 0.25) expect(decimal(value, places)).toBe(format.format(value));
      }
    },
  );
});
