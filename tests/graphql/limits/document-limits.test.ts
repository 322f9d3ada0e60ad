import { buildSchema, parse, specifiedRules, validate } from "graphql";
import { describe, expect, it } from "vitest";
import { documentLimits, documentLimitsRule } from "../../../src/graphql/limits/document-limits.js";

const schema = buildSchema("type Query { a: Query b: Int }");
const errorsOf = (text: string) => validate(schema, parse(text), [...specifiedRules, documentLimitsRule]);
const nested = (depth: number): string => (depth === 1 ? "b" : `a { ${nested(depth - 1)} }`);
const aliased = (count: number): string => Array.from({ length: count }, (_, index) => `x${index}: b`).join(" ");

describe("the limits of a document", () => {
  it("let an operation pass that is exactly as deep, and refuse one level more", () => {
    expect(errorsOf(`{ ${nested(documentLimits.depth)} }`)).toEqual([]);
    const [error] = errorsOf(`{ ${nested(documentLimits.depth + 1)} }`);
    expect(error?.extensions).toEqual({ what: "depth", size: documentLimits.depth + 1, limit: documentLimits.depth });
  });

  it("O-40: let an operation pass with just as many aliases, and refuse 200 of them", () => {
    expect(errorsOf(`{ ${aliased(documentLimits.aliases)} }`)).toEqual([]);
    expect(errorsOf(`{ ${aliased(200)} }`)[0]?.extensions).toEqual({
      what: "aliases",
      size: 200,
      limit: documentLimits.aliases,
    });
  });

  it("count what fragments add each time they are spread", () => {
    const text = `{ ${aliased(10)} a { ...F a { ...F a { ...F } } } } fragment F on Query { ${aliased(10)} }`;
    expect(errorsOf(text)[0]?.extensions).toMatchObject({ what: "aliases", size: 40 });
  });

  it("refuse a small document whose fragments unfold into very many fields, at once", () => {
    const levels = Array.from(
      { length: 14 },
      (_, level) => `fragment F${level} on Query { a { ...F${level + 1} } c: a { ...F${level + 1} } }`,
    );
    const text = `{ ...F0 } ${levels.join(" ")} fragment F14 on Query { b }`;
    const found = validate(schema, parse(text), [documentLimitsRule]).map(({ extensions }) => extensions["what"]);
    expect(found).toEqual(["aliases", "fields"]);
  });

  it("leave circles to the rule that names them", () => {
    const [error] = errorsOf("{ ...F } fragment F on Query { a { ...F } }");
    expect(error?.message).toContain("Cannot spread fragment");
  });

  it("do not measure introspection", () => {
    const types = "ofType { ".repeat(20) + "name" + " }".repeat(20);
    expect(validate(schema, parse(`{ __schema { types { ${types} } } }`), [documentLimitsRule])).toEqual([]);
  });
});
