import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";
import type { Words } from "./words.js";

/**
 * BCP 47 tags of the languages that an answer is in: that of the fixed words, then that of the writer's texts where it is another one, then the
 * one that some of them were left in.
 */
export function languagesOf(
  { locale }: Pick<Reader, "locale">,
  { plan, untranslated }: Pick<PlanBundle, "plan" | "untranslated">,
): readonly string[] {
  const { language } = readerLocale(locale);
  const texts = isOf(plan.locale, language) ? [plan.locale] : [language, plan.locale];
  const left = untranslated !== undefined && untranslated.texts.size > 0 ? [untranslated.language] : [];
  return [...new Set([...texts, ...left])];
}

/** The tag of a language (BCP 47) where it is another than that of the fixed words around it; else null. */
export const otherLanguage = (tag: string, { language }: Pick<Words, "language">): string | null =>
  isOf(tag, language) ? null : tag;

/** Whether a tag is of a language, whatever its country. */
const isOf = (tag: string, language: string): boolean => tag.toLowerCase().split("-")[0] === language;
