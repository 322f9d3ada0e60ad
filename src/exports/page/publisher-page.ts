import type { PublisherFacts } from "../../domain/model/publisher.js";
import { markup, type Content } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import { publisherPath, type PageLinks } from "./page-links.js";
import { planListMarkup, type PlanList } from "./parts/plan-list.js";

/** A publisher, what it says of itself, and everything it has in print. */
export const publisherPage = (
  publisher: { readonly slug: string; readonly name: string } & Partial<PublisherFacts>,
  shelf: PlanList,
  links: PageLinks,
): string =>
  pageFrame({
    title: `${publisher.name} · Prepwright`,
    links,
    canonical: links.origin + publisherPath(publisher.slug),
    trail: [],
    kind: "publisher",
    main: markup`<header class="front"><h1>${publisher.name}</h1>
${typeof publisher.description === "string" && markup`<p class="summary">${publisher.description}</p>`}
<p class="summary">The newest plan comes first. Each is worked out afresh for as many as you feed.</p>
${factsMarkup(publisher)}</header>
<section aria-labelledby="in-print"><h2 id="in-print">In print</h2>${planListMarkup(shelf, null)}</section>`,
  });

const named = (type: "region" | "language" | "currency", code: string): string =>
  new Intl.DisplayNames("en", { type, fallback: "code" }).of(code) ?? code;

/** The country of a part of one, with its code: there are no names of parts here. */
function regionName(code: string): string {
  const [country = code, part] = code.split("-");
  return part === undefined ? named("region", code) : `${named("region", country)} (${code})`;
}

function factsMarkup({ region, currency, languages = [], website }: Partial<PublisherFacts>): Content {
  const facts: readonly (readonly [string, Content])[] = [
    ["Writes for readers in", region === null || region === undefined ? null : regionName(region)],
    ["Languages", languages.length === 0 ? null : languages.map((tag) => named("language", tag)).join(", ")],
    ["Prices in", currency === null || currency === undefined ? null : named("currency", currency)],
    [
      "On the web",
      website === null || website === undefined
        ? null
        : markup`<a href="${website}" rel="noopener nofollow">${website}</a>`,
    ],
  ];
  const said = facts.filter(([, value]) => value !== null);
  return (
    said.length > 0 &&
    markup`<dl class="tally">${said.map(([term, value]) => markup`<div><dt>${term}</dt><dd>${value}</dd></div>`)}</dl>`
  );
}
