import { createClient, type ExecutionResult, type RequestParams } from "graphql-sse";
import type { AddressInfo } from "node:net";
import { setTimeout as wait } from "node:timers/promises";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import type { Followed } from "../../../src/persistence/database/change-signals.js";
import { openChangeSignals } from "../../../src/services/plans/change-signals.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { describeOnBothDatabases, describeOnEmbedded, type TestDatabase } from "../../kit/databases.js";
import { readEvents } from "../../kit/read-events.js";
import { smallBundle } from "../../persistence/small-bundle.js";
import { bytesOf, openFeed } from "../../services/imports/open-feed.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const path = "/graphql/stream";
const planChanged = `subscription Watch($slug: String!, $after: String) {
  planChanged(publisher: "north-field", slug: $slug, after: $after) { cursor node { kind plan { title publisher { slug } } } }
}`;
const importProgress = `subscription ($id: ID!) { importProgress(id: $id) { id state counts { read } } }`;
const json = { "content-type": "application/json" };

type Options = Parameters<typeof openTestApp>[4];

async function openInstance(database: TestDatabase, options: Options = {}) {
  const signals = openChangeSignals(50);
  const followed: Followed = await database.follow(signals.follower);
  const opened = await openTestApp(database.data, undefined, undefined, { signals }, options);
  await opened.app.listen({ port: 0, host: "127.0.0.1" });
  return { ...opened, close: () => opened.close().then(() => followed.close()) };
}

/** A subscription by the client of the protocol's own. */
function subscribe(app: TestApp, params: RequestParams, headers: Record<string, string> = {}) {
  const { port } = app.app.server.address() as AddressInfo;
  const client = createClient({
    url: `http://127.0.0.1:${port}${path}`,
    headers,
    retryAttempts: 3,
    retry: () => wait(50),
  });
  const results: ExecutionResult<Record<string, unknown>, unknown>[] = [];
  let stop = (): void => undefined;
  let isConnected = (): void => undefined;
  const connected = new Promise<void>((resolve) => (isConnected = resolve));
  const done = new Promise<void>((resolve, reject) => {
    const sink = {
      next: (result: (typeof results)[number]) => void results.push(result),
      error: reject,
      complete: resolve,
    };
    const end = client.subscribe<Record<string, unknown>>(params, sink, { connected: isConnected });
    stop = () => {
      end();
      client.dispose();
    };
  });
  done.catch(() => undefined);
  return {
    ...{ results, done, connected },
    stop: () => stop(),
    until: async (count: number) => {
      for (const end = Date.now() + 10_000; results.length < count && Date.now() < end;) await wait(10);
      expect(results.length).toBeGreaterThanOrEqual(count);
      return results;
    },
  };
}

describeOnBothDatabases("subscriptions", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  beforeAll(async () => {
    database = await open();
    app = await openInstance(database);
    await database.data.publishers.save({ slug: "north-field", name: "North Field" });
    await database.data.publishers.save({ slug: "south-field", name: "South Field" });
  });
  afterAll(() => app.close());

  const publish = async (slug: string, title: string) =>
    database.data.revisions.publish(smallBundle({ publisher: "north-field", slug, title }), new Date());

  it("tell of each change of a plan, and go on without gaps after the last one", async () => {
    await publish("bean-night", "First");
    const first = subscribe(app, { query: planChanged, variables: { slug: "bean-night" } });
    await first.connected;
    await publish("other-night", "Other");
    await publish("bean-night", "Second");
    await first.until(1);
    first.stop();
    const [result] = first.results;
    const { cursor, node } = result!.data!["planChanged"] as { cursor: string; node: unknown };
    expect(node).toEqual({ kind: "PLAN_PUBLISHED", plan: { title: "Second", publisher: { slug: "north-field" } } });
    expect(result!.extensions).toEqual({ cost: { asked: expect.any(Number), limit: usualEngine.costLimit } });
    await publish("bean-night", "Third");
    const again = subscribe(app, { query: planChanged, variables: { slug: "bean-night", after: cursor } });
    await again.until(1);
    await publish("bean-night", "Fourth");
    await again.until(2);
    again.stop();
    const titles = again.results.map(
      ({ data }) => (data!["planChanged"] as { node: { plan: { title: string } } }).node.plan.title,
    );
    expect(titles).toEqual(["Third", "Fourth"]);
  });

  it("tell of the progress of an import to whoever may see it, and end with it", async () => {
    const feed = await openFeed(app.deps, { publisher: "north-field", slug: "shop", kind: "PRICES", settings: prices });
    const file = await app.deps.data.importFiles.put(feed.id, "file", bytesOf(priceList), new Date(), byTest);
    const order = { feed: feed.id, file: file.id, kind: "LOAD", askedBy: "test", force: false, undoes: null } as const;
    const variables = { id: await app.deps.data.importRuns.queue(order, new Date()) };
    const token = async (publisher: string) => ({
      authorization: `Bearer ${await app.tokenFor(publisher, ["IMPORT"])}`,
    });
    const own = subscribe(app, { query: importProgress, variables }, await token("north-field"));
    const second = subscribe(app, { query: importProgress, variables }, await token("north-field"));
    await Promise.all([own.until(1), second.until(1)]);
    const other = subscribe(app, { query: importProgress, variables }, await token("south-field"));
    const nobody = subscribe(app, { query: importProgress, variables });
    const reader = { authorization: `Bearer ${await app.tokenFor("north-field", ["READ_DRAFTS", "PUBLISH"])}` };
    const without = subscribe(app, { query: importProgress, variables }, reader);
    await Promise.all([other.done, nobody.done, without.done]);
    expect(without.results[0]?.errors?.[0]?.extensions?.["code"]).toBe("FORBIDDEN");
    expect(other.results[0]?.errors?.[0]?.extensions?.["code"]).toBe("UNKNOWN_RUN");
    expect(nobody.results[0]?.errors?.[0]?.extensions?.["code"]).toBe("UNAUTHENTICATED");
    await runImports(app.deps, "worker-1");
    await Promise.all([own.done, second.done]);
    for (const { results } of [own, second]) {
      const states = results.map(({ data }) => (data!["importProgress"] as { state: string }).state);
      expect(states[0]).toBe("QUEUED");
      expect(["DONE", "FAILED", "STOPPED"]).toContain(states.at(-1));
    }
    const late = subscribe(app, { query: importProgress, variables }, await token("north-field"));
    await late.done;
    expect(late.results).toHaveLength(1);
  });

  it.each([
    ["an unknown plan", { slug: "none-such" }, "UNKNOWN_PLAN"],
    ["a position that never was", { slug: "bean-night", after: "x" }, "BAD_SHAPE"],
    ["a text that no database holds", { slug: "\0" }, "UNKNOWN_PLAN"],
  ])("tell what is wrong with %s, and end", async (_what, variables, code) => {
    await publish("bean-night", "Any");
    const { done, results } = subscribe(app, { query: planChanged, variables });
    await done;
    expect(results.map(({ errors }) => errors?.[0]?.extensions?.["code"])).toEqual([code]);
  });

  it("tell that there is no such publisher, at its name", async () => {
    const query = planChanged.replace("north-field", "nort-field");
    const { done, results } = subscribe(app, { query, variables: { slug: "bean-night" } });
    await done;
    expect(results.map(({ errors }) => errors?.[0]?.extensions)).toMatchObject([
      { code: "UNKNOWN_PUBLISHER", at: ["publisher"] },
    ]);
  });
});

const byTest = { by: "test", countsMore: false } as const;
const priceList = "article,amount\n1,2\n";
const prices = { source: "Corner shop", currency: "XTS", locale: "en" };

describeOnEmbedded("the route of subscriptions", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  beforeAll(async () => {
    database = await open();
    app = await openInstance(database);
    await database.data.publishers.save({ slug: "north-field", name: "North Field" });
    await database.data.revisions.publish(smallBundle({ publisher: "north-field", slug: "bean-night" }), new Date());
  });
  afterAll(() => app.close());

  const post = (body: unknown, headers: Record<string, string> = {}, of = app) =>
    request(of.app.server)
      .post(path)
      .set({ ...json, accept: "text/event-stream", ...headers })
      .send(typeof body === "string" ? body : JSON.stringify(body));

  it.each([
    ["no JSON", "{", 400, "BAD_REQUEST"],
    ["a list", [{ query: planChanged }], 400, "BATCHING_REFUSED"],
    ["nothing", {}, 400, "BAD_REQUEST"],
    ["a document that is none", { query: 1 }, 400, "BAD_REQUEST"],
    ["variables that are none", { query: planChanged, variables: [] }, 400, "BAD_REQUEST"],
    ["a document that cannot be read", { query: "subscription {" }, 400, "GRAPHQL_PARSE_FAILED"],
    ["a field that there is not", { query: "subscription { nothing }" }, 400, "GRAPHQL_VALIDATION_FAILED"],
    [
      "two fields at once (GraphQL, 5.2.3.1)",
      { query: `subscription { a: importProgress(id: "1") { id } b: importProgress(id: "2") { id } }` },
      ...([400, "GRAPHQL_VALIDATION_FAILED"] as const),
    ],
    ["a variable that is missing", { query: planChanged }, 400, "BAD_USER_INPUT"],
    ["a query", { query: "{ __typename }" }, 400, "BAD_REQUEST"],
    ["a mutation", { query: `mutation { __typename }` }, 400, "BAD_REQUEST"],
    [
      "an operation that is not there",
      { query: planChanged, operationName: "Other" },
      400,
      "OPERATION_RESOLUTION_FAILURE",
    ],
    [
      "an unknown hash",
      { extensions: { persistedQuery: { version: 1, sha256Hash: "0".repeat(64) } } },
      400,
      "PERSISTED_QUERY_NOT_FOUND",
    ],
  ])("refuses %s before anything begins", async (_what, body, status, code) => {
    const answer = await post(body);
    expect([answer.status, answer.body.errors[0].extensions.code]).toEqual([status, code]);
    expect(answer.headers["cache-control"]).toBe("no-store");
  });

  it("refuses who takes no stream, another method, another charset and a wrong token", async () => {
    const body = { query: planChanged, variables: { slug: "bean-night" } };
    expect((await post(body, { accept: "application/json" })).body.errors[0].extensions.code).toBe("NOT_ACCEPTABLE");
    expect((await request(app.app.server).put(path).send(body)).headers["allow"]).toBe("GET, POST");
    expect((await post(body, { "content-type": "application/json; charset=latin1" })).status).toBe(415);
    expect((await post(body, { authorization: "Bearer x" })).status).toBe(401);
  });

  it("is named where a subscription is sent to /graphql", async () => {
    const { errors } = await app.ask(planChanged, { slug: "bean-night" });
    expect(errors[0]?.message).toBe("Send subscriptions to /graphql/stream, with `Accept: text/event-stream`.");
  });

  it("takes a GET, as browsers send one, and says nothing to caches", async () => {
    const asked = new URLSearchParams({ query: planChanged, variables: `{"slug":"bean-night"}` });
    const reader = await readEvents(app.app, `${path}?${asked}`);
    expect([reader.status, reader.headers["content-type"]]).toEqual([200, "text/event-stream; charset=utf-8"]);
    expect(reader.headers["content-encoding"]).toBeUndefined();
    reader.leave();
  });

  it("has the limits of all streams, and of all documents", async () => {
    const small = await openInstance(database, {
      streams: { perCaller: 1 },
      graphql: { ...usualEngine, costLimit: 3 },
    });
    const variables = { slug: "bean-night" };
    const cheap = `subscription ($slug: String!) { planChanged(publisher: "north-field", slug: $slug) { cursor } }`;
    const dear = await post({ query: planChanged, variables }, {}, small);
    expect([dear.status, dear.body.errors[0].extensions.code]).toEqual([400, "COST_TOO_HIGH"]);
    await small.close();
    const one = await openInstance(database, { streams: { perCaller: 1 } });
    const body = JSON.stringify({ query: cheap, variables });
    const first = await readEvents(one.app, path, { headers: json, body });
    expect(first.status).toBe(200);
    const second = await post({ query: cheap, variables }, {}, one);
    expect([second.status, second.body.errors[0].extensions.code]).toEqual([429, "TOO_MANY_STREAMS"]);
    first.leave();
    await one.close();
  });

  it("breaks off without `complete` when the instance stops, so that clients begin again elsewhere", async () => {
    const stopping = await openInstance(database);
    const body = JSON.stringify({ query: planChanged, variables: { slug: "bean-night" } });
    const reader = await readEvents(stopping.app, path, { headers: json, body });
    await stopping.close();
    await reader.ended;
    expect(reader.text()).toMatch(/^:\n\nretry: \d+\n\n$/);
  });

  it("says so where no points are left, and masks what is our fault", async () => {
    const poor = await openInstance(database, {
      streams: { minute: 100, heartbeat: 100 },
      rateLimit: { perAddress: 1_000, perToken: 0, refusedTokensPerAddress: 0 },
    });
    const body = JSON.stringify({ query: planChanged, variables: { slug: "bean-night" } });
    const reader = await readEvents(poor.app, path, { headers: json, body });
    await reader.ended;
    expect(JSON.parse(reader.events[0]!.data).errors[0].extensions.code).toBe("RATE_LIMITED");
    await poor.close();
    const { changes } = database.data;
    let isBroken = false;
    const data = {
      ...database.data,
      changes: {
        page: (...asked: Parameters<typeof changes.page>) =>
          isBroken ? Promise.reject(new Error("secret inside")) : changes.page(...asked),
      },
    };
    const broken = await openInstance({ ...database, data });
    const watched = await readEvents(broken.app, path, { headers: json, body });
    isBroken = true;
    await database.data.revisions.publish(
      smallBundle({ publisher: "north-field", slug: "bean-night", title: "New" }),
      new Date(),
    );
    await watched.ended;
    expect(JSON.parse(watched.events[0]!.data).errors[0].extensions.code).toBe("INTERNAL_SERVER_ERROR");
    expect(watched.text()).not.toContain("secret");
    expect(broken.logged.some((line) => line.includes("a subscription failed"))).toBe(true);
    await broken.close();
  });
});
