import { compiledOperations } from "../src/graphql/compiled-operations.js";
import { usualEngine } from "../src/graphql/engine-options.js";
import { createSchema } from "../src/graphql/schema.js";
import { hostileDocuments, type HostileDocument } from "../tests/graphql/hostile-documents.js";
import { compared, result, type Benchmark } from "./benchmark.js";

/** What a refusal may take, in milliseconds. */
const most = 20;

const operations = compiledOperations(createSchema());

/** As the engine does it, up to the refusal. */
function refuse({ query, variables }: HostileDocument): void {
  const compiled = operations.compile(query);
  const operation = compiled.ok ? compiled.operations[0] : undefined;
  const coerced = operation?.coerce(variables ?? {});
  const cost = coerced?.ok === true ? operation?.cost(coerced.variables) : undefined;
  if (cost !== undefined && cost <= usualEngine.costLimit)
    throw new Error(`this was not refused: ${query.slice(0, 80)}`);
}

/** The time until each hostile document of the tests is refused, none of them kept; the slowest against twenty milliseconds. */
const refusals = () => {
  const times = compared(hostileDocuments.map((document) => () => refuse(document)));
  const slowest = Math.max(...times);
  const name = hostileDocuments[times.indexOf(slowest)]?.name ?? "";
  const detail = `${slowest.toFixed(2)} ms: ${name}; median ${times.toSorted((a, b) => a - b)[times.length >> 1]?.toFixed(2) ?? ""} ms`;
  return Promise.resolve([result(`slowest refusal / ${most} ms`, slowest / most, { atMost: 1 }, detail)]);
};

export const refusalBenchmarks: readonly Benchmark[] = [{ name: "refusals", run: refusals }];
