import { usualEngine } from "../src/graphql/server/engine-options.js";
import { openGraphqlServer, type GraphqlServer } from "../src/graphql/server/graphql-server.js";
import { readBody } from "../src/graphql/server/read-request.js";
import { anyone } from "../src/services/access/actor.js";
import type { Data, Deps } from "../src/services/deps.js";
import { hostileDocuments, type HostileDocument } from "../tests/graphql/limits/hostile-documents.js";
import { median, result, type Benchmark } from "./benchmark.js";

/** What a refusal may take, in milliseconds. */
const most = 20;

/** They take turns, so that a noisy moment hits all documents alike. The first three warm up. */
const rounds = 15;

/** A refused document reads nothing. */
const noData = new Proxy({} as Data, {
  get: (_, name) => {
    throw new Error(`a refused document asks for ${String(name)}`);
  },
});
const quiet = { info: () => undefined, warn: () => undefined, error: () => undefined };
const deps: Deps = { data: noData, clock: () => new Date(0), log: quiet, knownRules: new Map() };
const type = { contentType: "application/json; charset=utf-8", older: false };

/** From the bytes of a body to those of the answer. */
async function refuse(server: GraphqlServer, { query, variables = {} }: HostileDocument): Promise<void> {
  const bytes = Buffer.from(JSON.stringify({ query, variables }));
  const answer = await server.answer(
    { method: "POST", bytes, type, read: () => readBody(bytes) },
    {
      charge: () => undefined,
      chargeOwed: () => undefined,
      report: () => undefined,
      gone: () => new AbortController().signal,
    },
    { deps, actor: anyone, requestId: "refusal" },
  );
  if (answer.status !== 400) throw new Error(`this was not refused: ${query.slice(0, 80)}`);
}

/** The time until each hostile document of the tests is refused, none of them kept; the slowest against twenty milliseconds. */
const refusals = async () => {
  const server = await openGraphqlServer(usualEngine, quiet);
  const times = hostileDocuments.map((): number[] => []);
  for (let round = -3; round < rounds; round += 1) {
    for (const [at, document] of hostileDocuments.entries()) {
      const begun = performance.now();
      await refuse(server, document);
      if (round >= 0) times[at]?.push(performance.now() - begun);
    }
  }
  await server.stop();
  const medians = times.map(median);
  const slowest = Math.max(...medians);
  const name = hostileDocuments[medians.indexOf(slowest)]?.name ?? "";
  const detail = `${slowest.toFixed(2)} ms: ${name}; median ${median(medians).toFixed(2)} ms`;
  return [result(`slowest refusal / ${most} ms`, slowest / most, { atMost: 1 }, detail)];
};

export const refusalBenchmarks: readonly Benchmark[] = [{ name: "refusals", run: refusals }];
