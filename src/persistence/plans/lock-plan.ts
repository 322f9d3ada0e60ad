import { UnknownPublisher } from "../errors.js";
import type { Db } from "../database/session.js";

export interface LockedPlan {
  readonly publisherId: string;
  readonly id: string;
  /** The highest number a revision of it ever had; 0 if there is none. */
  readonly lastRevision: number;
  readonly newestRevisionId: string | null;
}

/**
 * The row of a plan, made if need be, and locked until the transaction ends: whoever saves, publishes or withdraws the
 * same plan waits.
 * @throws UnknownPublisher
 */
export async function lockPlan(
  db: Db,
  { publisher, slug }: { readonly publisher: string; readonly slug: string },
): Promise<LockedPlan> {
  // The update changes nothing; it is there to lock a row that exists, and to return it.
  const [row] = await db.$queryRaw<LockedPlan[]>`
    INSERT INTO plans AS p (publisher_id, slug)
    SELECT id, ${slug} FROM publishers WHERE slug = ${publisher}
    ON CONFLICT (publisher_id, slug) DO UPDATE SET slug = excluded.slug
    RETURNING p.publisher_id AS "publisherId", p.id, p.last_revision AS "lastRevision",
      p.newest_revision_id AS "newestRevisionId"`;
  if (row === undefined) throw new UnknownPublisher(publisher);
  return row;
}
