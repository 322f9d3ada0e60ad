import {
  diag,
  DiagLogLevel,
  ROOT_CONTEXT,
  SpanKind,
  SpanStatusCode,
  trace,
  TraceFlags,
  type Context,
  type Span,
} from "@opentelemetry/api";
import { OTLPTraceExporter } from "@opentelemetry/exporter-trace-otlp-http";
import { detectResources, envDetector, resourceFromAttributes } from "@opentelemetry/resources";
import { BatchSpanProcessor, type SpanProcessor } from "@opentelemetry/sdk-trace-base";
import { NodeTracerProvider } from "@opentelemetry/sdk-trace-node";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { AsyncLocalStorage } from "node:async_hooks";
import type { Logger } from "pino";
import { whenDone, type Observer } from "./observer.js";
import type { OnRequestEnd } from "./request-end.js";
import { readTraceParent } from "./trace-parent.js";

export interface Traces extends Observer {
  /** Begins a span for each request. To be called before anything else of a request is looked at. */
  readonly watchRequests: (app: FastifyInstance) => void;
  readonly onRequestEnd: OnRequestEnd;
  /** Sends what was not sent yet. */
  close(): Promise<void>;
}

/** Sends in batches to where OTEL_EXPORTER_OTLP_ENDPOINT leads, as JSON over HTTP. The library itself reads OTEL_* besides. */
export function exportTraces(log: Logger): Traces {
  const warn = (message: string): void => log.warn({ part: "traces" }, message);
  diag.setLogger(
    { error: warn, warn, info: () => undefined, debug: () => undefined, verbose: () => undefined },
    DiagLogLevel.WARN,
  );
  return createTraces(new BatchSpanProcessor(new OTLPTraceExporter()));
}

/** The longest text of a statement that is told. */
const longestStatement = 2_000;

/**
 * Spans for requests, for what computing their answers is spent on, for SQL and for jobs. They hold routes, names of operations and
 * statements with placeholders; nothing of what was asked with.
 */
export function createTraces(processor: SpanProcessor): Traces {
  const named = resourceFromAttributes({ "service.name": "prepwright" });
  const provider = new NodeTracerProvider({
    resource: named.merge(detectResources({ detectors: [envDetector] })),
    spanProcessors: [processor],
  });
  const tracer = provider.getTracer("prepwright");
  const active = new AsyncLocalStorage<Context>();
  const spans = new WeakMap<FastifyRequest, Span>();

  /** A span inside of the one that is open; without one, nothing: what a start asks the database is no request's. */
  const inside = <T>(name: string, kind: SpanKind, attributes: Record<string, string>, work: () => T): T => {
    const parent = active.getStore();
    return parent === undefined ? work() : within(parent, name, kind, attributes, work);
  };
  const within = <T>(
    parent: Context,
    name: string,
    kind: SpanKind,
    attributes: Record<string, string>,
    work: () => T,
  ): T => {
    const span = tracer.startSpan(name, { kind, attributes }, parent);
    return active.run(trace.setSpan(parent, span), () =>
      whenDone(work, (error) => {
        // Not its message, which may hold values.
        if (error !== null) {
          span.setStatus({ code: SpanStatusCode.ERROR });
          span.setAttribute("error.type", error instanceof Error ? error.name : "unknown");
        }
        span.end();
      }),
    );
  };

  return {
    watchRequests: (app) => {
      app.addHook("onRequest", (request, reply, done) => {
        const parent = remoteContext(request);
        const route = request.routeOptions.url ?? "none";
        const span = tracer.startSpan(
          `${request.method} ${route}`,
          { kind: SpanKind.SERVER, attributes: { "http.request.method": request.method, "http.route": route } },
          parent,
        );
        spans.set(request, span);
        if (parent === ROOT_CONTEXT) {
          const log = request.log.child({ traceId: span.spanContext().traceId });
          Object.assign(request, { log });
          Object.assign(reply, { log });
        }
        active.run(trace.setSpan(parent, span), done);
      });
    },
    onRequestEnd: (end, request) => {
      const span = spans.get(request);
      if (span === undefined) return;
      span.setAttribute("http.response.status_code", end.status);
      // OpenTelemetry's conventions for GraphQL servers: the name is the type of the operation and nothing else.
      if (end.kind !== null && end.kind !== "refused") {
        span.updateName(end.kind);
        span.setAttribute("graphql.operation.type", end.kind);
        if (end.operation !== null) span.setAttribute("graphql.operation.name", end.operation);
      }
      if (end.cost !== null) span.setAttribute("prepwright.cost", end.cost);
      if (end.publisher !== null) span.setAttribute("prepwright.publisher", end.publisher);
      if (end.status >= 500) span.setStatus({ code: SpanStatusCode.ERROR });
      span.end();
    },
    aroundStage: (stage, work) => inside(stage, SpanKind.INTERNAL, {}, work),
    aroundStatement: (sql, work) => {
      const operation = /^\s*([a-z]+)/i.exec(sql)?.[1]?.toUpperCase() ?? "SQL";
      const attributes = {
        "db.system.name": "postgresql",
        "db.operation.name": operation,
        "db.query.text": sql.replaceAll(/\s+/g, " ").trim().slice(0, longestStatement),
      };
      return inside(operation, SpanKind.CLIENT, attributes, work);
    },
    aroundJob: (job, work) => within(ROOT_CONTEXT, `job ${job}`, SpanKind.INTERNAL, { "prepwright.job": job }, work),
    close: () => provider.shutdown(),
  };
}

function remoteContext({ headers }: FastifyRequest): Context {
  const remote = readTraceParent(headers.traceparent);
  if (remote === null) return ROOT_CONTEXT;
  const { traceId, spanId, isSampled } = remote;
  const traceFlags = isSampled ? TraceFlags.SAMPLED : TraceFlags.NONE;
  return trace.setSpanContext(ROOT_CONTEXT, { traceId, spanId, traceFlags, isRemote: true });
}
