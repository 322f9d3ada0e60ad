import type { Words } from "../words/words.js";
import { markup, type Content } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";

interface Notice {
  readonly title: string;
  readonly text: Content;
  /** Where to go on; left out: to the plans. */
  readonly onward?: { readonly path: string; readonly text: string };
}

/** Where there is nothing to show: why, and where to go on. */
export const noticePage = ({ title, text, onward }: Notice, words: Words, links: PageLinks): string => {
  const { path, text: where } = onward ?? { path: "/", text: words.page.toThePlans };
  return pageFrame({
    title: `${title} · Prepwright`,
    words,
    links,
    canonical: null,
    trail: [],
    kind: "notice",
    main: markup`<h1>${title}</h1><p class="summary">${text}</p><p class="onward"><a href="${path}">${where}</a></p>`,
  });
};
