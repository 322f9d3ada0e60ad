import type { z } from "zod";
import { variables, type Variable } from "./variables.js";

/** What a table of variables is read into. */
type Read<Table> =
  Table extends Variable<unknown> ? z.output<Table["schema"]> : { readonly [Key in keyof Table]: Read<Table[Key]> };

type AllRead = Read<typeof variables>;

/** Every variable of the service as it counts: see `variables.ts`. */
export interface Environment extends Omit<
  AllRead,
  | "allowEmbedded"
  | "metricsHost"
  | "metricsPort"
  | "reportUrl"
  | "reportSecret"
  | "tracesUrl"
  | "drainMs"
  | "shedDelayMs"
> {
  /** Where the operator is told of imports each morning; null: nowhere but in the log. The secret is shown nowhere. */
  readonly report: { readonly url: string; readonly secret: string } | null;
  /** From SIGTERM to the stop, in milliseconds, in which everything is still answered: a balancer has to notice first. */
  readonly drainMs: number;
  /** Where figures are answered; null: nowhere. */
  readonly metrics: { readonly host: string; readonly port: number } | null;
  /** Whether traces are sent. */
  readonly traces: boolean;
  /** Delay of the event loop beyond which requests are turned away, in milliseconds; null: none are. */
  readonly shedDelayMs: number | null;
}

type Given = Readonly<Record<string, string | undefined>>;

type EnvironmentResult =
  { readonly ok: true; readonly value: Environment } | { readonly ok: false; readonly faults: readonly string[] };

/** Reads every variable once. All faults are listed together, each with the name of its variable and never its value. */
export function readEnvironment(given: Given = process.env): EnvironmentResult {
  // A variable set to nothing is how shells and compose files say "not set".
  const set = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined && value !== ""));
  const all = everyVariable(variables);
  const faults = [
    ...all.flatMap(({ name, schema }) =>
      (schema.safeParse(set[name]).error?.issues ?? []).map(({ message }) => `${name} ${message}`),
    ),
    ...embeddedInProduction(set),
    ...besideNoServer(set),
    ...reportByHalves(set),
  ];
  if (faults.length > 0) return { ok: false, faults };
  const {
    allowEmbedded: _,
    metricsHost,
    metricsPort,
    reportUrl,
    reportSecret,
    tracesUrl,
    ...read
  } = readTable(variables, set);
  return {
    ok: true,
    value: {
      ...read,
      drainMs: read.drainMs ?? (read.mode === "production" ? 5_000 : 0),
      shedDelayMs: read.shedDelayMs || null,
      metrics: metricsPort === null ? null : { host: metricsHost, port: metricsPort },
      report: reportUrl === null || reportSecret === null ? null : { url: reportUrl, secret: reportSecret },
      traces: tracesUrl !== null,
    },
  };
}

interface Table {
  readonly [key: string]: Variable<unknown> | Table;
}

const isVariable = (each: Variable<unknown> | Table): each is Variable<unknown> => "schema" in each;

const everyVariable = (table: Table): readonly Variable<unknown>[] =>
  Object.values(table).flatMap((each) => (isVariable(each) ? [each] : everyVariable(each)));

/** Each variable of a table under its key. The type is the table's own, which the compiler cannot follow through `Object.entries`. */
const readTable = <Each extends Table>(table: Each, set: Given): Read<Each> =>
  Object.fromEntries(
    Object.entries(table).map(([key, each]) => [
      key,
      isVariable(each) ? each.schema.parse(set[each.name]) : readTable(each, set),
    ]),
  ) as Read<Each>;

/** A variable as it counts, as a shell would write it. */
export interface Setting {
  readonly name: string;
  /** null: it is not set, and has no default. It may hold a secret: see `shown-setting.ts`. */
  readonly value: string | null;
  readonly from: "environment" | "default";
}

type SettingsResult =
  | { readonly ok: true; readonly settings: readonly Setting[]; readonly unknown: readonly string[] }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Every variable of the service and what it comes to; and those that look like ours and are none, as a slip of the pen makes them. */
export function readSettings(given: Given = process.env): SettingsResult {
  const read = readEnvironment(given);
  if (!read.ok) return read;
  const settings = everyVariable(variables).map(({ name, schema }): Setting => {
    const own = given[name] ?? "";
    if (own !== "") return { name, value: own, from: "environment" };
    const usual = name === variables.drainMs.name ? read.value.drainMs : schema.parse(undefined);
    return { name, value: asWritten(name, usual), from: "default" };
  });
  const known = new Set<string>([...settings.map(({ name }) => name), ...clientVariables]);
  const unknown = Object.keys(given).filter((name) => name.startsWith("PREPWRIGHT_") && !known.has(name));
  return { ok: true, settings, unknown };
}

/** Seconds are read into milliseconds, and switches into truth. */
function asWritten(name: string, value: unknown): string | null {
  if (typeof value === "boolean") return value ? "1" : "0";
  if (typeof value === "number") return String(name.endsWith("_SECONDS") ? value / 1000 : value);
  return typeof value === "string" && value !== "" ? value : null;
}

/** Beside the schema, because a schema-wide rule is not asked once a single variable is wrong. */
function embeddedInProduction(set: Given): readonly string[] {
  const allowed = set["PREPWRIGHT_ALLOW_EMBEDDED"] === "1";
  if (set["NODE_ENV"] !== "production" || set["DATABASE_URL"] !== undefined || allowed) return [];
  return [
    "DATABASE_URL must name a Postgres server in production. The embedded database is for evaluation and small sites;" +
      " PREPWRIGHT_ALLOW_EMBEDDED=1 takes it all the same",
  ];
}

/** A way around a server that was not named would be forgotten silently. */
function besideNoServer(set: Given): readonly string[] {
  if (set["DATABASE_URL"] !== undefined) return [];
  return ["DATABASE_DIRECT_URL", "DATABASE_REPLICA_URLS"]
    .filter((name) => set[name] !== undefined)
    .map((name) => `${name} needs DATABASE_URL, which is not set`);
}

function reportByHalves(set: Given): readonly string[] {
  const names = ["PREPWRIGHT_REPORT_URL", "PREPWRIGHT_REPORT_SECRET"] as const;
  const missing = names.filter((name) => set[name] === undefined);
  return missing.length === 1
    ? [`${missing.join()} must be set too, because reports of imports are always signed`]
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
export function readClientSettings(given: Given = process.env): ClientSettings {
  const read = (name: string): string | null => (given[name] ?? "").trim() || null;
  return { server: read("PREPWRIGHT_SERVER"), token: read("PREPWRIGHT_TOKEN") };
}
