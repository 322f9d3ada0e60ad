import { setTimeout as pause } from "node:timers/promises";
import type { AttackRequest } from "../tests/attack/attack-request.js";
import { attackCorpus } from "../tests/attack/corpus.js";
import { largePlanAttacks } from "../tests/attack/large-plan-attacks.js";
import { RequestSender } from "../tests/fuzz/request-sender.js";
import { demo } from "../tests/graphql/open-test-app.js";
import { largeBundle } from "../tests/kit/large-bundle.js";
import { result, type Benchmark, type BenchmarkResult } from "./benchmark.js";
import { onBothDatabases, type FilledDatabase } from "./load/filled-databases.js";
import { startRecorded } from "./load/recorded-service.js";

/** The longest that one request may keep the others waiting, in milliseconds of processor time. */
const most = 100;
/** How many of the worst are asked again as the first that a process is asked. */
const askedFirst = 12;

const target = {
  publisher: demo.publisher.slug,
  plans: demo.plans.map(({ slug }) => slug),
  foods: demo.foods.map(({ slug }) => slug),
  components: demo.components.map(({ slug }) => slug),
};
const corpus = attackCorpus(target);
/** Those that go over every plan of a list, and what is asked of the large one alone. */
const ofLargePlan: readonly AttackRequest[] = [
  ...largePlanAttacks(target.publisher, "large"),
  ...corpus.filter(({ name }) => name.startsWith("a page of 100 plans")),
];

/** Answered as long as the service runs. */
const health = { method: "GET", path: "/healthz", headers: {}, body: null };

interface Turn {
  readonly request: AttackRequest;
  readonly ms: number;
}

/** Sends requests one after another to a service of its own, and measures the longest turn of its event loop for each. */
async function longestTurns(
  environment: Readonly<Record<string, string>>,
  token: string,
  passes: readonly (readonly AttackRequest[])[],
): Promise<readonly (readonly Turn[])[]> {
  // What jobs do at their times is no answer to a request.
  const service = await startRecorded({ PREPWRIGHT_WORKER: "0", ...environment });
  const sender = new RequestSender(service.address, 1);
  const measured: (readonly Turn[])[] = [];
  try {
    for (const requests of passes) {
      const turns: Turn[] = [];
      for (const request of requests) {
        const headers =
          request.authorised === true ? { ...request.headers, authorization: `Bearer ${token}` } : request.headers;
        const answer = await sender.send({ ...request, headers });
        if (answer.kind === "NO_ANSWER") throw new Error(`no answer to ${request.name}`);
        if (answer.kind === "CUT" && (await sender.send(health)).kind !== "ANSWER")
          throw new Error(`the service ended by ${request.name}, after ${String(turns.length)} others`);
        // The turn that sent the answer is written in the next.
        await pause(5);
        const ms = Math.max(...service.turns());
        if (ms > most) console.error(`${ms.toFixed(0)} ms: ${request.name}`);
        turns.push({ request, ms });
      }
      measured.push(turns);
    }
  } finally {
    sender.close();
    await service.stop();
  }
  return measured;
}

function shown(name: string, turns: readonly Turn[]): BenchmarkResult {
  const sorted = turns.toSorted((a, b) => b.ms - a.ms);
  const at = (share: number): string => (sorted[Math.floor((1 - share) * (sorted.length - 1))]?.ms ?? 0).toFixed(0);
  const worst = sorted
    .slice(0, 8)
    .map(({ request, ms }) => `${ms.toFixed(0)} ${request.name}`)
    .join("; ");
  return result(
    `longest turn of ${String(turns.length)} requests, ${name} / ${String(most)} ms of processor time`,
    (sorted[0]?.ms ?? 0) / most,
    { atMost: 1 },
    `p50 ${at(0.5)}, p99 ${at(0.99)}, p100 ${at(1)} ms: ${worst}`,
  );
}

const measure =
  (of: string, requests: readonly AttackRequest[]) =>
  async ({ kind, environment, token }: FilledDatabase): Promise<readonly BenchmarkResult[]> => {
    const [once = [], again = []] = await longestTurns(environment, token, [requests, requests]);
    const worst = once.toSorted((a, b) => b.ms - a.ms).slice(0, askedFirst);
    const first: Turn[] = [];
    for (const { request } of worst) first.push(...(await longestTurns(environment, token, [[request]])).flat());
    return [
      shown(`${of}, once, ${kind}`, once),
      shown(`${of}, again, ${kind}`, again),
      shown(`${of}, the worst of them first in a process, ${kind}`, first),
    ];
  };

/**
 * The whole corpus of attacks, and then those of a plan of 17,000 lines, against the built service, one request after another: the longest turn of its event loop, by
 * processor time of its main thread, on a Postgres server and on the embedded database (which runs in that thread).
 */
const run = async (): Promise<readonly BenchmarkResult[]> => [
  ...(await onBothDatabases(measure("all attacks", corpus))),
  ...(await onBothDatabases(measure("of a plan of 17,000 lines", ofLargePlan), [
    largeBundle({ components: 500, lines: 30, meals: 60 }),
  ])),
];

export const longestTurn: Benchmark = { name: "longest-turn", isLong: true, run };
