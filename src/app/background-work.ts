import { jobs } from "../jobs/jobs.js";
import type { Log } from "../services/deps.js";
import type { Environment } from "./environment.js";
import { startJobQueue } from "./job-queue.js";
import type { OpenDatabase } from "./open-database.js";
import { startWebhookSender } from "./webhook-sender.js";

export interface BackgroundWork {
  /** Lets what runs finish, then stops. */
  close(): Promise<void>;
}

/** All that is done without being asked: jobs at their hours, and webhooks when they are due. Any number of processes may. */
export async function startBackgroundWork(
  { sql, deps }: Pick<OpenDatabase, "sql" | "deps">,
  { zone }: Pick<Environment, "zone">,
  log: Log,
): Promise<BackgroundWork> {
  const sender = startWebhookSender(deps);
  const queue = await startJobQueue({ sql, zone, jobs, deps, log });
  return {
    close: async () => {
      await Promise.all([queue.close(), sender.close()]);
    },
  };
}
