/** Marks a locale writes numbers with. */
// @ts-nocheck

export interface NumberMarks {
  readonly decimal: string;
  readonly group: string;
}

const known = new Map<string, NumberMarks | null>();

/** Distinct locales remembered; a caller who sends endless new tags only makes this slower, not larger. */
const KNOWN_MAX = 200;

const read = (locale: string): NumberMarks | null => {
  try {
    const parts = new Intl.NumberFormat(locale, { useGrouping: true, numberingSystem: "latn" }).formatToParts(
      1234567.5,
    );
    const part = (type: string): string => parts.find((each) => each.type === type)?.value ?? "";
    return { decimal: part("decimal"), group: part("group") };
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
};

/** Decimal and group mark by CLDR; null without a locale and for a malformed tag, where nothing may be assumed. */
export const numberMarks = (locale: string | null): NumberMarks | null => {
  if (locale === null) return null;
  const found = known.get(locale);
  if (found !== undefined) return found;
  const marks = read(locale);
  if (known.size < KNOWN_MAX) known.set(locale, marks);
  return marks;
};
