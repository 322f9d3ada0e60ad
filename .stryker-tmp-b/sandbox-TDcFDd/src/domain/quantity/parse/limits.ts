/** Largest amount anybody may write, in any unit. A tonne of flour in grams is a thousandth of it. */
// @ts-nocheck

export const AMOUNT_MAX = 1_000_000_000;

/** Decimal places of a written amount; more is refused, never cut. */
export const DECIMALS_MAX = 6;

/** Largest denominator of a written fraction. */
export const DENOMINATOR_MAX = 100_000;

/** Characters of a structured amount such as `"1 1/2 us-cup"`. */
export const AMOUNT_TEXT_MAX = 120;

/** Characters of one free-text line; a longer one is refused unread. */
export const LINE_MAX = 1_000;

/** Lines of one text. */
export const LINES_MAX = 10_000;

/** Characters of one text of lines; with the limit of a line this bounds the time to read it. */
export const TEXT_MAX = 1_000_000;
