import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { result, type Benchmark, type BenchmarkOptions, type BenchmarkResult } from "./benchmark.js";
import type { LoadMeasured, LoadRequest } from "./load/load-job.js";
import { against, asked, load, median, onStage, shown, type Side, type Stage } from "./load/side-by-side.js";
import type { StartedServer } from "./load/start-server.js";
import { anotherHousehold, samePlan, samePlanByRest } from "./plan-query.js";

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
  const other = { port: server.port, request };
  const { ratio, ours: mine, theirs } = await against(stage.client, ours, other);
  const atHalf: LoadMeasured[] = [];
  const otherAtHalf: LoadMeasured[] = [];
  for (let round = 0; round < halfRounds; round += 1) {
    atHalf.push(await load(stage.client, ours, mine / 2));
    otherAtHalf.push(await load(stage.client, other, mine / 2));
  }
  await Promise.all([service.stop(), server.stop()]);
  const bytes = `${(size / 1024).toFixed(1)} KiB`;
  return [
    result(
      `${name} / bare Node http with the same bytes`,
      ratio,
      { atLeast },
      `${shown(mine)}, ${shown(theirs)}, ${bytes}`,
    ),
    result(
      `${name}: p99 / p50 at half of the peak load`,
      quantile(atHalf, "p99") / quantile(atHalf, "p50"),
      { atMost: 5 },
      `${quantiles(atHalf)} at ${shown(mine / 2)}; bare Node http at the same load ${quantiles(otherAtHalf)}`,
    ),
  ];
}

/** Rounds at half of the peak, by turns: the machine itself halts for tens of milliseconds now and then, which hits some of them. */
const halfRounds = 7;

const quantile = (rounds: readonly LoadMeasured[], which: "p50" | "p99"): number =>
  median(rounds.map((round) => round[which]));

const quantiles = (rounds: readonly LoadMeasured[]): string =>
  `${quantile(rounds, "p99").toFixed(2)} ms, ${quantile(rounds, "p50").toFixed(2)} ms`;

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
