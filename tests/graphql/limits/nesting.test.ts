import fc from "fast-check";
import { GraphQLError, parse } from "graphql";
import { expect, it } from "vitest";
import { documentLimits } from "../../../src/graphql/limits/document-limits.js";
import { deepestNesting, nestingFault } from "../../../src/graphql/limits/nesting.js";

const { tokens } = documentLimits;

it.each(["{", "[", "(", "query q($x: [", "{ a(b: [", "{ a(b: {c: ", "query ($a: Int = ["])(
  "a document that opens %s again and again is refused before it is parsed",
  (opening) => {
    const fault = nestingFault(opening.repeat(tokens), tokens);
    expect(fault?.message).toContain("nested brackets");
    expect(fault?.locations).toHaveLength(1);
  },
);

it("brackets that are closed again, in texts and in remarks do not count", () => {
  expect(nestingFault(`{ ${"a(b: [[1]]) ".repeat(200)} }`, tokens)).toBeNull();
  expect(nestingFault(`{ a(b: "${"{".repeat(500)}") # ${"[".repeat(500)}\n }`, tokens)).toBeNull();
  expect(nestingFault(`{ a(b: """${"{".repeat(500)}""") }`, tokens)).toBeNull();
});

it("law: whatever is let through, the parser reads or refuses with a place", () => {
  const piece = fc.constantFrom("{", "}", "[", "]", "(", ")", "a", ":", "$b", '"', "...", "on", "query", "1", " ", "!");
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 3_000 }), (pieces) => {
      const text = pieces.join(" ");
      if (nestingFault(text, tokens) !== null) return;
      try {
        parse(text, { maxTokens: tokens });
      } catch (error) {
        expect(error).toBeInstanceOf(GraphQLError);
      }
    }),
    { numRuns: 300 },
  );
  expect(() => parse("[".repeat(deepestNesting), { maxTokens: tokens })).toThrow(GraphQLError);
});
