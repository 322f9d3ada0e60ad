import { join } from "node:path";
import type { BackgroundWork } from "./background-work.js";
import type { Environment } from "../setup/environment.js";
import { exampleQuery } from "./example-query.js";
import { setHeapGrowth } from "./set-heap-growth.js";
import { startTelemetry } from "../observe/telemetry.js";
import { openDatabase } from "../setup/open-database.js";
import { openLog } from "../setup/open-log.js";
import { openCachedDeps } from "../setup/open-cache.js";
import { newestPlan } from "../../services/plans/newest-plan.js";
import { projectRoot } from "../setup/project-root.js";
import { readRegisteredDocuments } from "../server/registered-documents.js";
import { onStopSignal } from "./shutdown.js";

/** A service that answers. It ends with the process, by SIGTERM or SIGINT. */
export interface Serving {
  readonly address: string;
  /** A command to paste that asks it something. */
  readonly firstQuery: string;
  /** Starts what runs beside the answering; to be called once its address was said, so that nobody waits for it. */
  startWork(): Promise<void>;
}

/** Opens the database and answers at the address of the environment. @throws NoRegisteredDocuments before anything is opened */
export async function serve(settings: Environment): Promise<Serving> {
  setHeapGrowth();
  const log = openLog(settings.logLevel);
  const root = projectRoot();
  const { operationsFolder } = settings;
  const registered = operationsFolder === null ? null : await readRegisteredDocuments(operationsFolder);
  // The database takes longest, so it opens first; the rest of the program loads beside it.
  const telemetry = await startTelemetry(settings, log);
  const opening = openDatabase(settings, log, telemetry.observer);
  const [{ buildApp }, { watchOverload, defaultLimits }, database] = await Promise.all([
    import("../server/build-app.js"),
    import("../server/load-shedding.js"),
    opening,
  ]);
  const { shedDelayMs } = settings;
  const overload =
    shedDelayMs === null
      ? null
      : watchOverload({ ...defaultLimits, loopDelayMs: shedDelayMs }, () => database.database.poolFigures());
  if (overload !== null) database.readiness.watch(() => overload.describe());
  const cached = await openCachedDeps(database, settings.cacheMegabytes);
  const app = await buildApp({
    deps: cached.deps,
    log,
    readiness: database.readiness,
    explorerFolder: join(root, "dist/explorer"),
    browserFolder: join(root, "dist/browser"),
    watchRequests: telemetry.watchRequests,
    onRequestEnd: telemetry.onRequestEnd,
    onShed: telemetry.onShed,
    ...(overload === null ? {} : { overload }),
    rateLimit: settings.rateLimit,
    publicUrl: settings.publicUrl,
    trustedProxies: settings.trustedProxies,
    graphql: registered === null ? settings.graphql : { ...settings.graphql, registered },
  });
  let work: Promise<BackgroundWork> | null = null;
  const finishWork = async (): Promise<void> => (await work)?.close();
  let finished: Promise<void> | null = null;
  onStopSignal(log, {
    ...settings,
    leave: () => {
      database.readiness.leave();
      finished = finishWork();
      // What goes wrong is heard by the stop.
      finished.catch(() => undefined);
    },
    stop: async () => {
      await Promise.all([app.close(), finished]);
      await cached.close();
      await telemetry.close();
      await database.close();
    },
  });
  const address = await app.listen({ port: settings.port, host: settings.host });
  const { cache } = cached.deps;
  await telemetry.open({ ...database, ...(cache === undefined ? {} : { cache }) });
  const newest = await newestPlan(database.deps);
  return {
    address,
    firstQuery: exampleQuery(address, newest),
    startWork: async () => {
      if (!settings.worker) return;
      work = import("./background-work.js").then((module) =>
        module.startBackgroundWork(database, settings, log, telemetry.observer),
      );
      await work;
    },
  };
}
