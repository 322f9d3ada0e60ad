import { timeText } from "../../words/clock-text.js";
import type { Words } from "../../words/words.js";
import { longDate, wordsLocale } from "../dates.js";
import { markup, type Content } from "../markup.js";
import { saidWith } from "../said-with.js";

/** What stands above every page that shows a draft. */
export interface PreviewNotice {
  /** Of the plan's draft. */
  readonly version: number;
  readonly expiresAt: Date;
  /** Why it cannot be published yet, in sentences with their places, in English; empty: it can. */
  readonly missing: readonly string[];
}

/** Says that a page shows a draft, for whom, until when, and what still keeps it from being published. */
export function previewPart({ version, expiresAt, missing }: PreviewNotice, words: Words): Content {
  const say = words.page.preview;
  const instant = expiresAt.toISOString();
  const locale = wordsLocale(words);
  const until = markup`<time datetime="${instant}">${longDate(expiresAt, locale)}, ${timeText(instant, "UTC", locale)} UTC</time>`;
  return markup`<aside class="preview flag" aria-label="${say.label}">
<p>${say.shown({ version })} ${saidWith((when) => say.works({ until: when }), until)}</p>
${
  missing.length > 0 &&
  markup`<p>${say.missing}</p><ul class="missing" lang="en">${missing.map((text) => markup`<li>${text}</li>`)}</ul>`
}</aside>`;
}
