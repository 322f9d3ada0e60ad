import { MigrationError } from "../../../persistence/errors.js";
import { RoleUnfit } from "../../../persistence/database/grant-runtime.js";
import { readEnvironment } from "../../setup/environment.js";
import { openLog } from "../../setup/open-log.js";
import { withJson, type AddCommand } from "../command.js";
import { CommandFailed, exitCodes, usage, type Outcome } from "../outcome.js";

interface MigrateOptions {
  readonly json?: boolean;
  readonly grantTo?: string;
}

export const addMigrate: AddCommand = (program, run) => {
  withJson(program.command("migrate"))
    .description("migrate the database of DATABASE_URL to this version, as its owner, and exit")
    .option("--grant-to <role>", "grant a role the rights that a service or worker needs, and no others")
    .action((options: MigrateOptions) => run("migrate", options, () => migrate(options)));
};

async function migrate({ grantTo = null }: { readonly grantTo?: string | null }): Promise<Outcome> {
  const environment = readEnvironment();
  if (!environment.ok) throw usage(...environment.faults);
  if (environment.value.databaseUrl === null) {
    throw usage("DATABASE_URL must name a Postgres server: the embedded database is migrated by the service itself.");
  }
  const { migrateDatabase } = await import("../../setup/migrate-database.js");
  try {
    await migrateDatabase(environment.value, grantTo, openLog(environment.value.logLevel));
  } catch (error) {
    if (error instanceof RoleUnfit) throw usage(error.message);
    if (error instanceof MigrationError) throw new CommandFailed(exitCodes.unreachable, "NOT_MIGRATED", error.message);
    // What the driver and the server say has a code; a fault of ours has none.
    if (error instanceof Error && "code" in error) {
      throw new CommandFailed(
        exitCodes.unreachable,
        "NO_DATABASE",
        `The database cannot be migrated: ${error.message}`,
      );
    }
    throw error;
  }
  const granted = grantTo === null ? [] : [`${grantTo} may run a service or a worker.`];
  return {
    exit: exitCodes.ok,
    result: { grantedTo: grantTo },
    said: ["The database is at this version.", ...granted],
  };
}
