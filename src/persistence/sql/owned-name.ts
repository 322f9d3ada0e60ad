import type { OwnedSlug } from "../data.js";
import { inOrder } from "./keys.js";
import { isStorable } from "./storable-text.js";

/** One text for a publisher's slug, to look things up by. */
export const ownedName = (publisher: string, slug: string): string => JSON.stringify([publisher, slug]);

/**
 * Names by publisher, for a condition on each publisher rather than on each name: hundreds of those take a database seconds to plan.
 * Names that no text of the database can be are left out.
 */
export function slugsByPublisher(
  names: readonly OwnedSlug[],
): readonly { readonly publisher: string; readonly slugs: string[] }[] {
  const found = new Map<string, string[]>();
  for (const { publisher, slug } of names) {
    if (!isStorable(publisher) || !isStorable(slug)) continue;
    const slugs = found.get(publisher) ?? [];
    found.set(publisher, slugs);
    slugs.push(slug);
  }
  return [...found].map(([publisher, slugs]) => ({ publisher, slugs }));
}

/** The condition of rows that have a slug and a publisher. */
export const ownedBy = (names: readonly OwnedSlug[]) =>
  slugsByPublisher(names).map(({ publisher, slugs }) => ({ slug: { in: slugs }, publisher: { slug: publisher } }));

/** What is read out of the row of each name, in their order; null: there is none. */
export function inOrderOf<Row extends { readonly slug: string; readonly publisher: { readonly slug: string } }, T>(
  names: readonly OwnedSlug[],
  rows: readonly Row[],
  read: (row: Row) => T,
): readonly (T | null)[] {
  const keys = names.map(({ publisher, slug }) => ownedName(publisher, slug));
  const found = inOrder(keys, rows, (row) => ownedName(row.publisher.slug, row.slug), String);
  return found.map((row) => (row === null ? null : read(row)));
}
