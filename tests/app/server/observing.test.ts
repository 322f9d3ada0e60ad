import { once } from "node:events";
import { connect, type AddressInfo } from "node:net";
import parsePrometheusTextFormat, { type Family } from "parse-prometheus-text-format";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startTelemetry } from "../../../src/app/observe/telemetry.js";
import { createMetrics, type Metrics } from "../../../src/app/observe/metrics.js";
import { requestLog } from "../../../src/app/observe/request-log.js";
import { readTraceParent } from "../../../src/app/observe/trace-parent.js";
import { openLog } from "../../../src/app/setup/open-log.js";
import { createReadiness } from "../../../src/app/server/readiness.js";
import { watchOverload, defaultLimits } from "../../../src/app/server/load-shedding.js";
import { cacheFigures, openCache } from "../../../src/services/cache/cache.js";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { demo, demoBundle, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded, describeOnServer, type TestDatabase } from "../../kit/databases.js";

const publisher = demo.publisher.slug;
const plan = `/v1/plans/${publisher}/bean-night`;

async function withDemo(app: TestApp): Promise<TestApp> {
  const loaded = await loadSeeds(app.deps, {
    publisher: demo.publisher,
    foods: demo.foods,
    bundles: [demoBundle("bean-night")],
  });
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems));
  return app;
}

describe("the header traceparent", () => {
  // W3C Trace Context (https://www.w3.org/TR/trace-context/), 3.2.2; the first is the example of 3.2.
  const [trace, span] = ["0af7651916cd43dd8448eb211c80319c", "b7ad6b7169203331"];

  it("is read", () => {
    expect(readTraceParent(`00-${trace}-${span}-01`)).toEqual({ traceId: trace, spanId: span, isSampled: true });
    expect(readTraceParent(`00-${trace}-${span}-00`)?.isSampled).toBe(false);
    expect(readTraceParent(`cc-${trace}-${span}-01-what-the-future-will-be-like`)?.traceId).toBe(trace);
  });

  it.each([
    undefined,
    "",
    `ff-${trace}-${span}-01`,
    `00-${trace}-${span}-01-more`,
    `00-${trace.toUpperCase()}-${span}-01`,
    `00-${"0".repeat(32)}-${span}-01`,
    `00-${trace}-${"0".repeat(16)}-01`,
    `00-${trace}-${span}`,
    `00-${trace.slice(1)}-${span}-01`,
  ])("is ignored where it is %j", (header) => {
    expect(readTraceParent(header)).toBeNull();
  });
});

describeOnEmbedded("the log of requests", (open) => {
  let database: TestDatabase;
  const lines: string[] = [];
  const trace = "0af7651916cd43dd8448eb211c80319c";
  const requestLines = (): readonly Record<string, unknown>[] =>
    lines.map((line) => JSON.parse(line) as Record<string, unknown>).filter(({ msg }) => msg === "request");

  const logging = async (level: "info" | "debug", share: number): Promise<TestApp> => {
    lines.length = 0;
    const log = openLog(level, { write: (line) => void lines.push(line) });
    return openTestApp(
      database.data,
      undefined,
      undefined,
      {},
      { log, onRequestEnd: [requestLog({ share, dice: () => 0.5 })] },
    );
  };

  beforeAll(async () => {
    database = await open();
    await (await withDemo(await openTestApp(database.data))).close();
  });

  it("has a line for each, with what it was about and nothing that was asked", async () => {
    const app = await logging("info", 1);
    const token = await app.tokenFor(publisher, ["ADMIN"]);
    await app.app.inject({
      url: `${plan}.md?servings=7&region=secretland`,
      headers: { "x-request-id": "mine-1", traceparent: `00-${trace}-b7ad6b7169203331-01` },
    });
    await app.app.inject({ url: `${plan}?servings=5` });
    const search = `query Find { plans(filter: { search: "private words" }) { edges { node { slug } } } }`;
    await app.ask(search, {}, token);
    await app.ask("{ nothing }");
    await app.app.inject({ url: "/nothing/here" });
    const common = { ms: expect.any(Number), level: 30, part: "http", operation: null, cost: null };
    expect(requestLines()).toEqual([
      expect.objectContaining({
        ...common,
        requestId: "mine-1",
        traceId: trace,
        route: "/v1/plans/:publisher/:slug",
        method: "GET",
        publisher,
        status: 400,
      }),
      expect.objectContaining({ ...common, status: 200, publisher }),
      expect.objectContaining({
        ...common,
        ...{ route: "/graphql", method: "POST", publisher, status: 200 },
        ...{ kind: "query", operation: "Find", cost: expect.any(Number) },
      }),
      expect.objectContaining({
        ...common,
        route: "/graphql",
        publisher: null,
        status: 400,
        kind: "refused",
        hasErrors: true,
      }),
      expect.objectContaining({ ...common, route: null, publisher: null, status: 404 }),
    ]);
    expect(lines.join()).not.toMatch(/secretland|private words|servings/);
    await app.close();
  });

  it.each([
    ["info", 0, 0],
    ["info", 0.4, 0],
    ["info", 0.6, 1],
    ["debug", 0, 1],
  ] as const)("at %s with a share of %d has %d lines of one that goes well", async (level, share, count) => {
    const app = await logging(level, share);
    await app.app.inject({ url: "/healthz" });
    expect(requestLines()).toHaveLength(count);
    await app.close();
  });

  it("has one of what failed by our fault whatever the share, and of why, without the values it was asked with", async () => {
    const app = await logging("info", 0.1);
    const failing = await openTestApp(
      {
        ...database.data,
        revisions: {
          ...database.data.revisions,
          bundles: () => Promise.reject(new Error("no: postgresql://cook:hunter2@db/x", { cause: new Error("why") })),
        },
      },
      undefined,
      undefined,
      {},
      { log: app.deps.log as ReturnType<typeof openLog>, onRequestEnd: [requestLog({ share: 0.1, dice: () => 0.5 })] },
    );
    const answer = await failing.app.inject({ url: `${plan}?servings=3` });
    expect(answer.statusCode).toBe(500);
    expect(requestLines()).toHaveLength(1);
    const error = lines.map((line) => JSON.parse(line)).find(({ level }) => level === 50);
    expect(error.err).toMatchObject({ message: "no: postgresql://cook:…@db/x", cause: { message: "why" } });
    expect(error.err.stack).toMatch(/^at /);
    expect(lines.join() + answer.body).not.toContain("hunter2");
    await failing.close();
    await app.close();
  });
});

/** Read by a parser of the exposition format that is not the library's own. */
const families = async (metrics: Metrics): Promise<ReadonlyMap<string, Family>> => {
  const parsed = parsePrometheusTextFormat((await metrics.read()).text);
  return new Map(parsed.map((family) => [family.name, family]));
};

const value = (family: Family | undefined, labels: Readonly<Record<string, string>>): number | undefined => {
  const found = family?.metrics.find((each) =>
    Object.entries(labels).every(([name, wanted]) => each.labels?.[name] === wanted),
  );
  return found === undefined ? undefined : Number(found.value);
};

describeOnServer("figures", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  const metrics = createMetrics(() => performance.now());

  beforeAll(async () => {
    database = await open();
    app = await withDemo(
      await openTestApp(
        database.data,
        undefined,
        undefined,
        { aroundStage: metrics.aroundStage },
        {
          onRequestEnd: [metrics.onRequestEnd],
          onShed: metrics.onShed,
        },
      ),
    );
    const cache = openCache(1_000);
    cache.counts.documents.hits = 3;
    metrics.watch({
      pool: () => database.poolFigures(),
      cache: () => cacheFigures(cache),
      readiness: createReadiness(database),
    });
  });
  afterAll(() => app.close());

  it("count requests by route, method and status, none of them by a caller's word", async () => {
    for (const path of [
      `${plan}?servings=3`,
      `${plan}?servings=4`,
      `${plan}?servings=none`,
      "/made/up",
      "/made/up/too",
    ]) {
      await app.app.inject({ url: path });
    }
    await app.app.inject({ method: "PROPFIND", url: "/made/up" });
    await app.ask("query MyOwnWord { __typename }");
    await app.ask("{ nothing }");
    await app.ask(`mutation { revokeToken(input: { id: "x" }) { problems { code } } }`);
    const found = await families(metrics);
    const requests = found.get("prepwright_requests_total");
    const route = "/v1/plans/:publisher/:slug";
    expect(value(requests, { route, status: "200", method: "GET", part: "rest" })).toBe(2);
    expect(value(requests, { route, status: "400" })).toBe(1);
    expect(value(requests, { route: "none", method: "any", status: "404" })).toBeGreaterThanOrEqual(2);
    const operations = found.get("prepwright_graphql_operations_total");
    expect(value(operations, { kind: "query", operation: "other", outcome: "ok" })).toBe(1);
    expect(value(operations, { kind: "refused", outcome: "errors" })).toBe(1);
    expect(value(operations, { kind: "mutation", outcome: "errors" })).toBe(1);
    expect((await metrics.read()).text).toMatch(/^prepwright_graphql_cost_count 2$/m);
    expect((await metrics.read()).text).not.toMatch(/MyOwnWord|made|PROPFIND|bean-night/);
  });

  it("tell what computing an answer is spent on", async () => {
    const answers = [
      await app.app.inject({ url: `${plan}.txt?servings=9` }),
      await app.app.inject({ url: `${plan}?servings=9` }),
    ];
    expect(answers.map(({ statusCode }) => statusCode)).toContain(200);
    const { text } = await metrics.read();
    for (const stage of ["gather", "scale", "shop", "schedule"]) {
      const count = new RegExp(`^prepwright_stage_duration_seconds_count\\{stage="${stage}"\\} (\\d+)$`, "m").exec(
        text,
      )?.[1];
      expect([stage, Number(count)]).toEqual([stage, expect.any(Number)]);
      expect(Number(count)).toBeGreaterThan(0);
    }
  });

  it("tell of the pool, caches, readiness and the process", async () => {
    const found = await families(metrics);
    expect(value(found.get("prepwright_pool_connections"), { state: "most" })).toBe(5);
    expect(value(found.get("prepwright_pool_waiting"), {})).toBe(0);
    expect(value(found.get("prepwright_cache_hits_total"), { shelf: "documents" })).toBe(3);
    expect(value(found.get("prepwright_cache_limit_bytes"), {})).toBe(1_000);
    expect(value(found.get("prepwright_not_ready"), { code: "MIGRATIONS_PENDING" })).toBe(0);
    // Of one table, in which every cache of the process is.
    for (const cache of ["answers", "compiled-plans", "graphql-documents", "locales"]) {
      for (const figure of ["caches", "entries", "weight", "gave_way_total"])
        expect([cache, figure, value(found.get(`prepwright_kept_${figure}`), { cache })]).toEqual([
          ...[cache, figure, expect.any(Number)],
        ]);
    }
    expect(value(found.get("prepwright_kept_entries"), { cache: "graphql-documents" })).toBeGreaterThan(0);
    for (const name of [
      "nodejs_eventloop_lag_seconds",
      "process_resident_memory_bytes",
      "nodejs_gc_duration_seconds",
    ]) {
      expect(found.has(name)).toBe(true);
    }
  });

  it("are written by the rules of the exposition format", async () => {
    const { text, type } = await metrics.read();
    // https://prometheus.io/docs/instrumenting/exposition_formats/ and https://prometheus.io/docs/practices/naming/
    expect(type).toBe("text/plain; version=0.0.4; charset=utf-8");
    expect(text.endsWith("\n")).toBe(true);
    const found = [...(await families(metrics)).values()];
    expect(found.length).toBeGreaterThan(15);
    for (const { name, help, type: kind } of found) {
      expect(name).toMatch(/^(prepwright|nodejs|process)_[a-z0-9_]+$/);
      expect(help).not.toBe("");
      expect([name, name.endsWith("_total")]).toEqual([name, kind === "COUNTER"]);
    }
  });
});

describeOnServer("a port for operations", (open) => {
  it("answers figures with the work that waits, and how the process is, and nothing else", async () => {
    const database = await open();
    const log = openLog("silent");
    const settings = { metrics: { host: "127.0.0.1", port: 0 }, requestLog: 0, traces: false } as const;
    const lines: string[] = [];
    const observation = await startTelemetry(settings, openLog("info", { write: (line) => void lines.push(line) }));
    const readiness = createReadiness(database);
    await observation.open({ database, readiness });
    const address = (JSON.parse(lines[0] ?? "{}") as { address: string }).address;
    const app = await openTestApp(database.data, undefined, undefined, {}, { log });
    const caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
    const shop = { source: "Corner shop", currency: "XTS", locale: "en" };
    await saveFeed(app.deps, caller, { publisher: null, slug: "corner-shop", kind: "PRICES", settings: shop });
    await database.sql.query(
      `INSERT INTO "import_runs" ("feed_id", "kind", "asked_by", "created_at") SELECT "id", 'LOAD', 'test', now() - interval '90 seconds' FROM "feeds"`,
      [],
    );
    const text = await (await fetch(`${address}/metrics`)).text();
    expect(text).toMatch(/^prepwright_backlog\{queue="imports",state="WAITING"\} 1$/m);
    expect(text).toMatch(/^prepwright_backlog_oldest_seconds\{queue="imports",state="WAITING"\} 9\d(\.\d+)?$/m);
    expect((await fetch(`${address}/healthz`)).status).toBe(200);
    readiness.leave();
    expect((await fetch(`${address}/readyz`)).status).toBe(503);
    expect((await fetch(`${address}/graphql`)).status).toBe(404);
    await observation.close();
    await expect(fetch(`${address}/healthz`)).rejects.toThrow();
    await app.close();
  });
});

describeOnServer("a service with too much to do", (open) => {
  it("turns requests away, each in the form of its interface, but answers how it is", async () => {
    const database = await open();
    const shed: string[] = [];
    const overload = watchOverload({ ...defaultLimits, poolWaiting: 0 }, () => database.poolFigures());
    const readiness = createReadiness(database);
    readiness.watch(() => overload.describe());
    const app = await withDemo(
      await openTestApp(
        database.data,
        undefined,
        undefined,
        {},
        { overload, readiness, onShed: (what) => void shed.push(what) },
      ),
    );
    // Really saturated: every connection of the pool sleeps, and one more is waited for.
    const sleeping = Array.from({ length: 6 }, () => database.sql.query("SELECT pg_sleep(1.5)", []));
    await expect.poll(() => database.poolFigures()?.waiting).toBe(1);
    const rest = await app.app.inject({ url: plan });
    expect([rest.statusCode, rest.json().type]).toEqual([503, "/problems/overloaded"]);
    expect(rest.headers["content-type"]).toMatch(/^application\/problem\+json/);
    const graphql = await app.app.inject({ method: "POST", url: "/graphql", payload: { query: "{ __typename }" } });
    expect([graphql.statusCode, graphql.json().errors[0].extensions]).toEqual([503, { code: "OVERLOADED" }]);
    for (const { headers } of [rest, graphql]) expect(headers["retry-after"]).toMatch(/^[123]$/);
    expect((await app.app.inject({ url: "/healthz" })).statusCode).toBe(200);
    const ready = await app.app.inject({ url: "/readyz" });
    expect(ready.json().reasons.map(({ code }: { code: string }) => code)).toContain("OVERLOADED");
    expect(shed).toEqual(["pool", "pool"]);
    await Promise.all(sleeping);
    expect((await app.app.inject({ url: `${plan}?servings=3` })).statusCode).toBe(200);
    expect((await app.app.inject({ url: "/readyz" })).statusCode).toBe(200);
    await app.close();
  });

  it("notices a loop that is held up, and that it is free again", async () => {
    const overload = watchOverload({ ...defaultLimits, loopDelayMs: 100 }, () => null);
    const app = await openTestApp((await open()).data, undefined, undefined, {}, { overload });
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    const busy = setInterval(() => {
      const end = performance.now() + 300;
      while (performance.now() < end);
    }, 1);
    await expect.poll(() => overload.reason(), { timeout: 5_000 }).toBe("event-loop");
    const { port } = app.app.server.address() as AddressInfo;
    expect((await fetch(`http://127.0.0.1:${port}/v1/plans`)).status).toBe(503);
    clearInterval(busy);
    await expect.poll(() => overload.reason(), { timeout: 5_000 }).toBeNull();
    expect((await fetch(`http://127.0.0.1:${port}/v1/plans`)).status).toBe(200);
    const closing = connect(port, "127.0.0.1");
    await once(closing, "connect");
    closing.destroy();
    await app.close();
  });

  it("turns nobody away for one long computation, such as a start or one session", async () => {
    const overload = watchOverload({ ...defaultLimits, loopDelayMs: 100 }, () => null);
    const end = performance.now() + 1_200;
    while (performance.now() < end);
    const seen = new Set<string | null>();
    for (let look = 0; look < 30; look += 1) {
      seen.add(overload.reason());
      await new Promise((resume) => setTimeout(resume, 50));
    }
    expect([...seen]).toEqual([null]);
    overload.close();
  });

  it("looks at the heap, too", async () => {
    const overload = watchOverload({ ...defaultLimits, heapShare: 0.0001 }, () => null);
    await expect.poll(() => overload.reason(), { timeout: 3_000 }).toBe("heap");
    expect(overload.describe()).toBe("The process is short of memory.");
    overload.close();
  });
});
