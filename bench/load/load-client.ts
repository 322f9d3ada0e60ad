import { fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import type { LoadJob, LoadMeasured } from "./load-job.js";

export interface LoadClient {
  run(job: LoadJob): Promise<LoadMeasured>;
  stop(): void;
}

/** Starts the client as a process, so that it takes nothing of the time of the one that measures. */
export function startLoadClient(): LoadClient {
  const child = fork(fileURLToPath(new URL("./client.ts", import.meta.url)), { execArgv: ["--import", "tsx"] });
  return {
    run: async (job) => {
      child.send(job);
      const gone = new AbortController();
      const [measured] = (await Promise.race([
        once(child, "message", { signal: gone.signal }),
        once(child, "exit", { signal: gone.signal }).then(() => Promise.reject(new Error("the client ended early"))),
      ]).finally(() => gone.abort())) as [LoadMeasured];
      return measured;
    },
    stop: () => void child.kill(),
  };
}
