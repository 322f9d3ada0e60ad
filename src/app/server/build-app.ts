import Fastify, { type FastifyBaseLogger, type FastifyInstance } from "fastify";
import { randomUUID } from "node:crypto";
import type { Logger } from "pino";
import { openExplorer } from "../../graphql/explorer.js";
import { usualEngine, type EngineOptions } from "../../graphql/server/engine-options.js";
import { registerGraphql } from "../../graphql/server/graphql-route.js";
import { openGraphqlServer } from "../../graphql/server/graphql-server.js";
import { splitSuffix } from "../../rest/format.js";
import { registerRest } from "../../rest/register-rest.js";
import { sendFailure } from "../../rest/send-problem.js";
import { openPageAssets } from "../../rest/page-assets.js";
import { answerMissing } from "../../rest/page-errors.js";
import { registerPages } from "../../rest/routes/pages.js";
import type { Deps } from "../../services/deps.js";
import { openRateLimit, type RateLimitSettings } from "../../services/access/rate-limit.js";
import { answerHeaders, setAnswerHeaders } from "./answer-headers.js";
import { addBodyTimeout, requestTimes } from "./body-timeout.js";
import { reportRequests, type OnRequestEnd } from "../observe/request-end.js";
import { addOperationSummary } from "../observe/operation-summary.js";
import { readTraceParent } from "../observe/trace-parent.js";
import { shedLoad, type Overload, type OverloadReason } from "./load-shedding.js";
import { drainConnections } from "./drain-connections.js";
import { registerHealth } from "./health.js";
import { addEventStreams, usualStreams, type StreamLimits } from "./event-streams.js";
import { countRequests } from "./count-requests.js";
import { limitRate } from "./limit-rate.js";
import type { Readiness } from "./readiness.js";
import { givePublicOrigin } from "./public-origin.js";
import { registerSchemas } from "./schemas.js";
import { refuseMalformedRequest } from "./refuse-malformed-request.js";
import { readActor } from "./read-actor.js";

export interface AppOptions {
  readonly deps: Deps;
  readonly log: Logger;
  readonly readiness: Readiness;
  /** Folder of the built explorer page; it may be missing. */
  readonly explorerFolder: string;
  /** Folder of the built style sheet and scripts of the pages; it may be missing. */
  readonly browserFolder: string;
  /** Hears of every request before anything else does. */
  readonly watchRequests?: (app: FastifyInstance) => void;
  /** Told of every request; nobody unless named. */
  readonly onRequestEnd?: readonly OnRequestEnd[];
  /** Requests are turned away by it; none unless it is there. Closed with the application. */
  readonly overload?: Overload;
  readonly onShed?: (what: OverloadReason) => void;
  /** Limits of what is asked over GraphQL; the usual ones unless told. */
  readonly graphql?: EngineOptions;
  /** Milliseconds that the body of a request may take, if it is no upload; half a minute unless told. */
  readonly bodyTime?: number;
  /** Left out: nobody is limited. */
  readonly rateLimit?: RateLimitSettings;
  /** Where readers reach the service: `https://plans.example`. Left out or null: where each request says it was sent to. */
  readonly publicUrl?: string | null;
  /** Addresses and networks of proxies whose `X-Forwarded-*` are believed; left out: nobody's. */
  readonly trustedProxies?: readonly string[];
  /** Limits of streams of events; the usual ones unless told. */
  readonly streams?: Partial<StreamLimits>;
}

const noLimit: RateLimitSettings = { perAddress: 0, perToken: 0, refusedTokensPerAddress: 0 };

/** The largest body that is read. A plan document of two thousand lines is about a quarter of it. */
export const largestBody = 1024 * 1024;

/** Every route on one application, not listening. The database is the caller's: closing the application leaves it open. */
export async function buildApp({
  deps,
  log,
  readiness,
  explorerFolder,
  browserFolder,
  graphql = usualEngine,
  bodyTime = requestTimes.body,
  watchRequests,
  onRequestEnd = [],
  overload,
  onShed = () => undefined,
  rateLimit = noLimit,
  publicUrl = null,
  trustedProxies = [],
  streams = {},
}: AppOptions): Promise<FastifyInstance> {
  const logger: FastifyBaseLogger = log.child({ part: "http" });
  const app = Fastify({
    loggerInstance: logger,
    // A line for every request is debugging; what went wrong is logged where it goes wrong.
    logController: new Fastify.LogController({ disableRequestLogging: true, requestIdLogLabel: "requestId" }),
    bodyLimit: largestBody,
    clientErrorHandler: refuseMalformedRequest,
    // What the router refuses before any route or hook has it.
    frameworkErrors: (error, request, reply) => {
      answerHeaders(request, reply);
      sendFailure(error, request, reply);
    },
    childLoggerFactory: (parent, bindings, _options, { headers }) => {
      const trace = readTraceParent(headers.traceparent);
      return parent.child(trace === null ? bindings : { ...bindings, traceId: trace.traceId });
    },
    genReqId: (request) => requestId(request.headers["x-request-id"]),
    // A file for a feed may be half a gigabyte; other bodies have `bodyTime`.
    requestTimeout: requestTimes.upload,
    http: {
      headersTimeout: requestTimes.head,
      requestTimeout: requestTimes.upload,
      connectionsCheckingInterval: 1_000,
    },
    // Longer than proxies keep theirs, mostly a minute: whoever closes last never closes on a request that is under way.
    keepAliveTimeout: 72_000,
    // Nothing came, and nothing was taken of an answer.
    connectionTimeout: 120_000,
    // An ending such as .md asks for a form of the thing at the address before it.
    rewriteUrl: ({ url = "/" }) => splitSuffix(url).url,
    // While stopping, what still comes in is answered as always.
    return503OnClosing: false,
    routerOptions: { maxParamLength: 200 },
    trustProxy: trustedProxies.length > 0 && [...trustedProxies],
  });
  watchRequests?.(app);
  drainConnections(app.server, () => performance.now());
  setAnswerHeaders(app);
  givePublicOrigin(app, publicUrl);
  app.addHook("onSend", (_request, reply, payload, done) => {
    if (readiness.isLeaving()) reply.header("connection", "close");
    done(null, payload);
  });
  addBodyTimeout(app, bodyTime, () => performance.now());
  addOperationSummary(app);
  reportRequests(app, onRequestEnd);
  if (overload !== undefined) {
    shedLoad(app, { overload, onShed, dice: Math.random });
    app.addHook("onClose", () => overload.close());
  }
  const limit = openRateLimit(rateLimit, deps.clock);
  readActor(app, deps, limit);
  limitRate(app, limit);
  addEventStreams(app, {
    limits: { ...usualStreams, ...streams },
    ...{ limit, now: () => performance.now(), dice: Math.random },
  });
  countRequests(app, deps);
  app.setErrorHandler(sendFailure);
  const assets = openPageAssets(browserFolder);
  app.setNotFoundHandler(answerMissing(assets));
  registerHealth(app, readiness);
  registerSchemas(app);
  const { queryTime } = graphql;
  registerRest(app, { deps, queryTime, uploadTime: requestTimes.upload, publicUrl });
  const server = await openGraphqlServer(graphql, log);
  app.addHook("onClose", () => server.stop());
  registerGraphql(app, { deps, server, explorer: openExplorer(explorerFolder) });
  registerPages(app, { deps, queryTime, assets });
  await app.ready();
  return app;
}

/** The caller's own id where it is harmless in a log line, else a new one. */
function requestId(given: string | readonly string[] | undefined): string {
  return typeof given === "string" && /^[A-Za-z0-9._:-]{1,100}$/.test(given) ? given : randomUUID();
}
