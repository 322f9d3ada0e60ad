import { execFileSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openServer } from "../../src/persistence/database/open-server.js";
import { loadShippedRules } from "../../src/services/rules/load-rule-set.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, rules } from "../../tests/graphql/open-test-app.js";
import { startPostgres } from "../../tests/kit/postgres/start-postgres.js";
import { startLoadClient, type LoadClient } from "./load-client.js";
import type { LoadRequest } from "./load-job.js";
import { startServer, type StartedServer } from "./start-server.js";

const connections = 32;
const rounds = 5;
const milliseconds = 2_000;

/** A server, and what it is asked. */
export interface Side {
  readonly port: number;
  readonly request: LoadRequest;
}

/** A real database with the demo, and servers on it. */
export interface Stage {
  readonly client: LoadClient;
  readonly folder: string;
  /** Starts this service on the one database; the rest are variables of its environment. */
  service(environment?: Readonly<Record<string, string>>): Promise<StartedServer>;
  start(args: readonly string[]): Promise<StartedServer>;
  /** Address of the database. */
  readonly url: string;
}

export const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** One of the client's jobs. Every answer must be 200. */
export async function load(client: LoadClient, side: Side, rate: number | null, ms = milliseconds, from = 1) {
  const job = { ...side, connections, milliseconds: ms, rate, from };
  const measured = await client.run(job);
  if (measured.refused > 0) throw new Error(`${String(measured.refused)} answers of ${side.request.path} were not 200`);
  return measured;
}

/**
 * Requests a second of each, in rounds that take turns. The ratio is the median of the rounds' own ratios, so that a noisy
 * moment hits both or counts little. The first round warms up.
 */
export async function against(client: LoadClient, ours: Side, theirs: Side) {
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

/** Requests a second, to be read. */
export const shown = (perSecond: number): string => `${Math.round(perSecond).toLocaleString("en")}/s`;

/** The answer to one request, which must be good. */
export const asked = async ({ port, request }: Side): Promise<{ readonly text: string; readonly type: string }> => {
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

/** Sets the stage up, and takes it down whatever becomes of the work. */
export async function onStage<T>(work: (stage: Stage) => Promise<T>): Promise<T> {
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
      url,
      client,
      folder,
      start,
      service: (environment) =>
        start(["--max-semi-space-size=64", "dist/main.js"], {
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
