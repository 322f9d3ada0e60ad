import type { Plan } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";

/** BCP 47 tags of the languages that an answer is in: that of the fixed words, then that of the writer's texts where it is another one. */
export function languagesOf({ locale }: Pick<Reader, "locale">, plan: Pick<Plan, "locale">): readonly string[] {
  const { language } = readerLocale(locale);
  return plan.locale.toLowerCase().split("-")[0] === language ? [plan.locale] : [language, plan.locale];
}
