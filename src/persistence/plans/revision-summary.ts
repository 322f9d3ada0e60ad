import type { RevisionSummary } from "../data.js";
import { Prisma } from "../generated/client.js";

/** The columns of a summary, of the tables named r (revisions), p (plans) and b (publishers). */
export const summaryColumns = Prisma.sql`r.id, b.slug AS publisher, p.slug, r.title, r.revision, r.serves, r.locale,
  r.published_at AS "publishedAt", r.withdrawn_at AS "withdrawnAt", r.withdrawn_because AS "withdrawnBecause",
  r.change_note AS "changeNote", r.checksum, r.rule_set_id AS "ruleSet"`;

/** Plans and publishers, joined to a revision r. */
export const joinPlan = Prisma.sql`
  JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id
  JOIN publishers b ON b.id = r.publisher_id`;

/** A row of those columns is a summary as it is; other columns are left out. */
export const summaryOf = (row: RevisionSummary): RevisionSummary => ({
  id: row.id,
  publisher: row.publisher,
  slug: row.slug,
  title: row.title,
  revision: row.revision,
  serves: row.serves,
  locale: row.locale,
  publishedAt: row.publishedAt,
  withdrawnAt: row.withdrawnAt,
  withdrawnBecause: row.withdrawnBecause,
  changeNote: row.changeNote,
  checksum: row.checksum,
  ruleSet: row.ruleSet,
});
