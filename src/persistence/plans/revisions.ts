import { setImmediate } from "node:timers/promises";
import type { PlanBundle } from "../../domain/model/plan.js";
import { checksumOf } from "../sql/canonical-json.js";
import type { Data, OwnedSlug, RevisionRef, RevisionSummary } from "../data.js";
import { BadCursor } from "../errors.js";
import { bundleOf } from "./frozen-document.js";
import { inOrder, isId } from "../sql/keys.js";
import { publishRevision, withdrawRevision } from "./publish-revision.js";
import { revisionsOfPlan } from "./revisions-of-plan.js";
import { revisionPage } from "./revision-page.js";
import { joinPlan, summaryColumns, summaryOf, titlesIn } from "./revision-summary.js";
import type { Db, Session } from "../database/session.js";
import { withdrawnPlans, withdrawnPlansOf } from "./withdrawn-plans.js";
import { isStorable, storable } from "../sql/storable-text.js";

export function revisionData(session: Session): Data["revisions"] {
  const { db } = session;
  return {
    publish: async (bundle, publishedAt, changeNote = null, ruleSet = null) => {
      storable({ changeNote });
      return session.transaction((inside) =>
        publishRevision(inside, storable(bundle), publishedAt, changeNote, ruleSet),
      );
    },
    withdraw: async (ref, at, because = null, then = "PREVIOUS") => {
      storable({ because });
      if (!isStorable(ref.publisher) || !isStorable(ref.slug) || !isRevision(ref.revision)) return false;
      return session.transaction((inside) => withdrawRevision(inside, ref, at, because, then));
    },
    withdrawn: (names) => withdrawnPlans(db, names),
    withdrawnOf: (publisher, limit) => withdrawnPlansOf(db, publisher, limit),
    summaries: (refs) => summaries(db, refs),
    summariesByIds: async (ids) => {
      const rows = await db.$queryRaw<RevisionSummary[]>`
        SELECT ${summaryColumns} FROM revisions r ${joinPlan} WHERE r.id = ANY(${ids.filter(isId)}::uuid[])`;
      return inOrder(ids, rows.map(summaryOf), ({ id }) => id, String);
    },
    bundles: async (ids) => {
      // As text, since Prisma's own reads walk through every value of a document, and parse those of all rows in one turn.
      const rows = await db.$queryRaw<{ id: string; format: number; text: string }[]>`
        SELECT id, format, document::text AS text FROM revisions WHERE id = ANY(${ids.filter(isId)}::uuid[])`;
      const found: { readonly id: string; readonly bundle: PlanBundle }[] = [];
      for (const { id, format, text } of rows) {
        // One document of 20,000 lines is parsed in some 50 ms, and a list may be of fifty.
        if (text.length > charactersInTurn) await setImmediate();
        found.push({ id, bundle: bundleOf(id, format, text) });
      }
      return inOrder(ids, found, ({ id }) => id, String).map((each) => each?.bundle ?? null);
    },
    titles: (asked) => titlesIn(db, asked),
    checksums: async (after, limit) => {
      if (after !== null && !isId(after)) throw new BadCursor();
      const rows = await db.revision.findMany({
        ...(after === null ? {} : { where: { id: { gt: after } } }),
        orderBy: { id: "asc" },
        take: limit,
        select: { id: true, checksum: true, document: true },
      });
      return rows.map(({ id, checksum, document }) => ({ id, stored: checksum, computed: checksumOf(document) }));
    },
    holdingComponents: (names) => holdingComponents(db, names),
    ofPlan: (name, request) => revisionsOfPlan(db, name, request),
    page: (filter, request) => revisionPage(db, filter, request),
  };
}

const charactersInTurn = 100_000;

type Numbered<T> = T & { readonly place: number };

/** One statement: for every key its place, and the revision that answers it. */
async function summaries(db: Db, refs: readonly RevisionRef[]): Promise<readonly (RevisionSummary | null)[]> {
  const asked = refs.map((ref, place) => ({ ...ref, place })).filter(isAskable);
  const keys = JSON.stringify(asked);
  const rows = await db.$queryRaw<Numbered<RevisionSummary>[]>`
    SELECT k.place, ${summaryColumns}
    FROM jsonb_to_recordset(${keys}::jsonb) AS k(place int, publisher text, slug text, revision int)
    JOIN publishers b ON b.slug = k.publisher
    JOIN plans p ON p.publisher_id = b.id AND p.slug = k.slug
    JOIN LATERAL (
      SELECT * FROM revisions WHERE k.revision IS NULL AND publisher_id = p.publisher_id AND id = p.newest_revision_id
      UNION ALL
      SELECT * FROM revisions WHERE publisher_id = p.publisher_id AND plan_id = p.id AND revision = k.revision
    ) r ON TRUE`;
  return placed(refs.length, rows);
}

/** One statement: for every key the newest revision in force that holds the component. */
async function holdingComponents(db: Db, names: readonly OwnedSlug[]): Promise<readonly (RevisionSummary | null)[]> {
  const asked = names.map((name, place) => ({ ...name, revision: null, place })).filter(isAskable);
  const keys = JSON.stringify(asked);
  const rows = await db.$queryRaw<Numbered<RevisionSummary>[]>`
    SELECT k.place, ${summaryColumns}
    FROM jsonb_to_recordset(${keys}::jsonb) AS k(place int, publisher text, slug text)
    JOIN publishers b ON b.slug = k.publisher
    JOIN LATERAL (
      SELECT held.* FROM revision_components c
      JOIN revisions held ON held.publisher_id = c.publisher_id AND held.id = c.revision_id
      WHERE c.publisher_id = b.id AND c.component = k.slug AND held.withdrawn_at IS NULL
      ORDER BY c.published_at DESC, c.revision_id LIMIT 1
    ) r ON TRUE
    JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id`;
  return placed(names.length, rows);
}

function placed(count: number, rows: readonly Numbered<RevisionSummary>[]): readonly (RevisionSummary | null)[] {
  const byPlace = new Map(rows.map((row) => [row.place, summaryOf(row)]));
  return Array.from({ length: count }, (_, place) => byPlace.get(place) ?? null);
}

/** What the database could hold at all; anything else is nobody's. */
const isAskable = ({ publisher, slug, revision }: RevisionRef): boolean =>
  isStorable(publisher) && isStorable(slug) && (revision === null || isRevision(revision));

const isRevision = (number: number): boolean => Number.isInteger(number) && number >= 1 && number <= 2_147_483_647;
