import { randomUUID } from "node:crypto";
import { hostname } from "node:os";
import { setTimeout as wait } from "node:timers/promises";
import type { Deps } from "../../services/deps.js";
import { runImports } from "../../services/imports/run-imports.js";

/** Milliseconds between two looks for an import that waits, where none did. */
const pause = 1_000;

interface ImportWorker {
  /** Stops. An import that goes on is left to another worker, which goes on behind what was loaded. */
  close(): Promise<void>;
}

/** Works on imports until it is closed. The table of runs is the queue, so any number of processes may do so. */
export function startImportWorker(deps: Deps): ImportWorker {
  const stop = new AbortController();
  const name = `${hostname()}-${String(process.pid)}-${randomUUID().slice(0, 8)}`;
  const run = async (): Promise<void> => {
    while (!stop.signal.aborted) {
      await runImports(deps, name, { stop: stop.signal }).catch((error: unknown) => {
        deps.log.error({ err: error }, "imports could not be run; they are tried again");
      });
      await wait(pause, null, { signal: stop.signal }).catch(() => null);
    }
  };
  const running = run();
  return {
    close: () => {
      stop.abort();
      return running;
    },
  };
}
