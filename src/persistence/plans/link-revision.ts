import type { PlanBundle } from "../../domain/model/plan.js";
import { Prisma } from "../generated/client.js";
import type { Db } from "../database/session.js";
import { foldWords } from "../sql/fold-words.js";

interface Links {
  readonly publisherId: string;
  readonly revisionId: string;
  readonly publishedAt: Date;
}

/** Inside a transaction: stores what a revision is found by: its foods and those they build on, its components, the words of its title. */
export async function linkRevision(db: Db, { plan, components, foods }: PlanBundle, links: Links): Promise<void> {
  const bases = foods.flatMap((food) => (food.extends === undefined ? [] : [{ slug: food.extends.food }]));
  await insertLinks(db, Prisma.sql`revision_foods (food,`, slugs([...foods, ...bases]), links);
  await insertLinks(db, Prisma.sql`revision_components (component,`, slugs(components), links);
  await insertLinks(db, Prisma.sql`revision_words (word,`, foldWords(plan.title), links);
}

/** What finds the revision, whatever it is called there. `into`: a table and the column of the values. */
async function insertLinks(db: Db, into: Prisma.Sql, values: string[], links: Links): Promise<void> {
  await db.$executeRaw`
    INSERT INTO ${into} publisher_id, revision_id, published_at)
    SELECT unnest(${values}::text[]), ${links.publisherId}::uuid, ${links.revisionId}::uuid,
      ${links.publishedAt.toISOString()}::timestamptz`;
}

const slugs = (things: readonly { readonly slug: string }[]): string[] => [...new Set(things.map(({ slug }) => slug))];
