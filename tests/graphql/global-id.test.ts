import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { globalId, readGlobalId, type NodeRef } from "../../src/graphql/global-id.js";

const key = fc.string({ minLength: 1, unit: "grapheme" });

const id = fc.uuid();

const anyRef: fc.Arbitrary<NodeRef> = fc.oneof(
  fc.record({ kind: fc.constant("Publisher" as const), id }),
  fc.record({ kind: fc.constant("Plan" as const), revision: id }),
  fc.record({ kind: fc.constant("Meal" as const), revision: id, slug: key }),
  fc.record({ kind: fc.constant("Component" as const), revision: id, slug: key }),
  fc.record({ kind: fc.constantFrom("Meal" as const, "Component" as const), revision: id, slug: key, language: key }),
  fc.record({ kind: fc.constant("Food" as const), revision: fc.option(id), slug: key }),
  fc.record({ kind: fc.constant("Food" as const), revision: fc.option(id), slug: key, language: key }),
);

describe("a global id", () => {
  it("reads back as what it was made from, whatever the keys contain", () => {
    fc.assert(
      fc.property(anyRef, (ref) => {
        expect(readGlobalId(globalId(ref))).toEqual(ref);
      }),
    );
  });

  it("needs no escaping in an address", () => {
    fc.assert(
      fc.property(anyRef, (ref) => {
        expect(globalId(ref)).toMatch(/^[A-Za-z0-9_-]+$/);
      }),
    );
  });

  it("is null for any text that this service did not make, and never throws", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const ref = readGlobalId(text);
        expect(ref === null || globalId(ref) === text).toBe(true);
      }),
    );
  });

  it.each([
    "",
    "%",
    "Plan:1",
    Buffer.from("Plan").toString("base64url"),
    Buffer.from("Plan:%E0%A4").toString("base64url"),
  ])("refuses %j", (text) => expect(readGlobalId(text)).toBeNull());
});
