import { inOrder } from "../sql/keys.js";
import type { Db } from "../database/session.js";
import { isStorable } from "../sql/storable-text.js";

/**
 * For each slug the food that names it as another word for itself, or null. A food lists its other words as meaning exactly the
 * same food; where that word is another food's own name, the two are one, and the one that lists is the one to shop for. Of two
 * that list each other it is the first by slug.
 */
export async function synonymsOf(db: Db, slugs: readonly string[]): Promise<readonly (string | null)[]> {
  const rows = await db.$queryRaw<{ slug: string; same: string }[]>`
    SELECT own.slug, min(other.slug) AS same
      FROM foods own
      JOIN food_words name ON name.food_id = own.id AND name.place = 0
      JOIN food_words also ON also.folded = name.folded AND also.language = name.language
                          AND also.place >= 2 AND also.food_id <> own.id
      JOIN foods other ON other.id = also.food_id
     WHERE own.slug = ANY(${slugs.filter(isStorable)}::text[])
       -- Foods of the base name each other on purpose ("milk" of whole milk) and are no one's other word.
       AND (own.base_hash = own.content_hash) IS NOT TRUE AND (other.base_hash = other.content_hash) IS NOT TRUE
       AND NOT (own.slug < other.slug AND EXISTS (
         SELECT 1 FROM food_words mine
           JOIN food_words theirs ON theirs.folded = mine.folded AND theirs.language = mine.language AND theirs.place = 0
          WHERE mine.food_id = own.id AND mine.place >= 2 AND theirs.food_id = other.id))
     GROUP BY own.slug`;
  return inOrder(slugs, rows, ({ slug }) => slug, String).map((row) => row?.same ?? null);
}
