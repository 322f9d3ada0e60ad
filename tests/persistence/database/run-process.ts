import { spawn, type ChildProcess } from "node:child_process";
import { fileURLToPath } from "node:url";

export interface RunningProcess {
  readonly process: ChildProcess;
  /** Everything it wrote, once it has ended. */
  readonly ended: Promise<{ readonly code: number | null; readonly output: string }>;
  /** Resolves as soon as it has written that. */
  wrote(text: string): Promise<void>;
}

/** Runs a TypeScript file of this folder in a process of its own. */
export function runProcess(file: string, args: readonly string[]): RunningProcess {
  const path = fileURLToPath(new URL(file, import.meta.url));
  const child = spawn(process.execPath, ["--import", "tsx", path, ...args], { stdio: ["ignore", "pipe", "pipe"] });
  const output: string[] = [];
  const listeners = new Set<() => void>();
  for (const stream of [child.stdout, child.stderr]) {
    stream.on("data", (chunk) => {
      output.push(String(chunk));
      listeners.forEach((listener) => listener());
    });
  }
  const ended = new Promise<{ code: number | null; output: string }>((resolve) => {
    child.on("close", (code) => resolve({ code, output: output.join("") }));
  });
  return {
    process: child,
    ended,
    wrote: (text) =>
      new Promise((resolve, reject) => {
        const look = () => {
          if (output.join("").includes(text)) resolve();
        };
        listeners.add(look);
        look();
        void ended.then((end) => reject(new Error(`it ended before it wrote ${text}: ${JSON.stringify(end)}`)));
      }),
  };
}
