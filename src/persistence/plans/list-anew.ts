import type { Prisma } from "../generated/client.js";
import type { Db } from "../database/session.js";

/**
 * Inside the transaction that gave some plans another newest revision, or none: nothing that was known of the one before is found from
 * then on. What is known of the new one is worked out later, but for its foods and the words of its title.
 *
 * @param which condition on plans p
 */
export async function listAnew(db: Db, which: Prisma.Sql): Promise<void> {
  await db.$executeRaw`
    DELETE FROM plan_facts f USING plans p
    WHERE p.publisher_id = f.publisher_id AND p.id = f.plan_id AND p.newest_revision_id IS DISTINCT FROM f.revision_id AND ${which}`;
  await db.$executeRaw`
    INSERT INTO plan_facts (publisher_id, plan_id, revision_id, published_at, first_published_at, servings, foods, words)
    SELECT p.publisher_id, p.id, r.id, r.published_at,
      (SELECT min(a.published_at) FROM revisions a WHERE a.publisher_id = p.publisher_id AND a.plan_id = p.id), r.serves,
      ARRAY(SELECT h.food FROM revision_foods h WHERE h.publisher_id = r.publisher_id AND h.revision_id = r.id),
      array_to_tsvector(ARRAY(SELECT w.word FROM revision_words w WHERE w.publisher_id = r.publisher_id AND w.revision_id = r.id))
    FROM plans p JOIN revisions r ON r.publisher_id = p.publisher_id AND r.id = p.newest_revision_id
    WHERE ${which} ON CONFLICT (publisher_id, plan_id) DO NOTHING`;
}
