import type { FastifyInstance } from "fastify";
import { monitorEventLoopDelay } from "node:perf_hooks";
import { getHeapStatistics } from "node:v8";
import type { PoolFigures } from "../../persistence/database/opened-database.js";
import { refusal } from "../../rest/refusal.js";
import { sendRefusal } from "../../rest/send-problem.js";
import { openRequestQueue, type RequestQueue } from "./request-queue.js";
import { healthPaths } from "./health.js";

export interface OverloadLimits {
  /** Mean delay of the event loop over half a second, twice in a row, in milliseconds. Also the longest time a request is queued. */
  readonly loopDelayMs: number;
  /** Used heap / the most that may be used. */
  readonly heapShare: number;
  /** Requests that wait for a database connection. */
  readonly poolWaiting: number;
}

/** One session may take a second to order, and so may a start; several in a row are too much. */
export const defaultLimits: OverloadLimits = { loopDelayMs: 500, heapShare: 0.92, poolWaiting: 200 };

export type OverloadReason = "event-loop" | "heap" | "pool";

export interface Overload {
  /** Why the process is overloaded; null: it is not. */
  reason(): OverloadReason | null;
  /** Requests wait here before any work is done for them. */
  readonly queue: RequestQueue;
  /** The same in a sentence. */
  describe(): string | null;
  close(): void;
}

const sentences: Readonly<Record<OverloadReason, string>> = {
  "event-loop": "The process is short of processor time.",
  heap: "The process is short of memory.",
  pool: "Too many requests wait for a connection to the database.",
};

/** Milliseconds between two looks at the event loop and the heap. */
const pause = 500;
/** Milliseconds between two ticks of the delay's measuring, which are part of what it measures. */
const resolution = 20;

/** Watches the event loop, the heap and the connection pool. */
export function watchOverload(limits: OverloadLimits, pool: () => PoolFigures | null): Overload {
  const delay = monitorEventLoopDelay({ resolution });
  delay.enable();
  let slow: OverloadReason | null = null;
  let lateLooks = 0;
  const look = setInterval(() => {
    const mean = Number.isNaN(delay.mean) ? 0 : delay.mean / 1e6 - resolution;
    delay.reset();
    const { used_heap_size: used, heap_size_limit: most } = getHeapStatistics();
    lateLooks = mean > limits.loopDelayMs ? lateLooks + 1 : 0;
    slow = lateLooks > 1 ? "event-loop" : used / most > limits.heapShare ? "heap" : null;
  }, pause);
  look.unref();
  const reason = (): OverloadReason | null => slow ?? ((pool()?.waiting ?? 0) > limits.poolWaiting ? "pool" : null);
  return {
    reason,
    queue: openRequestQueue(limits.loopDelayMs),
    describe: () => {
      const what = reason();
      return what === null ? null : sentences[what];
    },
    close: () => {
      clearInterval(look);
      delay.disable();
    },
  };
}

export interface SheddingOptions {
  readonly overload: Overload;
  readonly onShed: (what: OverloadReason) => void;
  readonly dice: () => number;
}

const message = "The service is overloaded. Nothing was done; try again in a moment.";

/** Rejects requests with 503 before any work is done for them, except health checks. */
export function shedLoad(app: FastifyInstance, { overload, onShed, dice }: SheddingOptions): void {
  const { queue } = overload;
  app.server.on("connection", queue.connected);
  app.addHook("onRequest", (request, reply, done) => {
    const { url = "" } = request.routeOptions;
    if (healthPaths.has(url)) return done();
    const begin = (): void => {
      // The caller may have disconnected while it waited.
      if (!request.raw.destroyed) done();
    };
    const what = overload.reason() ?? (queue.enqueue(begin) ? null : "event-loop");
    if (what === null) return;
    onShed(what);
    // Jitter, so that callers do not all retry at once.
    const retryAfter = String(1 + Math.floor(dice() * 3));
    if (url.startsWith("/graphql")) {
      const errors = [{ message, extensions: { code: "OVERLOADED" } }];
      return void reply
        .code(503)
        .header("retry-after", retryAfter)
        .header("cache-control", "no-store")
        .send({ errors });
    }
    sendRefusal(refusal("overloaded", message, { headers: { "retry-after": retryAfter } }), request, reply);
  });
}
