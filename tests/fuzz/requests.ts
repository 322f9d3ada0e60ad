import { createHash } from "node:crypto";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { readSeeds } from "../../src/app/setup/read-seeds.js";
import { attackCorpus } from "../attack/corpus.js";
import { createSchema } from "../../src/graphql/schema.js";
import { startService } from "../app/processes/service-process.js";
import { diceFrom } from "../kit/arbitrary/dice.js";
import { startPostgres } from "../kit/postgres/start-postgres.js";
import { prepareFuzzedService } from "./fuzzed-service.js";
import type { FuzzedRequest } from "./fuzzed-request.js";
import { longRequest } from "./long-requests.js";
import { bombs, graphqlRequest, mangledDocument, validDocument } from "./graphql-requests.js";
import { mutations } from "./mutate.js";
import { faultOf, RequestSender } from "./request-sender.js";
import { hostileHeaders, restRequest } from "./rest-requests.js";

/**
 * npm run fuzz:requests -- [--requests 100000] [--seed N]
 *
 * Sends requests that nobody should send to the built service on a real Postgres: documents, variables, headers, addresses and
 * bodies, half of them with a token that may do everything. Wrong is: an answer of 500 or above, none at all, JSON that is none, an
 * inside of the program shown, an error in the log, a service that ended, or memory that goes on growing. What was wrong is kept in
 * tests/fixtures/requests/found, where the tests ask it for ever. Exits with 1 if there was any.
 */
const { values } = parseArgs({
  options: { requests: { type: "string", default: "100000" }, seed: { type: "string", default: "20261125" } },
});
const wanted = Number(values.requests);
const dice = diceFrom(Number(values.seed));
/** Requests on their way at a time. */
const atOnce = 8;
/** How much the memory of the last fifth may be above that of the second. */
const mostGrowth = 1.3;
const kept = "tests/fixtures/requests/found";

execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
const server = await startPostgres();
const url = await server.createDatabase("fuzzed");
const { known, token } = await prepareFuzzedService(url);
// What a flood is met with otherwise has tests of its own; here every request is to reach what it asks for.
const unbounded = {
  // What is kept shows sooner where there is little room.
  NODE_OPTIONS: "--max-old-space-size=256",
  PREPWRIGHT_POINTS_PER_ADDRESS: "0",
  PREPWRIGHT_POINTS_PER_TOKEN: "0",
  PREPWRIGHT_REFUSED_TOKENS_PER_ADDRESS: "0",
  PREPWRIGHT_SHED_DELAY_MS: "0",
};
const service = await startService({ DATABASE_URL: url, LOG_LEVEL: "warn", NODE_ENV: "production", ...unbounded });
const sender = new RequestSender(service.address, atOnce);
const schema = createSchema();
const demo = await readSeeds("seeds");
/** What the suite of attacks sends as it is comes here in the midst of everything else. */
const attacks = attackCorpus({
  publisher: demo.publisher.slug,
  plans: demo.plans.map(({ slug }) => slug),
  foods: demo.foods.map(({ slug }) => slug),
  components: demo.components.map(({ slug }) => slug),
});

function nextRequest(): FuzzedRequest {
  const kind = dice.roll(10);
  const document = (): string =>
    kind < 3
      ? validDocument(schema, known, dice)
      : kind < 5
        ? mangledDocument(validDocument(schema, known, dice), dice)
        : dice.pick(bombs)(dice);
  const asked: FuzzedRequest = dice.chance(0.05)
    ? dice.pick(attacks)
    : dice.chance(0.03)
      ? longRequest(known, dice)
      : kind < 6
        ? graphqlRequest(document(), dice)
        : restRequest(known, dice);
  const body =
    asked.body !== null && dice.chance(0.1)
      ? (mutations[dice.pick(Object.keys(mutations))]?.(asked.body, dice) ?? asked.body)
      : asked.body;
  const authorised: Readonly<Record<string, string>> = dice.chance(0.5) ? { authorization: `Bearer ${token}` } : {};
  return { ...asked, body, headers: { ...asked.headers, ...authorised, ...hostileHeaders(token, dice) } };
}

const memory = (): number =>
  Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${String(service.child.pid)}/status`, "utf8"))?.[1] ?? 0) / 1000;

const statuses = new Map<string, number>();
const memories: number[] = [];
let found = 0;
let logged = 0;
let sent = 0;
let slowest = 0;
const begin = performance.now();

async function report(request: FuzzedRequest, fault: string): Promise<void> {
  found += 1;
  const text = JSON.stringify({ ...request, body: request.body?.toString("latin1") ?? null }).replaceAll(
    token,
    "TOKEN",
  );
  const name = `${createHash("sha256").update(text).digest("hex").slice(0, 12)}.json`;
  await mkdir(kept, { recursive: true });
  await writeFile(`${kept}/${name}`, text);
  console.error(`${name}: ${request.method} ${request.path.slice(0, 200)}: ${fault}`);
}

async function sendOn(): Promise<void> {
  while (sent < wanted && found < 20) {
    sent += 1;
    if (sent % 1000 === 0) memories.push(memory());
    if (sent % 10_000 === 0) console.error(`${String(sent)} sent, ${String(Math.round(memory()))} MB`);
    const request = nextRequest();
    const start = performance.now();
    const answer = await sender.send(request);
    slowest = Math.max(slowest, performance.now() - start);
    const status = answer.kind === "ANSWER" ? String(answer.status) : answer.kind;
    statuses.set(status, (statuses.get(status) ?? 0) + 1);
    const errors = service.errors.filter((line) => /"level":[56]0/.test(line));
    const fault =
      service.child.exitCode !== null
        ? "the service ended"
        : errors.length > logged
          ? `an error in the log: ${errors.at(-1)?.slice(0, 600) ?? ""}`
          : faultOf(request, answer);
    logged = errors.length;
    if (fault !== null) await report(request, fault);
  }
}

await Promise.all(Array.from({ length: atOnce }, sendOn));
const seconds = (performance.now() - begin) / 1000;
const mean = (part: readonly number[]): number => part.reduce((sum, each) => sum + each, 0) / Math.max(1, part.length);
const fifth = Math.floor(memories.length / 5);
const growth = fifth === 0 ? 1 : mean(memories.slice(-fifth)) / mean(memories.slice(fifth, 2 * fifth));
if (growth > mostGrowth) console.error(`memory grew by ${growth.toFixed(2)}`);
const ended = await service.stop();
sender.close();
await server.stop();
console.log(
  JSON.stringify({
    ...{ name: "fuzz-requests", sent, found, seed: Number(values.seed), perSecond: Math.round(sent / seconds) },
    ...{
      growth: Number(growth.toFixed(2)),
      peakMb: Math.round(Math.max(0, ...memories)),
      slowestMs: Math.round(slowest),
      ended,
    },
    statuses: Object.fromEntries([...statuses].toSorted(([a], [b]) => (a < b ? -1 : 1))),
  }),
);
process.exit(found > 0 || growth > mostGrowth || ended !== 0 ? 1 : 0);
