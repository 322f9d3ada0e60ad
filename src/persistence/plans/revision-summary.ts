import type { PlanBundle } from "../../domain/model/plan.js";
import { titlesOfPlan, type TranslatedTitle } from "../../domain/plan/translate/in-language.js";
import type { RevisionSummary, TitleAsked } from "../data.js";
import type { Db } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { isId } from "../sql/keys.js";

/** The columns of a summary, of the tables named r (revisions), p (plans) and b (publishers). */
export const summaryColumns = Prisma.sql`r.id, b.slug AS publisher, p.slug, r.title, r.revision, r.serves, r.locale,
  r.published_at AS "publishedAt", r.withdrawn_at AS "withdrawnAt", r.withdrawn_because AS "withdrawnBecause",
  r.change_note AS "changeNote", r.checksum, r.rule_set_id AS "ruleSet",
  r.translated_into AS "translatedInto"`;

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
  translatedInto: row.translatedInto,
});

/** The columns of a revision that say what it is called in other languages. */
export const titleColumns = Prisma.sql`translated_into, titles`;

/** Their values, of its document. */
export function titleValues(document: PlanBundle): Prisma.Sql {
  const titles = titlesOfPlan(document);
  const json = titles.size === 0 ? null : JSON.stringify(Object.fromEntries(titles));
  return Prisma.sql`${[...titles.keys()]}::text[], ${json}::jsonb`;
}

/** One statement: for every revision and language what it is called there; null where there is none. */
export async function titlesIn(db: Db, asked: readonly TitleAsked[]): Promise<readonly (TranslatedTitle | null)[]> {
  const known = asked.map((each, place) => ({ ...each, place })).filter(({ id }) => isId(id));
  if (known.length === 0) return asked.map(() => null);
  const rows = await db.$queryRaw<{ readonly place: number; readonly title: TranslatedTitle | null }[]>`
    SELECT k.place, r.titles -> k.language AS title
    FROM jsonb_to_recordset(${JSON.stringify(known)}::jsonb) AS k(place int, id uuid, language text)
    JOIN revisions r ON r.id = k.id`;
  const found = new Map(rows.map(({ place, title }) => [place, title]));
  return asked.map((_, place) => found.get(place) ?? null);
}
