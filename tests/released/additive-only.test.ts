import { readdirSync, readFileSync } from "node:fs";
import { buildSchema, findBreakingChanges, findDangerousChanges } from "graphql";
import { describe, expect, it } from "vitest";
import { createSchema } from "../../src/graphql/schema.js";

/** What was released stands in a folder named for its version; the newest is what clients were written against. */
const versions = readdirSync("tests/released", { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

describe.each(versions)("the API of %s", (version) => {
  const released = buildSchema(readFileSync(`tests/released/${version}/schema.graphql`, "utf8"));

  // Judged by the reference implementation of GraphQL, which knows what breaks a client.
  it("is all there: nothing that a client of it may ask is gone or other", () => {
    expect(findBreakingChanges(released, createSchema())).toEqual([]);
  });

  it("may have got more values in an enumeration, which clients are told to expect, and nothing else that surprises one", () => {
    const surprises = findDangerousChanges(released, createSchema()).filter(
      ({ type }) =>
        type !== "VALUE_ADDED_TO_ENUM" && type !== "OPTIONAL_INPUT_FIELD_ADDED" && type !== "OPTIONAL_ARG_ADDED",
    );
    expect(surprises).toEqual([]);
  });
});

it("a field that is taken away, and one that asks for more than before, are found", () => {
  const before = buildSchema("type Query { plan(slug: String): String list: String }");
  const after = buildSchema("type Query { plan(slug: String!): String }");
  expect(findBreakingChanges(before, after).map(({ type }) => type)).toEqual(["FIELD_REMOVED", "ARG_CHANGED_KIND"]);
});
