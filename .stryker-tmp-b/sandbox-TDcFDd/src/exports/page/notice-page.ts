// @ts-nocheck
import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";

/** Where there is nothing to show: why, and where to go on. */
export const noticePage = (title: string, text: string, links: PageLinks): string =>
  pageFrame({
    title: `${title} · Prepwright`,
    links,
    canonical: null,
    trail: [],
    kind: "notice",
    main: markup`<h1>${title}</h1><p class="summary">${text}</p><p><a href="/">To the plans that are published here</a></p>`,
  });
