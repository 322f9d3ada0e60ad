import type { Deps } from "../deps.js";
import { runInSlices } from "../time-slices.js";
import { partsOfLines, stemOf } from "./held-names.js";

/** Component drafts that are read at once. */
const pageSize = 200;

/** Slugs of the publisher's component drafts that some lines may name by title or slug. */
export async function lineComponents(
  deps: Pick<Deps, "data" | "work">,
  publisher: string,
  lines: readonly string[],
): Promise<readonly string[]> {
  if (lines.length === 0) return [];
  const mayHold = await runInSlices(deps, (work) => partsOfLines(lines, work));
  const found: string[] = [];
  for (let after: string | null = null; ;) {
    const page = await deps.data.drafts.page(
      { publisher, kind: "COMPONENT" },
      { first: pageSize, after, last: null, before: null },
    );
    for (const { item } of page.items)
      if (mayHold(stemOf(item.title)) || mayHold(stemOf(item.slug))) found.push(item.slug);
    const last = page.items.at(-1);
    if (!page.hasNext || last === undefined) return found;
    after = last.cursor;
  }
}
