import { memoizeLatest } from "../../memoize.js";
import { readOrNull } from "../../read-or-null.js";

/** Marks a locale writes numbers with. */
export interface NumberMarks {
  readonly decimal: string;
  readonly group: string;
}

const read = (locale: string): NumberMarks | null =>
  readOrNull(() => {
    const parts = new Intl.NumberFormat(locale, { useGrouping: true, numberingSystem: "latn" }).formatToParts(
      1234567.5,
    );
    const part = (type: string): string => parts.find((each) => each.type === type)?.value ?? "";
    return { decimal: part("decimal"), group: part("group") };
  });

/** Decimal and group mark by CLDR; null without a locale and for a malformed tag, where nothing may be assumed. */
export const numberMarks = (locale: string | null): NumberMarks | null => (locale === null ? null : marksOf(locale));

/** Endless new tags make this slower, never larger. */
const marksOf = memoizeLatest("number-marks", 200, String, read);
