import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from "prom-client";
import { cacheTable, type NamedCaches } from "../../domain/cache-table.js";
import type { Backlog } from "../../persistence/database/backlog.js";
import type { PoolFigures } from "../../persistence/database/opened-database.js";
import type { CacheFigures } from "../../services/cache/cache.js";
import { notReadyCodes, type Readiness } from "../server/readiness.js";
import { whenDone, type Observer } from "./observer.js";
import type { OnRequestEnd } from "./request-end.js";

export interface Metrics extends Observer {
  readonly onRequestEnd: OnRequestEnd;
  /** A request that was turned away, or would have been: what there was too much of. */
  readonly onShed: (what: string) => void;
  /** What is asked for when somebody reads the figures; each may be told once its part of the program is open. */
  watch(sources: MetricSources): void;
  /** The text, and what media type it is. */
  read(): Promise<{ readonly text: string; readonly type: string }>;
}

export interface MetricSources {
  /** null: a database without a pool. */
  readonly pool?: () => PoolFigures | null;
  /** null: nothing is cached. */
  readonly cache?: () => CacheFigures | null;
  /** Work that waits in the database: the same for every process. */
  readonly backlog?: () => Promise<Backlog>;
  readonly readiness?: Readiness;
}

const seconds = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];

/** Figures for Prometheus. `now` in milliseconds. Labels take few values each, none of them a caller's own words. */
export function createMetrics(now: () => number): Metrics {
  const registry = new Registry();
  const registers = [registry];
  collectDefaultMetrics({ register: registry });
  // Named like counters, which they are not: linters of figures take offence.
  for (const what of ["handles", "requests", "resources"]) registry.removeSingleMetric(`nodejs_active_${what}_total`);
  const counter = <Label extends string>(name: string, help: string, labelNames: readonly Label[]) =>
    new Counter({ name: `prepwright_${name}`, help, labelNames, registers });
  const histogram = <Label extends string>(
    name: string,
    help: string,
    labelNames: readonly Label[],
    buckets: number[] = seconds,
  ) => new Histogram({ name: `prepwright_${name}`, help, labelNames, buckets, registers });

  const requests = counter("requests_total", "Requests that were answered.", ["part", "route", "method", "status"]);
  const durations = histogram("request_duration_seconds", "From the head of a request to the end of its answer.", [
    "part",
    "route",
  ]);
  const aborted = counter("requests_aborted_total", "Requests whose caller went away before the end.", ["part"]);
  const operations = counter("graphql_operations_total", "GraphQL operations.", ["kind", "operation", "outcome"]);
  const costs = histogram(
    "graphql_cost",
    "Cost of operations as it is checked before they run.",
    [],
    [1, 3, 10, 30, 100, 300, 1_000, 3_000, 10_000, 30_000, 100_000],
  );
  const shed = counter("requests_shed_total", "Requests turned away because there was too much to do.", ["reason"]);
  const stages = histogram("stage_duration_seconds", "What computing answers is spent on.", ["stage"]);
  const statements = histogram("sql_duration_seconds", "SQL statements, from sending to the last row.", ["kind"]);
  const statementErrors = counter("sql_errors_total", "SQL statements that failed.", ["kind"]);
  const jobs = counter("job_runs_total", "Jobs that this process ran.", ["name", "outcome"]);
  const jobDurations = histogram(
    "job_duration_seconds",
    "Jobs that this process ran.",
    ["name"],
    [0.1, 1, 10, 60, 300, 1_800],
  );

  watchKept(registry, cacheTable);
  return {
    onRequestEnd: (end) => {
      const { part, method, status, ms, kind, registered, cost, hasErrors, isAborted } = end;
      const route = end.route ?? "none";
      requests.inc({ part, route, method: end.route === null ? "any" : method, status: String(status) });
      durations.observe({ part, route }, ms / 1000);
      if (isAborted) aborted.inc({ part });
      if (kind !== null) {
        operations.inc({ kind, operation: registered ?? "other", outcome: hasErrors ? "errors" : "ok" });
      }
      if (cost !== null) costs.observe(cost);
    },
    onShed: (reason) => shed.inc({ reason }),
    aroundStage: (stage, work) => {
      const begun = now();
      return whenDone(work, () => stages.observe({ stage }, (now() - begun) / 1000));
    },
    aroundStatement: (sql, work) => {
      const begun = now();
      const kind = kindOf(sql);
      return whenDone(work, (error) => {
        statements.observe({ kind }, (now() - begun) / 1000);
        if (error !== null) statementErrors.inc({ kind });
      });
    },
    aroundJob: (name, work) => {
      const begun = now();
      return whenDone(work, (error) => {
        jobDurations.observe({ name }, (now() - begun) / 1000);
        jobs.inc({ name, outcome: error === null ? "done" : "failed" });
      });
    },
    watch: ({ pool, cache, backlog, readiness }) => {
      if (pool !== undefined) watchPool(registry, pool);
      if (cache !== undefined) watchCache(registry, cache);
      if (backlog !== undefined) watchBacklog(registry, backlog);
      if (readiness !== undefined) watchReadiness(registry, readiness);
    },
    read: async () => ({ text: await registry.metrics(), type: registry.contentType }),
  };
}

const kinds = new Set(["select", "insert", "update", "delete", "with"]);

function kindOf(sql: string): string {
  const word = /^\s*([a-z]+)/i.exec(sql)?.[1]?.toLowerCase() ?? "";
  return kinds.has(word) ? word : "other";
}

interface Reading {
  readonly labels: Readonly<Record<string, string>>;
  readonly value: number;
}

/** A figure that is looked up when somebody reads it. */
function gauge(
  registry: Registry,
  name: string,
  help: string,
  labelNames: readonly string[],
  read: () => readonly Reading[] | Promise<readonly Reading[]>,
): void {
  new Gauge({
    name: `prepwright_${name}`,
    help,
    labelNames: [...labelNames],
    registers: [registry],
    async collect() {
      const found = await read();
      this.reset();
      for (const { labels, value } of found) this.set({ ...labels }, value);
    },
  });
}

/** A count that something else keeps, looked up when somebody reads it. */
function counted(
  registry: Registry,
  name: string,
  help: string,
  labelNames: readonly string[],
  read: () => readonly Reading[],
): void {
  new Counter({
    name: `prepwright_${name}`,
    help,
    labelNames: [...labelNames],
    registers: [registry],
    collect() {
      this.reset();
      for (const { labels, value } of read()) this.inc({ ...labels }, value);
    },
  });
}

function watchPool(registry: Registry, pool: () => PoolFigures | null): void {
  gauge(registry, "pool_connections", "Connections to the database.", ["state"], () => {
    const figures = pool();
    if (figures === null) return [];
    const { total, idle, most } = figures;
    return [
      { labels: { state: "busy" }, value: total - idle },
      { labels: { state: "idle" }, value: idle },
      { labels: { state: "most" }, value: most },
    ];
  });
  gauge(registry, "pool_waiting", "Who waits for a connection to the database.", [], () => {
    const figures = pool();
    return figures === null ? [] : [{ labels: {}, value: figures.waiting }];
  });
}

function watchCache(registry: Registry, read: () => CacheFigures | null): void {
  const told = (each: (found: CacheFigures) => readonly Reading[]) => (): readonly Reading[] => {
    const found = read();
    return found === null ? [] : each(found);
  };
  const shelves = (figure: "hits" | "misses") => (found: CacheFigures) =>
    Object.entries(found.lookups).map(([shelf, counts]) => ({ labels: { shelf }, value: counts[figure] }));
  counted(registry, "cache_hits_total", "Look-ups that found an entry.", ["shelf"], told(shelves("hits")));
  counted(registry, "cache_misses_total", "Look-ups that found none.", ["shelf"], told(shelves("misses")));
  const dropped = told(({ evicted }) => [{ labels: {}, value: evicted }]);
  counted(registry, "cache_gave_way_total", "Entries evicted to make room.", [], dropped);
  const plain = (name: string, help: string, figure: (found: CacheFigures) => number): void =>
    gauge(registry, name, help, [], () => {
      const found = read();
      return found === null ? [] : [{ labels: {}, value: figure(found) }];
    });
  plain("cache_entries", "Entries in the cache.", ({ entries }) => entries);
  plain("cache_bytes", "Their estimated size.", ({ bytes }) => bytes);
  plain("cache_limit_bytes", "The limit of that size.", ({ limit }) => limit);
  plain("cache_listening", "1: changes are heard; 0: only entries that never change are served.", ({ listening }) =>
    listening ? 1 : 0,
  );
}

/** Every cache of the process, from one table. */
function watchKept(registry: Registry, read: () => readonly NamedCaches[]): void {
  const plain = (name: string, help: string, figure: (caches: NamedCaches) => number): void =>
    gauge(registry, name, help, ["cache"], () =>
      read().map((caches) => ({ labels: { cache: caches.name }, value: figure(caches) })),
    );
  plain("kept_caches", "Caches of this name: each plan and food has some.", ({ caches }) => caches);
  plain("kept_entries", "Entries in them.", ({ entries }) => entries);
  plain("kept_weight", "Their size in the unit of their limit: bytes, characters or entries.", ({ weight }) => weight);
  counted(registry, "kept_gave_way_total", "Entries evicted to make room.", ["cache"], () =>
    read().map(({ name, evicted }) => ({ labels: { cache: name }, value: evicted })),
  );
}

function watchBacklog(registry: Registry, read: () => Promise<Backlog>): void {
  const help = "Work in the database; the same in every process.";
  gauge(registry, "backlog", help, ["queue", "state"], async () =>
    (await read()).map(({ queue, state, count }) => ({ labels: { queue, state }, value: count })),
  );
  gauge(
    registry,
    "backlog_oldest_seconds",
    "For how long the oldest has been due or under way.",
    ["queue", "state"],
    async () =>
      (await read()).map(({ queue, state, oldestSeconds }) => ({ labels: { queue, state }, value: oldestSeconds })),
  );
}

function watchReadiness(registry: Registry, readiness: Readiness): void {
  gauge(
    registry,
    "not_ready",
    "1 for each reason why this process should not be sent requests.",
    ["code"],
    async () => {
      const now = new Set((await readiness.check()).map(({ code }) => code));
      return notReadyCodes.map((code) => ({ labels: { code }, value: now.has(code) ? 1 : 0 }));
    },
  );
}
