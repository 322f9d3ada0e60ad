import type { Words } from "./words.js";

const printed = /^(\d+)(?: to (\d+))? (hour|day|week|month|year)s?$/;

/** A time as its source prints it, "3 to 4 days", in the reader's language; what is written otherwise stays. */
export function printedText(text: string, words: Pick<Words, "language" | "printed">): string {
  const [, low, high, unit] = (words.language === "en" ? null : printed.exec(text)) ?? [];
  if (low === undefined || unit === undefined) return text;
  const range = high === undefined ? low : `${low}–${high}`;
  return words.printed[unit as keyof Words["printed"]]({ range, count: Number(high ?? low) });
}
