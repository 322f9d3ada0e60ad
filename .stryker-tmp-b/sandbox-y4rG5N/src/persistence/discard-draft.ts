// @ts-nocheck
import type { DraftKind, OwnedSlug } from "./data.js";
import { StaleDraft } from "./errors.js";
import type { Db } from "./session.js";
import { isStorable } from "./storable.js";

interface DraftName {
  readonly publisherId: string;
  readonly kind: DraftKind;
  readonly slug: string;
}

/** The version a draft begins with: it counts on from a discarded one of its name, so that nobody's old version fits it. */
export async function firstVersion(db: Db, name: DraftName): Promise<number> {
  const last = await db.discardedDraft.findUnique({
    where: { publisherId_kind_slug: name },
    select: { version: true },
  });
  return (last?.version ?? 0) + 1;
}

/** Inside a transaction. @throws StaleDraft, also where there is no such draft */
export async function discardDraft(
  db: Db,
  kind: DraftKind,
  { publisher, slug }: OwnedSlug,
  expected: number,
): Promise<void> {
  if (!isStorable(publisher) || !isStorable(slug)) throw new StaleDraft(slug, expected, null);
  const [gone] =
    kind === "PLAN"
      ? await db.$queryRaw<{ publisherId: string }[]>`
          DELETE FROM plan_drafts d USING plans p, publishers b
          WHERE b.slug = ${publisher} AND p.publisher_id = b.id AND p.slug = ${slug}
            AND d.publisher_id = b.id AND d.plan_id = p.id AND d.version = ${expected}
          RETURNING d.publisher_id AS "publisherId"`
      : await db.$queryRaw<{ publisherId: string }[]>`
          DELETE FROM component_drafts d USING publishers b
          WHERE b.slug = ${publisher} AND d.publisher_id = b.id AND d.slug = ${slug} AND d.version = ${expected}
          RETURNING d.publisher_id AS "publisherId"`;
  if (gone === undefined) throw new StaleDraft(slug, expected, await versionNow(db, kind, { publisher, slug }));
  const name = { publisherId: gone.publisherId, kind, slug };
  await db.discardedDraft.upsert({
    where: { publisherId_kind_slug: name },
    create: { ...name, version: expected },
    update: { version: expected },
    select: { version: true },
  });
}

async function versionNow(db: Db, kind: DraftKind, { publisher, slug }: OwnedSlug): Promise<number | null> {
  const found =
    kind === "PLAN"
      ? await db.planDraft.findFirst({
          where: { plan: { slug, publisher: { slug: publisher } } },
          select: { version: true },
        })
      : await db.componentDraft.findFirst({
          where: { slug, publisher: { slug: publisher } },
          select: { version: true },
        });
  return found?.version ?? null;
}
