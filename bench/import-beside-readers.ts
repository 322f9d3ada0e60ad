import { setTimeout as pause } from "node:timers/promises";
import { demo } from "../tests/graphql/open-test-app.js";
import { result, type Benchmark, type BenchmarkResult } from "./benchmark.js";
import { onBothDatabases, type FilledDatabase } from "./load/filled-databases.js";
import { startRecorded } from "./load/recorded-service.js";

const rows = 100_000;
/** The longest that readers may be kept waiting, in milliseconds of processor time. */
const most = 100;

const list = (): string =>
  "food,pack,name,content,price,currency,region,seen\n" +
  Array.from({ length: rows }, (_, at) => {
    const food = demo.foods[at % demo.foods.length]?.slug ?? "";
    return `${food},pack-${String(at)},bag,${String(100 + (at % 50) * 10)} g,1.${String(10 + (at % 90))},XTS,XA,2026-03-01\n`;
  }).join("");

const feed = `mutation { saveFeed(input: { slug: "shop", kind: PRICES, settings: { source: "A made-up shop", locale: "en", currency: "XTS" } }) { problems { message } } }`;

/** Hands in the file, asks for the state of its run until it is over, and gives the longest turn of the event loop meanwhile. */
async function importing({ environment, token }: FilledDatabase): Promise<readonly number[]> {
  const service = await startRecorded(environment);
  try {
    const send = async (path: string, init: RequestInit, type: string): Promise<Readonly<Record<string, unknown>>> => {
      const headers = { authorization: `Bearer ${token}`, "content-type": type };
      const answer = await fetch(service.address + path, { ...init, headers });
      if (!answer.ok) throw new Error(`${path}: ${String(answer.status)} ${(await answer.text()).slice(0, 300)}`);
      return (await answer.json()) as Readonly<Record<string, unknown>>;
    };
    await send("/graphql", { method: "POST", body: JSON.stringify({ query: feed }) }, "application/json");
    const begun = await send("/v1/feeds/shop/files?name=list.csv", { method: "POST", body: list() }, "text/csv");
    service.turns();
    const turns: number[] = [];
    for (let state = ""; state !== "DONE";) {
      await pause(200);
      const run = await send(`/v1/feeds/shop/runs/${String(begun["id"])}`, { method: "GET" }, "application/json");
      state = String(run["state"]);
      if (state === "FAILED" || state === "STOPPED") throw new Error(JSON.stringify(run).slice(0, 600));
      turns.push(...service.turns());
    }
    return turns;
  } finally {
    await service.stop();
  }
}

function shown(kind: string, turns: readonly number[]): BenchmarkResult {
  const sorted = turns.toSorted((a, b) => b - a);
  return result(
    `longest turn while ${rows.toLocaleString("en")} rows are imported, ${kind} / ${String(most)} ms of processor time`,
    (sorted[0] ?? 0) / most,
    { atMost: 1 },
    `${String(turns.length)} turns of 2 ms and more, the longest ${sorted.slice(0, 6).join(", ")} ms`,
  );
}

/** A price list imported by the process that serves readers: how long it keeps them waiting. */
const run = (): Promise<readonly BenchmarkResult[]> =>
  onBothDatabases(async (database) => [shown(database.kind, await importing(database))]);

export const importBesideReaders: Benchmark = { name: "import-beside-readers", isLong: true, run };
