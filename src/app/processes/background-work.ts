import { jobs, noteFactSourcesJob, runScheduledJob } from "../../jobs/jobs.js";
import type { FileSources } from "../../services/imports/files/file-sources.js";
import type { Log } from "../../services/deps.js";
import type { Environment } from "../setup/environment.js";
import { fetchFile } from "../outgoing/fetch-file.js";
import { fileInFolder } from "../outgoing/import-folder.js";
import { startImportWorker } from "./import-worker.js";
import { startJobQueue } from "./job-queue.js";
import type { Observer } from "../observe/observer.js";
import type { OpenDatabase } from "../setup/open-database.js";
import { reviewAfterChanges } from "./review-after-changes.js";
import { startWebhookSender } from "../outgoing/webhook-sender.js";

export interface BackgroundWork {
  /** Lets what runs finish, then stops. */
  close(): Promise<void>;
}

/** All that is done without being asked: jobs at their hours, imports as they are asked for, and webhooks when they are due. Any number of processes may. */
export async function startBackgroundWork(
  { sql, deps, database }: Pick<OpenDatabase, "sql" | "deps" | "database">,
  { zone, importFolder, graceMs }: Pick<Environment, "zone" | "importFolder" | "graceMs">,
  log: Log,
  observer: Observer | null = null,
): Promise<BackgroundWork> {
  const sources: FileSources = {
    fromFolder: (publisher, path) => fileInFolder(importFolder, publisher, path),
    fromAddress: (url, hosts, known) => fetchFile(url, hosts, known),
  };
  const sender = startWebhookSender(deps);
  const importer = startImportWorker({ ...deps, sources });
  const more = { patience: graceMs * 0.8, ...(observer === null ? {} : { aroundJob: observer.aroundJob }) };
  const queue = await startJobQueue({ sql, zone, jobs, deps, log, ...more });
  await queue.enqueue(runScheduledJob.name);
  // What changed while no worker ran, and what a migration left to be worked out.
  await queue.enqueue(noteFactSourcesJob.name);
  const reviews = await reviewAfterChanges(database.follow, queue, log);
  return {
    close: async () => {
      await reviews.close();
      await Promise.all([queue.close(), sender.close(), importer.close()]);
    },
  };
}
