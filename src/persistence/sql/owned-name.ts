import type { OwnedSlug } from "../data.js";
import { isStorable } from "./storable-text.js";

/** One text for a publisher's slug, to look things up by. */
export const ownedName = (publisher: string, slug: string): string => JSON.stringify([publisher, slug]);

/** Those that the database could hold at all; the others are nobody's. */
export const storableNames = (names: readonly OwnedSlug[]): readonly OwnedSlug[] =>
  names.filter(({ publisher, slug }) => isStorable(publisher) && isStorable(slug));
