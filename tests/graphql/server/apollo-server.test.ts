import { subscribe, unsubscribe } from "node:diagnostics_channel";
import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, beforeAll, expect, it } from "vitest";
import { openCache } from "../../../src/services/cache/cache.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnEmbedded, describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { lockTables } from "../../kit/postgres/locked-tables.js";
import { demo, openTestApp } from "../open-test-app.js";

/** What Node tells of requests that it sends: by `fetch` (undici) and by `http`. */
const channels = ["undici:request:create", "http.client.request.start"];

/** Variables that @apollo/server 5.5.1 reads (`determineApolloConfig.js`, `ApolloServer.js`), in the last two with values that it does not start with. */
const environments: readonly Readonly<Record<string, string>>[] = [
  {
    APOLLO_KEY: "service:allotments:secret",
    APOLLO_GRAPH_REF: "allotments@current",
    APOLLO_SCHEMA_REPORTING: "true",
    NODE_ENV: "development",
  },
  { APOLLO_KEY: "two\nlines", APOLLO_GRAPH_REF: "allotments@current", APOLLO_GRAPH_ID: "allotments" },
  { APOLLO_SCHEMA_REPORTING: "true", APOLLO_GRAPH_VARIANT: "current" },
];

describeOnEmbedded("Apollo Server", (open) => {
  const before = { ...process.env };
  afterEach(() => {
    for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
    Object.assign(process.env, before);
  });

  it.each(environments)("is told nothing by the environment %j, and tells nobody anything", async (environment) => {
    Object.assign(process.env, environment);
    const sent: string[] = [];
    const note = (_message: unknown, name: string | symbol): void => void sent.push(String(name));
    const app = await openTestApp((await open()).data, "no-explorer");
    // Only what the service sends: supertest asks by `http`, too.
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    const answers = [
      await app.app.inject({ url: "/graphql?query=%7B__typename%7D", headers: { accept: "text/html,*/*;q=0.1" } }),
      await app.app.inject({ url: "/graphql", headers: { accept: "text/html,*/*;q=0.1" } }),
      await app.app.inject({ method: "POST", url: "/graphql", payload: { query: "{ nothing }" } }),
    ];
    for (const channel of channels) subscribe(channel, note);
    await app.app.inject({ method: "POST", url: "/graphql", payload: { query: "{ __schema { description } }" } });
    // What was gathered would be sent at the latest now.
    await app.close();
    for (const channel of channels) unsubscribe(channel, note);
    expect(sent).toEqual([]);
    expect(answers.map(({ statusCode }) => statusCode)).toEqual([200, 400, 400]);
    for (const { headers, body } of answers) {
      expect(headers["content-type"]).toBe("application/json; charset=utf-8");
      expect(body).not.toMatch(/stacktrace|\bat .*\.js|node_modules|<html/i);
    }
    expect(app.logged.filter((line) => /apollo/i.test(line))).toEqual([]);
  });

  it("answers in one part: whoever accepts only several is refused before anything is run", async () => {
    const database = await open();
    const app = await openTestApp(database.data);
    for (const accept of ["multipart/mixed; deferSpec=20220824", "multipart/mixed; incrementalSpec=v0.2"]) {
      database.statements.clear();
      const { status, body } = await request(app.app.server)
        .post("/graphql")
        .set("accept", accept)
        .send({ query: 'mutation { revokeToken(input: { id: "x" }) { __typename } }' });
      expect([status, body.errors[0].extensions.code, database.statements.sent]).toEqual([406, "NOT_ACCEPTABLE", []]);
    }
    await app.close();
  });

  it("knows a document by the hash in an address and in a body, whatever else is said of it", async () => {
    const app = await openTestApp((await open()).data);
    const post = (body: object) => request(app.app.server).post("/graphql").send(body);
    const hashless = { query: "{ __typename }", operationName: "", extensions: { persistedQuery: null } };
    expect((await post(hashless)).body.data).toEqual({ __typename: "Query" });
    expect((await post({ documentId: null, query: "{ __typename }" })).status).toBe(200);
    const twice = await request(app.app.server).get("/graphql?documentId=a&documentId=b");
    expect([twice.status, twice.body.errors[0].extensions.code]).toEqual([400, "BAD_REQUEST"]);
    await app.close();
  });
});

const question = '{ plan(publisher: "third-gate-allotments", slug: "bean-night") { title } }';

describeOnServer("an answer that several wait for", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
    const app = await openTestApp(database.data);
    await loadSeeds(app.deps, demo);
    await app.close();
  });
  const tables = lockTables(() => database.url);

  it("is computed for the others where the one it was computed for has gone", async () => {
    const cache = openCache(1_000_000);
    cache.follower.listening(true);
    let arrived = 0;
    const watchRequests = (on: FastifyInstance): void => {
      on.addHook("preHandler", (_request, _reply, done) => {
        arrived += 1;
        done();
      });
    };
    const app = await openTestApp(database.data, undefined, undefined, { cache }, { watchRequests });
    const url = `${await app.app.listen({ port: 0, host: "127.0.0.1" })}/graphql`;
    const ask = (signal: AbortSignal) =>
      fetch(url, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ query: question }),
        signal,
      });
    const leaving = new AbortController();
    const first = ask(leaving.signal).catch((error: unknown) => (error as Error).name);
    await tables.untilRunning(1);
    const second = ask(new AbortController().signal);
    await expect.poll(() => arrived).toBe(2);
    leaving.abort();
    expect(await first).toBe("AbortError");
    await tables.unlock();
    const answer = await second;
    expect([answer.status, await answer.json()]).toMatchObject([
      200,
      { data: { plan: { title: expect.any(String) } } },
    ]);
    expect(cache.computing.size).toBe(0);
    await app.close();
  });
});
