import { spawn, type ChildProcess } from "node:child_process";
import { createInterface } from "node:readline";

export interface StartedServer {
  readonly port: number;
  readonly process: ChildProcess;
  stop(): Promise<void>;
}

/** Starts a server as a process and waits until a line of its output names its address. */
export async function startServer(
  args: readonly string[],
  environment: Readonly<Record<string, string>> = {},
): Promise<StartedServer> {
  const child = spawn(process.execPath, args, {
    env: { ...process.env, NODE_ENV: "production", PORT: "0", ...environment },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = new Promise<void>((done) => child.once("exit", () => done()));
  const port = await new Promise<number>((found, failed) => {
    createInterface(child.stdout).on("line", (line) => {
      const said = /http:\/\/[\d.]+:(\d+)/.exec(line)?.[1];
      if (said !== undefined) found(Number(said));
    });
    void ended.then(() => failed(new Error(`${args.join(" ")} ended before it answered`)));
  });
  return {
    port,
    process: child,
    stop: async () => {
      child.kill();
      await ended;
    },
  };
}
