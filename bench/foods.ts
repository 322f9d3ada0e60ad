import pg from "pg";
import type { Food } from "../src/domain/model/food.js";
import { compileFoodNames } from "../src/domain/quantity/food-name.js";
import { readBaseFolder } from "../src/app/setup/read-base-folder.js";
import { openCachedDeps } from "../src/app/setup/open-cache.js";
import { openServer } from "../src/persistence/database/open-server.js";
import { anyone } from "../src/services/access/actor.js";
import { listFoods } from "../src/services/foods/list-foods.js";
import { silentLog } from "../tests/services/imports/open-feed.js";
import { startPostgres } from "../tests/kit/postgres/start-postgres.js";
import { median, result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

const foods = 10_000;
const rounds = 400;

/** Words as people search: called so, a plural, another order, another language, a beginning, a slip of the finger. */
const searches = [
  "carrot",
  "tomatoes",
  "beans, green",
  "Möhren",
  "fresh organic eggplants",
  "chick",
  "cashwes",
  "kind 7",
];

/**
 * A search among ten thousand foods, most of them base foods under other names, against an indexed look-up of one row by equality on the same
 * server, by turns.
 */
export const foodsBenchmark: Benchmark = { name: "foods", isLong: true, run };

async function run(): Promise<readonly BenchmarkResult[]> {
  const base = (await readBaseFolder("seeds")).foods;
  const many = Array.from({ length: foods }, (_, at): Food => {
    const food = base[at % base.length]!;
    const kind = Math.floor(at / base.length);
    if (kind === 0) return food;
    const called = (name: string): string => `${name} kind ${String(kind)}`;
    return {
      ...food,
      slug: `${food.slug}-${String(kind)}`,
      names: food.names.map((name) => ({
        ...name,
        ...{ one: called(name.one), many: called(name.many), also: name.also.map(called) },
      })),
    };
  });
  const server = await startPostgres(["-c", "shared_buffers=256MB"]);
  try {
    const url = await server.createDatabase("foods");
    const database = await openServer(url);
    const { data } = database;
    for (let at = 0; at < foods; at += 500) await data.foods.save(many.slice(at, at + 500));
    const deps = { data, clock: () => new Date(), log: silentLog, knownRules: new Map() };
    const opened = await openCachedDeps({ deps, database } as Parameters<typeof openCachedDeps>[0], 64);
    const client = new pg.Client({ connectionString: url });
    // Where a search fails, the server goes before its client.
    client.on("error", () => undefined);
    await client.connect();
    const search = async (text: string): Promise<number> => {
      const begin = performance.now();
      const filter = { search: text, aisle: null };
      const found = await listFoods(opened.deps, anyone, { filter, page: { first: 10 } });
      const took = performance.now() - begin;
      if (!found.ok || found.value.items.length === 0) throw new Error(`nothing was found for ${text}`);
      return took;
    };
    const lookUp = async (slug: string): Promise<number> => {
      const begin = performance.now();
      const { rows } = await client.query("SELECT * FROM foods WHERE slug = $1", [slug]);
      const took = performance.now() - begin;
      if (rows.length !== 1) throw new Error(`${slug} was not found`);
      return took;
    };
    const times: Record<"search" | "lookUp", number[]> = { search: [], lookUp: [] };
    const first = await search("carrot");
    for (let round = -50; round < rounds; round += 1) {
      const one = await search(searches[Math.abs(round) % searches.length]!);
      const other = await lookUp(many[(round * 37 + foods) % foods]!.slug);
      if (round < 0) continue;
      times.search.push(one);
      times.lookUp.push(other);
    }
    const begin = performance.now();
    const names = [...(await data.foods.names())];
    const read = performance.now();
    compileFoodNames(names);
    const compiled = performance.now() - read;
    await Promise.all([client.end(), opened.close()]);
    await database.close();
    const p50 = median(times.search);
    const baseline = median(times.lookUp);
    const shown = (ms: number): string => ms.toFixed(2);
    return [
      result(
        "foods",
        p50 / baseline,
        { atMost: 10 },
        `search p50 ${shown(p50)} ms among ${String(foods)} foods (aim 2 ms), look-up by equality ${shown(baseline)} ms; once for each state of the foods: names laid out in ${shown(compiled)} ms, first search ${shown(first)} ms, list known again in ${shown(read - begin)} ms`,
      ),
    ];
  } finally {
    await server.stop();
  }
}
