import { markup, type Content } from "./markup.js";
import type { PageLinks } from "./page-links.js";
import { previewPart } from "./parts/preview-part.js";

interface Frame {
  /** Of the window: the thing first, then whose it is. */
  readonly title: string;
  readonly links: PageLinks;
  /** The moving address of the page; null: it is not worth finding again. */
  readonly canonical: string | null;
  /** A path back up, from the top. */
  readonly trail: readonly { readonly path: string; readonly text: string }[];
  /** Names the kind of page for its style. */
  readonly kind: "start" | "publisher" | "plan" | "list" | "notice";
  readonly main: Content;
  /** Also load the script that keeps ticks. */
  readonly ticks?: boolean;
}

/** A whole document around the main part of a page. */
export function pageFrame({ title, links, canonical, trail, kind, main, ticks = false }: Frame): string {
  return markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
<link rel="icon" href="/favicon.svg" type="image/svg+xml">
${canonical === null || links.preview !== undefined ? markup`<meta name="robots" content="noindex">` : markup`<link rel="canonical" href="${canonical}">`}
${links.style !== null && markup`<link rel="stylesheet" href="${links.style}">`}
${ticks && links.ticks !== null && markup`<script src="${links.ticks}" defer></script>`}
</head>
<body class="${kind}">
<a class="skip" href="#main">To the page itself</a>
<header class="masthead">
<nav aria-label="Where you are"><a class="mark" href="/">Prepwright</a>${trail.map(
    ({ path, text }) => markup`<span class="string" aria-hidden="true"></span><a href="${path}"><bdi>${text}</bdi></a>`,
  )}</nav>
</header>
${links.preview !== undefined && previewPart(links.preview.notice)}
<main id="main">
${main}
</main>
<footer class="foot">
<p>Worked out by Prepwright from what the writer wrote. Keeping times and allergens are information with their sources, never
a promise: your local food-safety code, the labels on your packs and licensed practice come first.</p>
</footer>
</body>
</html>
`.text;
}
