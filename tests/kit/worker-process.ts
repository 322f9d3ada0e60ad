import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";

export interface WorkerProcess {
  readonly child: ChildProcess;
  /** Lines of its log. */
  readonly lines: readonly string[];
  /** Sends a signal and waits for the end; the exit code. */
  stop(signal?: NodeJS.Signals): Promise<number | null>;
}

/** Starts the built worker the way `npm run worker` does, and waits until it works. */
export async function startWorker(environment: Record<string, string>): Promise<WorkerProcess> {
  const child = spawn(process.execPath, ["dist/worker.js"], {
    env: { PATH: process.env["PATH"], ...environment, LOG_LEVEL: "info" },
    stdio: ["ignore", "ignore", "pipe"],
  });
  const lines: string[] = [];
  const exit = once(child, "exit");
  await new Promise<void>((working, failed) => {
    createInterface({ input: child.stderr }).on("line", (line) => {
      lines.push(line);
      if (line.includes('"msg":"working"')) working();
    });
    void exit.then(() => failed(new Error(`the worker ended: ${lines.join("\n")}`)));
  });
  return {
    child,
    lines,
    stop: async (signal = "SIGTERM") => {
      child.kill(signal);
      await exit;
      return child.exitCode;
    },
  };
}
