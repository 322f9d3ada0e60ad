import type { Logger } from "pino";
import type { OnRequestEnd } from "./request-end.js";

interface RequestLogOptions {
  /** Of all requests, from 0 to 1. */
  readonly share: number;
  /** From 0 up to 1, another each time. */
  readonly dice: () => number;
}

/** Milliseconds from which a request is worth a line whatever the dice say. */
const slow = 1_000;

/**
 * A line for a request: at `info` for the share that was asked for, and where there is a share at all for every one that failed by
 * our fault or was slow; at `debug` for the others.
 */
export const requestLog =
  ({ share, dice }: RequestLogOptions): OnRequestEnd =>
  (end, { log: given }) => {
    // What the application was given, a child for each request: the framework knows less of it.
    const log = given as Logger;
    const { part: _part, registered: _registered, isAborted, hasErrors, ...facts } = end;
    const isNotable = share > 0 && (end.status >= 500 || end.ms >= slow);
    const level = isNotable || (share > 0 && dice() < share) ? "info" : "debug";
    if (!log.isLevelEnabled(level)) return;
    log[level]({ ...facts, ...(hasErrors ? { hasErrors } : {}), ...(isAborted ? { isAborted } : {}) }, "request");
  };
