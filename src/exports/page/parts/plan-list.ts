import { otherLanguage } from "../../words/languages-of.js";
import type { Words } from "../../words/words.js";
import { longDate, wordsLocale } from "../dates.js";
import { attributes, markup, type Content } from "../markup.js";
import { localeQuery, planPath, publisherPath } from "../page-links.js";

/** A published plan, as far as a shelf of plans shows it. */
interface ListedPlan {
  readonly publisher: string;
  readonly slug: string;
  /** In the language of the reader, if it was translated. */
  readonly shown: { readonly title: string; readonly language: string };
  readonly serves: number;
  readonly revision: number;
  readonly publishedAt: Date;
}

/** One page of plans, newest first, and the way to the next. */
export interface PlanList {
  readonly plans: readonly ListedPlan[];
  /** Address of the plans that follow; null: these are the last. */
  readonly next: string | null;
  /** BCP 47 tag of the language that was asked for in the address, which others lead on with; null: none was. */
  readonly locale: string | null;
}

/** Plans as packets on a shelf. `publisherName` null: they are all of one publisher. */
export function planListMarkup(
  { plans, next, locale }: PlanList,
  publisherName: ((slug: string) => string) | null,
  words: Words,
): Content {
  const { noPlansYet, olderPlans, writtenForPublished } = words.page;
  const dateOf = ({ publishedAt }: ListedPlan): string => longDate(publishedAt, wordsLocale(words));
  if (plans.length === 0) return markup`<p class="aside">${noPlansYet}</p>`;
  return [
    markup`<ul class="shelf">${plans.map(
      (
        plan,
      ) => markup`<li class="packet"><h3><a href="${planPath(plan)}${localeQuery(locale)}"><bdi${attributes({ lang: otherLanguage(plan.shown.language, words) })}>${plan.shown.title}</bdi></a></h3>
<p class="quiet">${publisherName !== null && markup`<a href="${publisherPath(plan.publisher)}${localeQuery(locale)}"><bdi>${publisherName(plan.publisher)}</bdi></a>, `}<time datetime="${plan.publishedAt.toISOString()}">${writtenForPublished({ count: plan.serves, date: dateOf(plan) })}</time></p></li>`,
    )}</ul>`,
    next !== null && markup`<p class="onward"><a href="${next}">${olderPlans}</a></p>`,
  ];
}
