import { z } from "zod";
import type { Page, PageRequest } from "../sql/page.js";
import type { PlanFilter, RevisionSummary } from "../data.js";
import { Prisma } from "../generated/client.js";
import { isId } from "../sql/keys.js";
import { instantKey, readPage, type OrderKey, type PagedList } from "../sql/read-page.js";
import { isHeld, linksOf, rarestLink } from "./revision-links.js";
import { joinPlan, summaryColumns, summaryOf } from "./revision-summary.js";
import type { Db } from "../database/session.js";
import { isStorable } from "../sql/storable-text.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";

const keys = z.tuple([instantKey, z.string().refine(isId)]);

const plans = {
  order: inOrderOf(Prisma.sql`p.newest_published_at`, Prisma.sql`p.newest_revision_id`),
  from: Prisma.sql`plans p`,
};

/** Newest revision of each plan. One statement, or two where several things are asked for at once. */
export async function revisionPage(db: Db, filter: PlanFilter, request: PageRequest): Promise<Page<RevisionSummary>> {
  const page = await readPage<RevisionSummary, readonly [string, string]>(
    db,
    {
      ...(await orderedTables(db, filter)),
      keys,
      columns: summaryColumns,
      join: Prisma.sql`JOIN revisions r ON r.id = k.k1 ${joinPlan}`,
      keysOf: ({ publishedAt, id }) => [publishedAt.toISOString(), id],
    },
    request,
  );
  return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: summaryOf(item) })) };
}

/**
 * The table whose index holds the list in its order, and the rest as conditions on each of its rows: of one publisher, the
 * plans; else what the fewest revisions hold. Left to itself the planner misjudges how many rows hold two things, and sorts
 * them all. Revisions that are no longer the newest are passed over.
 */
async function orderedTables(
  db: Db,
  { publisher, ...filter }: PlanFilter,
): Promise<Pick<PagedList<never, never>, "order" | "from" | "where">> {
  const texts = [publisher, ...Object.values(filter)];
  if (texts.some((text) => text !== null && !isStorable(text))) return { ...plans, where: Prisma.sql`FALSE` };
  const links = linksOf(filter);
  if (publisher !== null) {
    const ofPublisher = Prisma.sql`p.publisher_id = ${idOfPublisher(publisher)}`;
    return { ...plans, where: allOf([ofPublisher, ...links.map(isHeld)]) };
  }
  const rarest = await rarestLink(db, links);
  if (rarest === null) return { ...plans, where: allOf([]) };
  return {
    order: inOrderOf(Prisma.sql`l.published_at`, Prisma.sql`l.revision_id`),
    from: Prisma.sql`${rarest.table} l JOIN plans p ON p.newest_revision_id = l.revision_id`,
    where: allOf([
      Prisma.sql`l.${rarest.column} = ${rarest.value}`,
      ...links.filter((link) => link !== rarest).map(isHeld),
    ]),
  };
}

const allOf = (conditions: readonly Prisma.Sql[]): Prisma.Sql =>
  Prisma.join([Prisma.sql`p.newest_revision_id IS NOT NULL`, ...conditions], " AND ");

function inOrderOf(publishedAt: Prisma.Sql, id: Prisma.Sql): readonly OrderKey[] {
  return [
    { column: publishedAt, type: Prisma.sql`timestamptz`, descending: true },
    { column: id, type: Prisma.sql`uuid`, descending: false },
  ];
}
