import type { PlanFilter } from "../data.js";
import { foldWords } from "../sql/fold-words.js";
import { Prisma } from "../generated/client.js";
import type { Db } from "../database/session.js";

/** A thing that finds revisions: a food, a component, or a word of the title. */
interface RevisionLink {
  readonly table: Prisma.Sql;
  readonly column: Prisma.Sql;
  readonly value: string;
}

/** Everything a plan has to hold to be on the list. A search without a word in it narrows nothing. */
export const linksOf = ({
  search,
  usesFood,
  usesComponent,
}: Omit<PlanFilter, "publisher">): readonly RevisionLink[] => [
  ...(usesFood === null ? [] : [{ table: Prisma.sql`revision_foods`, column: Prisma.sql`food`, value: usesFood }]),
  ...(usesComponent === null
    ? []
    : [{ table: Prisma.sql`revision_components`, column: Prisma.sql`component`, value: usesComponent }]),
  ...foldWords(search ?? "").map((value) => ({
    table: Prisma.sql`revision_words`,
    column: Prisma.sql`word`,
    value,
  })),
];

/** Whether the newest revision of the plan p holds it, asked row by row: OFFSET keeps it from becoming a join. */
export const isHeld = ({ table, column, value }: RevisionLink): Prisma.Sql =>
  Prisma.sql`EXISTS (SELECT FROM ${table} h WHERE h.publisher_id = p.publisher_id
    AND h.revision_id = p.newest_revision_id AND h.${column} = ${value} OFFSET 0)`;

/** Beyond this many, a thing is common, and how common makes no difference. */
const countedUpTo = 5_000;

/** What the fewest revisions hold; null if there is nothing to hold. Counts only where there is a choice. */
export async function rarestLink(db: Db, links: readonly RevisionLink[]): Promise<RevisionLink | null> {
  if (links.length < 2) return links[0] ?? null;
  const counts = links.map(
    ({ table, column, value }, place) =>
      Prisma.sql`SELECT ${place}::int AS place, count(*)::int AS held
        FROM (SELECT FROM ${table} WHERE ${column} = ${value} LIMIT ${countedUpTo}) first`,
  );
  const [rarest] = await db.$queryRaw<{ place: number }[]>`
    SELECT place FROM (${Prisma.join(counts, " UNION ALL ")}) counted ORDER BY held, place LIMIT 1`;
  return links[rarest?.place ?? 0] ?? null;
}
