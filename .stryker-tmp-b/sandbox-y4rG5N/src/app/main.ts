// @ts-nocheck
import { join } from "node:path";
import { readEnvironment } from "./environment.js";
import { exitWithFaults } from "./exit-with-faults.js";
import { openDatabase } from "./open-database.js";
import { openLog } from "./open-log.js";
import { newestPlan } from "../services/newest-plan.js";
import { projectRoot } from "./project-root.js";
import { onStopSignal } from "./shutdown.js";
import { firstQuery } from "./first-query.js";

const environment = readEnvironment();
if (!environment.ok) exitWithFaults(environment.faults);
const { value: settings } = environment;
const log = openLog(settings.logLevel);
const root = projectRoot();

// The database takes longest, so it opens first; the rest of the program loads beside it.
const opening = openDatabase(settings, log);
const [{ buildApp }, database] = await Promise.all([import("./build-app.js"), opening]);

const app = await buildApp({
  deps: database.deps,
  log,
  readiness: database.readiness,
  explorerFolder: join(root, "dist/explorer"),
  browserFolder: join(root, "dist/browser"),
});
onStopSignal(log, async () => {
  await app.close();
  await database.close();
});
const address = await app.listen({ port: settings.port, host: settings.host });
const newest = await newestPlan(database.deps);
process.stdout.write(`Prepwright is at ${address}\n${firstQuery(address, newest)}\n`);
