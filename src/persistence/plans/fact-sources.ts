import type { Db } from "../database/session.js";
import { openTableNumber } from "../../domain/model/open-table-slug.js";
import { Prisma } from "../generated/client.js";
import type { FactSourceNow } from "./plan-facts-data.js";

/** Sources that are written in one statement. */
const sourcesAtOnce = 500;

/** Inside a transaction. */
export async function noteSources(db: Db, sources: readonly FactSourceNow[]): Promise<number> {
  const changed: FactSourceNow[] = [];
  for (let at = 0; at < sources.length; at += sourcesAtOnce) {
    const some = sources.slice(at, at + sourcesAtOnce);
    const rows = some.map(({ kind, name, checksum }, place) => ({ place, source: `${kind} ${name}`, checksum }));
    const found = await db.$queryRaw<{ source: string }[]>`
      INSERT INTO fact_sources AS s (source, checksum)
      SELECT n.source, n.checksum
      FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS n(source text, checksum text) ORDER BY n.source
      ON CONFLICT (source) DO UPDATE SET checksum = excluded.checksum WHERE s.checksum <> excluded.checksum
      RETURNING s.source`;
    const names = new Set(found.map(({ source }) => source));
    changed.push(...some.filter(({ kind, name }) => names.has(`${kind} ${name}`)));
  }
  return mark(db, changed);
}

const marked = Prisma.sql`UPDATE plan_facts f SET due = f.due + 1`;

/** Makes the facts due of the plans that something concerns. */
async function mark(db: Db, changed: readonly Pick<FactSourceNow, "kind" | "name">[]): Promise<number> {
  const foods = changed.flatMap(({ kind, name }) => (kind === "FOOD" ? [name] : []));
  if (foods.length < changed.length) await db.$executeRaw`${marked}`;
  else if (foods.length > 0) await db.$executeRaw`${marked} WHERE f.foods && ${foods}::text[]`;
  return changed.length;
}

/** Inside a transaction: where publishers are, and in what money they reckon. */
export async function notePublishers(db: Db): Promise<number> {
  const changed = await db.$queryRaw<{ source: string }[]>`
    INSERT INTO fact_sources AS s (source, checksum)
    SELECT 'PUBLISHER ' || slug, concat_ws(' ', region, '/', currency) FROM publishers ORDER BY slug
    ON CONFLICT (source) DO UPDATE SET checksum = excluded.checksum WHERE s.checksum <> excluded.checksum
    RETURNING s.source`;
  const slugs = changed.map(({ source }) => source.slice("PUBLISHER ".length));
  if (slugs.length > 0)
    await db.$executeRaw`${marked} FROM publishers b WHERE b.id = f.publisher_id AND b.slug = ANY(${slugs}::text[])`;
  return slugs.length;
}

/** Rows of the open food table that plans use, which no list of foods names. They are held against the table the next time. */
export async function noteRows(db: Db, foods: readonly string[]): Promise<void> {
  const rows = foods.filter((slug) => openTableNumber(slug) !== null).toSorted();
  if (rows.length === 0) return;
  await db.$executeRaw`
    INSERT INTO fact_sources (source, checksum) SELECT 'FOOD ' || slug, '' FROM unnest(${rows}::text[]) AS slug
    ON CONFLICT (source) DO NOTHING`;
}

export async function notedFoods(db: Db): Promise<readonly string[]> {
  const rows = await db.$queryRaw<{ slug: string }[]>`
    SELECT substr(source, 6) AS slug FROM fact_sources WHERE source LIKE 'FOOD %' ORDER BY source`;
  return rows.map(({ slug }) => slug);
}
