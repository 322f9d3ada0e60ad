import { execFile } from "node:child_process";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { promisify } from "node:util";
import pg from "pg";
import { from as copyFrom } from "pg-copy-streams";
import { startPostgres } from "../tests/kit/postgres/start-postgres.js";
import { result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

interface Measured {
  readonly ms: number;
  readonly peak: number;
}

/** A price list of a million rows against a plain COPY of the same facts into a table of the same shape, key included. */
async function priceList(): Promise<readonly BenchmarkResult[]> {
  const server = await startPostgres();
  try {
    const measured = async (rows: number): Promise<Measured> => {
      const url = await server.createDatabase(`rows_${String(rows)}`);
      // Bounded, since a heap that may grow is filled with what could be thrown away.
      const run = promisify(execFile)(process.execPath, [
        ...["--max-old-space-size=160", "--import", "tsx", "bench/import-prices.ts", url, String(rows)],
      ]);
      return JSON.parse((await run).stdout) as Measured;
    };
    const many = 1_000_000;
    const fewer = 100_000;
    const small = await measured(fewer);
    const large = await measured(many);
    const copied = await plainCopy(await server.createDatabase("plain"), many);
    const perSecond = (ms: number): string => `${Math.round(many / (ms / 1000)).toLocaleString("en")} rows/s`;
    const mb = (bytes: number): string => `${Math.round(bytes / 1e6)} MB`;
    return [
      result(
        "imports: a price list of 1,000,000 rows, speed / plain COPY",
        copied / large.ms,
        { atLeast: 0.5 },
        `${perSecond(large.ms)}, COPY ${perSecond(copied)}`,
      ),
      result(
        "imports: peak memory at 1,000,000 rows / at 100,000, heap bounded to 160 MB",
        large.peak / small.peak,
        { atMost: 1.2 },
        `${mb(large.peak)}, ${mb(small.peak)}`,
      ),
    ];
  } finally {
    await server.stop();
  }
}

async function plainCopy(url: string, rows: number): Promise<number> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  await client.query(`CREATE TABLE plain (feed_id uuid, food text, pack_id text, name text, content_low text, content_high text,
    content_unit text, price_amount text, price_currency text, region text, seen date, made_by uuid, written_by uuid,
    PRIMARY KEY (feed_id, food, pack_id))`);
  await client.query("CREATE INDEX ON plain (food)");
  const id = "11111111-1111-4111-8111-111111111111";
  function* lines(): Generator<string> {
    let text = "";
    for (let at = 0; at < rows; at += 1) {
      const size = String(100 + (at % 50) * 10);
      const price = `${String(1 + Math.floor((at % 50) / 10))}.${String(10 + (at % 90))}`;
      text += `${id}\tfood-${String(at % 1000)}\tpack-${String(at)}\tbag\t${size}\t${size}\tg\t${price}\tXTS\tXA\t2026-03-01\t${id}\t${id}\n`;
      if (text.length < 65_536) continue;
      yield text;
      text = "";
    }
    yield text;
  }
  const start = performance.now();
  await pipeline(Readable.from(lines()), client.query(copyFrom("COPY plain FROM STDIN")));
  const ms = performance.now() - start;
  await client.end();
  return ms;
}

/** Ten thousand texts saved as drafts, each checked and in a transaction of its own, against reading the same texts alone. */
async function drafts(): Promise<readonly BenchmarkResult[]> {
  const server = await startPostgres();
  try {
    const results: BenchmarkResult[] = [];
    for (const kind of ["DOCUMENTS", "RECIPES"] as const) {
      const url = await server.createDatabase(kind.toLowerCase());
      const run = promisify(execFile)(process.execPath, [
        ...["--import", "tsx", "bench/import-drafts.ts", url, kind, "10000"],
      ]);
      const { ms, read } = JSON.parse((await run).stdout) as { readonly ms: number; readonly read: number };
      const what = kind === "DOCUMENTS" ? "plan documents" : "recipes of the web";
      const perSecond = Math.round(10_000 / (ms / 1000));
      results.push(
        result(
          `imports: 10,000 ${what}, time / reading alone`,
          ms / read,
          { atMost: Infinity },
          `${String(perSecond)} a second, reading alone ${(read / 1000).toFixed(1)} s`,
        ),
      );
    }
    return results;
  } finally {
    await server.stop();
  }
}

export const importBenchmarks: readonly Benchmark[] = [
  { name: "imports", run: priceList },
  { name: "import-drafts", run: drafts },
];
