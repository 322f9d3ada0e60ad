import { SpanKind } from "@opentelemetry/api";
import { InMemorySpanExporter, SimpleSpanProcessor, type ReadableSpan } from "@opentelemetry/sdk-trace-base";
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { createTraces } from "../../../src/app/observe/traces.js";
import { openServer } from "../../../src/persistence/database/open-server.js";
import type { OpenedDatabase } from "../../../src/persistence/database/opened-database.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { demo, demoBundle, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnServer } from "../../kit/databases.js";

describeOnServer("traces", (open) => {
  const exporter = new InMemorySpanExporter();
  const traces = createTraces(new SimpleSpanProcessor(exporter));
  const spans = (): readonly ReadableSpan[] => exporter.getFinishedSpans();
  const publisher = demo.publisher.slug;
  let database: OpenedDatabase;
  let app: TestApp;

  beforeAll(async () => {
    const { url } = await open();
    database = await openServer(url ?? "", { aroundStatement: traces.aroundStatement });
    app = await openTestApp(
      database.data,
      undefined,
      undefined,
      { aroundStage: traces.aroundStage },
      {
        watchRequests: traces.watchRequests,
        onRequestEnd: [traces.onRequestEnd],
      },
    );
    await loadSeeds(app.deps, { publisher: demo.publisher, foods: demo.foods, bundles: [demoBundle("bean-night")] });
  });
  afterAll(async () => {
    await app.close();
    await traces.close();
    await database.close();
  });
  beforeEach(() => exporter.reset());

  const only = (found: readonly ReadableSpan[]): ReadableSpan => {
    expect(found).toHaveLength(1);
    return found[0] as ReadableSpan;
  };

  it("have nothing of what a start asks the database", () => {
    expect(spans()).toEqual([]);
  });

  it("have one server span for a request, and in it the engine's stages and the statements, all of one trace", async () => {
    const url = `/v1/plans/${publisher}/bean-night.txt?servings=7`;
    expect((await app.app.inject({ url })).statusCode).toBe(200);
    const server = only(spans().filter(({ kind }) => kind === SpanKind.SERVER));
    expect(server.name).toBe("GET /v1/plans/:publisher/:slug");
    expect(server.attributes).toMatchObject({
      "http.request.method": "GET",
      "http.route": "/v1/plans/:publisher/:slug",
      "http.response.status_code": 200,
      "prepwright.publisher": publisher,
    });
    const names = new Set(spans().map(({ name }) => name));
    for (const name of ["gather", "scale", "shop", "schedule", "SELECT"]) expect(names).toContain(name);
    expect(new Set(spans().map((span) => span.spanContext().traceId)).size).toBe(1);
    const scale = only(spans().filter(({ name }) => name === "scale"));
    expect(scale.parentSpanContext?.spanId).toBe(server.spanContext().spanId);
    const statements = spans().filter(({ kind }) => kind === SpanKind.CLIENT);
    expect(statements.length).toBeGreaterThan(1);
    for (const { attributes } of statements) {
      expect(attributes["db.query.text"]).toMatch(/^(SELECT|WITH)/);
      expect(attributes["db.query.text"]).not.toMatch(new RegExp(`${publisher}|bean-night`));
    }
  });

  it("name a GraphQL request by the type of its operation, as OpenTelemetry's conventions say", async () => {
    await app.ask(
      `query Mine { plan(publisher: "${publisher}", slug: "bean-night") { scaled(servings: 3) { servings } } }`,
    );
    const server = only(spans().filter(({ kind }) => kind === SpanKind.SERVER));
    expect(server.name).toBe("query");
    expect(server.attributes).toMatchObject({
      "graphql.operation.type": "query",
      "graphql.operation.name": "Mine",
      "prepwright.cost": expect.any(Number),
    });
    const names = spans().map(({ name }) => name);
    for (const name of ["compile", "execute", "scale", "SELECT"]) expect(names).toContain(name);
    expect(JSON.stringify(spans().map(({ attributes }) => attributes))).not.toContain("bean-night");
  });

  it("keep requests that run at the same time apart", async () => {
    const urls = [3, 4, 5, 6].map((servings) => `/v1/plans/${publisher}/bean-night.txt?servings=${String(servings)}`);
    await Promise.all(urls.map((url) => app.app.inject({ url })));
    const servers = spans().filter(({ kind }) => kind === SpanKind.SERVER);
    expect(new Set(servers.map((span) => span.spanContext().traceId)).size).toBe(4);
    for (const server of servers) {
      const { traceId } = server.spanContext();
      expect(spans().filter((span) => span.name === "scale" && span.spanContext().traceId === traceId)).toHaveLength(1);
    }
  });

  it("go on where a caller began them (W3C Trace Context), if that caller wants them", async () => {
    const [trace, span] = ["0af7651916cd43dd8448eb211c80319c", "b7ad6b7169203331"];
    await app.app.inject({ url: "/healthz", headers: { traceparent: `00-${trace}-${span}-01` } });
    const server = only(spans());
    expect([server.spanContext().traceId, server.parentSpanContext?.spanId]).toEqual([trace, span]);
    exporter.reset();
    await app.app.inject({ url: "/healthz", headers: { traceparent: `00-${trace}-${span}-00` } });
    expect(spans()).toEqual([]);
  });

  it("have a trace of its own for each job, which says where it failed and not with what", async () => {
    await expect(
      traces.aroundJob("verify-revisions", async () => {
        await app.deps.data.plans.drafts([{ publisher: "x", slug: "y" }]);
        throw new RangeError("secret words");
      }),
    ).rejects.toThrow("secret words");
    const job = only(spans().filter(({ name }) => name === "job verify-revisions"));
    expect([job.status.code, job.attributes["error.type"]]).toEqual([2, "RangeError"]);
    expect(JSON.stringify(spans().map(({ attributes, events, status }) => [attributes, events, status]))).not.toContain(
      "secret words",
    );
    expect(spans().some(({ kind }) => kind === SpanKind.CLIENT)).toBe(true);
  });
});
