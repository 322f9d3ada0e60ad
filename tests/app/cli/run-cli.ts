import { spawn } from "node:child_process";
import { once } from "node:events";
import { text } from "node:stream/consumers";

/** One JSON object, as `--json` prints it. */
export interface CliAnswer {
  readonly command: string;
  readonly ok: boolean;
  readonly exit: number;
  readonly problems: readonly {
    readonly code: string;
    readonly message: string;
    readonly path: readonly string[];
    readonly file: string | null;
    readonly line: number | null;
    readonly column: number | null;
  }[];
  readonly findings: readonly { readonly code: string; readonly severity: string; readonly file: string | null }[];
  readonly result: Readonly<Record<string, unknown>> | null;
}

export interface CliRun {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built command line with nothing but this environment. */
export async function runCli(words: readonly string[], environment: Record<string, string> = {}): Promise<CliRun> {
  const child = spawn(process.execPath, ["dist/cli.js", ...words], {
    env: { PATH: process.env["PATH"], ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const [out, err] = await Promise.all([text(child.stdout), text(child.stderr), once(child, "close")]);
  return { exit: child.exitCode, out, err };
}

/** The same with `--json`: standard output holds one object and nothing else. */
export async function runCliJson(words: readonly string[], environment: Record<string, string> = {}) {
  const run = await runCli([...words, "--json"], environment);
  const answer = JSON.parse(run.out) as CliAnswer;
  return { ...run, answer };
}
