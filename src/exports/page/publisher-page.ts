import type { PublisherFacts } from "../../domain/model/publisher.js";
import type { PageWords, Words } from "../words/words.js";
import { countryIn, currencyIn, languageIn } from "./country-name.js";
import { markup, type Content } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import { feedLinks, publisherPath, type PageLinks } from "./page-links.js";
import { planListMarkup, type PlanList } from "./parts/plan-list.js";

/** A publisher, what it says of itself, and everything it has published. */
export const publisherPage = (
  publisher: { readonly slug: string; readonly name: string } & Partial<PublisherFacts>,
  shelf: PlanList,
  spoken: Words,
  links: PageLinks,
): string => {
  const { page: words } = spoken;
  return pageFrame({
    title: `${publisher.name} · Prepwright`,
    words: spoken,
    links,
    canonical: links.origin + publisherPath(publisher.slug),
    description: words.plansOf({ publisher: publisher.name }),
    head: feedLinks(publisher, links),
    trail: [],
    kind: "publisher",
    main: markup`<header class="front"><h1>${publisher.name}</h1>
${typeof publisher.description === "string" && markup`<p class="summary">${publisher.description}</p>`}
<p class="summary">${words.newestFirst}</p>
${factsMarkup(publisher, words, spoken.language)}</header>
<section aria-labelledby="plans"><h2 id="plans">${words.plansToCook}</h2>${planListMarkup(shelf, null, spoken)}</section>`,
  });
};

function factsMarkup(
  { region, currency, languages = [], website }: Partial<PublisherFacts>,
  words: PageWords,
  locale: string,
): Content {
  const facts: readonly (readonly [string, Content])[] = [
    [words.writesFor, region === null || region === undefined ? null : countryIn(region, locale, "long")],
    [words.languages, languages.length === 0 ? null : languages.map((tag) => languageIn(tag, locale)).join(", ")],
    [words.pricesIn, currency === null || currency === undefined ? null : currencyIn(currency, locale)],
    [
      words.onTheWeb,
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
