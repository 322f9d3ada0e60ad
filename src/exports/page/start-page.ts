import { wordsFor } from "../words/words-for.js";
import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";
import { planListMarkup, type PlanList } from "./parts/plan-list.js";

/** The front door: what this is, which plans there are, and where developers go. */
export const startPage = (
  shelf: PlanList,
  publisherName: (slug: string) => string,
  machines: readonly { readonly path: string; readonly text: string }[],
  links: PageLinks,
  locale = "en",
): string => {
  const { language, page: words } = wordsFor(locale);
  return pageFrame({
    title: words.startTitle,
    language,
    words,
    links,
    canonical: `${links.origin}/`,
    description: words.startSummary,
    trail: [],
    kind: "start",
    main: markup`<header class="front"><h1>${words.startHeading}</h1>
<p class="summary">${words.startSummary}</p></header>
<section aria-labelledby="plans"><h2 id="plans">${words.plansToCook}</h2>${planListMarkup(shelf, publisherName, words)}</section>
<section aria-labelledby="machines"><h2 id="machines">${words.developers}</h2>
<ul class="lines">${machines.map(({ path, text }) => markup`<li><a href="${path}">${path}</a> <span class="quiet">${text}</span></li>`)}</ul></section>`,
  });
};
