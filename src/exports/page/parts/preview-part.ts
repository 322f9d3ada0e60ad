import { longDate } from "../dates.js";
import { markup, type Content } from "../markup.js";

/** What stands above every page that shows a draft. */
export interface PreviewNotice {
  /** Of the plan's draft. */
  readonly version: number;
  readonly expiresAt: Date;
  /** Why it cannot be published yet, in sentences with their places; empty: it can. */
  readonly missing: readonly string[];
}

/** Says that a page shows a draft, for whom, until when, and what still keeps it from being published. */
export function previewPart({ version, expiresAt, missing }: PreviewNotice): Content {
  const until = `${longDate(expiresAt)}, ${expiresAt.toISOString().slice(11, 16)} UTC`;
  return markup`<aside class="preview flag" lang="en" dir="ltr" aria-label="Preview">
<p>A preview of the draft, version ${version}, for those who have this address. Nobody else sees it before it is published. The address works until
<time datetime="${expiresAt.toISOString()}">${until}</time> and always shows the newest version.</p>
${
  missing.length > 0 &&
  markup`<p>It cannot be published yet:</p><ul class="missing">${missing.map((text) => markup`<li>${text}</li>`)}</ul>`
}</aside>`;
}
