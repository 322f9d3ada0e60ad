import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";

export interface ServiceProcess {
  readonly child: ChildProcess;
  readonly address: string;
  /** Everything written to standard output so far, a line each. */
  readonly lines: readonly string[];
  readonly errors: readonly string[];
  /** Milliseconds from spawn to the first line. */
  readonly startedIn: number;
  /** Sends a signal and waits for the end; the exit code. */
  stop(signal?: NodeJS.Signals): Promise<number | null>;
}

/** Tests ask more in a minute than readers do. */
const unlimited = {
  PREPWRIGHT_POINTS_PER_ADDRESS: "0",
  PREPWRIGHT_POINTS_PER_TOKEN: "0",
  PREPWRIGHT_REFUSED_TOKENS_PER_ADDRESS: "0",
};

/** Starts the built service the way `npm start` does, on a free port, and waits for its first line. */
export async function startService(environment: Record<string, string>): Promise<ServiceProcess> {
  const begin = performance.now();
  const child = spawn(process.execPath, ["dist/main.js"], {
    env: { PATH: process.env["PATH"], PORT: "0", ...unlimited, ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const lines: string[] = [];
  const errors: string[] = [];
  createInterface({ input: child.stderr }).on("line", (line) => errors.push(line));
  const output = createInterface({ input: child.stdout }).on("line", (line) => lines.push(line));
  const exit = once(child, "exit");
  await Promise.race([
    once(output, "line"),
    exit.then(() => Promise.reject(new Error(`the service ended: ${errors.join("\n")}`))),
  ]);
  const startedIn = performance.now() - begin;
  const address = /^Prepwright is at (http:\/\/\S+)$/.exec(lines[0] ?? "")?.[1];
  if (address === undefined) throw new Error(`not the first line it should be: ${lines[0] ?? ""}`);
  return {
    child,
    address,
    lines,
    errors,
    startedIn,
    stop: async (signal = "SIGTERM") => {
      child.kill(signal);
      await exit;
      return child.exitCode;
    },
  };
}
