import type { Words } from "../words/words.js";
import { markup, type Content } from "./markup.js";
import type { PageLinks } from "./page-links.js";
import { previewPart } from "./parts/preview-part.js";

interface Frame {
  /** Of the window: the thing first, then whose it is. */
  readonly title: string;
  readonly words: Words;
  readonly links: PageLinks;
  /** The moving address of the page; null: it is not worth finding again. */
  readonly canonical: string | null;
  /** For those who list pages; null: there is nothing to say. */
  readonly description?: string | null;
  /** A path back up, from the top. */
  readonly trail: readonly { readonly path: string; readonly text: Content }[];
  /** Names the kind of page for its style. */
  readonly kind: "start" | "publisher" | "plan" | "list" | "notice" | "cook" | "fridge" | "labels" | "privacy";
  readonly main: Content;
  /** More for the head. */
  readonly head?: Content;
  /** Also load the script of this kind of page. */
  readonly script?: "ticks" | "cook";
}

/** A whole document around the main part of a page. */
export function pageFrame(frame: Frame): string {
  const { title, words: spoken, links, canonical, trail, kind, main, script, head = null } = frame;
  const { language, page: words } = spoken;
  const description = frame.description ?? null;
  const source = script === undefined ? null : links[script];
  return markup`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
${description !== null && markup`<meta name="description" content="${description}">`}
<link rel="icon" href="/favicon.svg" type="image/svg+xml">
${canonical === null || links.preview !== undefined ? markup`<meta name="robots" content="noindex">` : markup`<link rel="canonical" href="${canonical}">`}
${links.style !== null && markup`<link rel="stylesheet" href="${links.style}">`}
${source !== null && markup`<script src="${source}" defer></script>`}
${head}
</head>
<body class="${kind}">
<a class="skip" href="#main">${words.toMain}</a>
<header class="masthead">
<nav aria-label="${words.whereYouAre}"><a class="mark" href="/">Prepwright</a>${trail.map(
    ({ path, text }) => markup`<span class="string" aria-hidden="true"></span><a href="${path}"><bdi>${text}</bdi></a>`,
  )}</nav>
</header>
${links.preview !== undefined && previewPart(links.preview.notice, spoken)}
<main id="main">
${main}
</main>
<footer class="foot">
<p>${words.footer}</p>
<p><a href="/privacy">${words.privacy}</a></p>
</footer>
</body>
</html>
`.text;
}
