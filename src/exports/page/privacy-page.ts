import { wordsFor } from "../words/words-for.js";
import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";

/** What is kept of readers, and what is not. */
export function privacyPage(links: PageLinks, locale = "en"): string {
  const { language, page: words } = wordsFor(locale);
  const { title, intro, household, device, logs, others, operator } = words.privacyTexts;
  return pageFrame({
    title: `${title} · Prepwright`,
    language,
    words,
    links,
    canonical: `${links.origin}/privacy`,
    description: intro,
    trail: [],
    kind: "privacy",
    main: markup`<header class="front"><h1>${title}</h1><p class="summary">${intro}</p></header>
${[household, device, logs, others, operator].map((text) => markup`<p>${text}</p>`)}
<p class="onward"><a href="/">${words.toThePlans}</a></p>`,
  });
}
