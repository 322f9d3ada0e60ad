import pg from "pg";
import { openServer } from "../src/persistence/database/open-server.js";
import type { Deps } from "../src/services/deps.js";
import { loadPlan } from "../src/services/plans/load-plan.js";
import { diceFrom } from "../tests/kit/arbitrary/dice.js";
import { startPostgres } from "../tests/kit/postgres/start-postgres.js";
import { smallBundle } from "../tests/persistence/small-bundle.js";
import { result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

const few = 1_000;
const many = 1_000_000;
const publishers = 100;
const rounds = 4_000;

/**
 * One plan by its publisher and slug, with its document, as any first request for it reads it: from a database with a thousand plans
 * and from one with a million, by turns, each time another plan.
 */
export const slugLookup: Benchmark = { name: "slug-lookup", isLong: true, run };

async function run(): Promise<readonly BenchmarkResult[]> {
  // Room for the pages that look-ups share, as docs/operations.md sizes a server.
  const server = await startPostgres(["-c", "shared_buffers=1GB", "-c", "max_wal_size=8GB"]);
  try {
    const small = await prepared(await server.createDatabase("few"), few);
    const large = await prepared(await server.createDatabase("many"), many);
    const dice = diceFrom(many);
    const times: Record<"small" | "large", number[]> = { small: [], large: [] };
    const ask = async (from: typeof small): Promise<number> => {
      const n = 1 + dice.roll(from.plans);
      const begin = performance.now();
      const found = await loadPlan(from.deps, { publisher: publisherOf(n), slug: `plan-${n}`, revision: null });
      const took = performance.now() - begin;
      if (found?.revision !== 2 || found.title !== `Plan ${n}`) throw new Error(`plan-${n} was not found as it is`);
      return took;
    };
    for (let round = -200; round < rounds; round += 1) {
      const [first, second] = [await ask(small), await ask(large)];
      if (round < 0) continue;
      times.small.push(first);
      times.large.push(second);
    }
    await Promise.all([small.close(), large.close()]);
    const at = (list: readonly number[], share: number): number =>
      list.toSorted((a, b) => a - b)[Math.floor(list.length * share)] ?? Number.NaN;
    const [p50Few, p50Many] = [at(times.small, 0.5), at(times.large, 0.5)];
    const [p99Few, p99Many] = [at(times.small, 0.99), at(times.large, 0.99)];
    const shown = (ms: number): string => ms.toFixed(2);
    return [
      result(
        "slug-lookup",
        p50Many / p50Few,
        { atMost: 1.2 },
        `p50 ${shown(p50Many)} ms with ${many} plans, ${shown(p50Few)} ms with ${few}; p99 ${shown(p99Many)} and ${shown(p99Few)} ms`,
      ),
    ];
  } finally {
    await server.stop();
  }
}

const publisherOf = (n: number): string => `p${n % publishers}`;

interface Prepared {
  readonly plans: number;
  readonly deps: Deps;
  close(): Promise<void>;
}

/** So many plans in two revisions each, every row as publishing leaves it; the frozen document is that of one that was published. */
async function prepared(url: string, plans: number): Promise<Prepared> {
  const { data, close } = await openServer(url);
  await data.publishers.save({ slug: "model", name: "Model" });
  const model = smallBundle({ publisher: "model", slug: "model", foods: ["carrot", "lemon", "pearl-barley"] });
  const { summary } = await data.revisions.publish(model, new Date("2026-01-01T00:00:00Z"));
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  // What the triggers would do a million times is written below in one go.
  await client.query("SET session_replication_role = replica");
  await client.query(`
    INSERT INTO publishers (slug, name) SELECT 'p' || n, 'Publisher ' || n FROM generate_series(0, ${publishers - 1}) n;
    INSERT INTO plans (publisher_id, slug, last_revision)
      SELECT b.id, 'plan-' || n, 2 FROM generate_series(1, ${plans}) n JOIN publishers b ON b.slug = 'p' || n % ${publishers};
    INSERT INTO revisions (publisher_id, plan_id, revision, title, serves, locale, published_at, checksum, format, document)
      SELECT p.publisher_id, p.id, n, 'Plan ' || substr(p.slug, 6), m.serves, m.locale,
        m.published_at + n * interval '1 day', m.checksum, m.format, m.document
      FROM plans p, generate_series(1, 2) n, revisions m WHERE m.id = '${summary.id}' AND p.slug <> 'model';
    UPDATE plans p SET newest_revision_id = r.id, newest_published_at = r.published_at FROM revisions r
      WHERE r.publisher_id = p.publisher_id AND r.plan_id = p.id AND r.revision = 2;
    INSERT INTO revision_foods (publisher_id, revision_id, food, published_at)
      SELECT r.publisher_id, r.id, f.food, r.published_at FROM revisions r, revision_foods f
      WHERE f.revision_id = '${summary.id}' AND r.id <> f.revision_id;
    INSERT INTO revision_words (publisher_id, revision_id, word, published_at)
      SELECT publisher_id, id, unnest(string_to_array(lower(title), ' ')), published_at FROM revisions WHERE revision = 2;`);
  await client.query("VACUUM ANALYZE");
  await client.query("CHECKPOINT");
  await client.end();
  const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
  return { plans, deps: { data, clock: () => new Date(), log, knownRules: new Map() }, close };
}
