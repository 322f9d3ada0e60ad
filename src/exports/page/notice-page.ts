import { wordsFor } from "../words/words-for.js";
import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";

/** Where there is nothing to show: why, and where to go on. */
export const noticePage = (
  title: string,
  text: string,
  links: PageLinks,
  onward: { readonly path: string; readonly text: string } | null = null,
  locale = "en",
): string => {
  const { language, page: words } = wordsFor(locale);
  const { path, text: where } = onward ?? { path: "/", text: words.toThePlans };
  return pageFrame({
    title: `${title} · Prepwright`,
    language,
    words,
    links,
    canonical: null,
    trail: [],
    kind: "notice",
    main: markup`<h1>${title}</h1><p class="summary">${text}</p><p class="onward"><a href="${path}">${where}</a></p>`,
  });
};
