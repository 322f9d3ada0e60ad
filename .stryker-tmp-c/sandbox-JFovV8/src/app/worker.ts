// @ts-nocheck
import { jobs } from "../jobs/jobs.js";
import { readEnvironment } from "./environment.js";
import { exitWithFaults } from "./exit-with-faults.js";
import { startJobQueue } from "./job-queue.js";
import { openDatabase } from "./open-database.js";
import { openLog } from "./open-log.js";
import { onStopSignal } from "./shutdown.js";

/**
 * The process for nightly jobs. `--once NAME` runs one job now and exits, also on the embedded database, which has room
 * for one process and therefore must not be in use by the service.
 */
const environment = readEnvironment();
if (!environment.ok) exitWithFaults(environment.faults);
const { value: settings } = environment;
const once = process.argv[2] === "--once" ? (process.argv[3] ?? "") : null;
const job = once === null ? null : (jobs.find(({ name }) => name === once) ?? null);
if (once !== null && job === null) {
  exitWithFaults([`--once must name a job: ${jobs.map(({ name }) => name).join(", ")}`]);
}
if (job === null && settings.databaseUrl === null) {
  exitWithFaults(["DATABASE_URL must name a Postgres server: the embedded database has room for one process only"]);
}

const log = openLog(settings.logLevel);
const database = await openDatabase(settings, log);

if (job !== null) {
  const outcome = await job.run(database.deps);
  await database.close();
  process.stdout.write(`${job.name}: ${JSON.stringify(outcome)}\n`);
} else if (settings.databaseUrl !== null) {
  const queue = await startJobQueue({
    sql: database.sql,
    zone: settings.zone,
    jobs,
    deps: database.deps,
    log,
  });
  onStopSignal(log, async () => {
    await queue.close();
    await database.close();
  });
  log.info({ jobs: jobs.map(({ name }) => name), zone: settings.zone }, "working");
}
