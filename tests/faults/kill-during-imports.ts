import { spawn, type ChildProcess } from "node:child_process";
import pg from "pg";
import { openServer } from "../../src/persistence/database/open-server.js";
import type { Data } from "../../src/persistence/data.js";
import { feedSettingsSchema } from "../../src/services/imports/feeds/feed-settings.js";
import { runImports } from "../../src/services/imports/run-imports.js";
import { diceFrom } from "../kit/arbitrary/dice.js";
import { startPostgres } from "../kit/postgres/start-postgres.js";
import type { Fault } from "./fault.js";

const clock = () => new Date();
const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
const rowsOfAList = 60_000;

/** A price list with bad rows and repeated ones; each number of `night` has other prices. */
async function* list(night: number): AsyncGenerator<Uint8Array> {
  yield Buffer.from("food,pack,content,price\n");
  for (let from = 0; from < rowsOfAList; from += 1_000) {
    const rows = Array.from({ length: 1_000 }, (_, step) => {
      const at = from + step;
      if (at % 997 === 0) return `nobody-knows,p${String(at)},500 g,1\n`;
      const pack = at % 101 === 0 ? "again" : `p${String(at)}`;
      return `egg,${pack},${String(6 + (at % 5))} piece,${String(20 + ((at * 7 + night) % 60))}.50\n`;
    });
    yield Buffer.from(rows.join(""));
  }
}

async function prepared(
  data: Data,
  nights: number,
): Promise<{ readonly feed: string; readonly files: readonly string[] }> {
  await data.foods.save([
    {
      slug: "egg",
      names: [{ language: "en", region: null, one: "egg", many: "eggs", also: [] }],
      ...{ aisle: "eggs", shoppedBy: "COUNT", ndbNo: null, densities: [], measures: [], parts: [], edible: [] },
      ...{
        yields: [],
        allergens: [],
        diets: [],
        nutrients: null,
        keepsAs: null,
        keeping: [],
        packs: [],
        alwaysThere: false,
      },
    },
  ]);
  const settings = feedSettingsSchema.parse({
    source: "A made-up shop",
    currency: "XTS",
    locale: "en",
    limits: { changed: 1, quarantined: 1 },
  });
  const feed = await data.feeds.save({
    publisher: null,
    slug: "shop",
    kind: "PRICES",
    settings,
    cron: null,
    zone: "UTC",
    enabled: true,
  });
  const files: string[] = [];
  const arrival = new Date("2026-03-01T04:00:00Z");
  for (let night = 0; night < nights; night += 1)
    files.push((await data.importFiles.put(feed, "list.csv", list(night), arrival)).id);
  return { feed, files };
}

/** Everything an import leaves, a text for each row, without the ids of runs. */
async function remains(url: string): Promise<readonly (readonly string[])[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  const asked = [
    `SELECT food, pack_id, name, content_low, content_unit, price_amount, price_currency, region, seen::text FROM listed_packs ORDER BY 1, 2`,
    `SELECT f.name, q.line, q.part, q.raw, q.problems::text FROM quarantined_rows q JOIN import_runs r ON r.id = q.run_id
       JOIN import_files f ON f.id = r.file_id ORDER BY r.created_at, 2, 3`,
    `SELECT state, rows_read, created, changed, unchanged, quarantined, repeated FROM import_runs ORDER BY created_at`,
    `SELECT count(*) FROM staged_prices`,
  ];
  const tables: string[][] = [];
  for (const sql of asked) tables.push((await client.query(sql)).rows.map((row: unknown) => JSON.stringify(row)));
  await client.end();
  return tables;
}

/** The first row of each table that is not as it should be. */
const differences = (got: readonly (readonly string[])[], wanted: readonly (readonly string[])[]): readonly string[] =>
  wanted.flatMap((rows, table) => {
    const found = got[table] ?? [];
    const at = Array.from({ length: Math.max(rows.length, found.length) }).findIndex(
      (_, row) => rows[row] !== found[row],
    );
    return at < 0
      ? []
      : [`table ${String(table)}, row ${String(at)}: ${String(found[at])} and not ${String(rows[at])}`];
  });

async function startWorker(url: string, name: string): Promise<ChildProcess> {
  const child = spawn(process.execPath, ["--import", "tsx", "tests/faults/import-worker.ts", url, name], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  await new Promise<void>((resolve, reject) => {
    child.stdout?.once("data", () => resolve());
    child.once("exit", (code) => reject(new Error(`a worker ended with ${String(code)} before it was ready`)));
  });
  child.removeAllListeners("exit");
  return child;
}

const ended = (child: ChildProcess): Promise<void> =>
  child.exitCode !== null || child.signalCode !== null
    ? Promise.resolve()
    : new Promise((resolve) => child.once("exit", () => resolve()));

/**
 * Kills the worker at a random moment of an import, again and again, on a real Postgres. At the end the rows, the
 * quarantine and the counts must be those of an undisturbed run, byte for byte, and each run has ended once.
 */
export const killDuringImports: Fault = {
  name: "kill-during-imports",
  tries: 200,
  fewTries: 3,
  run: async (tries) => {
    // A night is over with two or three kills, mostly.
    const nights = Math.max(2, Math.ceil(tries / 2));
    const seed = 20_261_125;
    const { roll } = diceFrom(seed);
    const server = await startPostgres();
    try {
      const quietUrl = await server.createDatabase("quiet");
      const quiet = await openServer(quietUrl, { poolSize: 3 });
      const still = await prepared(quiet.data, nights);
      const begin = performance.now();
      for (const file of still.files) {
        await quiet.data.importRuns.queue(
          { feed: still.feed, file, kind: "LOAD", askedBy: "fault", force: false, undoes: null },
          clock(),
        );
        await runImports({ data: quiet.data, clock, log, knownRules: new Map() }, "quiet");
      }
      // A moment of any part of an import, and of the wait for a worker that is lost.
      const aRun = (performance.now() - begin) / still.files.length;
      await quiet.close();

      const url = await server.createDatabase("killed");
      const { data, close } = await openServer(url, { poolSize: 3 });
      const { feed, files } = await prepared(data, nights);
      let kills = 0;
      let twice = 0;
      for (const [night, file] of files.entries()) {
        const id = await data.importRuns.queue(
          { feed, file, kind: "LOAD", askedBy: "fault", force: false, undoes: null },
          clock(),
        );
        if (id === null) throw new Error("a run of the night before is still going on");
        for (let killed = 0; ; killed += 1) {
          const worker = await startWorker(url, `worker-${String(night)}-${String(killed)}`);
          const mayLive = killed >= 4 || kills >= tries;
          const patience = mayLive ? 60_000 : roll(1_500 + aRun);
          const end = Date.now() + patience;
          while (Date.now() < end && (await data.importRuns.byId(id))?.endedAt === null)
            await new Promise((resume) => setTimeout(resume, 20));
          worker.kill("SIGKILL");
          await ended(worker);
          const run = await data.importRuns.byId(id);
          if (!mayLive) kills += 1;
          if (run?.endedAt !== null) {
            if (run?.state !== "DONE") {
              twice += 1;
              console.error(`night ${String(night)} ended ${JSON.stringify(run)}`);
            }
            break;
          }
        }
      }
      await runImports({ data, clock, log, knownRules: new Map() }, "last");
      await close();
      const differs = differences(await remains(url), await remains(quietUrl));
      for (const each of differs) console.error(each);
      return { tries: kills, lost: differs.length + twice, runs: files.length, rows: files.length * rowsOfAList, seed };
    } finally {
      await server.stop();
    }
  },
};
