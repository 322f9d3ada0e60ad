import { readLocale } from "./read-household.js";
import type { Asked } from "./scale-for-reader.js";

/**
 * The same question in the language that a reader's browser asks for, where the reader names no locale. A plan in that language keeps its
 * own locale, with its country's numbers and hours.
 *
 * @param preferred one of the languages of the fixed words; null: the browser asks for none of them
 * @param locale of the plan, BCP 47
 */
export function inPreferredLanguage(asked: Asked, preferred: string | null, locale: string): Asked {
  const { household } = asked;
  const isNamed = (household.locale ?? "") !== "";
  if (preferred === null || isNamed || locale.toLowerCase().split("-")[0] === preferred) return asked;
  return { ...asked, household: { ...household, locale: preferred } };
}

/** The locale that a question is answered in: the one it names, where that can be read, else the plan's. */
export function localeFor({ household }: Asked, locale: string): string {
  const named = readLocale(household.locale ?? null, []);
  return (named.ok ? named.value : null) ?? locale;
}
