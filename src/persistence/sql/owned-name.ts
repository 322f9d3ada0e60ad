import type { OwnedSlug } from "../data.js";
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
