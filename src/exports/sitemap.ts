import { markupText } from "./document/markup-text.js";

/** An address of a sitemap, and when what is there changed. */
interface SitemapEntry {
  readonly address: string;
  readonly changed: Date | null;
}

const namespace = "http://www.sitemaps.org/schemas/sitemap/0.9";

function document(root: "urlset" | "sitemapindex", child: "url" | "sitemap", entries: readonly SitemapEntry[]): string {
  const lines = entries.map(
    ({ address, changed }) =>
      `<${child}><loc>${markupText(address)}</loc>${changed === null ? "" : `<lastmod>${changed.toISOString()}</lastmod>`}</${child}>\n`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<${root} xmlns="${namespace}">\n${lines.join("")}</${root}>\n`;
}

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
