import { jobs } from "../../jobs/jobs.js";
import { readEnvironment } from "../setup/environment.js";
import { exitWithFaults } from "../setup/exit-with-faults.js";
import { runWorker, workFaults, runJobOnce } from "./run-worker.js";

/** The process for nightly jobs. `--once NAME` runs one job now and exits. */
const environment = readEnvironment();
if (!environment.ok) exitWithFaults(environment.faults);
const once = process.argv[2] === "--once" ? (process.argv[3] ?? "") : null;
const faults = workFaults(environment.value, once);
if (faults.length > 0) exitWithFaults(faults);
const job = jobs.find(({ name }) => name === once);
if (job === undefined) await runWorker(environment.value);
else process.stdout.write(`${job.name}: ${JSON.stringify(await runJobOnce(environment.value, job))}\n`);
