import type { Logger } from "pino";

interface Stopping {
  /** Milliseconds from the signal to the stop, in which everything is still answered: a balancer has to notice first. */
  readonly drainMs: number;
  /** Milliseconds that the stop itself may take. */
  readonly graceMs: number;
  /** Done at once: says that nothing more should be sent here, and takes no new work. */
  leave(): void;
  stop(): Promise<void>;
}

/**
 * Stops once on SIGTERM or SIGINT, then exits with 0; with 1 if it fails or takes longer than it may. SIGINT comes from a person,
 * who does not wait for a balancer. A second signal exits at once.
 */
export function onStopSignal(log: Logger, { drainMs, graceMs, leave, stop }: Stopping): void {
  let stopping = false;
  const end = (): void => {
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
  const handle = (signal: NodeJS.Signals): void => {
    if (stopping) process.exit(1);
    stopping = true;
    const waitMs = signal === "SIGTERM" ? drainMs : 0;
    log.info({ signal, drainMs: waitMs, graceMs }, "stopping");
    leave();
    if (waitMs === 0) end();
    else setTimeout(end, waitMs);
  };
  process.on("SIGTERM", handle);
  process.on("SIGINT", handle);
}
