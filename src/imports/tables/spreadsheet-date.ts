import { memoizeLatest } from "../../domain/memoize.js";
import { intlTag } from "../../domain/quantity/intl-tag.js";

/** An amount that a spreadsheet program turned into a date before saving, and what may have stood there. */
interface SpreadsheetDate {
  /** Readings a person may choose from; there is no automatic one, because a half and "1 to 2" give the same date. */
  readonly offers: readonly string[];
  /** How the program must have read it. */
  readonly order: "MONTH_FIRST" | "DAY_FIRST";
}

const namesOf = memoizeLatest("month-names", 50, String, (locale: string): readonly (readonly string[])[] =>
  Array.from({ length: 12 }, (_, month) =>
    (["short", "long"] as const).map((width) =>
      new Intl.DateTimeFormat(intlTag(locale), { month: width, timeZone: "UTC" })
        .format(Date.UTC(2026, month, 1))
        .replace(".", "")
        .toLowerCase(),
    ),
  ),
);

function monthNumber(word: string, locale: string | null): number | null {
  const written = word.toLowerCase().replace(".", "");
  for (const each of ["en", locale ?? "en"]) {
    const at = namesOf(each).findIndex((names) => names.includes(written));
    if (at >= 0) return at + 1;
  }
  return null;
}

/** Serial day numbers of 2000 to 2049, counted from 30 December 1899 as spreadsheets do. */
const serials = { first: 36_526, last: 54_788, epoch: Date.UTC(1899, 11, 30) } as const;

const offered = (day: number, month: number): SpreadsheetDate | null => {
  if (day < 1 || day > 31 || month < 1 || month > 12) return null;
  const [low, high] = [Math.min(day, month), Math.max(day, month)];
  return { offers: [`${low}/${high}`, `${low}-${high}`], order: month <= day ? "MONTH_FIRST" : "DAY_FIRST" };
};

/**
 * Whether a cell that should hold an amount holds a date instead: `2-Jan`, `Mar-04`, `2026-01-02`, `02.01.2026`,
 * or a serial day number. null: it does not look like one.
 *
 * @param serial whether a bare whole number may be a serial day (no: in a column of money)
 */
export function spreadsheetDate(cell: string, locale: string | null, serial = true): SpreadsheetDate | null {
  const text = cell.trim();
  const dayFirst = /^(\d{1,2})[.]?[-\s](\p{L}{3,10}\.?)(?:[-\s]\d{2,4})?$/u.exec(text);
  if (dayFirst !== null) {
    const month = monthNumber(dayFirst[2] ?? "", locale);
    return month === null ? null : offered(Number(dayFirst[1]), month);
  }
  const monthFirst = /^(\p{L}{3,10}\.?)[-\s](\d{1,2})$/u.exec(text);
  if (monthFirst !== null) {
    const month = monthNumber(monthFirst[1] ?? "", locale);
    return month === null ? null : offered(Number(monthFirst[2]), month);
  }
  const iso = /^\d{4}-(\d{2})-(\d{2})(?:[T\s].*)?$/.exec(text);
  if (iso !== null) return offered(Number(iso[2]), Number(iso[1]));
  const written = /^(\d{1,2})[./](\d{1,2})[./](?:19|20)\d{2}$/.exec(text);
  if (written !== null)
    return offered(Number(written[1]), Number(written[2])) ?? offered(Number(written[2]), Number(written[1]));
  if (serial && /^\d{5}$/.test(text) && Number(text) >= serials.first && Number(text) <= serials.last) {
    const date = new Date(serials.epoch + Number(text) * 86_400_000);
    return offered(date.getUTCDate(), date.getUTCMonth() + 1);
  }
  return null;
}
