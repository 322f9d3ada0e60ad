import type { Words } from "../words/words.js";
import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";

/** What is kept of readers, and what is not. */
export function privacyPage(words: Words, links: PageLinks): string {
  const { title, intro, household, device, logs, others, operator } = words.page.privacyTexts;
  return pageFrame({
    title: `${title} · Prepwright`,
    words,
    links,
    canonical: `${links.origin}/privacy`,
    description: intro,
    trail: [],
    kind: "privacy",
    main: markup`<header class="front"><h1>${title}</h1><p class="summary">${intro}</p></header>
${[household, device, logs, others, operator].map((text) => markup`<p>${text}</p>`)}
<p class="onward"><a href="/">${words.page.toThePlans}</a></p>`,
  });
}
