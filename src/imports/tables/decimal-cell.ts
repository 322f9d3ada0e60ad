import { memoizeLatest } from "../../domain/memoize.js";
import { intlTag } from "../../domain/quantity/intl-tag.js";

/** The decimal mark of a locale, by CLDR. */
const decimalMark = memoizeLatest("decimal-marks", 100, String, (locale: string): string => {
  const parts = new Intl.NumberFormat(intlTag(locale), { numberingSystem: "latn" }).formatToParts(1.5);
  return parts.find(({ type }) => type === "decimal")?.value ?? ".";
});

/**
 * A decimal number of a cell with a point, by the locale's own mark (`1,49` in German to `1.49`); null for anything else,
 * so also for the mark of another locale and for grouped digits. Without a locale the mark is a point.
 */
export function decimalCell(written: string, locale: string | null): string | null {
  const mark = locale === null ? "." : decimalMark(locale);
  const plain = mark === "." ? written : written.replace(".", "!").replace(mark, ".");
  return /^\d{1,12}(?:\.\d{1,9})?$/.test(plain) ? plain : null;
}
