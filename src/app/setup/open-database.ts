import type { Logger } from "pino";
import type { OpenedDatabase } from "../../persistence/database/opened-database.js";
import type { Sql } from "../../persistence/sql/plain-sql.js";
import type { BaseFoodsChanged, Deps } from "../../services/deps.js";
import { openTimeSlicer } from "../../services/time-slices.js";
import { newestPlan } from "../../services/plans/newest-plan.js";
import { loadShippedBaseFoods } from "../../services/foods/load-base-foods.js";
import { loadCatalogue } from "../../services/foods/load-catalogue.js";
import { loadShippedRules } from "../../services/rules/load-rule-set.js";
import type { Environment } from "./environment.js";
import type { Observer } from "../observe/observer.js";
import { createReadiness, type Readiness } from "../server/readiness.js";
import { sendWebhook } from "../outgoing/send-webhook.js";
import { projectRoot } from "./project-root.js";
import { readShipped } from "./shipped-data.js";

export interface OpenDatabase {
  readonly deps: Deps;
  /** For the job queue, which brings its own tables. */
  readonly sql: Sql;
  readonly database: OpenedDatabase;
  readonly readiness: Readiness;
  /** What this start changed of the base foods; null: nothing was to be loaded. */
  readonly baseFoods: BaseFoodsChanged | null;
  close(): Promise<void>;
}

/**
 * Opens and migrates the database the environment names, and loads the published rules, the open food table and the base
 * foods of this version. An embedded one that nothing was ever published in is filled with the demo. Each part is loaded only when it
 * is used, the database first, so that a start waits for nothing it does not need.
 */
export async function openDatabase(
  settings: Environment,
  log: Logger,
  observer: Observer | null = null,
): Promise<OpenDatabase> {
  const root = projectRoot();
  const opening = open(settings, log, observer);
  const reading = Promise.all([
    readShipped("rules", root),
    readShipped("catalogue-edition", root),
    readShipped("base-edition", root),
  ]);
  const [database, [rules, catalogue, base]] = await Promise.all([opening, reading]);
  const { data, sql, replicas, close } = database;
  const deps: Deps = {
    data,
    clock: () => new Date(),
    log,
    knownRules: new Map(),
    slicer: openTimeSlicer(() => performance.now()),
    ...(observer === null ? {} : { aroundStage: observer.aroundStage }),
    allowPrivateWebhooks: settings.allowPrivateWebhooks,
    // The operator's own word, so it may lead anywhere.
    ...(settings.report === null
      ? {}
      : { operator: { ...settings.report, send: (message) => sendWebhook(message, { allowPrivate: true }) } }),
    ...(replicas === null ? {} : { publicData: replicas.reads }),
  };
  await loadShippedRules(deps, rules);
  await loadCatalogue(deps, catalogue, () => readShipped("catalogue", root));
  const baseFoods = await loadShippedBaseFoods(deps, base, () => readShipped("base-foods", root));
  // What was loaded now must be found by the first that asks.
  replicas?.heardOfWrite();
  if (settings.databaseUrl === null && (await newestPlan(deps)) === null) {
    const { seedDatabase } = await import("./seed-database.js");
    log.info({ loaded: await seedDatabase(deps, root) }, "demo data loaded");
  }
  return {
    deps,
    sql,
    database,
    readiness: createReadiness(database),
    baseFoods,
    close,
  };
}

async function open(settings: Environment, log: Logger, observer: Observer | null): Promise<OpenedDatabase> {
  const options = { log, ...(observer === null ? {} : { aroundStatement: observer.aroundStatement }) };
  if (settings.databaseUrl !== null) {
    const { openServer } = await import("../../persistence/database/open-server.js");
    const { databaseUrl, databaseDirectUrl, replicaUrls, replicaLagMs } = settings;
    return openServer(databaseUrl, {
      ...options,
      directUrl: databaseDirectUrl ?? databaseUrl,
      ...(replicaUrls.length === 0
        ? {}
        : { replicas: { urls: replicaUrls, maxLagMs: replicaLagMs, now: () => performance.now() } }),
    });
  }
  const { openEmbedded } = await import("../../persistence/database/open-embedded.js");
  return openEmbedded(settings.dataDir, options);
}
