import { ruleText } from "./rule-words.js";
import type { Words } from "./words.js";

const printed = /^(\d+)(?: to (\d+))? (hour|day|week|month|year)s?$/;

/** A time as its source prints it, "3 to 4 days", in the reader's language; what is written otherwise is a text of the rules. */
export function printedText(text: string, words: Words): string {
  const [, low, high, unit] = (words.language === "en" ? null : printed.exec(text)) ?? [];
  if (low === undefined || unit === undefined) return ruleText("ruleTexts", text, words);
  const range = high === undefined ? low : `${low}–${high}`;
  return words.printed[unit as keyof Words["printed"]]({ range, count: Number(high ?? low) });
}
