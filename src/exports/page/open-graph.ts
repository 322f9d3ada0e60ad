import { attributes, markup, type Content } from "./markup.js";

interface Shared {
  readonly title: string;
  readonly description: string | null;
  /** Absolute. */
  readonly address: string;
  readonly site: string;
  /** BCP 47, of the text. */
  readonly locale: string;
}

/** How a page looks where somebody sends its address (Open Graph protocol, ogp.me). */
export const openGraph = ({ title, description, address, site, locale }: Shared): Content =>
  (
    [
      ["og:type", "article"],
      ["og:title", title],
      ["og:url", address],
      ["og:site_name", site],
      ["og:locale", locale.replace("-", "_")],
      ...(description === null ? [] : [["og:description", description] as const]),
    ] as const
  ).map(
    ([property, content]) => markup`<meta${attributes({ property, content })}>
`,
  );
