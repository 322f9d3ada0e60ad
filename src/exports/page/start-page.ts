import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import type { PageLinks } from "./page-links.js";
import { planListMarkup, type PlanList } from "./parts/plan-list.js";

/** The front door: what this is, what is in print, and where machines go. */
export const startPage = (
  shelf: PlanList,
  publisherName: (slug: string) => string,
  machines: readonly { readonly path: string; readonly text: string }[],
  links: PageLinks,
): string =>
  pageFrame({
    title: "Prepwright: meal-prep plans for your household",
    links,
    canonical: `${links.origin}/`,
    trail: [],
    kind: "start",
    main: markup`<header class="front"><h1>Meal-prep plans, worked out for your household</h1>
<p class="summary">A writer plans one session in the kitchen and the meals of the days that follow. Say how many you feed, and
the plan answers: how much to make, what to buy, in which order to work, and how long it all keeps.</p></header>
<section aria-labelledby="in-print"><h2 id="in-print">In print</h2>${planListMarkup(shelf, publisherName)}</section>
<section aria-labelledby="machines"><h2 id="machines">For programs</h2>
<ul class="lines">${machines.map(({ path, text }) => markup`<li><a href="${path}">${path}</a> <span class="quiet">${text}</span></li>`)}</ul></section>`,
  });
