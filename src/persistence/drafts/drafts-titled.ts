import type { Db } from "../database/session.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";
import { isStorable } from "../sql/storable-text.js";

/** "Lentil soup", "LENTIL SOUP (2)": the drafts of a publisher's plans of such a title. */
export async function draftsTitled(
  db: Db,
  publisher: string,
  titles: readonly string[],
): Promise<readonly { readonly slug: string; readonly title: string }[]> {
  const asked = titles.filter(isStorable);
  if (asked.length === 0) return [];
  return db.$queryRaw<{ slug: string; title: string }[]>`
    SELECT p.slug, d.title FROM plan_drafts d JOIN plans p ON p.publisher_id = d.publisher_id AND p.id = d.plan_id
    WHERE d.publisher_id = ${idOfPublisher(publisher)}
      AND lower(regexp_replace(d.title, ' \\([0-9]+\\)$', '')) IN (SELECT lower(t) FROM unnest(${asked}::text[]) AS t)`;
}
