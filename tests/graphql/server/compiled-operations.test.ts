import { buildSchema } from "graphql";
import { describe, expect, it } from "vitest";
import {
  compiledOperations,
  keptDocuments,
  type CompiledDocument,
} from "../../../src/graphql/server/compiled-operations.js";

const schema = buildSchema("type Query { a(n: Int): Int }");

/** Whether it was found again, and not compiled anew. */
const isKept = (store: ReturnType<typeof compiledOperations>, source: string, before: CompiledDocument): boolean =>
  store.compile(source) === before;

describe("compiled operations", () => {
  it("are the same for the same text", () => {
    const store = compiledOperations(schema);
    expect(isKept(store, "{ a }", store.compile("{ a }"))).toBe(true);
    expect(isKept(store, "{ a  }", store.compile("{ a }"))).toBe(false);
  });

  it("are kept up to a number, those asked for last", () => {
    const store = compiledOperations(schema, { kept: { ...keptDocuments, max: 3 } });
    const [first, second] = ["{ a1: a }", "{ a2: a }", "{ a3: a }"].map((text) => store.compile(text));
    store.compile("{ a1: a }");
    store.compile("{ a4: a }");
    expect(first && isKept(store, "{ a1: a }", first)).toBe(true);
    expect(second && isKept(store, "{ a2: a }", second)).toBe(false);
  });

  it("are kept up to so many characters of all documents, and none that is very long", () => {
    const store = compiledOperations(schema, { kept: { max: 100, maxSize: 100, maxEntrySize: 60 } });
    const text = (name: string, length: number): string => `{ a } #${name}`.padEnd(length, "x");
    const first = store.compile(text("a", 50));
    const second = store.compile(text("b", 50));
    expect([isKept(store, text("a", 50), first), isKept(store, text("b", 50), second)]).toEqual([true, true]);
    store.compile(text("c", 1 + text("c", 20).length));
    expect(isKept(store, text("b", 50), second)).toBe(true);
    const long = store.compile(text("long", 61));
    expect(isKept(store, text("long", 61), long)).toBe(false);
    expect(isKept(store, text("b", 50), second)).toBe(true);
  });

  it("do not include refused documents, so that nonsense pushes nothing out", () => {
    const store = compiledOperations(schema, { kept: { ...keptDocuments, max: 1 } });
    const good = store.compile("{ a }");
    const bad = store.compile("{ b }");
    expect([good.ok, bad.ok]).toEqual([true, false]);
    expect(isKept(store, "{ b }", bad)).toBe(false);
    expect(isKept(store, "{ a }", good)).toBe(true);
  });

  it("say at most so many faults of variables as anybody reads", () => {
    const compiled = compiledOperations(schema).compile(
      `query (${Array.from({ length: 40 }, (_, n) => `$v${n}: Int!`).join(" ")}) { ${Array.from({ length: 40 }, (_, n) => `f${n % 20}_${n}: a(n: $v${n})`).join(" ")} }`,
    );
    // Forty aliases are more than a document may have; what is left is about variables.
    expect(compiled.ok).toBe(false);
    const narrow = compiledOperations(schema).compile(
      `query (${Array.from({ length: 29 }, (_, n) => `$v${n}: Int!`).join(" ")}) { ${Array.from({ length: 29 }, (_, n) => `f${n}: a(n: $v${n})`).join(" ")} }`,
    );
    const coerced = narrow.ok ? narrow.operations[0]?.coerce({}) : undefined;
    expect(coerced?.ok === false ? coerced.errors.length : 0).toBe(21);
  });
});
