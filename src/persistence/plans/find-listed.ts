import { z } from "zod";
import type { ListedAllergen } from "../../domain/plan/listing/listed-facts.js";
import { listedNutrients, type ListedAmount } from "../../domain/plan/listing/listed-facts.js";
import type { Page, PageRequest } from "../sql/page.js";
import type { RevisionSummary } from "../data.js";
import type { Db } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";
import { isId } from "../sql/keys.js";
import { instantKey, readPage, type OrderKey, type PagedList } from "../sql/read-page.js";
import { isStorable } from "../sql/storable-text.js";
import type { FactFilter, LabelCount, ListedPlan, PlanOrder } from "./plan-facts-data.js";
import { joinPlan, summaryColumns, summaryOf } from "./revision-summary.js";
import { hasWords } from "./searched-words.js";

type Filter = FactFilter;
type Listed = ListedPlan<RevisionSummary>;

interface FactRow {
  readonly workedOutAt: Date | null;
  readonly firstPublishedAt: Date;
  readonly labels: readonly string[];
  readonly sessionMinutes: number | null;
  readonly handsOnMinutes: number | null;
  readonly days: number;
  readonly servings: number;
  readonly bought: readonly string[];
  readonly nutrientsLow: readonly (number | null)[];
  readonly nutrientsHigh: readonly (number | null)[];
  readonly costs: Readonly<Record<string, string | null>>;
  readonly costsOf: Date | null;
  readonly allergens: readonly ListedAllergen[];
  readonly knownBy: string | null;
  readonly foods: readonly string[];
  readonly share: number | null;
}

/** Figures with nulls as JSON: arrays of the driver hold none. */
const factColumns = Prisma.sql`f.worked_out_at AS "workedOutAt", f.first_published_at AS "firstPublishedAt", f.labels,
  f.session_minutes AS "sessionMinutes", f.hands_on_minutes AS "handsOnMinutes", f.days, f.servings, f.bought,
  to_jsonb(f.nutrients_low) AS "nutrientsLow", to_jsonb(f.nutrients_high) AS "nutrientsHigh", f.costs,
  f.costs_of AS "costsOf", f.allergens, f.known_by AS "knownBy", f.foods`;

function listedOf(row: RevisionSummary & FactRow, atHand: readonly string[] | null): Listed {
  const { workedOutAt, knownBy, costsOf, costs, nutrientsLow, nutrientsHigh, ...facts } = row;
  const summary = summaryOf(row);
  const held = atHand && new Set(atHand);
  const foodsAtHand = held && row.bought.filter((food) => held.has(food)).length;
  if (workedOutAt === null || knownBy === null || costsOf === null) return { summary, facts: null, foodsAtHand };
  const nutrients = listedNutrients.map((code, at): readonly [string, ListedAmount] => [
    code,
    { low: nutrientsLow[at] ?? null, high: nutrientsHigh[at] ?? null },
  ]);
  const { labels, allergens, sessionMinutes, handsOnMinutes, days, servings, bought, foods } = facts;
  return {
    summary,
    foodsAtHand,
    facts: {
      ...{ workedOutAt, knownBy, labels, allergens, sessionMinutes, handsOnMinutes, days, servings, bought, foods },
      nutrients: Object.fromEntries(nutrients.filter(([, { low, high }]) => low !== null || high !== null)),
      costs: Object.entries(costs).map(([key, amount]) => {
        const at = key.lastIndexOf(" ");
        return { market: key.slice(0, at), currency: key.slice(at + 1), amount };
      }),
      costsOf: costsOf.toISOString().slice(0, 10),
    },
  };
}

const cursorOfTime = z.tuple([instantKey, z.string().refine(isId)]);
const figureKey = z.string().regex(/^\d{1,12}(\.\d{1,20})?$/);

type Order = Pick<PagedList<RevisionSummary & FactRow, readonly string[]>, "order" | "keys" | "keysOf" | "from">;

const byTime = (column: Prisma.Sql, timeOf: (row: RevisionSummary & FactRow) => Date): Order => ({
  order: [
    { column, type: Prisma.sql`timestamptz`, descending: true },
    { column: Prisma.sql`f.revision_id`, type: Prisma.sql`uuid`, descending: false },
  ],
  keys: cursorOfTime,
  keysOf: (row) => [timeOf(row).toISOString(), row.id],
  from: Prisma.sql`plan_facts f`,
});

const byMinutes = (column: Prisma.Sql, name: "sessionMinutes" | "handsOnMinutes"): Order => ({
  order: [
    { column, type: Prisma.sql`float8`, descending: false },
    { column: Prisma.sql`f.revision_id`, type: Prisma.sql`uuid`, descending: false },
  ],
  keys: z.tuple([figureKey, z.string().refine(isId)]),
  keysOf: (row) => [String(row[name]), row.id],
  from: Prisma.sql`plan_facts f`,
});

const orders: Readonly<Record<PlanOrder, Order>> = {
  NEWEST: byTime(Prisma.sql`f.published_at`, ({ publishedAt }) => publishedAt),
  FIRST_PUBLISHED: byTime(Prisma.sql`f.first_published_at`, ({ firstPublishedAt }) => firstPublishedAt),
  SHORTEST_SESSION: byMinutes(Prisma.sql`f.session_minutes`, "sessionMinutes"),
  LEAST_HANDS_ON: byMinutes(Prisma.sql`f.hands_on_minutes`, "handsOnMinutes"),
};

const known: Readonly<Record<PlanOrder, Prisma.Sql | null>> = {
  NEWEST: null,
  FIRST_PUBLISHED: null,
  SHORTEST_SESSION: Prisma.sql`f.session_minutes IS NOT NULL`,
  LEAST_HANDS_ON: Prisma.sql`f.hands_on_minutes IS NOT NULL`,
};

/** Parts of a million: whole numbers are the same in every cursor. */
const wholeShare = 1_000_000;

/** The newest candidates that have any of the foods, by the share of what is to be bought that is at hand. */
function byShare({ foods, candidates }: NonNullable<Filter["atHand"]>, where: Prisma.Sql): Order {
  const order: readonly OrderKey[] = [
    { column: Prisma.sql`f.share`, type: Prisma.sql`int`, descending: true },
    { column: Prisma.sql`f.published_at`, type: Prisma.sql`timestamptz`, descending: true },
    { column: Prisma.sql`f.revision_id`, type: Prisma.sql`uuid`, descending: false },
  ];
  const list = Prisma.sql`${[...foods]}::text[]`;
  return {
    order,
    keys: z.tuple([z.string().regex(/^\d{1,7}$/), instantKey, z.string().refine(isId)]),
    keysOf: (row) => [String(row.share), row.publishedAt.toISOString(), row.id],
    from: Prisma.sql`(
      SELECT c.published_at, c.revision_id,
        (SELECT count(*) FROM unnest(c.bought) AS one(food) WHERE one.food = ANY(${list}))::int * ${wholeShare}::bigint
          / greatest(cardinality(c.bought), 1) AS share
      FROM (
        SELECT f.published_at, f.revision_id, f.bought FROM plan_facts f
        WHERE f.bought && ${list} AND ${where}
        ORDER BY f.published_at DESC, f.revision_id LIMIT ${candidates}::int
      ) c
    ) f`,
  };
}

/** Words that no more plans have are looked up first. */
const rareWords = 10_000;

/** How many plans have all the words; counted as far as that. */
async function countWords(db: Db, words: Filter["words"]): Promise<number> {
  const [row] = await db.$queryRaw<{ count: number }[]>`
    SELECT count(*)::int AS count
    FROM (SELECT FROM plan_facts f WHERE ${hasWords(words)} LIMIT ${rareWords + 1}::int) found`;
  return row?.count ?? 0;
}

/** Left to itself the planner takes rare words for common ones, and goes through all plans in their order: OFFSET keeps it from that. */
const withWords = (words: Filter["words"]): Prisma.Sql =>
  Prisma.sql`(SELECT * FROM plan_facts f WHERE ${hasWords(words)} OFFSET 0) f`;

export async function listedPage(
  db: Db,
  filter: Filter,
  order: PlanOrder,
  request: PageRequest,
): Promise<Page<Listed>> {
  const { atHand, words } = filter;
  const isRare = atHand === null && words.length > 0 && (await countWords(db, words)) <= rareWords;
  const narrowed = conditions(isRare ? { ...filter, words: [] } : filter);
  const ordered = atHand === null ? orders[order] : byShare(atHand, narrowed);
  const list = isRare ? { ...ordered, from: withWords(words) } : ordered;
  const idKey = Prisma.raw(`k.k${list.order.length - 1}`);
  const share = atHand === null ? Prisma.sql`NULL::int AS share` : Prisma.sql`k.k0::int AS share`;
  const page = await readPage<RevisionSummary & FactRow, readonly string[]>(
    db,
    {
      ...list,
      where: atHand === null ? allOf([narrowed, known[order]]) : Prisma.sql`TRUE`,
      columns: Prisma.sql`${summaryColumns}, ${factColumns}, ${share}`,
      join: Prisma.sql`JOIN revisions r ON r.id = ${idKey} ${joinPlan}
        JOIN plan_facts f ON f.publisher_id = r.publisher_id AND f.plan_id = r.plan_id`,
    },
    request,
  );
  return {
    ...page,
    items: page.items.map(({ cursor, item }) => ({ cursor, item: listedOf(item, atHand && atHand.foods) })),
  };
}

export async function countListed(db: Db, filter: Filter, most: number): Promise<number> {
  const [row] = await db.$queryRaw<{ count: number }[]>`
    SELECT count(*)::int AS count FROM (SELECT FROM plan_facts f WHERE ${matches(filter)} LIMIT ${most + 1}::int) found`;
  return row?.count ?? 0;
}

export async function labelsListed(db: Db, filter: Filter, most: number): Promise<readonly LabelCount[]> {
  return db.$queryRaw<LabelCount[]>`
    SELECT label, count(*)::int AS count
    FROM (SELECT f.labels FROM plan_facts f WHERE ${matches(filter)} LIMIT ${most}::int) found, unnest(found.labels) AS label
    GROUP BY label ORDER BY count(*) DESC, label COLLATE "C"`;
}

const matches = (filter: Filter): Prisma.Sql =>
  filter.atHand === null
    ? conditions(filter)
    : allOf([conditions(filter), Prisma.sql`f.bought && ${[...filter.atHand.foods]}::text[]`]);

const allOf = (all: readonly (Prisma.Sql | null)[]): Prisma.Sql =>
  Prisma.join(all.filter((each) => each !== null).concat(Prisma.sql`TRUE`), " AND ");

/** What rows f of `plan_facts` have to be. */
function conditions(filter: Filter): Prisma.Sql {
  const { publisher, usesFood, usesComponent, maxCost, publishedAfter, words } = filter;
  const uses = [...filter.uses, ...(usesFood === null ? [] : [[usesFood]])];
  const texts = [publisher, usesFood, usesComponent, ...uses.flat(), ...(maxCost?.markets ?? [])];
  if (texts.some((text) => text !== null && !isStorable(text))) return Prisma.sql`FALSE`;
  return allOf([
    publisher === null ? null : Prisma.sql`f.publisher_id = ${idOfPublisher(publisher)}`,
    ...oneOfEach(Prisma.sql`f.labels`, filter.labels),
    // A plan whose facts are not worked out yet has no labels and nothing to buy.
    filter.without.length === 0 && filter.maxBought === null ? null : Prisma.sql`f.worked_out_at IS NOT NULL`,
    filter.without.length === 0 ? null : Prisma.sql`NOT f.labels && ${[...filter.without]}::text[]`,
    atMost(Prisma.sql`cardinality(f.bought)`, filter.maxBought),
    atMost(Prisma.sql`f.session_minutes`, filter.maxSessionMinutes),
    atMost(Prisma.sql`f.hands_on_minutes`, filter.maxHandsOnMinutes),
    ...filter.nutrients.flatMap(({ place, min, max }) => [
      min === null ? null : Prisma.sql`f.nutrients_low[${placeOf(place)}] >= ${min}::float8`,
      max === null ? null : Prisma.sql`f.nutrients_high[${placeOf(place)}] <= ${max}::float8`,
    ]),
    maxCost === null ? null : costs(maxCost),
    ...oneOfEach(Prisma.sql`f.foods`, uses),
    usesComponent === null
      ? null
      : Prisma.sql`EXISTS (SELECT FROM revision_components h
          WHERE h.publisher_id = f.publisher_id AND h.revision_id = f.revision_id AND h.component = ${usesComponent})`,
    publishedAfter === null ? null : Prisma.sql`f.published_at > ${publishedAfter.toISOString()}::timestamptz`,
    words.length === 0 ? null : hasWords(words),
  ]);
}

/** Of each group one; all that stand alone are one condition. */
function oneOfEach(column: Prisma.Sql, groups: readonly (readonly string[])[]): readonly (Prisma.Sql | null)[] {
  const alone = groups.flatMap((group) => (group.length === 1 ? group : []));
  const several = groups.filter((group) => group.length > 1);
  return [
    alone.length === 0 ? null : Prisma.sql`${column} @> ${alone}::text[]`,
    ...several.map((group) => Prisma.sql`${column} && ${[...group]}::text[]`),
  ];
}

/** Written out, so that an index of this place is found. */
const placeOf = (place: number): Prisma.Sql => Prisma.raw(String(Math.trunc(place)));

const atMost = (column: Prisma.Sql, most: number | null): Prisma.Sql | null =>
  most === null ? null : Prisma.sql`${column} <= ${most}::float8`;

/** The cost in the first of the markets that the plan is priced in, were it that the price of some food there is not known. */
function costs({ markets, amount }: NonNullable<Filter["maxCost"]>): Prisma.Sql {
  const cases = markets.map(
    (market) => Prisma.sql`WHEN jsonb_exists(f.costs, ${market}::text) THEN (f.costs ->> ${market}::text)::numeric`,
  );
  return Prisma.sql`CASE ${Prisma.join(cases, " ")} END <= ${amount}::numeric`;
}
