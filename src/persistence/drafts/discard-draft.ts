import type { DraftKind } from "../../domain/problem.js";
import type { DraftRef } from "../data.js";
import { draftVersions } from "./draft-versions.js";
import { Prisma } from "../generated/client.js";
import { StaleDraft } from "../errors.js";
import type { Db } from "../database/session.js";
import { isStorable } from "../sql/storable-text.js";

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
export async function discardDraft(db: Db, draft: DraftRef, expected: number): Promise<void> {
  const { kind, publisher, slug } = draft;
  const owner = isStorable(publisher) && isStorable(slug) ? await deleteDraft(db, draft, expected) : null;
  if (owner === null) {
    const [actual] = await draftVersions(db, [draft]);
    throw new StaleDraft(slug, expected, actual ?? null);
  }
  const name = { publisherId: owner, kind, slug };
  await db.discardedDraft.upsert({
    where: { publisherId_kind_slug: name },
    create: { ...name, version: expected },
    update: { version: expected },
    select: { version: true },
  });
}

const tables = {
  COMPONENT: "component_drafts",
  FOOD: "publisher_foods",
  PACKS: "publisher_packs",
  PLAN: "plan_drafts",
  TRANSLATION: "translation_drafts",
} as const satisfies Record<DraftKind, string>;

/** Id of its publisher; null: there is none of that version. */
async function deleteDraft(db: Db, { kind, publisher, slug }: DraftRef, version: number): Promise<string | null> {
  const table = Prisma.raw(tables[kind]);
  const [gone] =
    kind === "PLAN"
      ? await db.$queryRaw<{ owner: string }[]>`
          DELETE FROM plan_drafts d USING plans p, publishers b
          WHERE b.slug = ${publisher} AND p.publisher_id = b.id AND p.slug = ${slug}
            AND d.publisher_id = b.id AND d.plan_id = p.id AND d.version = ${version}
          RETURNING d.publisher_id AS owner`
      : await db.$queryRaw<{ owner: string }[]>`
          DELETE FROM ${table} d USING publishers b
          WHERE b.slug = ${publisher} AND d.publisher_id = b.id AND d.slug = ${slug} AND d.version = ${version}
          RETURNING d.publisher_id AS owner`;
  return gone?.owner ?? null;
}
