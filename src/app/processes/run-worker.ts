import type { Job } from "../../jobs/jobs.js";
import { jobs } from "../../jobs/jobs.js";
import { startBackgroundWork } from "./background-work.js";
import type { Environment } from "../setup/environment.js";
import { startTelemetry } from "../observe/telemetry.js";
import { openDatabase } from "../setup/open-database.js";
import { openLog } from "../setup/open-log.js";
import { onStopSignal } from "./shutdown.js";

/** Does nightly jobs and sends webhooks until SIGTERM or SIGINT. */
export async function runWorker(settings: Environment): Promise<void> {
  const log = openLog(settings.logLevel);
  const observation = await startTelemetry(settings, log);
  const database = await openDatabase(settings, log, observation.observer);
  const working = await startBackgroundWork(database, settings, log, observation.observer);
  onStopSignal(log, {
    graceMs: settings.graceMs,
    drainMs: 0,
    leave: () => database.readiness.leave(),
    stop: async () => {
      await working.close();
      await observation.close();
      await database.close();
    },
  });
  await observation.open(database);
  log.info({ jobs: jobs.map(({ name }) => name), zone: settings.zone }, "working");
}

/** Does one job now, also on the embedded database, which must not be in use by a service. Answers what came of it. */
export async function runJobOnce(settings: Environment, job: Job): ReturnType<Job["run"]> {
  const database = await openDatabase(settings, openLog(settings.logLevel));
  return job.run(database.deps).finally(() => database.close());
}

/** What is wrong with what a worker was told; empty where it can go on. */
export function workFaults({ databaseUrl }: Environment, once: string | null): readonly string[] {
  if (once !== null) {
    return jobs.some(({ name }) => name === once)
      ? []
      : [`--once must name a job: ${jobs.map(({ name }) => name).join(", ")}`];
  }
  return databaseUrl === null
    ? ["DATABASE_URL must name a Postgres server: the embedded database has room for one process only"]
    : [];
}
