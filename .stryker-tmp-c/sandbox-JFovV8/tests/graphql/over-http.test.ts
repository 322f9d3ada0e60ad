// @ts-nocheck
import { auditServer } from "graphql-http";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openTestApp, type TestApp } from "./open-test-app.js";

/** They ask for 200 where a document is broken under `application/json`; the newest draft asks for a 4xx, as we give. */
const allowedWarnings = ["572B", "FDE2", "7B9B"];

describeOnBothDatabases("the endpoint", (open) => {
  let app: TestApp;
  let url: string;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    url = `${await app.app.listen({ port: 0, host: "127.0.0.1" })}/graphql`;
  });
  afterAll(() => app.close());

  it("passes the audits of GraphQL over HTTP (npm graphql-http) but for the warnings listed here", async () => {
    const results = await auditServer({ url });
    const failed = results
      .filter(({ status }) => status !== "ok")
      .map(({ status, id, name }) => `${status} ${id} ${name}`);
    expect(results.length).toBeGreaterThan(50);
    expect(failed.filter((line) => !allowedWarnings.some((id) => line.startsWith(`warn ${id}`)))).toEqual([]);
  });

  it("answers a query by GET, and refuses a mutation by GET", async () => {
    const got = await request(app.app.server).get("/graphql").query({ query: "{ __typename }" });
    expect([got.status, got.body]).toEqual([200, { data: { __typename: "Query" } }]);
    const changed = await request(app.app.server).get("/graphql").query({ query: "mutation { x }" });
    expect(changed.status).toBeGreaterThanOrEqual(400);
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
