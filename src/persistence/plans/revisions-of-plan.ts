import { z } from "zod";
import type { OwnedSlug, RevisionSummary } from "../data.js";
import type { Page, PageRequest } from "../sql/page.js";
import { Prisma } from "../generated/client.js";
import { readPage } from "../sql/read-page.js";
import { joinPlan, summaryColumns, summaryOf } from "./revision-summary.js";
import type { Db } from "../database/session.js";
import { isStorable } from "../sql/storable-text.js";

const keys = z.tuple([z.string().regex(/^[1-9]\d{0,8}$/)]);

/** Every revision of one plan, withdrawn ones too, the newest number first. One statement. */
export async function revisionsOfPlan(
  db: Db,
  { publisher, slug }: OwnedSlug,
  request: PageRequest,
): Promise<Page<RevisionSummary>> {
  // What no database could hold is nobody's, and so is a plan without a name.
  const [owner, named] = isStorable(publisher) && isStorable(slug) ? [publisher, slug] : ["", ""];
  const plan = Prisma.sql`(SELECT o.publisher_id, o.id FROM plans o JOIN publishers n ON n.id = o.publisher_id
    WHERE n.slug = ${owner} AND o.slug = ${named})`;
  const page = await readPage<RevisionSummary, readonly [string]>(
    db,
    {
      order: [{ column: Prisma.sql`v.revision`, type: Prisma.sql`int`, descending: true }],
      keys,
      from: Prisma.sql`revisions v`,
      where: Prisma.sql`(v.publisher_id, v.plan_id) = ${plan}`,
      columns: summaryColumns,
      join: Prisma.sql`JOIN revisions r ON (r.publisher_id, r.plan_id) = ${plan} AND r.revision = k.k0 ${joinPlan}`,
      keysOf: ({ revision }) => [String(revision)],
    },
    request,
  );
  return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: summaryOf(item) })) };
}
