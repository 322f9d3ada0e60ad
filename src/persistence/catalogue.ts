import { z } from "zod";
import type { CatalogueRow } from "../domain/model/catalogue-row.js";
import type { CatalogueData, KnownCatalogueRow } from "./catalogue-data.js";
import { foldWords } from "./fold-words.js";
import { Prisma } from "./generated/client.js";
import { inOrder } from "./keys.js";
import { readPage } from "./read-page.js";
import type { Session } from "./session.js";
import { isStorable, storable } from "./storable.js";

/** Columns of catalogue_foods c and of the one edition e, in the shape of the domain. */
const columns = Prisma.sql`c.ndb_no AS "ndbNo", c.description, c.other_names AS "otherNames", c.aisle,
  c.nutrients AS "per100g", c.refuse, c.weights, jsonb_build_object('code', e.code, 'title', e.title) AS edition`;

type Row = CatalogueRow & Pick<KnownCatalogueRow, "edition">;

const known = ({
  edition,
  ndbNo,
  description,
  otherNames,
  aisle,
  per100g,
  refuse,
  weights,
}: Row): KnownCatalogueRow => ({
  edition,
  row: { ndbNo, description, otherNames, aisle, per100g, refuse, weights },
});

const keys = z.tuple([z.string().regex(/^\d{1,6}$/), z.string().regex(/^\d{5}$/)]);

export function catalogueData(session: Session): CatalogueData {
  const { db } = session;
  return {
    load: (edition, contentHash, rows) => loadEdition(session, edition, contentHash, rows),
    contentHash: async () => {
      const [edition] = await db.catalogueEdition.findMany({ select: { contentHash: true }, take: 1 });
      return edition?.contentHash ?? null;
    },
    byNumbers: async (numbers) => {
      const wanted = [...new Set(numbers.filter(isStorable))];
      const rows = await db.$queryRaw<Row[]>`
        SELECT ${columns} FROM catalogue_foods c CROSS JOIN catalogue_editions e
        WHERE c.ndb_no = ANY(${wanted}::text[])`;
      return inOrder(numbers, rows.map(known), ({ row }) => row.ndbNo, String);
    },
    page: async (search, request) => {
      const page = await readPage<Row & { readonly size: number }, readonly [string, string]>(
        db,
        {
          order: [
            { column: Prisma.sql`f.length`, type: Prisma.sql`int`, descending: false },
            { column: Prisma.sql`f.ndb_no`, type: Prisma.sql`text`, descending: false },
          ],
          keys,
          from: Prisma.sql`catalogue_foods f`,
          where: search === null ? Prisma.sql`TRUE` : hasWords(search),
          columns: Prisma.sql`k.k0 AS size, ${columns}`,
          join: Prisma.sql`JOIN catalogue_foods c ON c.ndb_no = k.k1 CROSS JOIN catalogue_editions e`,
          keysOf: ({ size, ndbNo }) => [String(size), ndbNo],
        },
        request,
      );
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: known(item) })) };
    },
  };
}

/** Every word, or the beginning of one, in any order. */
function hasWords(search: string): Prisma.Sql {
  const words = foldWords(search);
  if (words.length === 0 || !isStorable(search)) return Prisma.sql`FALSE`;
  // Words are letters and digits alone, so that none of them is an operator.
  const query = words.map((word) => `'${word}':*`).join(" & ");
  return Prisma.sql`f.words @@ ${query}::tsquery`;
}

/** Replaces what was there, all or nothing. Of two processes that begin at once, the second waits and then finds it done. */
function loadEdition(
  session: Session,
  { code, title }: KnownCatalogueRow["edition"],
  contentHash: string,
  given: readonly CatalogueRow[],
): Promise<boolean> {
  const rows = JSON.stringify(
    storable(given).map(({ per100g, otherNames, ndbNo, ...row }) => ({
      ...row,
      ndb_no: ndbNo,
      other_names: otherNames,
      nutrients: per100g,
      length: row.description.length,
      words: foldWords([row.description, ...otherNames].join(" ")),
    })),
  );
  return session.transaction(async (db) => {
    const changed = await db.$executeRaw`
      INSERT INTO catalogue_editions AS e (code, title, content_hash) VALUES (${code}, ${title}, ${contentHash})
      ON CONFLICT (code) DO UPDATE SET title = excluded.title, content_hash = excluded.content_hash, loaded_at = now()
      WHERE (e.content_hash, e.title) IS DISTINCT FROM (excluded.content_hash, excluded.title)`;
    if (changed === 0) return false;
    await db.$executeRaw`DELETE FROM catalogue_foods`;
    await db.$executeRaw`DELETE FROM catalogue_editions WHERE code <> ${code}`;
    await db.$executeRaw`
      INSERT INTO catalogue_foods
        (ndb_no, description, other_names, aisle, nutrients, refuse, weights, length, words)
      SELECT ndb_no, description, other_names, aisle, nutrients, NULLIF(refuse, 'null'), weights, length,
        array_to_tsvector(words)
      FROM json_to_recordset(${rows}::json) AS r(ndb_no text, description text, other_names text[], aisle text,
        nutrients jsonb, refuse jsonb, weights jsonb, length int, words text[])`;
    return true;
  });
}
