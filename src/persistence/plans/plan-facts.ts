import type { Data } from "../data.js";
import type { Session, Db } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { isId } from "../sql/keys.js";
import { listedNutrients } from "../../domain/plan/listing/listed-facts.js";
import type { SearchedTexts } from "../../domain/plan/listing/searched-texts.js";
import { countListed, labelsListed, listedPage } from "./find-listed.js";
import { notedFoods, notePublishers, noteRows, noteSources } from "./fact-sources.js";
import type { FactsToStore } from "./plan-facts-data.js";
import { nearWords, noteWords, wordsOf, wordsWithoutPlans, lexemes } from "./searched-words.js";

export function planFactsData(session: Session): Data["planFacts"] {
  const { db } = session;
  return {
    save: (revisionId, facts, texts, at, due) =>
      session.transaction((inside) => save(inside, revisionId, facts, texts, at, due)),
    due: (limit) =>
      db.$queryRaw`
        SELECT revision_id AS "revisionId", due FROM plan_facts WHERE due > 0
        ORDER BY due, publisher_id, plan_id LIMIT ${limit}::int`,
    giveUp: async ({ revisionId, due }) => {
      await db.$executeRaw`
        UPDATE plan_facts f SET due = 0 FROM revisions r WHERE ${isOf(revisionId)} AND f.due = ${due}::int`;
    },
    noteSources: (sources) => session.transaction((inside) => noteSources(inside, sources)),
    notePublishers: () => session.transaction(notePublishers),
    notedFoods: () => notedFoods(db),
    page: (filter, order, request) => listedPage(db, filter, order, request),
    count: (filter, most) => countListed(db, filter, most),
    labels: (filter, most) => labelsListed(db, filter, most),
    withoutPlans: (words) => wordsWithoutPlans(db, words),
    nearWords: (word, publisher, limit) => nearWords(db, word, publisher, limit),
  };
}

/** Rows f of a revision r, as long as it is the one in force. */
const isOf = (revisionId: string): Prisma.Sql =>
  isId(revisionId)
    ? Prisma.sql`r.id = ${revisionId}::uuid AND f.publisher_id = r.publisher_id AND f.plan_id = r.plan_id AND f.revision_id = r.id`
    : Prisma.sql`FALSE`;

/** Figures in their order; null stays null. */
const figures = (values: readonly (number | null)[]): Prisma.Sql =>
  Prisma.sql`ARRAY(SELECT v::float8 FROM jsonb_array_elements_text(${JSON.stringify(values)}::jsonb) WITH ORDINALITY e(v, n) ORDER BY n)`;

async function save(
  db: Db,
  revisionId: string,
  facts: FactsToStore,
  texts: readonly SearchedTexts[],
  at: Date,
  due: number,
): Promise<boolean> {
  const words = wordsOf(texts);
  const ends = (end: "low" | "high") => figures(listedNutrients.map((code) => facts.nutrients[code]?.[end] ?? null));
  const costs = Object.fromEntries(
    facts.costs.map(({ market, currency, amount }) => [`${market} ${currency}`, amount]),
  );
  const found = await db.$queryRaw<{ publisherId: string }[]>`
    UPDATE plan_facts f SET worked_out_at = ${at.toISOString()}::timestamptz, due = CASE WHEN f.due = ${due}::int THEN 0 ELSE f.due END,
      labels = ${[...facts.labels]}::text[], session_minutes = ${facts.sessionMinutes}::float8,
      hands_on_minutes = ${facts.handsOnMinutes}::float8, days = ${facts.days}::int, servings = ${facts.servings}::int,
      bought = ${[...facts.bought]}::text[], nutrients_low = ${ends("low")}, nutrients_high = ${ends("high")},
      costs = ${JSON.stringify(costs)}::jsonb, costs_of = ${facts.costsOf}::date,
      allergens = ${JSON.stringify(facts.allergens)}::jsonb, known_by = ${facts.knownBy}, words = ${lexemes(texts, words)}
    FROM revisions r WHERE ${isOf(revisionId)} RETURNING f.publisher_id AS "publisherId"`;
  const [row] = found;
  if (row === undefined) return false;
  await noteWords(db, row.publisherId, words);
  await noteRows(db, facts.foods);
  return true;
}
