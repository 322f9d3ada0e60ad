import { isIPv4, isIPv6 } from "node:net";
import { z } from "zod";
import type { RateLimitSettings } from "../services/rate-limit.js";
import { originOf } from "./public-origin.js";
import { usualEngine, type EngineOptions } from "../graphql/engine-options.js";

const levels = ["fatal", "error", "warn", "info", "debug", "trace", "silent"] as const;

function isZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat("en", { timeZone: name }).resolvedOptions().timeZone !== "";
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

const serverUrl = z.string().regex(/^postgres(ql)?:\/\/\S+$/, "must begin with postgres:// or postgresql://");
/** What the framework's reader of proxies' headers takes. */
function isNetwork(text: string): boolean {
  if (["loopback", "linklocal", "uniquelocal"].includes(text)) return true;
  const [address = "", prefix, ...more] = text.split("/");
  const bits = isIPv4(address) ? 32 : isIPv6(address) ? 128 : -1;
  if (bits === -1 || more.length > 0) return false;
  return prefix === undefined || (/^\d{1,3}$/.test(prefix) && Number(prefix) <= bits);
}

const points = z
  .string()
  .regex(/^\d{1,12}$/, "must be a whole number of points a minute; 0 is no limit")
  .transform(Number);

const portNumber = z
  .string()
  .regex(/^\d{1,5}$/, "must be a whole number from 0 to 65535; 0 picks a free port")
  .transform(Number)
  .refine((port) => port <= 65_535, "must be a whole number from 0 to 65535; 0 picks a free port");

const hostName = z.string().regex(/^[A-Za-z0-9.:-]+$/, "must be a host name or an address");

/** An origin: links of pages are from its root, so a service below a path of it would have broken ones. */
const publicUrl = z
  .string()
  .refine(isOrigin, "must be https:// or http://, a host and at most a port: https://plans.example.org")
  .transform((text) => new URL(text).origin);

function isOrigin(text: string): boolean {
  if (!/^https?:\/\/[^\s/@?#\\]+\/?$/i.test(text) || !URL.canParse(text)) return false;
  return originOf("http", new URL(text).host) !== null;
}

const seconds = (least: number, most: number) => {
  const message = `must be a whole number of seconds from ${least} to ${most}`;
  return z
    .string()
    .regex(/^\d{1,4}$/, message)
    .transform((text) => Number(text) * 1000)
    .refine((milliseconds) => milliseconds >= least * 1000 && milliseconds <= most * 1000, message);
};

const variables = z.object({
  PORT: portNumber.default(4000),
  HOST: hostName.default("127.0.0.1"),
  DATABASE_URL: serverUrl.optional(),
  DATABASE_DIRECT_URL: serverUrl.optional(),
  DATABASE_REPLICA_URLS: z
    .string()
    .transform((text) => text.split(",").map((each) => each.trim()))
    .refine((urls) => urls.every((url) => serverUrl.safeParse(url).success), {
      message: "must be addresses that begin with postgres:// or postgresql://, with commas between",
    })
    .default([]),
  DATABASE_REPLICA_LAG: z
    .string()
    .regex(/^\d{2,5}$/, "must be a whole number of milliseconds from 50 to 60000")
    .transform(Number)
    .refine((ms) => ms >= 50 && ms <= 60_000, "must be a whole number of milliseconds from 50 to 60000")
    .default(1000),
  DATA_DIR: z.string().min(1).default("data"),
  LOG_LEVEL: z.enum(levels, `must be one of ${levels.join(", ")}`).default("info"),
  NODE_ENV: z
    .enum(["development", "production", "test"], "must be development, production or test")
    .default("development"),
  OTEL_EXPORTER_OTLP_ENDPOINT: z
    .string()
    .regex(/^https?:\/\/\S+$/, "must begin with http:// or https://")
    .optional(),
  PREPWRIGHT_ALLOW_EMBEDDED: z.enum(["0", "1"], "must be 1 or 0").default("0"),
  PREPWRIGHT_ALLOW_PRIVATE_WEBHOOKS: z.enum(["0", "1"], "must be 1 or 0").default("0"),
  PREPWRIGHT_CACHE_MB: z
    .string()
    .regex(/^\d{1,5}$/, "must be a whole number of megabytes; 0 keeps nothing")
    .transform(Number)
    .default(64),
  PREPWRIGHT_DRAIN_SECONDS: seconds(0, 300).optional(),
  PREPWRIGHT_GRACE_SECONDS: seconds(1, 600).default(10_000),
  PREPWRIGHT_METRICS_HOST: hostName.default("127.0.0.1"),
  PREPWRIGHT_METRICS_PORT: portNumber.optional(),
  PREPWRIGHT_REQUEST_LOG: z
    .string()
    .regex(/^(0(\.\d{1,6})?|1(\.0{1,6})?)$/, "must be a share of all requests from 0 to 1, such as 0.01")
    .transform(Number)
    .default(0),
  PREPWRIGHT_SHED_DELAY_MS: z
    .string()
    .regex(/^\d{1,5}$/, "must be a whole number of milliseconds up to 99999; 0 turns nobody away")
    .transform(Number)
    .default(500),
  PREPWRIGHT_IMPORT_DIR: z.string().min(1).optional(),
  PREPWRIGHT_INTROSPECTION: z.enum(["0", "1"], "must be 1 or 0").default("1"),
  PREPWRIGHT_OPERATIONS_DIR: z.string().min(1).optional(),
  PREPWRIGHT_QUERY_SECONDS: seconds(1, 600).default(usualEngine.queryTime),
  PREPWRIGHT_QUERY_COST: z
    .string()
    .regex(/^[1-9]\d{0,8}$/, "must be a whole number of points from 1 to 999999999")
    .transform(Number)
    .default(usualEngine.costLimit),
  PREPWRIGHT_REPORT_URL: z
    .url({ protocol: /^https?$/, error: "must be an address that begins with https:// or http://" })
    .optional(),
  PREPWRIGHT_REPORT_SECRET: z
    .string()
    .regex(/^whsec_[A-Za-z0-9+/]{32,88}={0,2}$/, "must be whsec_ and 24 to 64 random bytes in base64")
    .optional(),
  PREPWRIGHT_PUBLIC_URL: publicUrl.optional(),
  PREPWRIGHT_POINTS_PER_ADDRESS: points.default(1_500_000),
  PREPWRIGHT_POINTS_PER_TOKEN: points.default(6_000_000),
  PREPWRIGHT_REFUSED_TOKENS_PER_ADDRESS: points.default(30),
  PREPWRIGHT_TRUST_PROXY: z
    .string()
    .transform((text) => text.split(",").map((part) => part.trim()))
    .refine(
      (parts) => parts.every(isNetwork),
      "must be addresses, networks (10.0.0.0/8) or loopback, linklocal, uniquelocal, with commas between them",
    )
    .default([]),
  PREPWRIGHT_WORKER: z.enum(["0", "1"], "must be 1 or 0").default("1"),
  PREPWRIGHT_ZONE: z
    .string()
    .refine(isZone, "must be the IANA name of a time zone, such as Europe/Lisbon")
    .default("UTC"),
});

export interface Environment {
  readonly port: number;
  readonly host: string;
  /** null: the embedded database in `dataDir`. */
  readonly databaseUrl: string | null;
  /** The same database past any pooler; null: there is none between. */
  readonly databaseDirectUrl: string | null;
  /** Streaming replicas of it, for reads of the public. */
  readonly replicaUrls: readonly string[];
  /** The most milliseconds an answer of a replica may be older than the primary's. */
  readonly replicaLagMs: number;
  readonly dataDir: string;
  readonly logLevel: (typeof levels)[number];
  /** IANA zone in which nightly jobs have their hour. */
  readonly zone: string;
  /** The most that is kept in memory to be said again; 0: nothing. */
  readonly cacheMegabytes: number;
  /** Below it are the files of feeds that come from a folder; null: there are none. */
  readonly importFolder: string | null;
  /** Where the operator is told of imports each morning; null: nowhere but in the log. The secret is shown nowhere. */
  readonly report: { readonly url: string; readonly secret: string } | null;
  /** Limits of what is asked over GraphQL. */
  readonly graphql: EngineOptions;
  /** Folder of the documents that are run, and no others; null: any document is. */
  readonly operationsFolder: string | null;
  /** Whether webhooks may lead to private networks, and go without encryption. */
  readonly allowPrivateWebhooks: boolean;
  /** Whether the service also runs the jobs and sends webhooks; where workers do, it need not. */
  readonly worker: boolean;
  /** From SIGTERM to the stop, in milliseconds, in which everything is still answered: a balancer has to notice first. */
  readonly drainMs: number;
  /** What is in flight may take so long once the stop began, in milliseconds. */
  readonly graceMs: number;
  /** Where figures are answered; null: nowhere. */
  readonly metrics: { readonly host: string; readonly port: number } | null;
  /** Share of requests that get a line in the log, from 0 to 1. */
  readonly requestLog: number;
  /** Whether traces are sent to where OTEL_EXPORTER_OTLP_ENDPOINT leads; the libraries for it read the variable themselves. */
  readonly traces: boolean;
  /** Delay of the event loop beyond which requests are turned away, in milliseconds; null: none are. */
  readonly shedDelayMs: number | null;
  readonly rateLimit: RateLimitSettings;
  /** Where readers reach the service, without a slash at the end; null: where each request says it was sent to. */
  readonly publicUrl: string | null;
  /** Addresses and networks of proxies whose `X-Forwarded-*` are believed. */
  readonly trustedProxies: readonly string[];
  readonly mode: "development" | "production" | "test";
}

export type EnvironmentResult =
  { readonly ok: true; readonly value: Environment } | { readonly ok: false; readonly faults: readonly string[] };

/** Reads every variable once. All faults are listed together, each with the name of its variable and never its value. */
export function readEnvironment(given: Readonly<Record<string, string | undefined>> = process.env): EnvironmentResult {
  // A variable set to nothing is how shells and compose files say "not set".
  const set = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined && value !== ""));
  const parsed = variables.safeParse(set);
  const faults = [
    ...(parsed.error?.issues ?? []).map((issue) => `${issue.path.join(".")} ${issue.message}`),
    ...embeddedInProduction(set),
    ...besideNoServer(set),
    ...reportByHalves(set),
  ];
  if (!parsed.success || faults.length > 0) return { ok: false, faults };
  const { PREPWRIGHT_REPORT_URL: url, PREPWRIGHT_REPORT_SECRET: secret } = parsed.data;
  const { PORT, HOST, DATABASE_URL, DATA_DIR, LOG_LEVEL, NODE_ENV, PREPWRIGHT_ZONE } = parsed.data;
  return {
    ok: true,
    value: {
      port: PORT,
      host: HOST,
      databaseUrl: DATABASE_URL ?? null,
      databaseDirectUrl: parsed.data.DATABASE_DIRECT_URL ?? null,
      replicaUrls: parsed.data.DATABASE_REPLICA_URLS,
      replicaLagMs: parsed.data.DATABASE_REPLICA_LAG,
      dataDir: DATA_DIR,
      logLevel: LOG_LEVEL,
      zone: PREPWRIGHT_ZONE,
      cacheMegabytes: parsed.data.PREPWRIGHT_CACHE_MB,
      importFolder: parsed.data.PREPWRIGHT_IMPORT_DIR ?? null,
      report: url === undefined || secret === undefined ? null : { url, secret },
      graphql: {
        costLimit: parsed.data.PREPWRIGHT_QUERY_COST,
        introspection: parsed.data.PREPWRIGHT_INTROSPECTION === "1",
        queryTime: parsed.data.PREPWRIGHT_QUERY_SECONDS,
      },
      operationsFolder: parsed.data.PREPWRIGHT_OPERATIONS_DIR ?? null,
      allowPrivateWebhooks: parsed.data.PREPWRIGHT_ALLOW_PRIVATE_WEBHOOKS === "1",
      worker: parsed.data.PREPWRIGHT_WORKER === "1",
      drainMs: parsed.data.PREPWRIGHT_DRAIN_SECONDS ?? (NODE_ENV === "production" ? 5_000 : 0),
      graceMs: parsed.data.PREPWRIGHT_GRACE_SECONDS,
      metrics:
        parsed.data.PREPWRIGHT_METRICS_PORT === undefined
          ? null
          : { host: parsed.data.PREPWRIGHT_METRICS_HOST, port: parsed.data.PREPWRIGHT_METRICS_PORT },
      requestLog: parsed.data.PREPWRIGHT_REQUEST_LOG,
      traces: parsed.data.OTEL_EXPORTER_OTLP_ENDPOINT !== undefined,
      shedDelayMs: parsed.data.PREPWRIGHT_SHED_DELAY_MS || null,
      rateLimit: {
        perAddress: parsed.data.PREPWRIGHT_POINTS_PER_ADDRESS,
        perToken: parsed.data.PREPWRIGHT_POINTS_PER_TOKEN,
        refusedTokensPerAddress: parsed.data.PREPWRIGHT_REFUSED_TOKENS_PER_ADDRESS,
      },
      publicUrl: parsed.data.PREPWRIGHT_PUBLIC_URL ?? null,
      trustedProxies: parsed.data.PREPWRIGHT_TRUST_PROXY,
      mode: NODE_ENV,
    },
  };
}

/** A variable as it counts, as a shell would write it. */
export interface Setting {
  readonly name: keyof typeof variables.shape;
  /** null: it is not set, and has no default. It may hold a secret: see `shown-setting.ts`. */
  readonly value: string | null;
  readonly from: "environment" | "default";
}

export type SettingsResult =
  | { readonly ok: true; readonly settings: readonly Setting[]; readonly unknown: readonly string[] }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Every variable of the service and what it comes to; and those that look like ours and are none, as a slip of the pen makes them. */
export function readSettings(given: Readonly<Record<string, string | undefined>> = process.env): SettingsResult {
  const read = readEnvironment(given);
  if (!read.ok) return read;
  const defaults: Readonly<Record<string, unknown>> = {
    ...variables.parse({}),
    PREPWRIGHT_DRAIN_SECONDS: read.value.drainMs,
  };
  const names = Object.keys(variables.shape) as Setting["name"][];
  const settings = names.map((name): Setting => {
    const own = given[name] ?? "";
    return own === ""
      ? { name, value: asWritten(name, defaults[name]), from: "default" }
      : { name, value: own, from: "environment" };
  });
  const known = new Set<string>([...names, ...clientVariables]);
  const unknown = Object.keys(given).filter((name) => name.startsWith("PREPWRIGHT_") && !known.has(name));
  return { ok: true, settings, unknown };
}

/** Seconds are read into milliseconds. */
function asWritten(name: string, value: unknown): string | null {
  if (typeof value === "number") return String(name.endsWith("_SECONDS") ? value / 1000 : value);
  return typeof value === "string" && value !== "" ? value : null;
}

/** Beside the schema, because a schema-wide rule is not asked once a single variable is wrong. */
function embeddedInProduction(set: Readonly<Record<string, string | undefined>>): readonly string[] {
  const allowed = set["PREPWRIGHT_ALLOW_EMBEDDED"] === "1";
  if (set["NODE_ENV"] !== "production" || set["DATABASE_URL"] !== undefined || allowed) return [];
  return [
    "DATABASE_URL must name a Postgres server in production. The embedded database is for trying out and small sites;" +
      " PREPWRIGHT_ALLOW_EMBEDDED=1 takes it all the same",
  ];
}

/** A way around a server that was not named would be forgotten silently. */
function besideNoServer(set: Readonly<Record<string, string | undefined>>): readonly string[] {
  if (set["DATABASE_URL"] !== undefined) return [];
  return ["DATABASE_DIRECT_URL", "DATABASE_REPLICA_URLS"]
    .filter((name) => set[name] !== undefined)
    .map((name) => `${name} goes with DATABASE_URL, which names no server`);
}

function reportByHalves(set: Readonly<Record<string, string | undefined>>): readonly string[] {
  const names = ["PREPWRIGHT_REPORT_URL", "PREPWRIGHT_REPORT_SECRET"] as const;
  const missing = names.filter((name) => set[name] === undefined);
  return missing.length === 1
    ? [`${missing.join()} must be set too: the report of the imports goes out signed or not at all`]
    : [];
}

/** What the command line was told about the service it speaks to. As given: the command line says what is wrong with them. */
export interface ClientSettings {
  readonly server: string | null;
  /** A secret: shown nowhere. */
  readonly token: string | null;
}

const clientVariables = ["PREPWRIGHT_SERVER", "PREPWRIGHT_TOKEN"] as const;

/** `PREPWRIGHT_SERVER` and `PREPWRIGHT_TOKEN`. */
export function readClientSettings(given: Readonly<Record<string, string | undefined>> = process.env): ClientSettings {
  const read = (name: string): string | null => (given[name] ?? "").trim() || null;
  return { server: read("PREPWRIGHT_SERVER"), token: read("PREPWRIGHT_TOKEN") };
}
