import { randomUUID } from "node:crypto";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { DraftKind } from "../../domain/problem.js";
import { publisherId } from "../access/publishers.js";
import type { DraftRef } from "../data.js";
import type { Db, Session } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { addChange } from "../plans/changes.js";
import { linkRevision } from "../plans/link-revision.js";
import { lockPlan } from "../plans/lock-plan.js";
import { titleColumns, titleValues } from "../plans/revision-summary.js";
import { canonicalJson } from "../sql/canonical-json.js";
import { listAnew } from "../plans/list-anew.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";
import { isStorable, storable } from "../sql/storable-text.js";
import type { ArchiveData, ArchivedRevision, ArchivedSchedule, DiscardedName, RevisionKey } from "./archive-data.js";

/** Tables whose rows say that something of a publisher is there already. A draft or a revision of a plan has a row of `plans`. */
const ownedTables = [
  "component_drafts",
  "publisher_foods",
  "publisher_packs",
  "translation_drafts",
  "plans",
  "discarded_drafts",
  "webhooks",
  "images",
  "scheduled_changes",
];

const imageColumns = {
  ...{ hash: true, fileHash: true, format: true, width: true, height: true },
  ...{ placeholder: true, createdAt: true, removedAt: true },
  names: { select: { name: true, updatedAt: true }, orderBy: { name: "asc" } },
  files: { select: { width: true, format: true, size: true }, orderBy: [{ width: "asc" }, { format: "asc" }] },
} as const satisfies Prisma.ImageSelect;

export function archiveData({ db }: Session): ArchiveData {
  return {
    size: async (publisher) => {
      if (!isStorable(publisher)) return 0;
      const counts = [
        "component_drafts",
        "publisher_foods",
        "publisher_packs",
        "translation_drafts",
        "plan_drafts",
        "revisions",
        "images",
      ].map((table) => Prisma.sql`(SELECT count(*) FROM ${Prisma.raw(table)} t WHERE t.publisher_id = b.id)`);
      const [row] = await db.$queryRaw<{ size: bigint }[]>`
        SELECT ${Prisma.join(counts, " + ")} AS size FROM publishers b WHERE b.slug = ${publisher}`;
      return Number(row?.size ?? 0);
    },
    revisions: (publisher, after, limit) => revisionsOf(db, publisher, after, limit),
    document: async (publisher, { slug, revision }) => {
      const [row] = await db.$queryRaw<{ document: unknown }[]>`
        SELECT r.document FROM revisions r JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id
        WHERE r.publisher_id = ${idOfPublisher(publisher)} AND p.slug = ${slug} AND r.revision = ${revision}::int`;
      return row?.document ?? null;
    },
    images: async (publisher, after, limit) => {
      const rows = await db.image.findMany({
        where: { publisher: { slug: publisher }, ...(after === null ? {} : { hash: { gt: after } }) },
        orderBy: { hash: "asc" },
        take: limit,
        select: imageColumns,
      });
      return rows;
    },
    discarded: async (publisher) =>
      db.$queryRaw<DiscardedName[]>`
        SELECT kind::text AS kind, slug, version FROM discarded_drafts
        WHERE publisher_id = ${idOfPublisher(publisher)} ORDER BY kind::text COLLATE "C", slug COLLATE "C"`,
    scheduled: async (publisher) =>
      db.$queryRaw<ArchivedSchedule[]>`
        SELECT s.id, s.slug, s.kind, s.due_at AS "dueAt", s.local_time AS "localTime", s.zone, s.version,
          s.change_note AS "changeNote", s.reason, r.revision AS "inForce", s.created_at AS "createdAt"
        FROM scheduled_changes s LEFT JOIN revisions r ON r.publisher_id = s.publisher_id AND r.id = s.in_force
        WHERE s.publisher_id = ${idOfPublisher(publisher)} AND s.state = 'WAITING'
        ORDER BY s.slug COLLATE "C", s.kind COLLATE "C", s.id`,
    isEmpty: async (publisher) => {
      const owner = await publisherId(db, publisher);
      const any = ownedTables.map(
        (table) => Prisma.sql`EXISTS (SELECT 1 FROM ${Prisma.raw(table)} WHERE publisher_id = ${owner}::uuid)`,
      );
      const feeds = Prisma.sql`EXISTS (SELECT 1 FROM feeds WHERE owner = ${owner}::uuid)`;
      const [row] = await db.$queryRaw<{ used: boolean }[]>`SELECT ${Prisma.join([...any, feeds], " OR ")} AS used`;
      return row?.used === false;
    },
    dateDraft: (draft, version, updatedAt) => dateDraft(db, draft, version, updatedAt),
    noteDiscarded: async (publisher, names) => {
      const owner = await publisherId(db, publisher);
      const data = names.map((name) => ({ publisherId: owner, ...storable(name) }));
      await db.discardedDraft.createMany({ data });
    },
    addRevision: (publisher, revision, document) => addRevision(db, publisher, revision, document),
    noteWithdrawal: async (publisher, { slug, revision, withdrawnAt }) => {
      const owner = await publisherId(db, publisher);
      const row = await db.revision.findFirst({
        where: { publisherId: owner, revision, plan: { slug } },
        select: { id: true },
      });
      if (row === null || withdrawnAt === null) return;
      await addChange(db, { publisherId: owner, revisionId: row.id, kind: "PLAN_WITHDRAWN", at: withdrawnAt });
    },
    settlePlans: async (publisher) => {
      await db.$executeRaw`
        UPDATE plans p SET last_revision = l.last, newest_revision_id = n.id, newest_published_at = n.published_at
        FROM (
          SELECT publisher_id, plan_id, max(revision) AS last FROM revisions
          WHERE publisher_id = ${idOfPublisher(publisher)} GROUP BY publisher_id, plan_id
        ) l
        LEFT JOIN LATERAL (
          SELECT r.id, r.published_at FROM revisions r
          WHERE r.publisher_id = l.publisher_id AND r.plan_id = l.plan_id AND r.withdrawn_at IS NULL
          ORDER BY r.revision DESC LIMIT 1
        ) n ON TRUE
        WHERE p.publisher_id = l.publisher_id AND p.id = l.plan_id`;
      await listAnew(db, Prisma.sql`p.publisher_id = ${idOfPublisher(publisher)}`);
    },
  };
}

async function revisionsOf(
  db: Db,
  publisher: string,
  after: RevisionKey | null,
  limit: number,
): Promise<readonly ArchivedRevision[]> {
  const beyond =
    after === null
      ? Prisma.sql`TRUE`
      : Prisma.sql`(p.slug COLLATE "C", r.revision) > (${after.slug}::text COLLATE "C", ${after.revision}::int)`;
  return db.$queryRaw<ArchivedRevision[]>`
    SELECT p.slug, r.revision, r.published_at AS "publishedAt", r.withdrawn_at AS "withdrawnAt",
      r.withdrawn_because AS "withdrawnBecause", r.change_note AS "changeNote", r.checksum, r.format, r.meaning,
      r.publisher_region AS "publisherRegion", r.publisher_currency AS "publisherCurrency", s.code AS "ruleSet"
    FROM revisions r
    JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id
    LEFT JOIN rule_sets s ON s.id = r.rule_set_id
    WHERE r.publisher_id = ${idOfPublisher(publisher)} AND ${beyond}
    ORDER BY p.slug COLLATE "C", r.revision LIMIT ${limit}::int`;
}

const draftTables = {
  COMPONENT: "component_drafts",
  FOOD: "publisher_foods",
  PACKS: "publisher_packs",
  TRANSLATION: "translation_drafts",
} as const satisfies Record<Exclude<DraftKind, "PLAN">, string>;

async function dateDraft(db: Db, draft: DraftRef, version: number, updatedAt: Date): Promise<void> {
  const owner = await publisherId(db, draft.publisher);
  const marks = Prisma.sql`version = ${version}::int, updated_at = ${updatedAt.toISOString()}::timestamptz`;
  await (draft.kind === "PLAN"
    ? db.$executeRaw`
        UPDATE plan_drafts d SET ${marks} FROM plans p
        WHERE p.publisher_id = ${owner}::uuid AND p.slug = ${draft.slug} AND d.publisher_id = p.publisher_id AND d.plan_id = p.id`
    : db.$executeRaw`
        UPDATE ${Prisma.raw(draftTables[draft.kind])} SET ${marks}
        WHERE publisher_id = ${owner}::uuid AND slug = ${draft.slug}`);
}

async function addRevision(db: Db, publisher: string, given: ArchivedRevision, document: PlanBundle): Promise<void> {
  const revision = storable(given);
  const { title, serves, locale } = storable(document).plan;
  const { publisherId: owner, id: planId } = await lockPlan(db, { publisher, slug: revision.slug });
  const id = randomUUID();
  const { publishedAt, withdrawnAt } = revision;
  await db.$executeRaw`
    INSERT INTO revisions
      (publisher_id, id, plan_id, revision, title, serves, locale, published_at, withdrawn_at, withdrawn_because, change_note,
       checksum, format, document, rule_set_id, meaning, ${titleColumns}, publisher_region, publisher_currency)
    VALUES (${owner}::uuid, ${id}::uuid, ${planId}::uuid, ${revision.revision}::int, ${title}, ${serves}::int, ${locale},
      ${publishedAt.toISOString()}::timestamptz, ${withdrawnAt?.toISOString() ?? null}::timestamptz,
      ${revision.withdrawnBecause}, ${revision.changeNote}, ${revision.checksum}, ${revision.format}::int,
      ${canonicalJson(document)}::jsonb, (SELECT id FROM rule_sets WHERE code = ${revision.ruleSet}::text),
      ${revision.meaning}::int, ${titleValues(document)}, ${revision.publisherRegion}, ${revision.publisherCurrency})`;
  await linkRevision(db, document, { publisherId: owner, revisionId: id, publishedAt });
  const kind = revision.changeNote === null ? "PLAN_PUBLISHED" : "PLAN_CORRECTED";
  await addChange(db, { publisherId: owner, revisionId: id, kind, at: publishedAt });
}
