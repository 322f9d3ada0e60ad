import { auditServer } from "graphql-http";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const newer = "application/graphql-response+json";
const json = "application/json";
const typename = { query: "{ __typename }" };

describeOnBothDatabases("the endpoint", (open) => {
  let app: TestApp;
  let database: TestDatabase;
  let url: string;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data);
    url = `${await app.app.listen({ port: 0, host: "127.0.0.1" })}/graphql`;
  });
  afterAll(() => app.close());

  const post = (body: unknown, accept?: string) => {
    const asked = request(app.app.server).post("/graphql");
    return (accept === undefined ? asked : asked.set("accept", accept)).send(body as object);
  };
  const get = (query: Record<string, unknown>, accept = "*/*") =>
    request(app.app.server).get("/graphql").set("accept", accept).query(query);

  it("passes every audit of GraphQL over HTTP (npm graphql-http 1.23.1), with neither warning nor notice", async () => {
    const results = await auditServer({ url });
    const failed = results
      .filter(({ status }) => status !== "ok")
      .map(({ status, id, name }) => `${status} ${id} ${name}`);
    expect(failed).toEqual([]);
    expect(results.length).toBe(61);
  });

  it.each([
    [undefined, json],
    ["", json],
    ["*/*", json],
    ["application/*", json],
    [json, json],
    [newer, newer],
    [`${newer}; charset=utf-8`, newer],
    [`${newer}, ${json};q=0.9`, newer],
    [`${newer};q=0.2, ${json};q=0.9`, json],
    [`${json};q=0, */*`, newer],
    [`text/html, ${newer};q=0.1`, newer],
  ])("answers who accepts %j as %s (RFC 9110, 12.5.1)", async (accept, type) => {
    const { status, headers, body } = await post(typename, accept);
    expect([status, headers["content-type"], headers["vary"]]).toEqual([200, `${type}; charset=utf-8`, "accept"]);
    expect(body.data).toEqual({ __typename: "Query" });
  });

  it.each(["text/html", "image/png, text/*", `${json};q=0`, `${newer}; charset=utf-16`])(
    "refuses who accepts %j before anything is run, in JSON all the same",
    async (accept) => {
      database.statements.clear();
      const { status, type, body } = await post(
        { query: "mutation { revokeToken(input: { id: 1 }) { __typename } }" },
        accept,
      );
      expect([status, type, body.errors[0].extensions.code]).toEqual([406, json, "NOT_ACCEPTABLE"]);
      expect(database.statements.sent).toEqual([]);
    },
  );

  it.each([
    ["{", "GRAPHQL_PARSE_FAILED"],
    ["{ nothing }", "GRAPHQL_VALIDATION_FAILED"],
    ["query A { __typename } query B { __typename }", "OPERATION_RESOLUTION_FAILURE"],
    ["fragment F on Query { __typename }", "GRAPHQL_VALIDATION_FAILED"],
    ["query ($id: ID!) { node(id: $id) { id } }", "BAD_USER_INPUT"],
    ["subscription { __typename }", "GRAPHQL_VALIDATION_FAILED"],
    ["{ ... @defer { __typename } }", "GRAPHQL_VALIDATION_FAILED"],
  ])("refuses %j with %s: 400, or 200 where the older media type is named; never with data", async (query, code) => {
    for (const [accept, expected] of [
      [newer, 400],
      [json, 200],
      ["*/*", 400],
    ] as const) {
      const { status, body } = await post({ query }, accept);
      expect([accept, status, body.errors[0].extensions.code]).toEqual([accept, expected, code]);
      expect(Object.keys(body)).toEqual(["errors"]);
    }
  });

  it.each([
    [{}, "JSON object has no keys"],
    [{ query: 1 }, "queries must be strings"],
    [{ query: "{ __typename }", variables: "x" }, "`variables`"],
    [{ query: "{ __typename }", variables: [] }, "`variables`"],
    [{ query: "{ __typename }", operationName: 1 }, "`operationName`"],
    [{ query: "{ __typename }", extensions: 7 }, "`extensions`"],
  ])("refuses the body %j and says why: %s", async (body, why) => {
    for (const accept of [newer, json]) {
      const answer = await post(body, accept);
      expect([answer.status, answer.body.errors[0].extensions.code]).toEqual([400, "BAD_REQUEST"]);
      expect(answer.body.errors[0].message).toContain(why);
    }
  });

  it("reads a query, its name and its variables from the address", async () => {
    const query = "query A($s: String!) { food(slug: $s) { name } } query B { __typename }";
    const named = await get({ query, operationName: "B" });
    expect([named.status, named.body.data]).toEqual([200, { __typename: "Query" }]);
    const varied = await get({ query, operationName: "A", variables: JSON.stringify({ s: "nothing" }) });
    expect([varied.status, varied.body.data]).toEqual([200, { food: null }]);
    const empty = await get({ query: "{ __typename }", operationName: "", variables: "", extensions: "" });
    expect(empty.status).toBe(200);
  });

  it.each([
    ["query=%7B__typename%7D&variables=%7B", "variables"],
    ["query=%7B__typename%7D&variables=%5B%5D", "variables"],
    ["query=%7B__typename%7D&extensions=1", "extensions"],
    ["query=a&query=b", "query"],
    ["", "query"],
  ])("refuses the address ?%s and names the parameter", async (search, name) => {
    const answer = await request(app.app.server).get(`/graphql?${search}`).set("accept", newer);
    expect([answer.status, answer.body.errors[0].extensions.code]).toEqual([400, "BAD_REQUEST"]);
    expect(answer.body.errors[0].message).toMatch(new RegExp(`\\b${name}\\b`));
  });

  it("never changes anything by GET: it says which method does, and sends no statement", async () => {
    const query = 'mutation { revokeToken(input: { id: "x" }) { problems { code } } }';
    database.statements.clear();
    for (const accept of [newer, json, "*/*"]) {
      const { status, headers, body } = await get({ query }, accept);
      expect([status, headers["allow"], body.errors[0].extensions.code]).toEqual([405, "POST", "METHOD_NOT_ALLOWED"]);
    }
    const chosen = await get({
      query: `query A { __typename } ${query.replace("mutation", "mutation B")}`,
      operationName: "B",
    });
    expect(chosen.status).toBe(405);
    expect(database.statements.sent).toEqual([]);
    const other = await get({
      query: `query A { __typename } ${query.replace("mutation", "mutation B")}`,
      operationName: "A",
    });
    expect(other.status).toBe(200);
  });

  it("answers HEAD as GET, without a body", async () => {
    const answer = await request(app.app.server).head("/graphql").query(typename);
    expect([answer.status, answer.text]).toEqual([200, undefined]);
  });

  it("gives a browser that asks nothing the page, and one that follows a link with a query the answer", async () => {
    const browser = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";
    const page = await get({}, browser);
    expect([page.status, page.type]).toEqual([200, "text/html"]);
    const answer = await get(typename, browser);
    expect([answer.status, answer.type]).toEqual([200, json]);
  });

  it("gives every answer an id, the caller's own where it is harmless", async () => {
    const own = await request(app.app.server).get("/healthz").set("x-request-id", "abc-123");
    expect(own.headers["x-request-id"]).toBe("abc-123");
    const hostile = await request(app.app.server).get("/healthz").set("x-request-id", 'a"b c');
    expect(hostile.headers["x-request-id"]).toMatch(/^[0-9a-f-]{36}$/);
  });

  it("is healthy and ready", async () => {
    for (const path of ["/healthz", "/readyz"]) {
      const { status, headers } = await request(app.app.server).get(path);
      expect([status, headers["cache-control"]]).toEqual([200, "no-store"]);
    }
  });
});
