import { ok, type Result } from "../../domain/problem.js";
import type { Deps, Page, RevisionSummary } from "../deps.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";

/** Plans in one file of a sitemap: the sitemap protocol allows 50,000 addresses, this stays far below the bound of an answer. */
const sizeOfFile = 1000;
/** Files that an index names. Older plans than these are found through the pages of their publishers. */
const mostFiles = 50;

const everything = { publisher: null, search: null, usesFood: null, usesComponent: null } as const;

const request = (after: string | null) => ({ first: sizeOfFile, after, last: null, before: null });

/** Plans of one file, newest first. Fails on a cursor that leads nowhere. */
export const sitemapPlans = (deps: Deps, after: string | null): Promise<Result<Page<RevisionSummary>>> =>
  refuseBadCursor(request(after), () => deps.data.revisions.page(everything, request(after)));

/** Where each file begins, and when the newest plan in it was published. */
export async function sitemapFiles(
  deps: Deps,
): Promise<Result<readonly { readonly after: string | null; readonly changed: Date | null }[]>> {
  const files: { readonly after: string | null; readonly changed: Date | null }[] = [];
  let after: string | null = null;
  while (files.length < mostFiles) {
    const page: Result<Page<RevisionSummary>> = await sitemapPlans(deps, after);
    if (!page.ok) return page;
    const { items, hasNext } = page.value;
    files.push({ after, changed: items[0]?.item.publishedAt ?? null });
    after = items.at(-1)?.cursor ?? null;
    if (!hasNext || after === null) break;
  }
  return ok(files);
}
