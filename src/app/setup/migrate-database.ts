import { jobs } from "../../jobs/jobs.js";
import { grantRuntime } from "../../persistence/database/grant-runtime.js";
import { openServer } from "../../persistence/database/open-server.js";
import type { Log } from "../../services/deps.js";
import type { Environment } from "./environment.js";
import { makeJobTables } from "../processes/job-queue.js";

/**
 * Brings the database to this version as its owner, with the tables of the job queue, so that services and workers may run as a role that
 * owns nothing; and gives that role its rights. @throws MigrationError, RoleUnfit
 */
export async function migrateDatabase(
  { databaseUrl, databaseDirectUrl }: Pick<Environment, "databaseUrl" | "databaseDirectUrl">,
  runtimeRole: string | null,
  log: Log,
): Promise<void> {
  const url = databaseDirectUrl ?? databaseUrl;
  if (url === null) throw new Error("no server to migrate");
  const database = await openServer(url, { log, poolSize: 2 });
  try {
    await makeJobTables(database.sql, jobs, log);
    if (runtimeRole !== null) await grantRuntime(database.sql, runtimeRole);
  } finally {
    await database.close();
  }
}
