import { Option, type Command } from "commander";
import { readClientSettings } from "../setup/environment.js";
import type { AskPerson } from "./ask-person.js";
import type { Outcome } from "./outcome.js";
import type { Progress } from "./progress.js";
import { openRemote, usualServer, type RemoteService } from "./remote-service.js";
import { plainTokenWarning } from "./plain-token-warning.js";
import { terminalLine } from "./terminal-line.js";
import type { Service } from "./service.js";

/** Runs the work of a command and shows its outcome. `ask` null: nobody is there to be asked. */
export type Runner = (
  name: string,
  options: { readonly json?: boolean },
  work: (progress: Progress, ask: AskPerson | null) => Promise<Outcome>,
) => Promise<void>;

/** Adds one command to the program. */
export type AddCommand = (program: Command, run: Runner) => void;

export interface ServiceOptions {
  readonly json?: boolean;
  readonly server?: string;
  readonly token?: string;
  /** Of the operator's commands: this machine's database itself. */
  readonly local?: boolean;
}

/** Every command answers programs too. */
export const withJson = (command: Command): Command =>
  command.option("--json", "print one JSON object on standard output");

/** Options of a command that asks a service. */
export const withService = (command: Command): Command =>
  withJson(command)
    .addOption(
      new Option("--server <address>", `address of the service (default: PREPWRIGHT_SERVER, or ${usualServer})`),
    )
    .addOption(
      new Option("--token <token>", "access token; PREPWRIGHT_TOKEN keeps it from other users of the machine"),
    );

/** Options of a command that an operator may also run on the database itself. */
export const withLocal = (command: Command): Command =>
  withService(command).option("--local", "use this machine's database (DATABASE_URL or DATA_DIR), without a token");

/** Address of the service that the options and the environment name, without a slash at the end. */
export const serverAddress = ({ server }: ServiceOptions): string =>
  (server ?? readClientSettings().server ?? usualServer).replace(/\/+$/, "");

/** The service over HTTP that the options and the environment name. */
export function remote({
  server,
  token,
}: {
  readonly server?: string | undefined;
  readonly token?: string | undefined;
}): RemoteService {
  const settings = readClientSettings();
  const asked = { server: server ?? settings.server, token: token?.trim() ?? settings.token };
  const service = openRemote(asked);
  const warning = plainTokenWarning(asked);
  // Beside the answer, which programs read.
  if (warning !== null) process.stderr.write(`${terminalLine(warning)}\n`);
  return service;
}

/** Opens the service that the options and the environment name, and closes it after the work. */
export async function asking<T>(
  { server, token, local = false }: ServiceOptions,
  work: (service: Service) => Promise<T>,
): Promise<T> {
  const service = local ? await (await import("./local-service.js")).openLocal() : remote({ server, token });
  return work(service).finally(() => service.close());
}
