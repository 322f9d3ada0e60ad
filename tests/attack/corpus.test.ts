import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { Agent, get as httpGet } from "node:http";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startService, type ServiceProcess } from "../app/processes/service-process.js";
import { prepareFuzzedService } from "../fuzz/fuzzed-service.js";
import { faultOf, RequestSender, type FuzzedAnswer } from "../fuzz/request-sender.js";
import { demo } from "../graphql/open-test-app.js";
import { createTestDatabase, dropTestDatabase } from "../kit/databases.js";
import type { AttackRequest, Target } from "./attack-request.js";
import { attackCorpus } from "./corpus.js";
import { freshRegions } from "./graphql-attacks.js";

const target: Target = {
  publisher: demo.publisher.slug,
  plans: demo.plans.map(({ slug }) => slug),
  foods: demo.foods.map(({ slug }) => slug),
  components: demo.components.map(({ slug }) => slug),
};
const corpus = attackCorpus(target);

/** The most bytes that an answer may have, with room for what stands around it. */
const largestAnswer = 4 * 1024 * 1024;
/** Megabytes of the heap of JavaScript: what would grow without end, ends the service here. */
const heap = 256;

/** Asks whether the service lives, again and again, and keeps the longest time that it took. */
function watchHealth(address: string): { readonly worst: () => number; readonly stop: () => void } {
  const agent = new Agent({ keepAlive: true });
  let [worst, goes] = [0, true];
  const ask = (): void => {
    const begin = performance.now();
    httpGet(`${address}/healthz`, { agent }, (answer) => {
      answer.resume().on("end", () => {
        worst = Math.max(worst, performance.now() - begin);
        if (goes) setTimeout(ask, 5);
      });
    }).on("error", () => undefined);
  };
  ask();
  return {
    worst: () => {
      const found = worst;
      worst = 0;
      return found;
    },
    stop: () => {
      goes = false;
      agent.destroy();
    },
  };
}

describe("the service under attack", () => {
  let url: string;
  let service: ServiceProcess;
  let sender: RequestSender;
  let token: string;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    url = await createTestDatabase("migrated");
    ({ token } = await prepareFuzzedService(url));
    // Steps are what is asserted of work (steps.test.ts); a busy machine is to end no request.
    const unlimited = {
      PREPWRIGHT_QUERY_SECONDS: "25",
      PREPWRIGHT_SHED_DELAY_MS: "0",
      NODE_OPTIONS: `--max-old-space-size=${String(heap)}`,
    };
    service = await startService({ DATABASE_URL: url, LOG_LEVEL: "warn", NODE_ENV: "production", ...unlimited });
    sender = new RequestSender(service.address, 4);
  });
  afterAll(async () => {
    sender.close();
    await service.stop();
    await dropTestDatabase(url);
  });

  const send = (request: AttackRequest): Promise<FuzzedAnswer> =>
    sender.send({
      ...request,
      headers: request.authorised === true ? { ...request.headers, authorization: `Bearer ${token}` } : request.headers,
    });
  const hasEnded = (): boolean => service.child.exitCode !== null || service.child.signalCode !== null;
  const memory = (): number =>
    hasEnded()
      ? Number.NaN
      : Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${String(service.child.pid)}/status`, "utf8"))?.[1] ?? 0) /
        1000;

  it("has more than 300 requests to answer", () => {
    expect(corpus.length).toBeGreaterThan(300);
  });

  it("answers every request, with no fault of its own, at most 4 MB, and lives", async () => {
    const health = watchHealth(service.address);
    const before = memory();
    const faults: string[] = [];
    const blocks: { readonly name: string; readonly ms: number }[] = [];
    let largest = { name: "", bytes: 0 };
    for (const request of corpus) {
      const answer = await send(request);
      blocks.push({ name: request.name, ms: Math.round(health.worst()) });
      const fault = service.child.exitCode !== null ? "the service ended" : faultOf(request, answer);
      if (fault !== null) faults.push(`${request.name}: ${fault}`);
      if (service.child.exitCode !== null) break;
      const bytes = answer.kind === "ANSWER" ? Buffer.byteLength(answer.text) : 0;
      if (bytes > largest.bytes) largest = { name: request.name, bytes };
    }
    health.stop();
    const slowest = (isOurs: boolean): string => {
      const names = new Set(corpus.filter((each) => (each.authorised === true) === isOurs).map(({ name }) => name));
      const found = blocks.filter(({ name }) => names.has(name)).toSorted((a, b) => b.ms - a.ms);
      return found
        .slice(0, 5)
        .map(({ name, ms }) => `${String(ms)} ms (${name})`)
        .join(", ");
    };
    console.log(
      `${String(corpus.length)} requests; /healthz waited longest for strangers' ${slowest(false)}; for writers' ${slowest(true)}; ` +
        `largest answer ${String(largest.bytes)} bytes (${largest.name}); memory grew from ${before.toFixed(0)} to ${memory().toFixed(0)} MB`,
    );
    expect(faults).toEqual([]);
    expect(service.errors.filter((line) => /"level":[56]0/.test(line))).toEqual([]);
    expect(largest.bytes).toBeLessThanOrEqual(largestAnswer);
  }, 900_000);

  it("keeps nothing for each new region that is asked for: 400 times 28", async () => {
    for (let at = 20; at < 420; at++) {
      const answer = await send(freshRegions(target, at));
      if (answer.kind !== "ANSWER" || answer.status >= 500) expect(answer).toBe("an answer");
    }
    expect(hasEnded()).toBe(false);
  }, 300_000);
});
