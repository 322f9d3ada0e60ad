import { spawn, type ChildProcess } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { userInfo } from "node:os";

export interface ProgramExit {
  readonly code: number | null;
  readonly output: string;
}

export interface RunningProgram {
  readonly child: ChildProcess;
  readonly exit: Promise<ProgramExit>;
}

/** Where Debian 12 puts its PostgreSQL. */
export const postgresPrograms = "/usr/lib/postgresql/15/bin";

/**
 * Starts a program that Debian brings. It ends with this process, however this ends. Run by root, it becomes the user postgres,
 * because neither the database nor the pooler runs as root.
 */
export function startDebianProgram(path: string, args: readonly string[]): RunningProgram {
  mustHave(path);
  mustHave("/usr/bin/setpriv");
  const asPostgres = userInfo().uid === 0 ? ["--reuid=postgres", "--regid=postgres", "--clear-groups"] : [];
  const child = spawn("/usr/bin/setpriv", [...asPostgres, "--pdeathsig=QUIT", path, ...args], {
    stdio: ["ignore", "pipe", "pipe"],
    cwd: "/",
    env: { PATH: process.env["PATH"], LC_ALL: "C.UTF-8" },
  });
  const output: string[] = [];
  child.stdout.on("data", (part: Buffer) => output.push(part.toString()));
  child.stderr.on("data", (part: Buffer) => output.push(part.toString()));
  const exit = new Promise<ProgramExit>((ended, failed) => {
    child.once("error", failed);
    child.once("close", (code) => ended({ code, output: output.join("") }));
  });
  return { child, exit };
}

/** Runs one to its end; its output. */
export async function runDebianProgram(path: string, args: readonly string[]): Promise<string> {
  const { code, output } = await startDebianProgram(path, args).exit;
  if (code !== 0) throw new Error(`${path} ended with ${String(code)}:\n${output}`);
  return output;
}

function mustHave(path: string): void {
  try {
    accessSync(path, constants.X_OK);
  } catch (error) {
    const how = "apt-get install postgresql-15 pgbouncer faketime prometheus";
    throw new Error(`${path} is missing. These suites need what Debian 12 brings: ${how}`, { cause: error });
  }
}
