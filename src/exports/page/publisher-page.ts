import { markup } from "./markup.js";
import { pageFrame } from "./page-frame.js";
import { publisherPath, type PageLinks } from "./page-links.js";
import { planListMarkup, type PlanList } from "./parts/plan-list.js";

/** Everything a publisher has in print. */
export const publisherPage = (
  publisher: { readonly slug: string; readonly name: string },
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
<p class="summary">The newest plan comes first. Each is worked out afresh for as many as you feed.</p></header>
<section aria-labelledby="in-print"><h2 id="in-print">In print</h2>${planListMarkup(shelf, null)}</section>`,
  });
