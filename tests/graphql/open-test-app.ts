import type { FastifyInstance } from "fastify";
import { pino } from "pino";
import request from "supertest";
import { readSeeds } from "../../src/app/read-seeds.js";
import { buildApp } from "../../src/app/build-app.js";
import { readRulesFolder } from "../../src/app/read-rules-folder.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { Data } from "../../src/persistence/data.js";
import type { Clock, Deps } from "../../src/services/deps.js";
import { loadShippedRules } from "../../src/services/load-rule-set.js";

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
  /** Lines the application logged. */
  readonly logged: readonly string[];
  ask(query: string, variables?: Record<string, unknown>): Promise<Answer>;
  close(): Promise<void>;
}

/** The published rules that come with the program. */
export const rules = await readRulesFolder("seeds/rules");

/** The real application on a database that is open and migrated. The clock stands still unless another is given. */
export async function openTestApp(
  data: Data,
  explorerFolder = "dist/explorer",
  clock: Clock = () => new Date("2026-03-01T09:00:00Z"),
): Promise<TestApp> {
  const logged: string[] = [];
  const log = pino({ level: "info" }, { write: (line: string) => void logged.push(line) });
  const deps: Deps = { data, clock, log, knownRules: new Map() };
  await loadShippedRules(deps, rules);
  const readiness = { check: () => Promise.resolve(null) };
  const app = await buildApp({ deps, log, readiness, explorerFolder });
  return {
    app,
    deps,
    logged,
    ask: async (query, variables = {}) => {
      const { status, body, text } = await request(app.server).post("/graphql").send({ query, variables });
      return { status, data: body.data, errors: body.errors ?? [], text };
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
