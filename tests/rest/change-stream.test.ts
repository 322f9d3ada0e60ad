import { connect, type AddressInfo } from "node:net";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, afterEach, beforeAll, expect, it } from "vitest";
import { openCachedDeps } from "../../src/app/setup/open-cache.js";
import { openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnBothDatabases, describeOnEmbedded, describeOnServer, type TestDatabase } from "../kit/databases.js";
import { readEvents, type EventReader } from "../kit/read-events.js";
import { smallBundle } from "../persistence/small-bundle.js";
import { askRest } from "./described-answers.js";

const stream = "/v1/changes/stream";
type Options = Parameters<typeof openTestApp>[4];

/** An instance of the service that hears of its database's changes. */
async function openInstance(database: TestDatabase, options: Options = {}, megabytes = 8) {
  const deps = { data: database.data, clock: () => new Date(), log: silent, knownRules: new Map() };
  const followed = await openCachedDeps({ deps, database } as Parameters<typeof openCachedDeps>[0], megabytes);
  const { signals, cache, data } = followed.deps;
  const more = { signals: signals!, ...(cache === undefined ? {} : { cache }) };
  const opened = await openTestApp(data, undefined, undefined, more, options);
  await opened.app.listen({ port: 0, host: "127.0.0.1" });
  return { ...opened, close: () => opened.close().then(() => followed.close()) };
}
const silent = { info: () => undefined, warn: () => undefined, error: () => undefined };

interface ToldChange {
  readonly kind: string;
  readonly plan: { readonly slug: string; readonly title: string; readonly language: string };
}
const told = (reader: EventReader): readonly string[] =>
  reader.events.map(({ event, data }) => {
    if (event !== "change") return `${event} ${data}`;
    const { kind, plan } = JSON.parse(data) as ToldChange;
    return `${kind} ${plan.slug}`;
  });

const open: { close(): Promise<void> }[] = [];
const readers: EventReader[] = [];
afterEach(async () => {
  for (const reader of readers.splice(0)) reader.leave();
  await Promise.all(open.splice(0).map((each) => each.close()));
});

describeOnBothDatabases("the stream of changes", (openDatabase) => {
  let database: TestDatabase;
  let app: TestApp;
  beforeAll(async () => {
    database = await openDatabase();
    app = await openInstance(database);
  });
  afterAll(() => app.close());

  const read = async (path = stream, headers: Record<string, string> = {}, of = app): Promise<EventReader> => {
    const reader = await readEvents(of.app, path, { headers });
    readers.push(reader);
    return reader;
  };
  const publish = async (publisher: string, slug: string): Promise<number> => {
    await database.data.publishers.save({ slug: publisher, name: publisher });
    const { summary } = await database.data.revisions.publish(smallBundle({ publisher, slug }), new Date());
    return summary.revision;
  };

  it("loses nothing on an empty database, where there is no change yet to begin after", async () => {
    const first = await read();
    expect([first.status, first.headers["content-type"], first.headers["cache-control"]]).toEqual([
      200,
      "text/event-stream; charset=utf-8",
      "no-cache, no-transform",
    ]);
    await wait(50);
    first.leave();
    await publish("north-field", "bean-night");
    const again = await read(stream, { "last-event-id": first.lastId() });
    await again.until(1);
    expect(told(again)).toEqual(["PLAN_PUBLISHED bean-night"]);
  });

  it("tells of each change once and in order, as the list does, also to who comes back with the last id", async () => {
    const reader = await read();
    await wait(100);
    await publish("north-field", "one");
    await publish("south-field", "two");
    await reader.until(2);
    reader.leave();
    const revision = await publish("north-field", "three");
    await database.data.revisions.withdraw({ publisher: "north-field", slug: "three", revision }, new Date());
    const again = await read(stream, { "last-event-id": reader.lastId() });
    await again.until(2);
    await publish("south-field", "four");
    await again.until(3);
    expect([...told(reader), ...told(again)]).toEqual([
      "PLAN_PUBLISHED one",
      "PLAN_PUBLISHED two",
      "PLAN_PUBLISHED three",
      "PLAN_WITHDRAWN three",
      "PLAN_PUBLISHED four",
    ]);
    // The same values and positions as the list of changes has.
    const list = await askRest(app.app, "GET", "/v1/changes?last=5");
    expect([...reader.events, ...again.events].map(({ data }) => JSON.parse(data))).toEqual(list.body.items);
    expect(again.lastId()).toBe(list.body.end);
  });

  it("tells of what a review finds, as the list does, although no revision is new", async () => {
    await publish("north-field", "reviewed");
    const list = async () => (await askRest(app.app, "GET", "/v1/changes?last=1")).body.items[0].kind as string;
    expect(await list()).toBe("PLAN_PUBLISHED");
    const reader = await read();
    await wait(100);
    const ref = { publisher: "north-field", slug: "reviewed", revision: null };
    const [found] = await database.data.revisions.summaries([ref]);
    const fresher = { kind: "KEEPING", path: [], before: "4 days", after: "2 days", lessSafe: true } as const;
    await database.data.reviews.save({ revisionId: found!.id, differences: [fresher], lessSafe: true, at: new Date() });
    await reader.until(1);
    expect(told(reader)).toEqual(["PLAN_LESS_SAFE reviewed"]);
    expect(await list()).toBe("PLAN_LESS_SAFE");
  });

  it("tells of one publisher's alone, and of a long history in whole pages", async () => {
    const [north, south] = [
      await read(`${stream}?publisher=north-field`),
      await read(`${stream}?publisher=south-field`),
    ];
    await wait(100);
    await publish("south-field", "five");
    await publish("north-field", "six");
    await Promise.all([north.until(1), south.until(1)]);
    expect([told(north), told(south)]).toEqual([["PLAN_PUBLISHED six"], ["PLAN_PUBLISHED five"]]);
    const start = Buffer.from('["0"]').toString("base64url");
    for (let each = 0; each < 101; each += 1) await publish("west-field", `plan-${each}`);
    const all = await read(`${stream}?after=${start}&publisher=west-field`);
    await all.until(101);
    expect(new Set(all.events.map(({ id }) => id)).size).toBe(101);
  });

  it("is sent as it is written, whatever coding its reader takes", async () => {
    const reader = await read(stream, { "accept-encoding": "br, gzip" });
    expect(reader.headers["content-encoding"]).toBeUndefined();
    expect(reader.headers["x-accel-buffering"]).toBe("no");
  });

  it.each([
    [`${stream}?publisher=none-such`, {}, 400, "publisher"],
    [`${stream}?publisher=%00`, {}, 400, "publisher"],
    [`${stream}?after=x`, {}, 400, "after"],
    [stream, { "last-event-id": "x" }, 400, "Last-Event-ID"],
    [`${stream}?locale=nonsense-`, {}, 400, "locale"],
    [`${stream}?plan=x`, {}, 400, "plan"],
    [`${stream}?after=a&after=b`, {}, 400, "after"],
    [stream, { accept: "application/json" }, 406, null],
  ])("refuses %s %o before it begins", async (path, headers, status, name) => {
    const answer = await askRest(app.app, "GET", path, { headers });
    expect(answer.status).toBe(status);
    expect(answer.body.problems[0]?.path[0] ?? null).toBe(name);
  });

  it("answers HEAD, and no POST", async () => {
    expect((await askRest(app.app, "HEAD", stream)).headers["content-type"]).toBe("text/event-stream; charset=utf-8");
    expect((await askRest(app.app, "POST", stream)).status).toBe(405);
  });
});

describeOnServer("streams of several instances", (openDatabase) => {
  it("tell of what was published through another, with a cache and without one, and after the line was cut", async () => {
    const database = await openDatabase();
    await database.data.publishers.save({ slug: "north-field", name: "North Field" });
    const instances = [await openInstance(database), await openInstance(database, {}, 0)];
    open.push(...instances);
    const publish = (slug: string) =>
      database.data.revisions.publish(smallBundle({ publisher: "north-field", slug }), new Date());
    const reading = await Promise.all(instances.map(({ app }) => readEvents(app, stream)));
    readers.push(...reading);
    await wait(100);
    await publish("one");
    await Promise.all(reading.map((reader) => reader.until(1)));
    const cut = () =>
      database.sql.query(
        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'prepwright-listen' AND datname = current_database()",
      );
    await cut();
    await publish("two");
    await Promise.all(reading.map((reader) => reader.until(2)));
    expect(reading.map(told)).toEqual([0, 1].map(() => ["PLAN_PUBLISHED one", "PLAN_PUBLISHED two"]));
  });
});

describeOnEmbedded("a stream of changes", (openDatabase) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await openDatabase();
  });
  const read = async (path: string, headers: Record<string, string>, of: TestApp): Promise<EventReader> => {
    const reader = await readEvents(of.app, path, { headers });
    readers.push(reader);
    return reader;
  };

  it("is given to so many by caller and in all; who leaves makes room", async () => {
    const few = await openInstance(database, { streams: { perCaller: 2, inAll: 3 }, trustedProxies: ["loopback"] });
    open.push(few);
    const of = (address: string) => read(stream, { "x-forwarded-for": address }, few);
    const first = await of("192.0.2.1");
    expect((await of("192.0.2.1")).status).toBe(200);
    const third = await of("192.0.2.1");
    await third.ended;
    expect([third.status, JSON.parse(third.text()).type, third.headers["retry-after"]]).toEqual([
      ...[429, "/problems/too-many-streams", "30"],
    ]);
    expect((await of("192.0.2.2")).status).toBe(200);
    const fifth = await of("192.0.2.3");
    await fifth.ended;
    expect([fifth.status, JSON.parse(fifth.text()).type]).toEqual([503, "/problems/overloaded"]);
    first.leave();
    await wait(200);
    expect((await of("192.0.2.1")).status).toBe(200);
  });

  it("costs points for each minute, and ends with the time to come back once there are none", async () => {
    const poor = await openInstance(database, {
      streams: { minute: 100, heartbeat: 100 },
      rateLimit: { perAddress: 1_600, perToken: 0, refusedTokensPerAddress: 0 },
    });
    open.push(poor);
    const reader = await read(stream, {}, poor);
    await reader.ended;
    expect(told(reader)).toEqual(['end {"reason":"BUDGET"}']);
    expect(reader.retry()).toBeGreaterThan(1_000);
    expect((await readEvents(poor.app, stream)).status).toBe(429);
  });

  it("lasts so long, and longer than a token is good for lasts none", async () => {
    const brief = await openInstance(database, { streams: { longest: 60_000, longestOfToken: 400, heartbeat: 100 } });
    open.push(brief);
    const token = await brief.tokenFor(null, ["READ_DRAFTS"]);
    const [public_, own] = [
      await read(stream, {}, brief),
      await read(stream, { authorization: `Bearer ${token}` }, brief),
    ];
    expect(own.headers["cache-control"]).toBe("no-store, no-transform");
    await own.ended;
    expect(told(own)).toEqual(['end {"reason":"TIME"}']);
    expect(told(public_)).toEqual([]);
    expect(public_.text()).toContain("\n:\n");
  });

  it("ends when its instance stops, with the time to come back, and keeps nobody from stopping", async () => {
    const stopping = await openInstance(database);
    const reader = await read(stream, {}, stopping);
    await reader.until(0);
    const before = performance.now();
    await stopping.close();
    await reader.ended;
    expect(performance.now() - before).toBeLessThan(8_000);
    expect(told(reader)).toEqual(['end {"reason":"STOPPING"}']);
    expect(reader.retry()).toBeGreaterThanOrEqual(1_000);
  });

  it("lets go of readers who close their half of the connection", async () => {
    const app = await openInstance(database, { streams: { perCaller: 1, heartbeat: 200 } });
    open.push(app);
    const { port } = app.app.server.address() as AddressInfo;
    const half = connect({ port, host: "127.0.0.1", allowHalfOpen: true });
    half.on("error", () => undefined);
    half.write(`GET ${stream} HTTP/1.1\r\nHost: x\r\n\r\n`);
    await new Promise((heard) => half.once("data", heard));
    expect((await readEvents(app.app, stream)).status).toBe(429);
    half.end();
    let status = 429;
    for (const end = Date.now() + 5_000; status !== 200 && Date.now() < end; await wait(50)) {
      const tried = await readEvents(app.app, stream);
      status = tried.status;
      tried.leave();
    }
    expect(status).toBe(200);
    half.destroy();
  });
});
