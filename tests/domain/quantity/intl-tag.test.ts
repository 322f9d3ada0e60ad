import { expect, it } from "vitest";
import { numberMarks } from "../../../src/domain/quantity/parse/number-marks.js";
import { readerLocale } from "../../../src/domain/quantity/reader-locale.js";
import { marksOf } from "../../../src/exports/csv/csv-text.js";
import { dateText, momentText, timeText } from "../../../src/exports/words/clock-text.js";
import { decimalCell } from "../../../src/imports/tables/decimal-cell.js";
import { spreadsheetDate } from "../../../src/imports/tables/spreadsheet-date.js";

/** RFC 5646, 2.2.6 and 2.2.7. ICU takes `yes` for a setting of its own, and the runtime then refuses the tag that it took before. */
const odd = ["x-yes", "x-no", "x-true", "x-u-nu-arab", "x-a", "u-nu-arab", "u-hc-h12", "a-foo", "t-fr", "u-co-yes"];
const malformed = ["", "x", "x-yes", "de_DE", "de-", "-", "i-klingon", "de-DE-DE", "\0"];

it.each(["de-DE", "en-GB", "pl", "ar-EG"].flatMap((tag) => odd.map((more) => `${tag}-${more}`)))(
  "%s is read by everything that asks the runtime for a format",
  (tag) => {
    const plain = tag
      .split("-")
      .slice(0, tag.startsWith("pl") ? 1 : 2)
      .join("-");
    const noon = "2026-03-01T12:00:00Z";
    const answers = (locale: string) => [
      readerLocale(locale).decimal(1.5, 2),
      marksOf(locale),
      dateText("2026-03-01", locale),
      decimalCell("1,5", locale),
      spreadsheetDate("2-Jan", locale),
    ];
    expect(answers(tag)).toEqual(answers(plain));
    for (const text of [timeText(noon, "UTC", tag), momentText(noon, "UTC", tag)]) expect(text).toMatch(/12[:.]00/);
    expect([null, numberMarks(plain)]).toContainEqual(numberMarks(tag));
  },
);

it.each(malformed)("%j, which is no tag, reads as English", (tag) => {
  expect(dateText("2026-03-01", tag)).toBe(dateText("2026-03-01", "en"));
  expect(marksOf(tag)).toEqual(marksOf("en"));
});
