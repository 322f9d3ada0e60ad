import type { Problem } from "../../domain/problem.js";
import { otherLanguage } from "../words/languages-of.js";
import type { Words } from "../words/words.js";
import { longDate, wordsLocale } from "./dates.js";
import type { Content } from "./markup.js";
import { saidWith } from "./said-with.js";
import { inLanguage } from "./writers-language.js";

type Withdrawn = Extract<Problem, { readonly code: "WITHDRAWN" }>;

const dayOf = ({ at }: Withdrawn, words: Words): string => longDate(new Date(at), wordsLocale(words));

/** What readers are told of a plan that its publisher took back. */
export function withdrawnText(withdrawn: Withdrawn, words: Words): string {
  const { title, because } = withdrawn;
  const text = words.page.planWithdrawnOn({ title, when: dayOf(withdrawn, words) });
  return because === null ? text : `${text} ${words.page.withdrawnWhy({ reason: because })}`;
}

/** The same on a page, with the author's words in their own language. */
export function withdrawnMarkup(withdrawn: Withdrawn, words: Words): Content {
  const { planWithdrawnOn, withdrawnWhy } = words.page;
  const when = dayOf(withdrawn, words);
  const language = otherLanguage(withdrawn.locale, words);
  return [
    saidWith((title) => planWithdrawnOn({ title, when }), inLanguage(withdrawn.title, language)),
    withdrawn.because !== null && [
      " ",
      saidWith((reason) => withdrawnWhy({ reason }), inLanguage(withdrawn.because, language)),
    ],
  ];
}
