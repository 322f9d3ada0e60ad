import pg from "pg";
import { openServer } from "../src/persistence/database/open-server.js";
import { openCachedDeps } from "../src/app/setup/open-cache.js";
import type { Deps } from "../src/services/deps.js";
import { loadShippedRules } from "../src/services/rules/load-rule-set.js";
import { loadPlan } from "../src/services/plans/load-plan.js";
import { publishPlan } from "../src/services/plans/publish-plan.js";
import { searchPlans } from "../src/services/plans/listing/search-plans.js";
import type { WantedPlans } from "../src/services/plans/listing/wanted-plans.js";
import type { PlanOrder } from "../src/services/deps.js";
import { readKnown } from "../src/services/plans/listing/known-by.js";
import { rulesToday } from "../src/services/rules/find-rules.js";
import { rules } from "../tests/graphql/open-test-app.js";
import { diceFrom, type Dice } from "../tests/kit/arbitrary/dice.js";
import { startPostgres } from "../tests/kit/postgres/start-postgres.js";
import { smallBundle } from "../tests/persistence/small-bundle.js";
import { result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

const plans = 1_000_000;
const publishers = 100;
const foods = 1_000;
const rounds = 400;
const foodLists = 5_000;
const rowsAtOnce = 50_000;

/**
 * Plans by three facts, out of a million, and one plan by its publisher and slug out of the same: the first page, and one from the middle of the list as its
 * thousandth page is. Counts, facets and foods at hand are told beside.
 */
export const find: Benchmark = { name: "find", isLong: true, run };

const log = { info: () => undefined, warn: () => undefined, error: () => undefined };

/** Three facts, as readers ask: of half the plans, of one in a hundred, of hardly any. */
function threeFacts(of: Dice): WantedPlans {
  return {
    diets: [of.pick(["vegan", "vegetarian", "gluten-free"])],
    withoutAllergens: [of.pick(["milk", "peanut", "sesame", "celery"])],
    maxSessionMinutes: of.pick([60, 90, 120]),
    ...(of.chance(0.3) ? { region: of.pick(["DE", "US"]) } : {}),
  };
}

async function run(): Promise<readonly BenchmarkResult[]> {
  // Room for the pages that look-ups share, as docs/operations.md sizes a server.
  const server = await startPostgres(["-c", "shared_buffers=1GB", "-c", "max_wal_size=8GB"]);
  try {
    const { deps, thousandth, close } = await prepared(await server.createDatabase("find"));
    const dice = diceFrom(plans);
    const search = async (
      filter: WantedPlans,
      after: string | null = null,
      orderBy: PlanOrder | null = null,
    ): Promise<readonly [ms: number, hits: number]> => {
      const begin = performance.now();
      const found = await searchPlans(deps, { filter, orderBy, page: { first: 20, after } });
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      return [performance.now() - begin, found.value.page.items.length];
    };
    const times: Record<string, number[]> = {};
    const note = (name: string, ms: number): void => void (times[name] ??= []).push(ms);
    let hits = 0;
    for (let round = -20; round < rounds; round += 1) {
      const filter = threeFacts(dice);
      const [first, found] = await search(filter);
      const [later] = await search(filter, thousandth);
      const n = 1 + dice.roll(plans);
      const begin = performance.now();
      const one = await loadPlan(deps, { publisher: `p${n % publishers}`, slug: `plan-${n}`, revision: null });
      const equality = performance.now() - begin;
      if (one === null) throw new Error(`plan-${n} was not found`);
      if (round < 0) continue;
      hits += found;
      note("page 1", first);
      note("page 1,000", later);
      note("equality", equality);
    }
    for (let round = 0; round < 10; round += 1) {
      const filter = threeFacts(dice);
      note("by session", (await search(filter, null, "SHORTEST_SESSION"))[0]);
      note("at hand", (await search({ foodsAtHand: ["food-7", "food-300", "food-800"] }))[0]);
      note("search", (await search({ search: `plan ${dice.roll(plans)}` }))[0]);
      note("no plan is so", (await search({ minProteinGrams: 5_000 }))[0]);
      const found = await searchPlans(deps, { filter, page: { first: 1 } });
      if (!found.ok) throw new Error("a filter was refused");
      let begin = performance.now();
      await found.value.count();
      note("count", performance.now() - begin);
      begin = performance.now();
      await found.value.facets();
      note("facets", performance.now() - begin);
    }
    await close();
    const at = (name: string, share: number): number =>
      (times[name] ?? []).toSorted((a, b) => a - b)[Math.floor((times[name]?.length ?? 0) * share)] ?? Number.NaN;
    const shown = (name: string): string => `${name} ${at(name, 0.5).toFixed(1)}`;
    const more = ["by session", "at hand", "search", "no plan is so", "count", "facets"].map(shown).join(", ");
    const detail = (name: string): string =>
      `p50 ${at(name, 0.5).toFixed(2)} ms, p90 ${at(name, 0.9).toFixed(2)} ms; one plan by its slug ${at("equality", 0.5).toFixed(2)} ms`;
    return [
      result(
        "find",
        at("page 1", 0.5),
        { atMost: 10 },
        `${detail("page 1")}; ${(hits / rounds).toFixed(1)} hits a page; ms: ${more}`,
      ),
      result("find-page-1000", at("page 1,000", 0.5), { atMost: 10 }, detail("page 1,000")),
      result("find-to-equality", at("page 1", 0.5) / at("equality", 0.5), { atMost: 10 }, detail("page 1")),
    ];
  } finally {
    await server.stop();
  }
}

/** As many plans with facts as random ones have; the document and what is not asked for is that of one that was published. */
async function prepared(
  url: string,
): Promise<{ readonly deps: Deps; readonly thousandth: string; close(): Promise<void> }> {
  const database = await openServer(url);
  const { data } = database;
  const deps: Deps = { data, clock: () => new Date(), log, knownRules: new Map() };
  await loadShippedRules(deps, rules);
  await data.publishers.save({ slug: "model", name: "Model" });
  const model = smallBundle({ publisher: "model", slug: "model", title: "Model", foods: ["food-1", "food-2"] });
  const names = Array.from({ length: foods }, (_, at) => ({ ...model.foods[0]!, slug: `food-${at}` }));
  await data.foods.save(names);
  const published = await publishPlan(deps, { ...model, foods: names.slice(1, 3) });
  if (!published.ok) throw new Error(JSON.stringify(published.problems));
  const id = published.value.summary.id;
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  // What the triggers would do a million times is left out, and indexes are made at the end.
  await client.query("SET session_replication_role = replica");
  const { rows: indexes } = await client.query<{ name: string; made: string }>(
    `SELECT i.indexrelid::regclass::text AS name, pg_get_indexdef(i.indexrelid) AS made FROM pg_index i
     WHERE i.indrelid = 'plan_facts'::regclass AND NOT i.indisprimary`,
  );
  for (const { name } of indexes) await client.query(`DROP INDEX ${name}`);
  await client.query(
    `INSERT INTO publishers (slug, name) SELECT 'p' || n, 'Publisher ' || n FROM generate_series(0, ${publishers - 1}) n`,
  );
  await client.query("CREATE TEMPORARY TABLE food_lists (at int PRIMARY KEY, bought text[], known_by text)");
  const dice = diceFrom(foods);
  const known = await readKnown(
    deps,
    await rulesToday(deps),
    names.map(({ slug }) => slug),
  );
  for (let at = 0; at < foodLists; at += 1) {
    // Some foods are in many plans, most in few.
    const list = [
      ...new Set(Array.from({ length: 25 }, () => `food-${Math.floor((dice.roll(foods) * dice.roll(foods)) / foods)}`)),
    ].toSorted();
    await client.query("INSERT INTO food_lists VALUES ($1, $2, $3)", [at, list, known.checksum(list, null)]);
  }
  for (let from = 1; from <= plans; from += rowsAtOnce)
    await client.query(insertPlans(id, from, from + rowsAtOnce - 1));
  for (const { made } of indexes) await client.query(made);
  await client.query("VACUUM ANALYZE");
  await client.query("CHECKPOINT");
  const { rows } = await client.query<{ at: Date; id: string }>(
    `SELECT published_at AS at, revision_id AS id FROM plan_facts ORDER BY published_at DESC OFFSET ${20 * 999} LIMIT 1`,
  );
  await client.end();
  const [row] = rows;
  if (row === undefined) throw new Error("there is no thousandth page");
  const thousandth = Buffer.from(JSON.stringify([row.at.toISOString(), row.id])).toString("base64url");
  // Rules and foods are cached, as in the service; no answer is.
  const cached = await openCachedDeps({ deps, database }, 64);
  const close = async (): Promise<void> => {
    await cached.close();
    await database.close();
  };
  return { deps: cached.deps, thousandth, close };
}

/** Each plan with three dozen facts, of which some hold of most plans and some of few. */
const insertPlans = (model: string, from: number, to: number): string => `
  WITH made AS (
    INSERT INTO plans (publisher_id, slug, last_revision, newest_revision_id, newest_published_at)
      SELECT b.id, 'plan-' || n, 1, gen_random_uuid(), now() - (${plans} - n) * interval '90 s'
      FROM generate_series(${from}, ${to}) n JOIN publishers b ON b.slug = 'p' || n % ${publishers}
      RETURNING publisher_id, id, newest_revision_id, newest_published_at, substr(slug, 6)::int AS n
  ), revised AS (
    INSERT INTO revisions (publisher_id, plan_id, id, revision, title, serves, locale, published_at, checksum, format, document)
      SELECT p.publisher_id, p.id, p.newest_revision_id, 1, 'Plan ' || p.n, m.serves, m.locale, p.newest_published_at,
        m.checksum, m.format, m.document
      FROM made p, revisions m WHERE m.id = '${model}' RETURNING publisher_id, plan_id, id, published_at
  )
  INSERT INTO plan_facts (publisher_id, plan_id, revision_id, published_at, first_published_at, worked_out_at, due, labels, session_minutes,
      hands_on_minutes, days, servings, bought, nutrients_low, nutrients_high, costs, costs_of, allergens, known_by, foods, words)
    SELECT r.publisher_id, r.plan_id, r.id, r.published_at, r.published_at, m.worked_out_at, 0,
      ARRAY(
        SELECT 'free ' || code || ' *' FROM unnest(ARRAY['milk','egg','fish','crustacean','mollusc','peanut','soy','sesame','celery','mustard','lupin'])
          WITH ORDINALITY c(code, at) WHERE random() < at / 12.0 AND p.n > 0
        UNION ALL SELECT 'diet ' || d.code || ' *' FROM (VALUES ('vegan', 0.02), ('vegetarian', 0.4), ('gluten-free', 0.15), ('no-fish', 0.8)) d(code, share)
          WHERE random() < d.share AND p.n > 0
        UNION ALL SELECT 'language ' || (ARRAY['en','de','fr'])[1 + floor(random() * 2.99)::int] || ' *'
        UNION ALL SELECT 'tag t' || floor(random() * 500)::int || ' *' FROM generate_series(1, 3) WHERE p.n > 0
      ),
      20 + floor(random() * 200), 10 + floor(random() * 120), 4, 4, f.bought,
      ARRAY(SELECT random() * 50 FROM generate_series(1, 14) WHERE p.n > 0), ARRAY(SELECT 50 + random() * 50 FROM generate_series(1, 14) WHERE p.n > 0),
      jsonb_build_object('OWN EUR', round((1 + random() * 9)::numeric, 2)), m.costs_of, m.allergens, f.known_by, f.bought,
      array_to_tsvector(ARRAY['plan', p.n::text] || f.bought)
    FROM revised r JOIN made p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id
    CROSS JOIN (SELECT * FROM plan_facts WHERE revision_id = '${model}') m
    JOIN food_lists f ON f.at = p.n % ${foodLists}`;
