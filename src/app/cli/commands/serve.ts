import { EmbeddedDatabaseBusy, FolderNotPrivate } from "../../../persistence/errors.js";
import { readEnvironment } from "../../setup/environment.js";
import { NoRegisteredDocuments } from "../../server/registered-documents.js";
import { withJson, type AddCommand } from "../command.js";
import { CommandFailed, exitCodes, usage, type Outcome } from "../outcome.js";

export const addServe: AddCommand = (program, run) => {
  withJson(program.command("serve"))
    .description(
      "run the service until it is stopped; configured by environment variables (PORT, HOST, DATABASE_URL, DATA_DIR, ...)",
    )
    .action((options: { json?: boolean }) => run("serve", options, start));
};

async function start(): Promise<Outcome> {
  const environment = readEnvironment();
  if (!environment.ok) throw usage(...environment.faults);
  const { serve } = await import("../../processes/serve.js");
  try {
    const { address, firstQuery, startWork } = await serve(environment.value);
    return {
      exit: exitCodes.ok,
      result: { address },
      said: [`Prepwright is at ${address}`, firstQuery],
      after: startWork,
    };
  } catch (error) {
    if (error instanceof EmbeddedDatabaseBusy) {
      throw new CommandFailed(exitCodes.unreachable, "DATABASE_IN_USE", error.message);
    }
    if (error instanceof NoRegisteredDocuments || error instanceof FolderNotPrivate) throw usage(error.message);
    const code = error instanceof Error && "code" in error ? error.code : null;
    if (code === "EADDRINUSE")
      throw usage(`PORT ${environment.value.port} is taken. Set another, or 0 for a free one.`);
    throw error;
  }
}
