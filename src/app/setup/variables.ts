import { z } from "zod";
import { isTimeZone } from "../../domain/time-zone.js";
import { usualEngine } from "../../graphql/server/engine-options.js";
import {
  flag,
  folder,
  hostName,
  isNetwork,
  levels,
  listOf,
  points,
  portNumber,
  publicUrl,
  seconds,
  serverUrl,
  wholeNumber,
} from "./variable-kinds.js";

/** A variable of the environment: its name there, and how its text is read. Not set: the default of the schema, or null. */
export interface Variable<Value> {
  readonly name: string;
  readonly schema: z.ZodType<Value>;
}

const withDefault = <Value>(name: string, schema: z.ZodType<Value>, usual: z.core.util.NoUndefined<Value>) => ({
  name,
  schema: schema.default(usual),
});

const orNull = <Value>(name: string, schema: z.ZodType<Value>) => ({ name, schema: schema.nullable().default(null) });

const addressOfServers = "must be addresses that begin with postgres:// or postgresql://, with commas between";
const lag = "must be a whole number of milliseconds from 50 to 60000";
const networks =
  "must be addresses, networks (10.0.0.0/8) or loopback, linklocal, uniquelocal, with commas between them";

/** Every variable of the service, once. Seconds are read into milliseconds. README.md says what each does. */
export const variables = {
  port: withDefault("PORT", portNumber, 4000),
  host: withDefault("HOST", hostName, "127.0.0.1"),
  /** null: the embedded database in `dataDir`. */
  databaseUrl: orNull("DATABASE_URL", serverUrl),
  /** The same database past any pooler; null: there is none between. */
  databaseDirectUrl: orNull("DATABASE_DIRECT_URL", serverUrl),
  /** Streaming replicas of it, for reads of the public. */
  replicaUrls: withDefault(
    "DATABASE_REPLICA_URLS",
    listOf((url) => serverUrl.safeParse(url).success, addressOfServers),
    [],
  ),
  /** The most milliseconds an answer of a replica may be older than the primary's. */
  replicaLagMs: withDefault(
    "DATABASE_REPLICA_LAG",
    wholeNumber(/^\d{2,5}$/, lag).refine((ms) => ms >= 50 && ms <= 60_000, lag),
    1000,
  ),
  dataDir: withDefault("DATA_DIR", folder, "data"),
  logLevel: withDefault("LOG_LEVEL", z.enum(levels, `must be one of ${levels.join(", ")}`), "info"),
  mode: withDefault(
    "NODE_ENV",
    z.enum(["development", "production", "test"], "must be development, production or test"),
    "development",
  ),
  /** Where traces are sent; the libraries for it read the variable themselves. */
  tracesUrl: orNull(
    "OTEL_EXPORTER_OTLP_ENDPOINT",
    z.string().regex(/^https?:\/\/\S+$/, "must begin with http:// or https://"),
  ),
  allowEmbedded: withDefault("PREPWRIGHT_ALLOW_EMBEDDED", flag, false),
  /** Whether webhooks may lead to private networks, and go without encryption. */
  allowPrivateWebhooks: withDefault("PREPWRIGHT_ALLOW_PRIVATE_WEBHOOKS", flag, false),
  /** The most that is cached, in megabytes; 0: nothing. */
  cacheMegabytes: withDefault(
    "PREPWRIGHT_CACHE_MB",
    wholeNumber(/^\d{1,5}$/, "must be a whole number of megabytes; 0 turns the cache off"),
    64,
  ),
  /** From SIGTERM to the stop, in milliseconds, in which everything is still answered. null: see `environment.ts`. */
  drainMs: orNull("PREPWRIGHT_DRAIN_SECONDS", seconds(0, 300)),
  /** What is in flight may take so long once the stop began, in milliseconds. */
  graceMs: withDefault("PREPWRIGHT_GRACE_SECONDS", seconds(1, 600), 10_000),
  metricsHost: withDefault("PREPWRIGHT_METRICS_HOST", hostName, "127.0.0.1"),
  metricsPort: orNull("PREPWRIGHT_METRICS_PORT", portNumber),
  /** Share of requests that get a line in the log, from 0 to 1. */
  requestLog: withDefault(
    "PREPWRIGHT_REQUEST_LOG",
    wholeNumber(/^(0(\.\d{1,6})?|1(\.0{1,6})?)$/, "must be a share of all requests from 0 to 1, such as 0.01"),
    0,
  ),
  /** Delay of the event loop beyond which requests are turned away, in milliseconds; 0: none are. */
  shedDelayMs: withDefault(
    "PREPWRIGHT_SHED_DELAY_MS",
    wholeNumber(/^\d{1,5}$/, "must be a whole number of milliseconds up to 99999; 0 is no limit"),
    500,
  ),
  /** Below it are the files of feeds that come from a folder; null: there are none. */
  importFolder: orNull("PREPWRIGHT_IMPORT_DIR", folder),
  graphql: {
    introspection: withDefault("PREPWRIGHT_INTROSPECTION", flag, usualEngine.introspection),
    /** Milliseconds. */
    queryTime: withDefault("PREPWRIGHT_QUERY_SECONDS", seconds(1, 600), usualEngine.queryTime),
    /** Points of one request. */
    costLimit: withDefault(
      "PREPWRIGHT_QUERY_COST",
      wholeNumber(/^[1-9]\d{0,8}$/, "must be a whole number of points from 1 to 999999999"),
      usualEngine.costLimit,
    ),
  },
  /** Folder of the documents that are run, and no others; null: any document is. */
  operationsFolder: orNull("PREPWRIGHT_OPERATIONS_DIR", folder),
  reportUrl: orNull(
    "PREPWRIGHT_REPORT_URL",
    z.url({ protocol: /^https?$/, error: "must be an address that begins with https:// or http://" }),
  ),
  /** Shown nowhere. */
  reportSecret: orNull(
    "PREPWRIGHT_REPORT_SECRET",
    z.string().regex(/^whsec_[A-Za-z0-9+/]{32,88}={0,2}$/, "must be whsec_ and 24 to 64 random bytes in base64"),
  ),
  /** Where readers reach the service, without a slash at the end; null: where each request says it was sent to. */
  publicUrl: orNull("PREPWRIGHT_PUBLIC_URL", publicUrl),
  rateLimit: {
    perAddress: withDefault("PREPWRIGHT_POINTS_PER_ADDRESS", points, 1_500_000),
    perToken: withDefault("PREPWRIGHT_POINTS_PER_TOKEN", points, 6_000_000),
    refusedTokensPerAddress: withDefault("PREPWRIGHT_REFUSED_TOKENS_PER_ADDRESS", points, 30),
  },
  /** Addresses and networks of proxies whose `X-Forwarded-*` are believed. */
  trustedProxies: withDefault("PREPWRIGHT_TRUST_PROXY", listOf(isNetwork, networks), []),
  /** Whether the service also runs the jobs and sends webhooks; where workers do, it need not. */
  worker: withDefault("PREPWRIGHT_WORKER", flag, true),
  /** IANA zone in which nightly jobs have their hour. */
  zone: withDefault(
    "PREPWRIGHT_ZONE",
    z.string().refine(isTimeZone, "must be the IANA name of a time zone, such as Europe/Lisbon"),
    "UTC",
  ),
} as const;
