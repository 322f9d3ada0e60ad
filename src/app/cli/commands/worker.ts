import { readEnvironment } from "../../setup/environment.js";
import { withJson, type AddCommand } from "../command.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";

interface WorkerOptions {
  readonly json?: boolean;
  readonly once?: string;
}

export const addWorker: AddCommand = (program, run) => {
  withJson(program.command("worker"))
    .description("run jobs and send webhooks until stopped; needs DATABASE_URL")
    .option("--once <job>", "run one job now, and exit")
    .action((options: WorkerOptions) => run("worker", options, () => start(options)));
};

async function start({ once = null }: { readonly once?: string | null }): Promise<Outcome> {
  const environment = readEnvironment();
  if (!environment.ok) throw usage(...environment.faults);
  const { runWorker, workFaults, runJobOnce } = await import("../../processes/run-worker.js");
  const faults = workFaults(environment.value, once);
  if (faults.length > 0) throw usage(...faults);
  const { jobs } = await import("../../../jobs/jobs.js");
  const job = jobs.find(({ name }) => name === once);
  if (job === undefined) {
    await runWorker(environment.value);
    return { exit: exitCodes.ok, result: { jobs: jobs.map(({ name }) => name) }, said: ["Working."] };
  }
  const done = await runJobOnce(environment.value, job);
  const outcome = JSON.stringify(done);
  return {
    exit: exitCodes.ok,
    result: { job: job.name, outcome: JSON.parse(outcome) },
    said: [`${job.name}: ${outcome}`],
  };
}
