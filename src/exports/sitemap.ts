import { markupText } from "./document/markup-text.js";

/** An address of a sitemap, and when what is there changed. */
interface SitemapEntry {
  readonly address: string;
  readonly changed: Date | null;
  /** The same in other languages, and in its own; left out: there is no other. */
  readonly languages?: readonly { readonly language: string; readonly address: string }[];
}

const namespace = "http://www.sitemaps.org/schemas/sitemap/0.9";

function document(root: "urlset" | "sitemapindex", child: "url" | "sitemap", entries: readonly SitemapEntry[]): string {
  const lines = entries.map(
    ({ address, changed, languages = [] }) =>
      `<${child}><loc>${markupText(address)}</loc>${changed === null ? "" : `<lastmod>${changed.toISOString()}</lastmod>`}${languages.map(otherLanguage).join("")}</${child}>\n`,
  );
  const links = entries.some(({ languages = [] }) => languages.length > 0) ? ` xmlns:xhtml="${xhtml}"` : "";
  return `<?xml version="1.0" encoding="UTF-8"?>\n<${root} xmlns="${namespace}"${links}>\n${lines.join("")}</${root}>\n`;
}

const xhtml = "http://www.w3.org/1999/xhtml";

const otherLanguage = ({ language, address }: { readonly language: string; readonly address: string }): string =>
  `<xhtml:link rel="alternate" hreflang="${markupText(language)}" href="${markupText(address)}"/>`;

/** A sitemap after the protocol of sitemaps.org. */
export const sitemap = (entries: readonly SitemapEntry[]): string => document("urlset", "url", entries);

/** Several of them. */
export const sitemapIndex = (entries: readonly SitemapEntry[]): string => document("sitemapindex", "sitemap", entries);

/** What programs that walk the pages are asked: drafts, kitchen views and sheets to print are no pages to list. */
export const robots = (origin: string): string =>
  [
    "User-agent: *",
    "Disallow: /graphql",
    "Disallow: /p/*/*/cook",
    "Disallow: /p/*/*/labels",
    "Disallow: /p/*/*/fridge-door",
    "",
    `Sitemap: ${origin}/sitemap.xml`,
    "",
  ].join("\n");
