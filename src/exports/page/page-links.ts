import { planAddress, publisherAddress } from "../addresses.js";
import { markup, type Content } from "./markup.js";
import { formQuery, type PlanForm } from "./form/plan-form.js";
import type { PreviewNotice } from "./parts/preview-part.js";

/** Where the pages are served, and what they load. */
export interface PageLinks {
  /** Without a slash at the end: `https://plans.example`. */
  readonly origin: string;
  /** The style sheet, the script that keeps ticks and that of the kitchen view; null where they were not built. */
  readonly style: string | null;
  readonly ticks: string | null;
  readonly cook: string | null;
  /** The page shows a draft, whose own pages stand at `path` instead; left out: it shows what is published. */
  readonly preview?: Named & { readonly path: string; readonly notice: PreviewNotice };
}

interface Named {
  readonly publisher: string;
  readonly slug: string;
}

export const publisherPath = (publisher: string): string => `/p/${encodeURIComponent(publisher)}`;

/** `links`: of the page that leads there; a page of a draft leads to pages of that draft. */
export function planPath({ publisher, slug }: Named, links?: PageLinks): string {
  const { preview } = links ?? {};
  return preview?.publisher === publisher && preview.slug === slug
    ? preview.path
    : `${publisherPath(publisher)}/${encodeURIComponent(slug)}`;
}

export const listPath = (plan: Named, links?: PageLinks): string => `${planPath(plan, links)}/list`;

/** What follows the address of a page for it to be in a language; null: whatever its reader's is. */
export const localeQuery = (locale: string | null): string =>
  locale === null ? "" : `?locale=${encodeURIComponent(locale)}`;

/** Step by step, for the kitchen. */
export const cookPath = (plan: Named, links?: PageLinks): string => `${planPath(plan, links)}/cook`;

/** How long everything keeps, to print. */
export const fridgePath = (plan: Named, links?: PageLinks): string => `${planPath(plan, links)}/fridge-door`;

/** Labels for boxes, to print. */
export const labelsPath = (plan: Named, links?: PageLinks): string => `${planPath(plan, links)}/labels`;

/** The revision that was shown, for ever, and what was asked of it. */
export const revisionPath = (plan: Named, revision: number, form: PlanForm): string =>
  planPath(plan) + formQuery({ ...form, revision: String(revision) });

/** The same answer in another form: `form` is an ending such as `md`, `part` a part of the plan such as `list`. */
export const otherFormPath = (plan: Named, form: string, part: string | null, asked: PlanForm): string =>
  `${planAddress(plan)}${part === null ? "" : `/${part}`}.${form}${formQuery(asked)}`;

/** Where a publisher can be followed, for the head of a page. */
export const feedLinks = (
  { slug, name }: { readonly slug: string; readonly name: string },
  { origin }: Pick<PageLinks, "origin">,
): Content =>
  (
    [
      ["application/atom+xml", "atom"],
      ["application/feed+json", "json"],
    ] as const
  ).map(
    ([type, ending]) =>
      markup`<link rel="alternate" type="${type}" title="${name}" href="${origin}${publisherAddress(slug)}/feed.${ending}">
`,
  );
