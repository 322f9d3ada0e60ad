import fc from "fast-check";
import {
  executeSync,
  getIntrospectionQuery,
  parse,
  print,
  stripIgnoredCharacters,
  type IntrospectionOptions,
} from "graphql";
import { describe, expect, it } from "vitest";
import { compiledOperations } from "../../src/graphql/server/compiled-operations.js";
import { introspectionLimits, narrowIntrospectionPoints } from "../../src/graphql/limits/introspection-size.js";
import { createSchema } from "../../src/graphql/schema.js";
import { arbitraryIntrospection } from "../kit/arbitrary/arbitrary-introspection.js";

const schema = createSchema();
const documents = compiledOperations(schema);

/** Members of all objects in an answer: what was looked up and written. */
const entriesIn = (value: unknown): number =>
  typeof value !== "object" || value === null
    ? 0
    : Object.values(value)
        .map(entriesIn)
        .reduce((a, b) => a + b, Array.isArray(value) ? 0 : Object.keys(value).length);

const answerText = (source: string): string => {
  const { data, errors } = executeSync({ schema, document: parse(source) });
  if (errors) throw new Error(JSON.stringify(errors));
  return JSON.stringify(data);
};

const answerTo = (source: string) => {
  const text = answerText(source);
  return { bytes: Buffer.byteLength(text), entries: entriesIn(JSON.parse(text)) };
};

const compiledOf = (source: string) => {
  const compiled = documents.compile(source);
  return compiled.ok ? (compiled.operations[0] ?? null) : compiled.errors;
};

const pointsOf = (source: string): number => {
  const compiled = compiledOf(source);
  if (compiled === null || !("cost" in compiled)) throw new Error(`refused: ${JSON.stringify(compiled)}`);
  return compiled.cost({});
};

const every: readonly IntrospectionOptions[] = Array.from({ length: 128 }, (_, bits) => ({
  descriptions: (bits & 1) > 0,
  specifiedByUrl: (bits & 2) > 0,
  directiveIsRepeatable: (bits & 4) > 0,
  schemaDescription: (bits & 8) > 0,
  inputValueDeprecation: (bits & 16) > 0,
  oneOf: (bits & 32) > 0,
  experimentalDirectiveDeprecation: (bits & 64) > 0,
}));

describe("a question about the schema (law 8: a price follows the work)", () => {
  it("is answered with no more entries than its points, and no more than 32 bytes a point, whatever it asks", () => {
    let run = 0;
    let dearest = 0;
    fc.assert(
      fc.property(arbitraryIntrospection(schema, 6), (source) => {
        const compiled = compiledOf(source);
        if (compiled === null || !("cost" in compiled)) {
          // Circles three deep are for a rule of the specification; wide ones for our limits.
          expect(compiled?.every(({ message, extensions }) => "limit" in extensions || /depth/.test(message))).toBe(
            true,
          );
          return;
        }
        const points = compiled.cost({});
        const { entries, bytes } = answerTo(source);
        run += 1;
        dearest = Math.max(dearest, points);
        expect(entries).toBeLessThanOrEqual(points);
        expect(bytes).toBeLessThanOrEqual(32 * points);
        expect(bytes).toBeLessThanOrEqual(introspectionLimits.bytes);
        // Not many times too much either: only deprecated members, which are counted, may be left out.
        expect(points).toBeLessThanOrEqual(2 * (entries + bytes / 32) + 50);
      }),
      { numRuns: 500 },
    );
    expect(run).toBeGreaterThan(80);
    expect(dearest).toBeGreaterThan(1_000);
  });

  it("is cheap where it is the standard query, with any of its options and as deep as it may be", () => {
    for (const options of every) {
      for (const typeDepth of options === every[0] ? [0, 3, 7, 9, 15] : [9]) {
        const compiled = compiledOf(getIntrospectionQuery({ ...options, typeDepth }));
        if (compiled === null || !("cost" in compiled)) throw new Error(`refused: ${JSON.stringify(compiled)}`);
        expect(compiled.cost({})).toBe(narrowIntrospectionPoints);
        expect(compiled.aboutSchema).not.toBeNull();
      }
    }
  });

  it("is cheap as older clients ask it, laid out and named in another way, without fragments, and with the names of types", () => {
    for (const source of olderQueries) {
      expect(pointsOf(source)).toBe(narrowIntrospectionPoints);
    }
    const [first = "", ...same] = [
      getIntrospectionQuery(),
      getIntrospectionQuery().replace("IntrospectionQuery", "Schema"),
      getIntrospectionQuery().replace(/query IntrospectionQuery/, ""),
      getIntrospectionQuery().replaceAll(/\s+/g, " # a comment\n "),
      getIntrospectionQuery().replaceAll("TypeRef", "T").replaceAll("...T", "... on __Type { ...T }"),
      stripIgnoredCharacters(getIntrospectionQuery()),
      print(parse(getIntrospectionQuery())),
    ].map((source) => {
      expect(pointsOf(source)).toBe(narrowIntrospectionPoints);
      const compiled = compiledOf(source);
      return compiled !== null && "cost" in compiled ? (compiled.aboutSchema ?? "") : "";
    });
    expect(first).not.toBe("");
    expect(new Set(same)).toEqual(new Set([first]));
  });

  it("is told apart from another: its answer is never given for that one's", () => {
    const asked = fc.shuffledSubarray(["name", "kind", "isOneOf", "fields { name }", "ofType { name }"], {
      minLength: 1,
    });
    const questionOf = (source: string): string | null => {
      const compiled = compiledOf(source);
      return compiled !== null && "cost" in compiled ? compiled.aboutSchema : null;
    };
    fc.assert(
      fc.property(asked, asked, fc.boolean(), (one, other, deprecated) => {
        const first = `{ __schema { types { ${one.join(" ")} } } }`;
        const second = `query Q { __schema { types { ...T } } } fragment T on __Type { ${other.join(" ")} }`.replace(
          "fields",
          deprecated ? "fields(includeDeprecated: true)" : "fields",
        );
        expect(questionOf(first)).not.toBeNull();
        if (questionOf(first) === questionOf(second)) expect(answerText(second)).toBe(answerText(first));
        else expect([one.join(), deprecated]).not.toEqual([other.join(), false]);
      }),
    );
  });
});

/** From memory of what clients of 2015 to 2020 sent: no kinds of root types, types seven and three levels deep, no deprecated inputs. */
const olderQueries = [3, 7].map(
  (depth) => `
    query IntrospectionQuery {
      __schema {
        queryType { name } mutationType { name } subscriptionType { name }
        types { ...FullType }
        directives { name description locations args { ...InputValue } }
      }
    }
    fragment FullType on __Type {
      kind name description
      fields(includeDeprecated: true) {
        name description args { ...InputValue } type { ...TypeRef } isDeprecated deprecationReason
      }
      inputFields { ...InputValue }
      interfaces { ...TypeRef }
      enumValues(includeDeprecated: true) { name description isDeprecated deprecationReason }
      possibleTypes { ...TypeRef }
      __typename
    }
    fragment InputValue on __InputValue { name description type { ...TypeRef } defaultValue }
    fragment TypeRef on __Type { kind name ${"ofType { kind name ".repeat(depth)}${"}".repeat(depth)} }`,
);
