import type { Words } from "../words/words.js";
import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";
import { planListMarkup, type PlanList } from "./parts/plan-list.js";

/** What developers ask, each with what `words.machines` says of it. */
const machines = [
  { path: "/graphql", kind: "graphql" },
  { path: "/v1/openapi", kind: "rest" },
] as const;

/** The front door: what this is, which plans there are, and where developers go. */
export const startPage = (
  shelf: PlanList,
  publisherName: (slug: string) => string,
  spoken: Words,
  links: PageLinks,
): string => {
  const { page: words } = spoken;
  return pageFrame({
    title: words.startTitle,
    words: spoken,
    links,
    canonical: `${links.origin}/`,
    description: words.startSummary,
    trail: [],
    kind: "start",
    main: markup`<header class="front"><h1>${words.startHeading}</h1>
<p class="summary">${words.startSummary}</p></header>
<section aria-labelledby="plans"><h2 id="plans">${words.plansToCook}</h2>${planListMarkup(shelf, publisherName, spoken)}</section>
<section aria-labelledby="machines"><h2 id="machines">${words.developers}</h2>
<ul class="lines">${machines.map(({ path, kind }) => markup`<li><a href="${path}">${path}</a> <span class="quiet">${words.machines[kind]}</span></li>`)}</ul></section>`,
  });
};
