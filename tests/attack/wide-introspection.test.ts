import { executeSync, parse } from "graphql";
import { describe, expect, it } from "vitest";
import { compiledOperations } from "../../src/graphql/server/compiled-operations.js";
import { usualEngine } from "../../src/graphql/server/engine-options.js";
import { introspectionLimits } from "../../src/graphql/limits/introspection-size.js";
import { createSchema } from "../../src/graphql/schema.js";
import { hostileDocuments } from "../graphql/limits/hostile-documents.js";

const schema = createSchema();

const times = (count: number, text: (at: number) => string): string =>
  Array.from({ length: count }, (_, at) => text(at)).join(" ");

/** Names for names for names, written out or by fragments, with what tells most or least for its price. */
const wide = (schemas: number, types: number, fields: number, asked: string): readonly string[] => [
  `{ ${times(schemas, (a) => `a${a}: __schema { ${times(types, (b) => `b${b}: types { ${times(fields, (c) => `c${c}: fields { ${asked} }`)} }`)} }`)} }`,
  `{ ${times(schemas, (a) => `a${a}: __schema { ...S }`)} } fragment S on __Schema { ${times(types, (b) => `b${b}: types { ...T }`)} }
    fragment T on __Type { ${times(fields, (c) => `c${c}: fields(includeDeprecated: true) { ${asked} }`)} }`,
  `query ($n: String!) { ${times(schemas, (a) => `a${a}: __type(name: $n) { ...T }`)} }
    fragment T on __Type { ${times(types, (b) => `b${b}: fields { type { ...U } }`)} }
    fragment U on __Type { ${times(fields, (c) => `c${c}: ofType { fields { ${asked} } }`)} }`,
];

/** Of the processor, so that a busy machine does not count. For the line that is printed: nothing is held against it. */
const spent = (before: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
};

const sizes = [1, 2, 3, 4, 5, 10, 16, 28];
const corpus = [
  ...sizes.flatMap((a) =>
    sizes.flatMap((b) =>
      ["name", "description", "args { type { ofType { name } } }"].flatMap((asked) => wide(1, a, b, asked)),
    ),
  ),
  ...wide(4, 10, 10, "name description"),
  ...wide(16, 16, 16, "name description"),
  ...hostileDocuments.map(({ query }) => query).filter((query) => /__schema|__type/.test(query)),
];

describe("an attack by wide questions about the schema", () => {
  it("is refused before it is run, or answered within its price, its entries and its bytes", () => {
    const documents = compiledOperations(schema);
    const worst = { points: 0, bytes: 0, readingMs: 0, runningMs: 0 };
    let run = 0;
    for (const source of corpus) {
      const begun = process.cpuUsage();
      const compiled = documents.compile(source);
      worst.readingMs = Math.max(worst.readingMs, spent(begun));
      const [operation] = compiled.ok ? compiled.operations : [];
      if (operation === undefined) continue;
      const points = operation.cost({ n: "Query" });
      if (points > usualEngine.costLimit) continue;
      const running = process.cpuUsage();
      const { data, errors } = executeSync({ schema, document: parse(source), variableValues: { n: "Query" } });
      worst.runningMs = Math.max(worst.runningMs, spent(running));
      const bytes = Buffer.byteLength(JSON.stringify(data));
      expect(errors).toBeUndefined();
      expect(bytes).toBeLessThanOrEqual(Math.min(32 * points, introspectionLimits.bytes));
      expect(points).toBeLessThanOrEqual(introspectionLimits.entries + introspectionLimits.bytes / 32);
      run += 1;
      worst.points = Math.max(worst.points, points);
      worst.bytes = Math.max(worst.bytes, bytes);
    }
    console.info(`${corpus.length} wide questions, ${run} answered; at most ${JSON.stringify(worst)}`);
    expect(run).toBeGreaterThan(20);
    expect(run).toBeLessThan(corpus.length);
    expect(worst.points).toBeGreaterThan(20_000);
  });
});
