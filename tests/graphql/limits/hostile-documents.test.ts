import { afterAll, beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { hostileDocuments } from "./hostile-documents.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

describeOnBothDatabases("a hostile document", (open) => {
  let app: TestApp;
  let closed: TestApp;
  let database: TestDatabase;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data);
    await loadSeeds(app.deps, demo);
    closed = await openTestApp(database.data, undefined, undefined, undefined, {
      graphql: { ...usualEngine, costLimit: 1000, introspection: false },
    });
  });
  afterAll(() => Promise.all([app.close(), closed.close()]));

  it.each(hostileDocuments)("O-40: is refused with its code and without a statement: $name", async (document) => {
    const { query, variables, code } = document;
    database.statements.clear();
    const { status, errors, data } = await app.ask(query, variables);
    expect([status, errors[0]?.extensions["code"], data]).toEqual([400, code, undefined]);
    expect(errors.length).toBeLessThanOrEqual(21);
    expect(database.statements.sent).toEqual([]);
  });

  it("names the limit that it breaks", async () => {
    const { errors } = await app.ask(
      `{ ${Array.from({ length: 31 }, (_, n) => `a${n}: ruleSets { code }`).join(" ")} }`,
    );
    expect(errors[0]?.extensions).toMatchObject({ code: "TOO_LARGE", what: "aliases", size: 31, limit: 30 });
  });

  it("learns nothing of the schema where introspection is off, not even by guessing", async () => {
    for (const query of ["{ __schema { types { name } } }", '{ __type(name: "Plan") { name } }']) {
      const { status, errors } = await closed.ask(query);
      expect([status, errors[0]?.extensions["code"]]).toEqual([400, "GRAPHQL_VALIDATION_FAILED"]);
    }
    expect((await closed.ask("{ __typename }")).data).toEqual({ __typename: "Query" });
    for (const [query, variables] of [
      ["{ plam { title } }", {}],
      ['{ plan(publisher: "p", slugg: "s") { title } }', {}],
      ['{ plan(publisher: "p", slug: "s") { titel ... on Plam { title } } }', {}],
      ['query ($k: DraftKind) { drafts(publisher: "p", kind: $k) { edges { cursor } } }', { k: "PLAM" }],
      ['{ drafts(publisher: "p", kind: PLAM) { edges { cursor } } }', {}],
      [
        'query ($h: HouseholdInput) { plan(publisher: "p", slug: "s") { scaled(servings: 1, household: $h) { servings } } }',
        { h: { regions: "x" } },
      ],
    ] as const) {
      const told = await app.ask(query, variables);
      const untold = await closed.ask(query, variables);
      expect(told.text).toContain("Did you mean");
      expect([untold.status, untold.text.includes("Did you mean")]).toEqual([400, false]);
    }
  });
});
