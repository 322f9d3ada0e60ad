// @ts-nocheck
import type { Logger } from "pino";

/** How long requests in flight may take once the process was told to stop, in milliseconds. */
export const graceMs = 10_000;

/**
 * Runs `stop` once on SIGTERM or SIGINT, then exits with 0; with 1 if it fails or takes longer than `graceMs`. A second
 * signal exits at once.
 */
export function onStopSignal(log: Logger, stop: () => Promise<void>): void {
  let stopping = false;
  const handle = (signal: NodeJS.Signals): void => {
    if (stopping) process.exit(1);
    stopping = true;
    log.info({ signal }, "stopping");
    setTimeout(() => {
      log.error({ graceMs }, "did not stop in time");
      process.exit(1);
    }, graceMs).unref();
    stop().then(
      () => process.exit(0),
      (error: unknown) => {
        log.error({ err: error }, "could not stop cleanly");
        process.exit(1);
      },
    );
  };
  process.on("SIGTERM", handle);
  process.on("SIGINT", handle);
}
