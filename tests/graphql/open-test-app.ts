import type { FastifyInstance } from "fastify";
import { pino } from "pino";
import request from "supertest";
import { readSeeds } from "../../src/app/setup/read-seeds.js";
import { buildApp, type AppOptions } from "../../src/app/server/build-app.js";
import { createReadiness, type Readiness } from "../../src/app/server/readiness.js";
import { readRulesFolder } from "../../src/app/setup/read-rules-folder.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { Data } from "../../src/persistence/data.js";
import type { Clock, Deps } from "../../src/services/deps.js";
import { loadShippedRules } from "../../src/services/rules/load-rule-set.js";
import type { Scope } from "../../src/services/access/actor.js";
import { openChangeSignals } from "../../src/services/plans/change-signals.js";
import { createToken } from "../../src/services/access/create-token.js";

export interface Answer {
  readonly status: number;
  readonly data: Record<string, unknown> | null | undefined;
  readonly errors: readonly {
    readonly message: string;
    readonly path?: readonly (string | number)[];
    readonly extensions: Readonly<Record<string, unknown>>;
  }[];
  readonly text: string;
}

export interface TestApp {
  readonly app: FastifyInstance;
  readonly deps: Deps;
  readonly readiness: Readiness;
  /** Lines the application logged. */
  readonly logged: readonly string[];
  /** Without a token, anyone asks. */
  ask(query: string, variables?: Record<string, unknown>, token?: string): Promise<Answer>;
  /** The text of a new token; `publisher` null: the operator's. */
  tokenFor(publisher: string | null, scopes: readonly Scope[], expiresAt?: Date): Promise<string>;
  close(): Promise<void>;
}

/** The published rules that come with the program. */
export const rules = await readRulesFolder("seeds/rules");

/** The real application on a database that is open and migrated. The clock stands still unless another is given. */
export async function openTestApp(
  data: Data,
  explorerFolder = "dist/explorer",
  clock: Clock = () => new Date("2026-03-01T09:00:00Z"),
  more: Pick<Deps, "allowPrivateWebhooks" | "aroundStage" | "cache" | "signals" | "slicer"> = {},
  options: Partial<
    Pick<
      AppOptions,
      | "bodyTime"
      | "graphql"
      | "log"
      | "onRequestEnd"
      | "onShed"
      | "overload"
      | "publicUrl"
      | "rateLimit"
      | "readiness"
      | "streams"
      | "trustedProxies"
      | "watchRequests"
    >
  > = {},
): Promise<TestApp> {
  const logged: string[] = [];
  const log = options.log ?? pino({ level: "info" }, { write: (line: string) => void logged.push(line) });
  // Signals that nobody gives, unless a suite follows its database.
  const deps: Deps = { data, clock, log, knownRules: new Map(), signals: openChangeSignals(), ...more };
  await loadShippedRules(deps, rules);
  const readiness = options.readiness ?? createReadiness({ pendingMigrations: () => Promise.resolve([]) });
  const app = await buildApp({ deps, log, readiness, explorerFolder, browserFolder: "dist/browser", ...options });
  return {
    app,
    deps,
    readiness,
    logged,
    ask: async (query, variables = {}, token) => {
      const headers = token === undefined ? {} : { authorization: `Bearer ${token}` };
      const { status, body, text } = await request(app.server).post("/graphql").set(headers).send({ query, variables });
      return { status, data: body.data, errors: body.errors ?? [], text };
    },
    tokenFor: async (publisher, scopes, expiresAt) => {
      const caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
      const input = { publisher, name: `${publisher ?? "operator"} ${scopes.join(" ")}`, scopes };
      const made = await createToken(deps, caller, { ...input, expiresAt: expiresAt ?? null });
      if (!made.ok || made.value.text === null) throw new Error(`no token: ${JSON.stringify(made)}`);
      return made.value.text;
    },
    close: () => app.close(),
  };
}

/** The demo's plans and foods. */
export const demo = await readSeeds("seeds");

/** A demo plan under another name, with all it refers to. */
export function renamed(bundle: PlanBundle, slug: string, title = bundle.plan.title): PlanBundle {
  return { ...bundle, plan: { ...bundle.plan, slug, title } };
}

/** The demo plan of that slug. */
export function demoBundle(slug: string): PlanBundle {
  const found = demo.bundles.find(({ plan }) => plan.slug === slug);
  if (found === undefined) throw new Error(`the demo has no plan ${slug}`);
  return found;
}
