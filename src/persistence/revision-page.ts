import { z } from "zod";
import type { Page, PageRequest, PlanFilter, RevisionSummary } from "./data.js";
import { foldWords } from "./fold-words.js";
import { Prisma } from "./generated/client.js";
import { isId } from "./keys.js";
import { readPage } from "./read-page.js";
import { summaryColumns, summaryOf } from "./revision-summary.js";
import type { Db } from "./session.js";
import { isStorable } from "./storable.js";

/** A time exactly as this program writes it, in a year that a database knows. */
const instant = z.string().refine((text) => {
  const time = new Date(text);
  return (
    /^[0-9]{4}-/.test(text) && !text.startsWith("0000") && !Number.isNaN(time.getTime()) && time.toISOString() === text
  );
});

const keys = z.tuple([instant, z.string().refine(isId)]);

/** Newest revision of each plan, by the newest columns of the plan, which an index holds in this order. */
export async function revisionPage(db: Db, filter: PlanFilter, request: PageRequest): Promise<Page<RevisionSummary>> {
  const page = await readPage<RevisionSummary, readonly [string, string]>(
    db,
    {
      order: [
        { column: Prisma.sql`p.newest_published_at`, type: Prisma.sql`timestamptz`, descending: true },
        { column: Prisma.sql`p.newest_revision_id`, type: Prisma.sql`uuid`, descending: false },
      ],
      keys,
      columns: summaryColumns,
      from: Prisma.sql`plans p
        JOIN revisions r ON r.publisher_id = p.publisher_id AND r.id = p.newest_revision_id
        JOIN publishers b ON b.id = p.publisher_id`,
      where: conditions(filter),
      keysOf: ({ publishedAt, id }) => [publishedAt.toISOString(), id],
    },
    request,
  );
  return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: summaryOf(item) })) };
}

function conditions({ publisher, search, usesFood, usesComponent }: PlanFilter): Prisma.Sql {
  const texts = [publisher, search, usesFood, usesComponent];
  if (texts.some((text) => text !== null && !isStorable(text))) return Prisma.sql`FALSE`;
  const words = search === null ? [] : foldWords(search);
  const wanted = [
    Prisma.sql`p.newest_revision_id IS NOT NULL`,
    ...(publisher === null ? [] : [Prisma.sql`p.publisher_id = (SELECT id FROM publishers WHERE slug = ${publisher})`]),
    ...(words.length === 0 ? [] : [Prisma.sql`p.newest_title_words @> ${words}::text[]`]),
    ...(usesFood === null
      ? []
      : [
          Prisma.sql`EXISTS (SELECT FROM revision_foods f WHERE f.publisher_id = p.publisher_id
            AND f.revision_id = p.newest_revision_id AND f.food = ${usesFood})`,
        ]),
    ...(usesComponent === null
      ? []
      : [
          Prisma.sql`EXISTS (SELECT FROM revision_components c WHERE c.publisher_id = p.publisher_id
            AND c.revision_id = p.newest_revision_id AND c.component = ${usesComponent})`,
        ]),
  ];
  return Prisma.join(wanted, " AND ");
}
