import { execFileSync } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openServer } from "../src/persistence/open-server.js";
import { loadShippedRules } from "../src/services/load-rule-set.js";
import { loadSeeds } from "../src/services/load-seeds.js";
import { demo, rules } from "../tests/graphql/open-test-app.js";
import { startPostgres } from "../tests/kit/start-postgres.js";
import { result, type Benchmark, type BenchmarkOptions, type BenchmarkResult } from "./benchmark.js";
import { startLoadClient, type LoadClient } from "./load/load-client.js";
import type { LoadMeasured, LoadRequest } from "./load/load-job.js";
import { startServer, type StartedServer } from "./load/start-server.js";
import { anotherHousehold, samePlan, samePlanByRest } from "./plan-query.js";

const connections = 32;
const rounds = 5;
const milliseconds = 2_000;

/** A server, and what it is asked. */
interface Side {
  readonly port: number;
  readonly request: LoadRequest;
}

interface Stage {
  readonly client: LoadClient;
  readonly folder: string;
  /** Starts this service on the one database; the rest are variables of its environment. */
  service(environment?: Readonly<Record<string, string>>): Promise<StartedServer>;
  start(args: readonly string[]): Promise<StartedServer>;
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** One of the client's jobs. Every answer must be 200. */
async function load(client: LoadClient, side: Side, rate: number | null, ms = milliseconds, from = 1) {
  const job = { ...side, connections, milliseconds: ms, rate, from };
  const measured = await client.run(job);
  if (measured.refused > 0) throw new Error(`${String(measured.refused)} answers of ${side.request.path} were not 200`);
  return measured;
}

/**
 * Requests a second of each, in rounds that take turns. The ratio is the median of the rounds' own ratios, so that a noisy
 * moment hits both or counts little. The first round warms up.
 */
async function against(client: LoadClient, ours: Side, theirs: Side) {
  const pairs: (readonly [number, number])[] = [];
  let from = 1;
  for (let round = -1; round < rounds; round += 1) {
    const mine = await load(client, ours, null, milliseconds, from);
    const other = await load(client, theirs, null, milliseconds, from);
    from = Math.max(mine.next, other.next);
    if (round >= 0) pairs.push([mine.perSecond, other.perSecond]);
  }
  return {
    ratio: median(pairs.map(([mine, other]) => mine / other)),
    ours: median(pairs.map(([mine]) => mine)),
    theirs: median(pairs.map(([, other]) => other)),
  };
}

const shown = (perSecond: number): string => `${Math.round(perSecond).toLocaleString("en")}/s`;

const asked = async ({ port, request }: Side): Promise<{ readonly text: string; readonly type: string }> => {
  const answer = await fetch(`http://127.0.0.1:${String(port)}${request.path}`, {
    method: request.method,
    headers: request.headers,
    ...(request.method === "POST" ? { body: request.body } : {}),
  });
  const text = await answer.text();
  if (answer.status !== 200 || text.startsWith('{"errors"'))
    throw new Error(`${String(answer.status)}: ${text.slice(0, 500)}`);
  return { text, type: answer.headers.get("content-type") ?? "" };
};

/** The same bytes from Node's own HTTP server. */
async function bare(
  { start, folder }: Stage,
  side: Side,
): Promise<{ readonly server: StartedServer; readonly size: number }> {
  const { text, type } = await asked(side);
  const file = join(folder, `bytes-${String(side.port)}-${side.request.method}`);
  await writeFile(file, text);
  const server = await start(["--import", "tsx", "bench/load/bare-server.ts", file, type]);
  return { server, size: Buffer.byteLength(text) };
}

async function hotAgainstBare(stage: Stage, name: string, request: LoadRequest, atLeast: number) {
  const service = await stage.service();
  const ours = { port: service.port, request };
  const { server, size } = await bare(stage, ours);
  const { ratio, ours: mine, theirs } = await against(stage.client, ours, { port: server.port, request });
  const half = await load(stage.client, ours, mine / 2, 5_000);
  await Promise.all([service.stop(), server.stop()]);
  const bytes = `${(size / 1024).toFixed(1)} KiB`;
  return [
    result(
      `${name} / bare Node http with the same bytes`,
      ratio,
      { atLeast },
      `${shown(mine)}, ${shown(theirs)}, ${bytes}`,
    ),
    quantiles(`${name}: p99 / p50 at half of the peak load`, half),
  ];
}

const quantiles = (name: string, { p50, p99, perSecond }: LoadMeasured): BenchmarkResult =>
  result(name, p99 / p50, { atMost: 5 }, `${p99.toFixed(2)} ms, ${p50.toFixed(2)} ms at ${shown(perSecond)}`);

/** An answer without its extensions. */
const dataOf = (text: string): string => JSON.stringify((JSON.parse(text) as { readonly data: unknown }).data);

/** Every household is a new one, and nothing of it or of the plan is in memory. */
async function coldAgainstApollo(stage: Stage): Promise<readonly BenchmarkResult[]> {
  const [cold, warm] = await Promise.all([stage.service({ PREPWRIGHT_CACHE_MB: "0" }), stage.service()]);
  const data = join(stage.folder, "data.json");
  const { text } = await asked({ port: warm.port, request: samePlan });
  await writeFile(data, dataOf(text));
  const apollo = await stage.start(["--import", "tsx", "bench/load/apollo-server.ts", "schema.graphql", data]);
  const request = anotherHousehold;
  const theirs = { port: apollo.port, request: { ...request, path: "/" } };
  if (dataOf((await asked(theirs)).text) !== dataOf(text)) throw new Error("the static server answers something else");
  const nothing = await against(stage.client, { port: cold.port, request }, theirs);
  const kept = await against(stage.client, { port: warm.port, request }, theirs);
  await Promise.all([cold.stop(), warm.stop(), apollo.stop()]);
  const detail = (each: typeof nothing): string => `${shown(each.ours)}, ${shown(each.theirs)}`;
  return [
    result(
      "new household, nothing in memory / Apollo on static data",
      nothing.ratio,
      { atLeast: 0.8 },
      detail(nothing),
    ),
    result("new household, plan in memory / Apollo on static data", kept.ratio, { atLeast: 0.8 }, detail(kept)),
  ];
}

async function onStage<T>(work: (stage: Stage) => Promise<T>): Promise<T> {
  // What is measured is the program as it is shipped.
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: ["ignore", 2, 2] });
  const postgres = await startPostgres();
  const folder = await mkdtemp(join(tmpdir(), "prepwright-bench-"));
  const client = startLoadClient();
  const started: StartedServer[] = [];
  const start = async (args: readonly string[], environment: Readonly<Record<string, string>> = {}) => {
    const server = await startServer(args, environment);
    started.push(server);
    return server;
  };
  try {
    const url = await postgres.createDatabase("bench");
    await publishDemo(url);
    return await work({
      client,
      folder,
      start,
      service: (environment) =>
        start(["dist/main.js"], {
          DATABASE_URL: url,
          PREPWRIGHT_WORKER: "0",
          // Counted like any caller, and never refused.
          PREPWRIGHT_POINTS_PER_ADDRESS: "999999999999",
          // The peak is what is looked for.
          PREPWRIGHT_SHED_DELAY_MS: "0",
          PREPWRIGHT_DRAIN_SECONDS: "0",
          LOG_LEVEL: "warn",
          ...environment,
        }),
    });
  } finally {
    client.stop();
    await Promise.all(started.map((server) => server.stop()));
    await postgres.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

const quiet = { info: () => undefined, warn: console.error, error: console.error };

async function publishDemo(url: string): Promise<void> {
  const { data, close } = await openServer(url, { poolSize: 2 });
  const deps = { data, clock: () => new Date(), log: quiet, knownRules: new Map() };
  await loadShippedRules(deps, rules);
  const loaded = await loadSeeds(deps, demo);
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems));
  await close();
}

const hotPath = (): Promise<readonly BenchmarkResult[]> =>
  onStage(async (stage) => [
    ...(await hotAgainstBare(stage, "hot plan by GraphQL", samePlan, 0.5)),
    ...(await hotAgainstBare(stage, "hot plan by REST", samePlanByRest, 0.7)),
    ...(await coldAgainstApollo(stage)),
  ]);

/** Resident memory of a process, in MB. */
async function residentOf({ process: { pid } }: StartedServer): Promise<number> {
  const status = await readFile(`/proc/${String(pid)}/status`, "utf8");
  return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024;
}

/** By how much a line through the points rises for each step (least squares). */
function slopeOf(values: readonly number[]): number {
  const middle = (values.length - 1) / 2;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const sum = (of: (value: number, at: number) => number): number =>
    values.map(of).reduce((all, each) => all + each, 0);
  const rise = sum((value, at) => (at - middle) * (value - mean));
  const run = sum((_, at) => (at - middle) ** 2);
  return rise / run;
}

/** Half of the peak load, each household another, for minutes: answers come and go, and memory must not grow. */
const steady = ({ minutes }: BenchmarkOptions): Promise<readonly BenchmarkResult[]> =>
  onStage(async ({ service, client }) => {
    const server = await service({ PREPWRIGHT_CACHE_MB: "16" });
    const side = { port: server.port, request: anotherHousehold };
    const peak = await load(client, side, null, 5_000);
    const seen: number[] = [];
    const slice = 10_000;
    let from = peak.next;
    for (let spent = 0; spent < minutes * 60_000; spent += slice) {
      from = (await load(client, side, peak.perSecond / 2, slice, from)).next;
      seen.push(await residentOf(server));
    }
    await server.stop();
    // While memory fills up it grows, and should.
    const settled = seen.slice(Math.floor(seen.length / 3));
    const mean = settled.reduce((sum, mb) => sum + mb, 0) / settled.length;
    const growth = (slopeOf(settled) * settled.length) / mean;
    const perMinute = (slopeOf(settled) * 60_000) / slice;
    const detail = `${mean.toFixed(0)} MB, ${perMinute.toFixed(2)} MB a minute, over ${String(minutes)} minutes at ${shown(peak.perSecond / 2)}`;
    return [
      result("steady load: growth of memory over the last two thirds / its mean", growth, { atMost: 0.1 }, detail),
    ];
  });

export const hotPathBenchmarks: readonly Benchmark[] = [
  { name: "hot-path", run: hotPath },
  { name: "steady", isLong: true, run: steady },
];
