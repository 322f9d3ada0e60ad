import { getIntrospectionQuery } from "graphql";
import { afterAll, beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { narrowIntrospectionPoints } from "../../../src/graphql/limits/introspection-size.js";
import type { Stage } from "../../../src/services/answer-stage.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

describeOnBothDatabases("the standard query of introspection", (open) => {
  let app: TestApp;
  let database: TestDatabase;
  const stages: Stage[] = [];

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(
      database.data,
      undefined,
      undefined,
      {
        aroundStage: (stage, work) => {
          stages.push(stage);
          return work();
        },
      },
      { graphql: { ...usualEngine, costLimit: 100 } },
    );
  });
  afterAll(() => app.close());

  it("is answered with its price, whatever the limit is, and run once for all that ask the same, with a token or without", async () => {
    const first = await app.ask(getIntrospectionQuery());
    expect([first.status, first.errors]).toEqual([200, []]);
    expect(JSON.parse(first.text)).toMatchObject({
      data: { __schema: { queryType: { name: "Query" } } },
      extensions: { cost: { asked: narrowIntrospectionPoints, limit: 100 } },
    });
    stages.length = 0;
    const token = await app.tokenFor(null, ["READ_DRAFTS"]);
    for (const query of [
      getIntrospectionQuery(),
      getIntrospectionQuery().replace("IntrospectionQuery", "Another"),
      getIntrospectionQuery().replaceAll(/\s+/g, "\n#\n"),
    ]) {
      expect((await app.ask(query)).text).toBe(first.text);
      expect((await app.ask(query, {}, token)).text).toBe(first.text);
    }
    expect(stages).not.toContain("execute");
  });

  it("is not mixed up with one that asks for less, nor answers a query that asks for something beside it", async () => {
    const whole = await app.ask(getIntrospectionQuery());
    const less = await app.ask(getIntrospectionQuery({ descriptions: false }));
    const describes = ({ text }: { readonly text: string }): boolean => text.includes('"description":');
    expect([less.status, describes(less), describes(whole)]).toEqual([200, false, true]);
    const beside = await app.ask("{ __schema { queryType { name } } ruleSets { code } }");
    expect(beside.data).toHaveProperty("ruleSets");
  });

  it("is the only one that is cheap: the same under other names has its full price", async () => {
    const { status, errors } = await app.ask(getIntrospectionQuery().replace("types {", "all: types {"));
    expect([status, errors[0]?.extensions["code"]]).toEqual([400, "COST_TOO_HIGH"]);
  });
});
