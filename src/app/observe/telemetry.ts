import type { FastifyInstance } from "fastify";
import type { Logger } from "pino";
import type { OpenedDatabase } from "../../persistence/database/opened-database.js";
import { readBacklog, type Backlog } from "../../persistence/database/backlog.js";
import { cacheFigures, type Cache } from "../../services/cache/cache.js";
import type { Environment } from "../setup/environment.js";
import type { Readiness } from "../server/readiness.js";
import type { Metrics } from "./metrics.js";
import { combineObservers, type Observer } from "./observer.js";
import { startOperationsServer } from "./operations-server.js";
import type { Traces } from "./traces.js";
import type { OnRequestEnd } from "./request-end.js";
import { requestLog } from "./request-log.js";

/** Metrics, traces and the request log, as the environment asks for them. The rest is not even loaded. */
interface Telemetry {
  /** null: neither metrics nor traces are on. */
  readonly observer: Observer | null;
  readonly onRequestEnd: readonly OnRequestEnd[];
  readonly onShed: (what: string) => void;
  readonly watchRequests: (app: FastifyInstance) => void;
  /** Begins to answer `/metrics` where there is a port for it. */
  open(watched: TelemetrySources): Promise<void>;
  close(): Promise<void>;
}

interface TelemetrySources {
  readonly database: Pick<OpenedDatabase, "sql" | "poolFigures">;
  readonly readiness: Readiness;
  /** Left out: nothing is cached. */
  readonly cache?: Cache;
}

type Settings = Pick<Environment, "metrics" | "requestLog" | "traces">;

export async function startTelemetry(settings: Settings, log: Logger): Promise<Telemetry> {
  const { metrics: at, requestLog: share } = settings;
  const metrics = at === null ? null : (await import("./metrics.js")).createMetrics(() => performance.now());
  const traces = settings.traces ? await openTraces(log) : null;
  const logsRequests = share > 0 || log.isLevelEnabled("debug");
  let close = (): Promise<void> => Promise.resolve();
  return {
    observer: combineObservers([traces, metrics].filter((each) => each !== null)),
    watchRequests: (app) => traces?.watchRequests(app),
    onRequestEnd: [
      ...(traces === null ? [] : [traces.onRequestEnd]),
      ...(metrics === null ? [] : [metrics.onRequestEnd]),
      ...(logsRequests ? [requestLog({ share, dice: Math.random })] : []),
    ],
    onShed: (what) => metrics?.onShed(what),
    open: async (watched) => {
      if (at === null || metrics === null) return;
      watchAll(metrics, watched);
      const server = await startOperationsServer({ ...at, metrics, readiness: watched.readiness });
      close = () => server.close();
      log.info({ address: server.address }, "metrics are served at /metrics");
    },
    close: async () => {
      await Promise.all([close(), traces?.close()]);
    },
  };
}

/** The libraries are optional packages. */
async function openTraces(log: Logger): Promise<Traces> {
  const module = await import("./traces.js").catch((error: unknown) => {
    const isMissing = error instanceof Error && "code" in error && error.code === "ERR_MODULE_NOT_FOUND";
    if (!isMissing) throw error;
    const packages = "@opentelemetry/sdk-trace-node and @opentelemetry/exporter-trace-otlp-http";
    throw new Error(
      `OTEL_EXPORTER_OTLP_ENDPOINT asks for traces, but ${packages} are not installed. Install with optional packages, or leave the variable out.`,
      { cause: error },
    );
  });
  return module.exportTraces(log);
}

function watchAll(metrics: Metrics, { database, readiness, cache }: TelemetrySources): void {
  metrics.watch({
    pool: () => database.poolFigures(),
    backlog: cachedBacklog(() => readBacklog(database.sql)),
    readiness,
    cache: () => (cache === undefined ? null : cacheFigures(cache)),
  });
}

/** Milliseconds for which the backlog is as good as new: it is asked for twice at each reading. */
const fresh = 5_000;

function cachedBacklog(read: () => Promise<Backlog>): () => Promise<Backlog> {
  let last: { readonly at: number; readonly found: Promise<Backlog> } | null = null;
  return () => {
    const now = performance.now();
    if (last === null || now - last.at > fresh) last = { at: now, found: read() };
    return last.found;
  };
}
