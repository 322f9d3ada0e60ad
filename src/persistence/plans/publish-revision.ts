import { randomUUID } from "node:crypto";
import type { PlanBundle } from "../../domain/model/plan.js";
import { titlesOfPlan } from "../../domain/plan/translate/in-language.js";
import { addChange } from "./changes.js";
import { canonicalJson, checksumOfText } from "../sql/canonical-json.js";
import type { OwnedSlug, RevisionSummary, WithdrawThen } from "../data.js";
import { documentFormat, documentOf } from "./frozen-document.js";
import { linkRevision } from "./link-revision.js";
import { lockPlan, type LockedPlan } from "./lock-plan.js";
import { joinPlan, summaryColumns, summaryOf, titleColumns, titleValues } from "./revision-summary.js";
import type { Db } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { listAnew } from "./list-anew.js";

/** How plans are computed since 0.1.0, which left this out: by what is eaten, and steps grow unless their writer says otherwise. */
const meaning = 2;

/** Inside a transaction. @throws UnknownPublisher */
export async function publishRevision(
  db: Db,
  bundle: PlanBundle,
  publishedAt: Date,
  changeNote: string | null,
  ruleSet: string | null,
): Promise<{ readonly summary: RevisionSummary; readonly created: boolean }> {
  const document = documentOf(bundle);
  const text = canonicalJson(document);
  const checksum = checksumOfText(text);
  const plan = await lockPlan(db, bundle.plan);
  const newest = plan.newestRevisionId === null ? null : await summaryById(db, plan.newestRevisionId);
  if (newest?.checksum === checksum) return { summary: newest, created: false };

  const { publisherId } = plan;
  const id = randomUUID();
  const { title, serves, locale } = document.plan;
  const revision = plan.lastRevision + 1;
  await db.$executeRaw`
    INSERT INTO revisions
      (publisher_id, id, plan_id, revision, title, serves, locale, published_at, change_note, checksum, format, document,
       rule_set_id, meaning, ${titleColumns}, publisher_region, publisher_currency)
    SELECT ${publisherId}::uuid, ${id}::uuid, ${plan.id}::uuid, ${revision}::int, ${title}, ${serves}::int, ${locale},
      ${publishedAt.toISOString()}::timestamptz, ${changeNote}, ${checksum}, ${documentFormat}::int, ${text}::jsonb,
      ${ruleSet}::uuid, ${meaning}::int, ${titleValues(document)}, region, currency
    FROM publishers WHERE id = ${publisherId}::uuid`;
  await linkRevision(db, document, { publisherId, revisionId: id, publishedAt });
  await setNewest(db, plan, { id, publishedAt, revision });
  const kind = changeNote === null ? "PLAN_PUBLISHED" : "PLAN_CORRECTED";
  await addChange(db, { publisherId, revisionId: id, kind, at: publishedAt });
  const summary = {
    id,
    publisher: bundle.plan.publisher,
    slug: bundle.plan.slug,
    title,
    revision,
    serves,
    locale,
    publishedAt,
    withdrawnAt: null,
    withdrawnBecause: null,
    changeNote,
    checksum,
    ruleSet,
    translatedInto: [...titlesOfPlan(document).keys()],
  };
  return { summary, created: true };
}

/** Inside a transaction. false: there is no such revision, or it was withdrawn before. */
export async function withdrawRevision(
  db: Db,
  ref: OwnedSlug & { readonly revision: number },
  at: Date,
  because: string | null,
  then: WithdrawThen,
): Promise<boolean> {
  const [plan] = await db.$queryRaw<LockedPlan[]>`
    SELECT p.publisher_id AS "publisherId", p.id, p.last_revision AS "lastRevision",
      p.newest_revision_id AS "newestRevisionId"
    FROM plans p JOIN publishers b ON b.id = p.publisher_id
    WHERE b.slug = ${ref.publisher} AND p.slug = ${ref.slug} FOR UPDATE OF p`;
  if (plan === undefined) return false;
  const { publisherId, id: planId } = plan;
  const inForce = { publisherId, planId, withdrawnAt: null };
  const known = await db.revision.count({ where: { ...inForce, revision: ref.revision } });
  if (known === 0) return false;
  const withdrawn = await db.revision.updateManyAndReturn({
    where: then === "NOTHING" ? inForce : { ...inForce, revision: ref.revision },
    data: { withdrawnAt: at, withdrawnBecause: because },
    select: { id: true, revision: true },
  });
  for (const { id } of withdrawn.toSorted((a, b) => a.revision - b.revision))
    await addChange(db, { publisherId, revisionId: id, kind: "PLAN_WITHDRAWN", at });
  const left = await db.revision.findFirst({
    where: inForce,
    orderBy: { revision: "desc" },
    select: { id: true, publishedAt: true },
  });
  await setNewest(db, plan, left && { ...left, revision: plan.lastRevision });
  return true;
}

interface Newest {
  readonly id: string;
  readonly publishedAt: Date;
  /** The highest number given out. */
  readonly revision: number;
}

async function setNewest(db: Db, { publisherId, id, lastRevision }: LockedPlan, newest: Newest | null): Promise<void> {
  await db.plan.update({
    where: { publisherId_id: { publisherId, id } },
    data: {
      lastRevision: newest?.revision ?? lastRevision,
      newestRevisionId: newest?.id ?? null,
      newestPublishedAt: newest?.publishedAt ?? null,
    },
    select: { id: true },
  });
  await listAnew(db, Prisma.sql`p.publisher_id = ${publisherId}::uuid AND p.id = ${id}::uuid`);
}

async function summaryById(db: Db, id: string): Promise<RevisionSummary | null> {
  const [row] = await db.$queryRaw<RevisionSummary[]>`
    SELECT ${summaryColumns} FROM revisions r ${joinPlan} WHERE r.id = ${id}::uuid`;
  return row === undefined ? null : summaryOf(row);
}
