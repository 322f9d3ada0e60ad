import type { OwnedSlug, RevisionSummary } from "../data.js";
import type { Db } from "../database/session.js";
import { isStorable } from "../sql/storable-text.js";
import { Prisma } from "../generated/client.js";
import { summaryColumns, summaryOf } from "./revision-summary.js";

/** Of the plan p: the revision that was withdrawn last. */
const lastWithdrawn = Prisma.sql`
  JOIN LATERAL (
    SELECT * FROM revisions
    WHERE publisher_id = p.publisher_id AND plan_id = p.id AND withdrawn_at IS NOT NULL
    ORDER BY withdrawn_at DESC, revision DESC LIMIT 1
  ) r ON TRUE`;

/** One statement: for every key its place, and the last withdrawn revision of a plan that has none in force. */
export async function withdrawnPlans(
  db: Db,
  names: readonly OwnedSlug[],
): Promise<readonly (RevisionSummary | null)[]> {
  const keys = names
    .map(({ publisher, slug }, place) => ({ publisher, slug, place }))
    .filter(({ publisher, slug }) => isStorable(publisher) && isStorable(slug));
  const rows = await db.$queryRaw<(RevisionSummary & { readonly place: number })[]>`
    SELECT k.place, ${summaryColumns}
    FROM jsonb_to_recordset(${JSON.stringify(keys)}::jsonb) AS k(place int, publisher text, slug text)
    JOIN publishers b ON b.slug = k.publisher
    JOIN plans p ON p.publisher_id = b.id AND p.slug = k.slug AND p.newest_revision_id IS NULL
    ${lastWithdrawn}`;
  const byPlace = new Map(rows.map((row) => [row.place, summaryOf(row)]));
  return names.map((_, place) => byPlace.get(place) ?? null);
}

/** Plans of a publisher that have no revision in force, the last withdrawn first. */
export async function withdrawnPlansOf(db: Db, publisher: string, limit: number): Promise<readonly RevisionSummary[]> {
  if (!isStorable(publisher)) return [];
  const rows = await db.$queryRaw<RevisionSummary[]>`
    SELECT ${summaryColumns}
    FROM publishers b
    JOIN plans p ON p.publisher_id = b.id AND p.newest_revision_id IS NULL
    ${lastWithdrawn}
    WHERE b.slug = ${publisher}
    ORDER BY r.withdrawn_at DESC, r.id LIMIT ${limit}::int`;
  return rows.map(summaryOf);
}
