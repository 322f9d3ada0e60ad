import { z } from "zod";
import type { CatalogueRow } from "../../domain/model/catalogue-row.js";
import { withWeightsOf } from "../../domain/component/revise-catalogue-row.js";
import type { CatalogueData, KnownCatalogueRow } from "./catalogue-data.js";
import { foldWords } from "../sql/fold-words.js";
import { Prisma } from "../generated/client.js";
import { inOrder } from "../sql/keys.js";
import { readPage } from "../sql/read-page.js";
import type { Db, Session } from "../database/session.js";
import { isStorable, storable } from "../sql/storable-text.js";

/** Columns of catalogue_foods c and of its edition e, in the shape of the domain. */
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
      const edition = await db.catalogueEdition.findFirst({ where: { shipped: true, contentHash: { not: null } } });
      return edition?.contentHash ?? null;
    },
    forgetHash: async () => {
      await db.catalogueEdition.updateMany({ where: { shipped: true }, data: { contentHash: null } });
    },
    lock: async () => {
      await db.$executeRaw(lock);
    },
    save: (rows) => saveRows(session, rows),
    remove: async (numbers) => {
      await db.catalogueFood.deleteMany({ where: { ndbNo: { in: numbers.filter(isStorable) } } });
    },
    byNumbers: async (numbers) => {
      const wanted = [...new Set(numbers.filter(isStorable))];
      const rows = await db.$queryRaw<Row[]>`
        SELECT ${columns} FROM catalogue_foods c JOIN catalogue_editions e ON e.code = c.edition
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
          join: Prisma.sql`JOIN catalogue_foods c ON c.ndb_no = k.k1 JOIN catalogue_editions e ON e.code = c.edition`,
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

/** Rows of `catalogue_foods`, as JSON. */
const stored = (rows: readonly KnownCatalogueRow[]): string =>
  JSON.stringify(
    storable(rows).map(({ edition, row: { per100g, otherNames, ndbNo, ...row } }) => ({
      ...row,
      edition: edition.code,
      ndb_no: ndbNo,
      other_names: otherNames,
      nutrients: per100g,
      length: row.description.length,
      words: foldWords([row.description, ...otherNames].join(" ")),
    })),
  );

/** Inside a transaction. */
async function insertRows(db: Db, rows: readonly KnownCatalogueRow[], onConflict: Prisma.Sql): Promise<void> {
  if (rows.length === 0) return;
  await db.$executeRaw`
    INSERT INTO catalogue_foods
      (ndb_no, edition, description, other_names, aisle, nutrients, refuse, weights, length, words)
    SELECT ndb_no, edition, description, other_names, aisle, nutrients, NULLIF(refuse, 'null'), weights, length,
      array_to_tsvector(words)
    FROM json_to_recordset(${stored(rows)}::json) AS r(ndb_no text, edition text, description text, other_names text[],
      aisle text, nutrients jsonb, refuse jsonb, weights jsonb, length int, words text[])
    ON CONFLICT (ndb_no) ${onConflict}`;
}

const keep = Prisma.sql`DO NOTHING`;
const replace = Prisma.sql`DO UPDATE SET edition = excluded.edition, description = excluded.description,
  other_names = excluded.other_names, aisle = excluded.aisle, nutrients = excluded.nutrients, refuse = excluded.refuse,
  weights = excluded.weights, length = excluded.length, words = excluded.words`;

const saveRows = (session: Session, rows: readonly KnownCatalogueRow[]): Promise<void> =>
  session.transaction(async (db) => {
    const editions = [...new Map(rows.map(({ edition }) => [edition.code, edition])).values()];
    await db.catalogueEdition.createMany({
      data: storable(editions).map(({ code, title }) => ({ code, title })),
      skipDuplicates: true,
    });
    await insertRows(db, rows, replace);
  });

const lock = Prisma.sql`LOCK TABLE catalogue_foods IN SHARE ROW EXCLUSIVE MODE`;

/**
 * All or nothing. Of two processes that begin at once, the second waits and then finds it done. A weight that was imported for a
 * food of the edition before is laid over the new row; where the new edition has no such food, the old row stays with it.
 */
function loadEdition(
  session: Session,
  edition: KnownCatalogueRow["edition"],
  contentHash: string,
  rows: readonly CatalogueRow[],
): Promise<boolean> {
  const { code, title } = edition;
  return session.transaction(async (db) => {
    const changed = await db.$executeRaw`
      INSERT INTO catalogue_editions AS e (code, title, content_hash, shipped) VALUES (${code}, ${title}, ${contentHash}, true)
      ON CONFLICT (code) DO UPDATE SET title = excluded.title, content_hash = excluded.content_hash, loaded_at = now()
      WHERE (e.content_hash, e.title) IS DISTINCT FROM (excluded.content_hash, excluded.title)`;
    if (changed === 0) return false;
    await db.$executeRaw(lock);
    await db.catalogueEdition.updateMany({
      where: { shipped: true, code: { not: code } },
      data: { contentHash: null },
    });
    const weighed = await db.$queryRaw<Row[]>`
      SELECT ${columns} FROM catalogue_foods c JOIN catalogue_editions e ON e.code = c.edition
      WHERE e.shipped AND EXISTS (SELECT FROM jsonb_array_elements(c.weights) w
        JOIN catalogue_editions i ON i.code = w->'edition'->>'code' WHERE NOT i.shipped)`;
    const imported = await db.catalogueEdition.findMany({ where: { shipped: false }, select: { code: true } });
    const codes = new Set(imported.map((each) => each.code));
    await db.$executeRaw`DELETE FROM catalogue_foods c USING catalogue_editions e WHERE e.code = c.edition AND e.shipped`;
    const older = new Map(weighed.map((each) => [each.ndbNo, known(each)]));
    const current = rows.map((row) => withWeightsOf({ row, edition }, older.get(row.ndbNo) ?? null, codes));
    await insertRows(db, current, keep);
    await insertRows(db, [...older.values()], keep);
    return true;
  });
}
