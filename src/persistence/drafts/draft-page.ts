import { z } from "zod";
import type { DraftFilter, DraftSummary } from "../data.js";
import type { DraftKind } from "../../domain/problem.js";
import type { Page, PageRequest } from "../sql/page.js";
import { Prisma } from "../generated/client.js";
import { readPage } from "../sql/read-page.js";
import type { Db } from "../database/session.js";
import { isStorable } from "../sql/storable-text.js";

interface Row extends DraftSummary {
  readonly k0: string;
}

const text = Prisma.sql`text`;

/** Drafts of one publisher: components, then foods, then packs, then plans, then translations, each by slug. One statement. */
export async function draftPage(db: Db, filter: DraftFilter, request: PageRequest): Promise<Page<DraftSummary>> {
  const page = await readPage<Row, readonly [string, string]>(
    db,
    {
      order: [
        { column: Prisma.sql`d.kind`, type: text, descending: false },
        { column: Prisma.sql`d.slug`, type: text, descending: false },
      ],
      keys: z.tuple([z.enum(["COMPONENT", "FOOD", "PACKS", "PLAN", "TRANSLATION"]), z.string().refine(isStorable)]),
      from: draftsOf(filter.publisher),
      where: filter.kind === null ? Prisma.sql`TRUE` : Prisma.sql`d.kind = ${filter.kind}`,
      columns: Prisma.sql`d.kind, d.publisher, d.slug, d.title, d.version, d.updated_at AS "updatedAt",
        d.updated_by AS "updatedBy"`,
      join: Prisma.sql`JOIN ${draftsOf(filter.publisher)} ON d.kind = k.k0 AND d.slug = k.k1`,
      keysOf: ({ kind, slug }) => [kind, slug],
    },
    request,
  );
  return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: summaryOf(item) })) };
}

/** Compared by their bytes, whatever the locale of the server. */
function draftsOf(publisher: string): Prisma.Sql {
  const owner = isStorable(publisher) ? Prisma.sql`b.slug = ${publisher}` : Prisma.sql`FALSE`;
  return Prisma.sql`(
    SELECT 'COMPONENT' COLLATE "C" AS kind, b.slug AS publisher, c.slug COLLATE "C" AS slug, c.title, c.version, c.updated_at, c.updated_by
    FROM component_drafts c JOIN publishers b ON b.id = c.publisher_id WHERE ${owner}
    UNION ALL
    SELECT 'FOOD' COLLATE "C", b.slug, f.slug COLLATE "C", f.title, f.version, f.updated_at, f.updated_by
    FROM publisher_foods f JOIN publishers b ON b.id = f.publisher_id WHERE ${owner}
    UNION ALL
    SELECT 'PACKS' COLLATE "C", b.slug, f.slug COLLATE "C", f.title, f.version, f.updated_at, f.updated_by
    FROM publisher_packs f JOIN publishers b ON b.id = f.publisher_id WHERE ${owner}
    UNION ALL
    SELECT 'PLAN' COLLATE "C", b.slug, p.slug COLLATE "C", d.title, d.version, d.updated_at, d.updated_by
    FROM plan_drafts d JOIN plans p ON p.publisher_id = d.publisher_id AND p.id = d.plan_id
      JOIN publishers b ON b.id = d.publisher_id WHERE ${owner}
    UNION ALL
    SELECT 'TRANSLATION' COLLATE "C", b.slug, t.slug COLLATE "C", t.title, t.version, t.updated_at, t.updated_by
    FROM translation_drafts t JOIN publishers b ON b.id = t.publisher_id WHERE ${owner}
  ) d`;
}

const summaryOf = ({ kind, publisher, slug, title, version, updatedAt, updatedBy }: Row): DraftSummary => ({
  kind: kind satisfies DraftKind,
  publisher,
  slug,
  title,
  version,
  updatedAt,
  updatedBy,
});
