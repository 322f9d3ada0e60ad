import { plainWords } from "../../domain/quantity/food-name.js";
import type { Data } from "../deps.js";
import { mayHold } from "./line-foods.js";

/** Component drafts that are read at once. */
const pageSize = 200;

/** Slugs of the publisher's component drafts that some lines may name by title or slug. */
export async function lineComponents(
  data: Data,
  publisher: string,
  lines: readonly string[],
): Promise<readonly string[]> {
  if (lines.length === 0) return [];
  const text = plainWords(lines.join(" "));
  const found: string[] = [];
  for (let after: string | null = null; ;) {
    const page = await data.drafts.page(
      { publisher, kind: "COMPONENT" },
      { first: pageSize, after, last: null, before: null },
    );
    for (const { item } of page.items) if (mayHold(text, item.title) || mayHold(text, item.slug)) found.push(item.slug);
    const last = page.items.at(-1);
    if (!page.hasNext || last === undefined) return found;
    after = last.cursor;
  }
}
